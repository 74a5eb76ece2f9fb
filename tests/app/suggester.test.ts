import { describe, expect, it } from 'vitest';
import { fact, type Analysis, type Suggestions } from '../../src/engine/index.ts';
import type { Asked, Told } from '../../src/app/suggest/messages.ts';
import type { Searcher } from '../../src/app/suggest/searcher.ts';
import { createSuggester } from '../../src/app/suggest/suggester.ts';
import { createAnalyst } from '../../src/store/index.ts';
import { demo, demoStore, valueOf } from '../store/demo.ts';

const library = { coverages: demo().coverages };
const nothing: Suggestions = { kind: 'none', because: fact('nothing helps') };

/** Two boards with findings. */
function boards(): readonly [Analysis, Analysis] {
  const store = demoStore();
  const analyst = createAnalyst();
  const found = demo()
    .looks.map(({ id }) => valueOf(analyst.inLook(store.get(), id)))
    .filter(({ findings }) => findings.length > 0);
  const [a, b] = found;
  if (a === undefined || b === undefined) throw new Error('The demo playbook lacks what this test needs');
  return [a, b];
}

/** A searcher that answers when the test says so. */
function slowSearcher() {
  const asked: Asked[] = [];
  const listeners: ((event: { readonly data: Told }) => void)[] = [];
  let started = 0;
  const searcher: Searcher = {
    postMessage: (message) => asked.push(message),
    addEventListener: (_type, listener) => listeners.push(listener),
    terminate: () => undefined,
  };
  return {
    asked,
    started: () => started,
    start: () => {
      started += 1;
      return searcher;
    },
    tell: (told: Told) => listeners.forEach((listener) => listener({ data: told })),
  };
}

describe('the suggester', () => {
  const [one, two] = boards();
  const last = one.findings.length - 1;

  it('starts its searcher when it is asked first, and only once', () => {
    const { start, started, asked } = slowSearcher();
    const suggester = createSuggester(start);
    expect(started()).toBe(0);
    suggester.ask(one, library);
    suggester.ask(two, library);
    expect(started()).toBe(1);
    expect(asked.map((each) => (each.kind === 'look' ? each.setup : null))).toStrictEqual([one.setup, two.setup]);
  });

  it('knows what was found, finding by finding, and tells those who listen until they stop', () => {
    const { start, asked, tell } = slowSearcher();
    const suggester = createSuggester(start);
    let told = 0;
    const stop = suggester.subscribe(() => (told += 1));
    suggester.ask(one, library);
    const { number } = asked[0] ?? { number: -1 };
    tell({ kind: 'found', number, index: last, suggestions: nothing });
    expect([...suggester.known(one)]).toStrictEqual([[last, nothing]]);
    expect(told).toBe(1);
    stop();
    tell({ kind: 'found', number, index: 0, suggestions: nothing });
    expect(told).toBe(1);
    expect(suggester.known(one).get(0)).toBe(nothing);
  });

  it('drops answers to what was asked before', () => {
    const { start, asked, tell } = slowSearcher();
    const suggester = createSuggester(start);
    suggester.ask(one, library);
    suggester.ask(two, library);
    tell({ kind: 'found', number: asked[0]?.number ?? -1, index: 0, suggestions: nothing });
    expect(suggester.known(one).size).toBe(0);
    expect(suggester.known(two).size).toBe(0);
  });

  it('asks nothing twice, but again after something else came between, and after the shells have changed', () => {
    const { start, asked, tell } = slowSearcher();
    const suggester = createSuggester(start);
    suggester.ask(one, library);
    suggester.ask(one, library);
    expect(asked).toHaveLength(1);
    suggester.ask(two, library);
    suggester.ask(one, library);
    expect(asked).toHaveLength(3);
    one.findings.forEach((_, index) =>
      tell({ kind: 'found', number: asked[2]?.number ?? -1, index, suggestions: nothing }),
    );
    suggester.ask(two, library);
    suggester.ask(one, library);
    expect(asked).toHaveLength(4);
    suggester.ask(one, { coverages: [...library.coverages] });
    expect(asked).toHaveLength(5);
  });

  it('says so in the place of an answer when the search has failed', () => {
    const { start, asked, tell } = slowSearcher();
    const suggester = createSuggester(start);
    suggester.ask(one, library);
    tell({ kind: 'failed', number: asked[0]?.number ?? -1, reason: 'a fault' });
    expect(suggester.known(one).size).toBe(one.findings.length);
    expect(suggester.known(one).get(0)).toMatchObject({
      kind: 'none',
      because: { template: 'the search has failed: {reason}' },
    });
  });
});
