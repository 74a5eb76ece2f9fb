/** The sample's shells, pressures, calls and check-outs, and the words its fronts share with them. */

/** JSON that a test may change in any way. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

export const fixed = (side: string): Json => ({ kind: 'fixed', side });
export const toStrength = (by: string, toward: string): Json => ({ kind: 'strength', by, toward });
export const letterGap = (letter: string, side: string): Json => ({ kind: 'letter', side, letter });
export const edgeGap = (side: string): Json => ({ kind: 'edge', side });
export const bodiesThree: Json = { kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 };

const man = (id: string): Json => ({ kind: 'role', role: id });
const oneOf = (group: string, side: string): Json => ({ kind: 'group', group, side });
const noRun = (): Json => ({ fits: [], firm: false, support: null });
const drop = (zone: string, side: string, run: Json = noRun()): Json => ({ kind: 'drop', zone, side, run });
const rush = (gaps: Json[], manner: string, more: { [key: string]: Json } = {}): Json => ({
  kind: 'rush',
  gaps,
  manner,
  track: { kind: 'straight' },
  edge: null,
  peel: false,
  order: null,
  ...more,
});

const back = (number: number): Json => ({ kind: 'man', receiver: { kind: 'back', number }, run: noRun() });
const backToCall: Json = { kind: 'back', side: 'call' };

export function coverages(): Json[] {
  const need = (zone: string, side: string, takers: Json[], when: Json[] = []): Json => ({ when, zone, side, takers });
  const tell = (who: Json, ...jobs: Json[]): Json => ({ who, cases: jobs.map((job) => ({ when: [], job })) });
  return [
    {
      id: 'three-deep',
      name: 'Three deep',
      needs: [
        need('third', 'call', [oneOf('corners', 'call'), man('SS')]),
        need('third', 'away', [oneOf('corners', 'away'), man('FS')]),
        need('middle', 'middle', [man('FS'), man('SS')]),
        need('hook', 'away', [oneOf('inside', 'away')], [backToCall]),
      ],
      tells: [
        tell(oneOf('corners', 'call'), drop('third', 'call')),
        tell(oneOf('corners', 'away'), drop('third', 'away')),
        tell(man('FS'), drop('middle', 'middle')),
        tell(man('SS'), drop('seam', 'mine', { fits: [edgeGap('mine')], firm: false, support: 'force' })),
        tell(man('W'), drop('seam', 'mine', { fits: [edgeGap('mine')], firm: true, support: 'force' })),
        tell(man('LI'), drop('hook', 'left', { fits: [letterGap('A', 'mine')], firm: false, support: null })),
        tell(man('RI'), drop('hook', 'right', { fits: [letterGap('A', 'mine')], firm: false, support: null })),
      ],
    },
    {
      id: 'man-free',
      name: 'Man with a free safety',
      needs: [],
      tells: [
        tell(oneOf('corners', 'call'), {
          kind: 'man',
          receiver: { kind: 'number', side: 'call', number: 1 },
          run: noRun(),
        }),
        tell(man('LI'), back(1)),
        tell(man('SS'), back(2)),
        tell(man('RI'), { kind: 'spy', run: noRun() }),
      ],
    },
  ];
}

export function pressures(): Json[] {
  const tell = (who: Json, job: Json, basis = 'path', preSnap: Json = null, when: Json[] = []): Json => ({
    who,
    cases: [{ when, basis, job, preSnap }],
  });
  return [
    {
      id: 'anvil',
      name: 'Anvil',
      tags: ['edge'],
      callSide: [toStrength('tight-end', 'to'), toStrength('field', 'to'), fixed('right')],
      tells: [
        tell(man('O'), rush([edgeGap('mine')], 'penetrate', { kind: 'contain', edge: 'box' })),
        tell(oneOf('inside', 'call'), rush([letterGap('C', 'call')], 'read'), 'path', { kind: 'depth', depth: 3 }, [
          bodiesThree,
        ]),
        tell(man('N'), rush([letterGap('A', 'call')], 'slant'), 'movement'),
      ],
      coverage: 'three-deep',
      rushers: null,
      notAgainst: [],
      installDay: null,
    },
    {
      id: 'bellows',
      name: 'Bellows',
      tags: [],
      callSide: [{ kind: 'role', role: 'W', toward: 'to' }],
      tells: [
        tell(
          man('N'),
          rush([letterGap('A', 'call')], 'loop', {
            track: { kind: 'past', how: 'under', neighbour: oneOf('inside', 'call') },
            order: { turn: 'second', neighbour: oneOf('inside', 'call') },
          }),
          'consequence',
        ),
        tell(
          oneOf('inside', 'call'),
          { kind: 'fit', gaps: [letterGap('B', 'call')], manner: 'read', support: 'fold' },
          'consequence',
          { kind: 'heels', of: man('N') },
          [
            { kind: 'receivers', side: 'call', compare: 'at-most', count: 2 },
            { kind: 'backs', compare: 'at-least', count: 1 },
          ],
        ),
        tell(
          oneOf('ends', 'away'),
          rush([letterGap('B', 'away'), letterGap('C', 'away')], 'two-gap'),
          'movement',
          null,
          [{ kind: 'field', side: 'away' }],
        ),
        tell(man('W'), rush([edgeGap('mine')], 'penetrate', { edge: 'spill', peel: true })),
      ],
      coverage: 'man-free',
      rushers: 5,
      notAgainst: ['spread'],
      installDay: 4,
    },
  ];
}

export function calls(): Json[] {
  const call = { front: 'odd', turn: 'own', coverage: null, rushers: null, waivers: [], tags: [], installDay: null };
  const together = { kind: 'together' };
  return [
    { ...call, id: 'anvil', name: 'Anvil', combination: together, first: 'anvil', second: null },
    {
      ...call,
      id: 'both',
      name: 'Anvil and Bellows',
      combination: together,
      first: 'anvil',
      second: 'bellows',
      turn: 'opposite',
      coverage: 'man-free',
      rushers: 5,
      waivers: [{ rule: 'align.tell', look: 'tight', evidence: 'LI||', reason: 'He only steps up with the cadence.' }],
      tags: ['third down'],
      installDay: 9,
    },
    {
      ...call,
      id: 'either',
      name: 'Anvil or Bellows',
      combination: { kind: 'either-or', key: [backToCall] },
      first: 'anvil',
      second: 'bellows',
    },
  ];
}

export function checkOuts(): Json[] {
  const row = (formation: string, action: Json): Json => ({ formation, action });
  return [
    {
      call: 'either',
      rows: [
        row('two-backs', { kind: 'coverage', coverage: 'three-deep' }),
        row('bunch', { kind: 'turn' }),
        row('trips', { kind: 'swap' }),
        row('wing', { kind: 'run' }),
        row('doubles', { kind: 'check-to', call: 'anvil' }),
      ],
    },
  ];
}
