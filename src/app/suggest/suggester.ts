import { because, datum, type Analysis, type Library, type Suggestions } from '../../engine/index.ts';
import type { Told } from './messages.ts';
import type { Searcher } from './searcher.ts';

/** What is known so far of what would mend the findings of a look, by their place in the analysis. */
export type Known = ReadonlyMap<number, Suggestions>;

/** Finds out, away from the screen, what would mend findings. */
export interface Suggester {
  /** Starts on that analysis, unless it is known or being worked on; what was worked on before is dropped. */
  readonly ask: (analysis: Analysis, library: Library) => void;
  readonly known: (analysis: Analysis) => Known;
  readonly subscribe: (listener: () => void) => () => void;
}

const NOTHING: Known = new Map();

/** A suggester over a searcher that is only started when something is asked. */
export function createSuggester(start: () => Searcher): Suggester {
  const memory = new WeakMap<Analysis, { readonly coverages: Library['coverages']; known: Known }>();
  const listeners = new Set<() => void>();
  let searcher: Searcher | null = null;
  let asked: { readonly number: number; readonly analysis: Analysis } | null = null;

  const hear = (told: Told): void => {
    if (asked === null || told.number !== asked.number || told.kind === 'mended') return;
    const { analysis } = asked;
    const entry = memory.get(analysis);
    if (entry === undefined) return;
    entry.known =
      told.kind === 'found'
        ? new Map([...entry.known, [told.index, told.suggestions]])
        : new Map(analysis.findings.map((_, index) => [index, entry.known.get(index) ?? failure(told.reason)]));
    for (const listener of listeners) listener();
  };

  const started = (): Searcher => {
    if (searcher === null) {
      searcher = start();
      searcher.addEventListener('message', ({ data }) => hear(data));
    }
    return searcher;
  };

  return {
    ask: (analysis, library) => {
      const known = memory.get(analysis);
      const whole = known !== undefined && known.known.size === wanted(analysis);
      if (known?.coverages === library.coverages && (whole || asked?.analysis === analysis)) return;
      memory.set(analysis, { coverages: library.coverages, known: NOTHING });
      asked = { number: (asked?.number ?? 0) + 1, analysis };
      started().postMessage({ kind: 'look', number: asked.number, setup: analysis.setup, library });
    },
    known: (analysis) => memory.get(analysis)?.known ?? NOTHING,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The coach is told that the program has a fault, in the place of an answer. */
function failure(reason: string): Suggestions {
  return { kind: 'none', because: because('the search has failed: {reason}', { reason: datum.word(reason) }) };
}

/** How many findings there is something to find for. */
function wanted({ findings }: Analysis): number {
  return findings.filter(({ waived }) => waived === null).length;
}
