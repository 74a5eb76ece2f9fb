import { describe, expect, it } from 'vitest';
import type { Edit } from '../../src/engine/index.ts';
import { makeLexicon } from '../../src/report/index.ts';
import { sentenceOf } from '../../src/app/suggest/sentences.ts';
import { createAnalyst, standInCall } from '../../src/store/index.ts';
import { demo, demoStore, firstOf, valueOf } from '../store/demo.ts';

const playbook = demo();
const store = demoStore();
const pair = firstOf(playbook.calls.filter(({ second }) => second !== null));
store.setBoard(standInCall(store.get().board, pair));
const { setup } = valueOf(createAnalyst().onBoard(store.get()));
const lexicon = makeLexicon(setup, playbook.words);
const { first, second } = setup;
if (second === null) throw new Error('This test needs a call of two pressures');
const look = firstOf(playbook.looks);
const shell = firstOf(playbook.coverages);
const role = firstOf(playbook.roles);
const using = playbook.calls.filter((call) => call.first === first.id || call.second === first.id).length;
const inFirst = { which: 'first', pressure: first.id } as const;
const toAll = `changes the pressure ${first.name} for every call that uses it (${using} kept)`;

describe('a suggestion is said', () => {
  it.each<[string, Edit, string | RegExp, string | RegExp]>([
    ['turning', { kind: 'turn', turn: 'opposite' }, `Turn ${second.name} opposite the first`, 'changes this call only'],
    ['swapping', { kind: 'swap' }, 'Let first and second change places', 'changes this call only'],
    ['counting', { kind: 'rushers', count: 5 }, 'Say that 5 come', 'changes this call only'],
    ['another shell', { kind: 'coverage', coverage: shell }, `Play ${shell.name} behind it`, 'changes this call only'],
    [
      'leaving a look out',
      { kind: 'leave-out', ...inFirst, look },
      `Do not run ${first.name} against ${look.name}`,
      toAll,
    ],
    [
      'telling nothing',
      { kind: 'untell', ...inFirst, who: { kind: 'role', role: role.id } },
      new RegExp(`^In ${first.name} tell .* nothing$`),
      toAll,
    ],
    [
      'standing by hand',
      { kind: 'stand', look, role: role.id, x: -2.5, y: 1 },
      /by hand against .*: 2[.]5 yards from the ball to the left, 1 deep$/,
      'in this look only, for every call out of this front',
    ],
    [
      'a duty in a shell',
      {
        kind: 'duty',
        coverage: shell,
        who: { kind: 'role', role: role.id },
        job: { kind: 'spy', run: { fits: [], firm: false, support: null } },
      },
      new RegExp(`^In ${shell.name} tell .* another job: `),
      new RegExp(`^changes the coverage ${shell.name} for every call that plays it`),
    ],
  ])('%s', (_words, edit, text, reach) => {
    const said = sentenceOf(edit, lexicon, playbook);
    if (typeof text === 'string') expect(said.text).toBe(text);
    else expect(said.text).toMatch(text);
    if (typeof reach === 'string') expect(said.reach).toBe(reach);
    else expect(said.reach).toMatch(reach);
  });
});
