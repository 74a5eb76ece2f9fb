/** The way back from a place to a rule: every name is that place again in this look, and the most natural one is first. */
import { describe, expect, it } from 'vitest';
import {
  analyse,
  gapNames,
  manNames,
  namingFor,
  printRuleJob,
  receiverNames,
  zoneSideNames,
  type Gap,
  type NamingContext,
  type RoleId,
  type RuleJob,
  type Side,
} from '../../src/engine/index.ts';
import { findGap, findReceiver } from '../../src/engine/resolve/names.ts';
import { findWho } from '../../src/engine/resolve/who.ts';
import { factsOf, LOOKS, pressure, setup } from './book.ts';

const TIGHT = LOOKS['11 tight end'];
const context = (look: string, callSide: Side | null, mySide: Side | null): NamingContext => ({
  facts: factsOf(look),
  callSide,
  mySide,
});

const NO_RUN = { fits: [], firm: false, support: null } as const;
const fit = (gap: RuleJob): string => printRuleJob(gap).replace(/^fit /, '');

describe('names of a gap', () => {
  const said = (gap: Gap, names: NamingContext): readonly string[] =>
    gapNames(gap, names).map(
      (name) => fit({ kind: 'fit', gaps: [name], manner: 'read', support: null }).split(' ')[0] ?? '',
    );

  it.each<[string, Gap, Side | null, Side | null, readonly string[]]>([
    [
      'to the call, by a man of that side',
      { side: 'right', letter: 'A' },
      'right',
      'right',
      ['A-call', 'A-right', 'A-mine'],
    ],
    [
      'away from the call, by a man of the other side',
      { side: 'left', letter: 'B' },
      'right',
      'right',
      ['B-away', 'B-left', 'B-other'],
    ],
    ['by a man in the middle', { side: 'left', letter: 'A' }, 'left', null, ['A-call', 'A-left']],
    ['without a call side', { side: 'left', letter: 'A' }, null, 'left', ['A-left', 'A-mine']],
    [
      'the edge of a side without a tight end',
      { side: 'left', letter: 'C' },
      'left',
      null,
      ['C-call', 'C-left', 'edge-call', 'edge-left'],
    ],
    [
      'outside the tight end',
      { side: 'right', letter: 'D' },
      'right',
      null,
      ['D-call', 'D-right', 'edge-call', 'edge-right', 'outside:end-call', 'outside:end-right'],
    ],
  ])('%s', (_, gap, callSide, mySide, names) => {
    expect(said(gap, context(TIGHT, callSide, mySide))).toEqual(names);
  });
});

describe('names of receivers and zones', () => {
  it('a receiver is told by his number, a back as the back, a lineman not at all', () => {
    const names = context(TIGHT, 'right', 'left');
    const said = (id: string): readonly string[] => {
      const player = [...names.facts.players.keys()].find((each) => each === id);
      if (player === undefined) throw new Error(`${id} is not in the look`);
      return receiverNames(player, names).map((receiver) =>
        printRuleJob({ kind: 'man', receiver, run: NO_RUN }).replace('man ', ''),
      );
    };
    expect(said('Z')).toEqual(['#1-call', '#1-right', '#1-other']);
    expect(said('X')).toEqual(['#1-away', '#1-left', '#1-mine']);
    expect(said('T')).toEqual(['back']);
    expect(said('Q')).toEqual([]);
  });

  it('a zone in the middle has one name', () => {
    const names = context(TIGHT, 'left', 'left');
    expect(zoneSideNames('middle', names)).toEqual(['middle']);
    expect(zoneSideNames('left', names)).toEqual(['call', 'left', 'mine']);
  });
});

describe('in every look, for every man', () => {
  const cases = Object.entries(LOOKS).flatMap(([name, look]) =>
    (['left', 'right', null] as const).map((callSide) => ({ name, look, callSide })),
  );
  it.each(cases)('$name, call $callSide: each name is its place again', ({ look, callSide }) => {
    const analysis = analyse(setup({ look, first: pressure('none', []) }));
    const aligned = new Map(analysis.assignments.map((man) => [man.aligned.role.id, man.aligned]));
    const { facts } = analysis;
    for (const man of aligned.values()) {
      const names = namingFor(facts, callSide, man);
      for (const { gap } of facts.gaps) {
        const found = gapNames(gap, names).map((name) => findGap(name, names));
        expect(found.length).toBeGreaterThan(0);
        expect(found).toEqual(found.map(() => ({ ok: true, value: gap })));
      }
      for (const { player } of [...facts.receivers, ...facts.backs]) {
        const found = receiverNames(player, names).map((name) => findReceiver(name, names));
        expect(found.length).toBeGreaterThan(0);
        expect(found).toEqual(found.map(() => ({ ok: true, value: player })));
      }
      const him: RoleId = man.role.id;
      const who = manNames(him, callSide, aligned);
      expect(who.at(-1)).toEqual({ kind: 'role', role: him });
      if (callSide !== null) {
        expect(who.map((name) => findWho(name, callSide, aligned))).toEqual(who.map(() => ({ ok: true, value: him })));
      }
    }
  });
});
