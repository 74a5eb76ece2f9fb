/** Who drops to the zones a shell cannot do without: told, filled in, or nobody; and what he keeps against the run. */
import { describe, expect, it } from 'vitest';
import {
  analyse,
  mirrorSetup,
  mirrorPlace,
  type Analysis,
  type Coverage,
  type SideStep,
  type Tell,
  type ZoneNeed,
} from '../../../src/engine/index.ts';
import { frozen, gapText, LOOKS, need, pressure, setup, shell, tell, THREE_DEEP } from '../book.ts';

const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];

interface Row {
  readonly name: string;
  readonly first?: readonly Tell[];
  readonly second?: readonly Tell[];
  readonly told: readonly (readonly [who: string, job: string])[];
  readonly needs: readonly ZoneNeed[];
  /** Zone, man and how, in the order of the needs; for an empty one the men of its proof. */
  readonly zones: readonly string[];
}

/* Which man a staff would take is common practice, no source: the one the shell names first; told before filled in. */
const ROWS: readonly Row[] = [
  {
    name: 'told',
    told: [['inside-call', 'drop hook-call']],
    needs: [need('hook-call', 'inside-away', 'inside-call')],
    zones: ['hook-right M told'],
  },
  {
    name: 'told nothing, the first of those who may',
    told: [],
    needs: [need('hook-call', 'outside-call', 'inside-call')],
    zones: ['hook-right S filled'],
  },
  {
    name: 'two told one zone: the more natural one has it',
    told: [
      ['inside-call', 'drop hook'],
      ['inside-away', 'drop hook'],
    ],
    needs: [need('hook', 'inside-away', 'inside-call')],
    zones: ['hook-middle W told'],
  },
  {
    name: 'the same, and the other one is the only one for a seam: both are filled',
    told: [
      ['inside-call', 'drop hook'],
      ['inside-away', 'drop hook'],
    ],
    needs: [need('hook', 'inside-away', 'inside-call'), need('seam-away', 'inside-away')],
    zones: ['hook-middle M told', 'seam-left W filled'],
  },
  {
    name: 'a man the rush sends there keeps the zone, whoever else the shell tells it',
    first: [tell('inside-call', 'path', 'drop hook')],
    told: [['inside-away', 'drop hook']],
    needs: [need('hook', 'inside-away'), need('seam-away', 'inside-away')],
    zones: ['hook-middle M told', 'seam-left W filled'],
  },
  {
    name: 'a man in doubt is not counted on while another is told the same',
    first: [tell('inside-call', 'path', 'drop hook')],
    second: [tell('inside-call', 'path', 'rush A-call')],
    told: [['inside-away', 'drop hook']],
    needs: [need('hook', 'inside-call', 'inside-away')],
    zones: ['hook-middle W told'],
  },
  {
    name: 'a zone that is needed twice takes two',
    told: [
      ['inside-call', 'drop hook'],
      ['inside-away', 'drop hook'],
    ],
    needs: [need('hook', 'inside-call'), need('hook', 'inside-away')],
    zones: ['hook-middle M told', 'hook-middle W told'],
  },
  {
    name: 'nobody who is free may take it',
    first: [tell('safety-call', 'path', 'rush B-call')],
    told: [],
    needs: [need('middle', 'safety-call')],
    zones: ['middle-middle nobody of '],
  },
  {
    name: 'two zones for one man: the set that proves it',
    told: [],
    needs: [need('seam-away', 'inside-away'), need('hook-away', 'inside-away')],
    zones: ['seam-left W filled', 'hook-left nobody of W'],
  },
];

function run({ first = [], second, told, needs }: Omit<Row, 'name' | 'zones'>, flipped = false): Analysis {
  const usual = setup({
    look: LOOKS['10 doubles'],
    first: pressure('p', first, RIGHT),
    second: second === undefined ? null : pressure('q', second, RIGHT),
    coverage: shell('Own', told, needs),
  });
  return analyse(frozen(flipped ? mirrorSetup(usual) : usual));
}

function print({ zones }: Analysis, flipped = false): readonly string[] {
  return zones.map(({ zone, side, by, how, proof }) => {
    const at = `${zone}-${flipped ? mirrorPlace(side) : side}`;
    return proof === null ? `${at} ${by ?? ''} ${how ?? ''}` : `${at} nobody of ${proof.reachable.join('+')}`;
  });
}

describe('a zone the shell needs', () => {
  it.each(ROWS)('$name', ({ zones, ...row }) => {
    expect(print(run(row))).toEqual(zones);
  });

  it.each(ROWS)('flipped left to right: $name', ({ zones, ...row }) => {
    expect(print(run(row, true), true)).toEqual(zones);
  });

  it('without a call side nothing is needed', () => {
    const tie = setup({
      look: 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@0,-7',
      first: pressure('p', []),
    });
    expect(analyse(frozen(tie)).zones).toEqual([]);
  });
});

describe('what a man who fills a zone does against the run', () => {
  const runOf = (coverage: Coverage, man: string, first: readonly Tell[] = []): string => {
    const { assignments } = analyse(
      frozen(setup({ look: LOOKS['11 tight end'], first: pressure('p', first, RIGHT), coverage })),
    );
    const found = assignments.find(({ aligned }) => aligned.role.letter === man);
    const job = found?.combined.job;
    const fits = job?.kind === 'drop' ? job.run.fits.map(gapText).join('+') : '';
    return `${found?.run.gaps.map(gapText).join('+') ?? ''} of ${fits}`;
  };
  const NOBODY_TOLD: Coverage = { ...THREE_DEEP, tells: [] };

  it('told nothing he keeps the gaps of his base front, run first and pass second', () => {
    expect(runOf(NOBODY_TOLD, 'M')).toBe('B-right of B-right+A-right');
  });

  it('and takes the next of them when somebody is sent to his first', () => {
    const first = [tell('@N', 'movement', 'rush A-away slant'), tell('outside-call', 'path', 'rush B-call')];
    expect(runOf(NOBODY_TOLD, 'M', first)).toBe('A-right of B-right+A-right');
  });

  it('told by the shell he keeps what the shell lets him fit', () => {
    const both = shell(
      'Own',
      [
        ['inside-call', 'drop hook may A-call'],
        ['inside-away', 'drop hook may A-away'],
      ],
      [need('hook', 'inside-call'), need('seam-away', 'inside-away')],
    );
    expect(runOf(both, 'W')).toBe(' of A-left');
  });
});
