import { describe, expect, it } from 'vitest';
import {
  analyse,
  arrival,
  asPlayerId,
  asRoleId,
  likelySpot,
  movesOfDraft,
  positionAt,
  tenth,
  THROW_TIMES,
  walkThrough,
  type Against,
  type Analysis,
  type KnownProtection,
  type KnownRun,
  type Moment,
  type WalkThrough,
} from '../../../src/engine/index.ts';
import { frozen, gapText, LOOKS, pressure, setup, tell } from '../book.ts';

interface Case {
  readonly look?: keyof typeof LOOKS;
  readonly jobs: readonly (readonly [who: string, job: string])[];
  /** Left out: one pressure. */
  readonly second?: readonly (readonly [who: string, job: string])[];
  readonly protections?: readonly KnownProtection[];
  readonly runs?: readonly KnownRun[];
}

const PASS: Against = { kind: 'pass' };
const PROTECTED: Against = { kind: 'protection', index: 0 };
const RUN: Against = { kind: 'run', index: 0 };

const worked = ({ look = '10 doubles', jobs, second, protections = [], runs = [] }: Case): Analysis =>
  analyse(
    setup({
      look: LOOKS[look],
      protections,
      runs,
      first: pressure(
        'one',
        jobs.map(([who, job]) => tell(who, 'path', job)),
      ),
      second:
        second === undefined
          ? null
          : pressure(
              'two',
              second.map(([who, job]) => tell(who, 'path', job)),
            ),
    }),
  );

const walked = (given: Case, against: Against): WalkThrough => walkThrough(frozen(worked(given)), against);

/** "N in A-right": a moment without its time. */
const textOf = (moment: Moment): string => {
  switch (moment.kind) {
    case 'in-gap':
      return `${moment.role} in ${moment.gaps.map(gapText).join('+')}`;
    case 'meets':
      return `${moment.blocker} meets ${moment.rusher}`;
    case 'at-passer':
      return `${moment.role} ${moment.free ? 'free' : 'first'} at the passer${moment.thrown ? ', late' : ''}`;
    case 'thrown':
      return moment.hot === null ? 'thrown' : `thrown hot ${moment.hot}`;
    case 'opens':
      return `${moment.player} opens ${gapText(moment.near)}`;
    case 'fits-opened':
      return `${moment.role} fits what ${moment.player} opens`;
    case 'ball-at':
      return `${moment.player} at ${gapText(moment.gap)} against ${moment.there.join('+') || 'nobody'}`;
  }
};
const texts = (walk: WalkThrough): readonly string[] => walk.moments.map(textOf);
const timeOf = (walk: WalkThrough, text: string): number => {
  const found = walk.moments.find((moment) => textOf(moment) === text);
  if (found === undefined) throw new Error(`${text} is not among: ${texts(walk).join('; ')}`);
  return found.t;
};
const at = (walk: WalkThrough, role: string, t: number) => {
  const track = walk.defence.find((each) => each.role === asRoleId(role));
  if (track === undefined) throw new Error(role);
  return positionAt(track, t);
};
const player = (walk: WalkThrough, id: string, t: number) => {
  const track = walk.offence.find((each) => each.player === asPlayerId(id));
  if (track === undefined) throw new Error(id);
  return positionAt(track, t);
};

const INSIDE: Case = {
  jobs: [
    ['@N', 'rush A-left slant'],
    ['@M', 'rush A-right'],
  ],
};

describe('at the snap', () => {
  it.each<readonly [string, Against]>([
    ['a pass', PASS],
    ['a protection', PROTECTED],
    ['a run', RUN],
  ])('all 22 stand where they line up, against %s', (_name, against) => {
    const analysis = worked({
      ...INSIDE,
      protections: [{ protection: 'half-slide-six', slideSide: 'left' }],
      runs: [{ concept: 'inside-zone', side: 'right', passOption: false }],
    });
    const walk = walkThrough(analysis, against);
    expect(walk.defence.map(({ path }) => positionAt({ path }, 0))).toEqual(
      analysis.assignments.map(({ aligned: { x, y } }) => ({ x, y })),
    );
    expect(walk.offence.map(({ path }) => positionAt({ path }, 0))).toEqual(
      [...analysis.facts.players.values()].map(({ x, y }) => ({ x, y })),
    );
  });
});

describe('a pass with no protection told', () => {
  const walk = walked(INSIDE, PASS);

  it('tells who is in his gap when, and who would be at the passer first', () => {
    expect(texts(walk)).toEqual(expect.arrayContaining(['N in A-left', 'M in A-right', 'N first at the passer']));
    expect(timeOf(walk, 'N in A-left')).toBeLessThan(timeOf(walk, 'M in A-right'));
  });

  it('is in the order of time, told to a tenth, and goes on a little after the last moment', () => {
    const times = walk.moments.map(({ t }) => t);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    expect(times).toEqual(times.map(tenth));
    expect(walk.seconds).toBeGreaterThan(times.at(-1) ?? Infinity);
  });

  it('has a man in his gap, across the line, when it says so', () => {
    for (const { role, gap, t } of walk.fills) {
      const { x, y } = at(walk, role, t + 0.05);
      expect(y).toBeLessThan(0.3);
      expect(
        Math.abs(x - (gap.letter === 'A' ? 0.67 : gap.letter === 'B' ? 2 : 4) * (gap.side === 'left' ? -1 : 1)),
      ).toBeLessThan(1.2);
    }
  });

  it('leaves a gap unfilled whose owners all drop against the pass, and names them', () => {
    const { assignments, gaps } = worked(INSIDE);
    const rushes = (role: string): boolean =>
      assignments.some(({ aligned, pass }) => aligned.role.id === role && pass.kind !== 'zone' && pass.kind !== 'man');
    const dropped = gaps.filter(({ owners }) => owners.length > 0 && !owners.some(({ role }) => rushes(role)));
    expect(dropped.length).toBeGreaterThan(0);
    expect(walk.unfilled).toEqual(dropped.map(({ gap, owners }) => ({ gap, owners: owners.map(({ role }) => role) })));
  });

  it('nobody runs into the passer, who drops to where he throws from', () => {
    const spot = likelySpot(worked(INSIDE).facts);
    expect(player(walk, 'Q', 9)).toEqual(spot);
    expect(Math.hypot(at(walk, 'N', 9).x, at(walk, 'N', 9).y - (spot?.y ?? 0))).toBeCloseTo(0.8, 1);
  });

  it('holds the receivers, whose routes nobody knows', () => {
    expect(player(walk, 'X', 3)).toEqual(player(walk, 'X', 0));
  });
});

describe('a protection', () => {
  const given: Case = {
    jobs: [...INSIDE.jobs, ['@S', 'rush C-right'], ['@J', 'rush C-left']],
    protections: [{ protection: 'man-five', slideSide: 'left' }],
  };
  const analysis = worked(given);
  const walk = walkThrough(analysis, PROTECTED);
  const [answer] = analysis.protections;
  if (answer?.kind !== 'answered') throw new Error('man for man can always be had');
  const { picture } = answer;

  it('has every blocker meet his rusher behind the line, and holds him there', () => {
    expect(picture.blocks.length).toBeGreaterThan(2);
    for (const { blocker, rusher } of picture.blocks) {
      const t = timeOf(walk, `${blocker} meets ${rusher}`);
      const held = at(walk, rusher, t + 0.1);
      expect(held).toEqual(at(walk, rusher, 9));
      expect(held.y).toBeLessThan(0);
      expect(Math.hypot(held.x - player(walk, blocker, 9).x, held.y - player(walk, blocker, 9).y)).toBeLessThan(0.95);
    }
  });

  it('has whoever comes free at the passer when the engine says it everywhere else', () => {
    const spot = likelySpot(analysis.facts);
    if (spot === null) throw new Error('somebody passes');
    expect(picture.unblocked.length).toBeGreaterThan(0);
    for (const { rusher } of picture.unblocked) {
      const move = movesOfDraft(analysis).find(({ role }) => role === rusher);
      const t = move === undefined ? null : arrival(move, spot);
      if (t === null) throw new Error('a free rusher arrives');
      const moment = walk.moments.find((each) => each.kind === 'at-passer' && each.role === rusher);
      expect(moment).toMatchObject({ t: tenth(t), free: true, thrown: t > THROW_TIMES.quick });
      expect(Math.hypot(at(walk, rusher, t).x - spot.x, at(walk, rusher, t).y - spot.y)).toBeCloseTo(0.8, 2);
    }
  });

  it('throws hot at the time of a quick throw, to the side the passer must', () => {
    expect(picture.hot).not.toBeNull();
    expect(walk.moments).toContainEqual({ kind: 'thrown', t: THROW_TIMES.quick, hot: picture.hot?.side });
  });

  it('throws as from five steps where nobody comes free', () => {
    const quiet = walked({ jobs: [], protections: [{ protection: 'half-slide-six', slideSide: 'left' }] }, PROTECTED);
    expect(quiet.against).toEqual(PROTECTED);
    expect(quiet.moments.some(({ kind }) => kind === 'at-passer')).toBe(false);
    expect(quiet.moments).toContainEqual({ kind: 'thrown', t: THROW_TIMES['five-step'], hot: null });
  });
});

describe('a run', () => {
  const power: Case = {
    look: '21 pro I',
    jobs: [['@N', 'rush A-left slant']],
    runs: [{ concept: 'power', side: 'right', passOption: false }],
  };
  const analysis = worked(power);
  const walk = walkThrough(analysis, RUN);
  const [answer] = analysis.runs;
  if (answer?.kind !== 'answered') throw new Error('power can be had from the I');

  it('has the carrier at the line in the gap it aims at, and says who of its owners is there by then', () => {
    const { carrier, aim } = answer.picture;
    const x = analysis.gaps.find(({ gap }) => gapText(gap) === gapText(aim))?.x;
    expect(player(walk, carrier, 9).x).toBeCloseTo(x ?? Infinity, 2);
    expect(player(walk, carrier, 9).y).toBe(0);
    const ball = walk.moments.find((moment) => moment.kind === 'ball-at');
    if (ball?.kind !== 'ball-at') throw new Error('the ball comes to the line');
    for (const role of ball.there) {
      expect(
        walk.fills.find((fill) => fill.role === role && gapText(fill.gap) === gapText(aim))?.t,
      ).toBeLessThanOrEqual(ball.t);
    }
  });

  it('has everybody who pulls or leads open his gap, and whoever fits it go there', () => {
    expect(answer.floating.length).toBeGreaterThan(0);
    for (const { floating, by } of answer.floating) {
      expect(texts(walk)).toContain(`${floating.player} opens ${gapText(floating.near)}`);
      expect(player(walk, floating.player, 9).x).toBeCloseTo(floating.x, 2);
      if (by !== null) expect(at(walk, by, 9).x).toBeCloseTo(floating.x, 2);
    }
  });

  it('nobody rushes on to the passer, and who owns no gap and fits none stays', () => {
    for (const { path } of walk.defence) for (const { y } of path) expect(y).toBeGreaterThan(-0.5);
    const fitters = answer.floating.map(({ by }) => by);
    for (const { aligned, run, pass } of analysis.assignments) {
      const { id } = aligned.role;
      if (run.gaps.length > 0 || fitters.includes(id) || pass.kind === 'rush' || pass.kind === 'contain') continue;
      expect(at(walk, id, 9)).toEqual({ x: aligned.x, y: aligned.y });
    }
  });

  it('fills the gaps of those who fit the run after they have read it', () => {
    const fits = analysis.assignments.filter(
      ({ run, pass }) => run.gaps.length > 0 && pass.kind !== 'rush' && pass.kind !== 'contain',
    );
    expect(fits.length).toBeGreaterThan(0);
    for (const { aligned } of fits) {
      if (answer.floating.some(({ by }) => by === aligned.role.id)) continue;
      expect(walk.fills.map(({ role }) => role)).toContain(aligned.role.id);
    }
  });
});

describe('what cannot be told', () => {
  it('a play the look cannot have is walked as a pass', () => {
    expect(walked(INSIDE, { kind: 'run', index: 3 }).against).toEqual(PASS);
    expect(walked(INSIDE, PROTECTED).against).toEqual(PASS);
  });

  it('a man told two things is shown in one gap, the other stays empty, and he is named', () => {
    const walk = walked({ jobs: [['@N', 'rush A-left slant']], second: [['@N', 'rush A-right slant']] }, PASS);
    expect(walk.inDoubt).toEqual([asRoleId('N')]);
    expect(walk.fills.filter(({ role }) => role === asRoleId('N')).map(({ gap }) => gapText(gap))).toEqual(['A-left']);
  });

  it('the same call gives the same walk-through to the byte', () => {
    expect(JSON.stringify(walked(INSIDE, PASS))).toBe(JSON.stringify(walked(INSIDE, PASS)));
  });
});
