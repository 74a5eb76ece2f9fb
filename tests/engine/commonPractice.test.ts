import { describe, expect, it } from 'vitest';
import { analyse, printEleven, type Analysis, type Pressure, type Tell, type Turn } from '../../src/engine/index.ts';
import { gapText, LOOKS, pressure, ruleJob, setup, tell, TO_TIGHT_END, who } from './book.ts';

/*
 * Common practice, no source: how an odd front usually pairs an outside-backer pressure with an inside-backer pressure.
 *
 * First: the outside backer on the call side rushes B off the end's inside hip from the depth of the end's heels, the end of
 * that side takes C, the nose takes A to the call. With no tight end on his side the backer rushes from his detached spot.
 * Second: an inside backer rushes A, the nose takes the A away from him.
 * Behind both: the safety of the call side comes down (force, and the second receiver if it is a pass), the other one takes
 * the middle and so is no longer force on his own side.
 */
const hip = 'rush B-call inside-hip:end-call spill';
const outsideBacker: Tell = {
  who: who('outside-call'),
  cases: [
    {
      when: [{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
      basis: 'path',
      job: ruleJob(hip),
      preSnap: { kind: 'heels', of: who('end-call') },
    },
    { when: [], basis: 'path', job: ruleJob(hip), preSnap: null },
  ],
};
const first: Pressure = pressure(
  'outside through B',
  [outsideBacker, tell('end-call', 'movement', 'contain C-call loop box'), tell('@N', 'movement', 'rush A-call slant')],
  [...TO_TIGHT_END, { kind: 'fixed', side: 'right' }],
);
const second: Pressure = pressure('inside through A', [
  tell('inside-call', 'path', 'rush A-call'),
  tell('@N', 'consequence', 'rush A-away slant'),
]);

type LookName = keyof typeof LOOKS;

const run = (look: LookName, turn: Turn): Analysis => analyse(setup({ look: LOOKS[look], first, second, turn }));

/** `N:same`, for every man whom both pressures tell something. */
function toldByBoth(analysis: Analysis): string {
  return analysis.assignments
    .filter(({ combined }) => combined.first !== null && combined.second !== null)
    .map(({ combined }) => `${combined.role.letter}:${combined.status}`)
    .join(' ');
}

const rules = (analysis: Analysis): string => analysis.findings.map((finding) => finding.rule).join(' ') || 'clean';

/** `gap.open A-left`, for everything that cannot be told. */
const cannotTell = (analysis: Analysis): string =>
  analysis.undetermined.map(({ rules: ids, gaps }) => [...ids, ...gaps.map(gapText)].join(' ')).join('; ');

interface Row {
  readonly look: LookName;
  readonly eleven: string;
  readonly both: string;
  readonly findings: string;
}

/*
 * Combined opposite. The call goes to the tight end (right), else to the passing strength, else to the back: right in every
 * look below. So the nose is sent to the right A by the first, and by the second because the inside backer of the left side
 * rushes the left A. Only the first three columns of the right edge change: a tight end adds D, which the safety who comes
 * down fits; a wing adds E, and then D has nobody. Two tight ends leave the away side one man short.
 *
 * The end on the other side hears nothing. Against the run he takes whichever of C and B the outside backer behind him leaves;
 * if it is a pass he contains, as ends of this front do at base, so with the looping end both sides are contained. Force: the
 * safety who comes down on the call side, the outside backer on the other. Five rush, three under (both seams and the hook of the
 * inside backer who stays), three deep: every zone the shell needs is filled, and the five receivers are answered. The heels
 * are one yard behind where the backer stands anyway: nobody sees that, so there is nothing to note.
 */
const OPPOSITE: readonly Row[] = [
  {
    look: '10 doubles',
    eleven:
      'LE=B-left/contain-left N=A-right/rush RE=C-right/contain-right J=C-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush LC=-/third-left FS=-/middle SS=force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'clean',
  },
  {
    look: '10 trips',
    eleven:
      'LE=B-left/contain-left N=A-right/rush RE=C-right/contain-right J=C-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush LC=-/third-left FS=-/middle SS=force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'clean',
  },
  {
    look: '11 tight end',
    eleven:
      'LE=B-left/contain-left N=A-right/rush RE=C-right/contain-right J=C-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush LC=-/third-left FS=-/middle SS=D-right+force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'clean',
  },
  {
    look: '12 wing',
    eleven:
      'LE=B-left/contain-left N=A-right/rush RE=C-right/contain-right J=C-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush LC=-/third-left FS=-/middle SS=E-right+force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'gap.open',
  },
  {
    look: '20 split backs',
    eleven:
      'LE=B-left/contain-left N=A-right/rush RE=C-right/contain-right J=C-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush LC=-/third-left FS=-/middle SS=force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'clean',
  },
  {
    look: '21 pro I',
    eleven:
      'LE=B-left/contain-left N=A-right/rush RE=C-right/contain-right J=C-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush LC=-/third-left FS=-/middle SS=D-right+force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'clean',
  },
  {
    look: '22 double tight I',
    eleven:
      'LE=C-left/contain-left N=A-right/rush RE=C-right/contain-right J=D-left+force/seam-left W=A-left/rush M=-/hook-right S=B-right/rush FS=-/middle LC=-/third-left SS=D-right+force/seam-right RC=-/third-right',
    both: 'N:same W:yields',
    findings: 'gap.open',
  },
];

/**
 * Combined on the same side: the first sends the nose to the right A, the second away from the rusher there. The right A has
 * that rusher whatever the nose does. The left A has nobody but the nose, so whether it is open cannot be told. Against the wing
 * D is open as before: no conflict of the nose changes that. Against trips the inside backer who stays is the one of the other
 * side, so he has the third receiver across the ball.
 */
const SAME: readonly (readonly [look: LookName, both: string, findings: string])[] = [
  ['10 doubles', 'N:conflict M:yields', 'line.two-jobs'],
  ['10 trips', 'N:conflict M:yields', 'line.two-jobs cover.mismatch'],
  ['11 tight end', 'N:conflict M:yields', 'line.two-jobs'],
  ['12 wing', 'N:conflict M:yields', 'line.two-jobs gap.open'],
  ['20 split backs', 'N:conflict M:yields', 'line.two-jobs'],
  ['21 pro I', 'N:conflict M:yields', 'line.two-jobs'],
  ['22 double tight I', 'N:conflict M:yields', 'line.two-jobs'],
];

/** Where the rusher of the first pressure comes from: yards right of the ball and off it, and what put him there. */
const RUSHER_FROM: readonly (readonly [look: LookName, x: number, y: number, by: string])[] = [
  // Detached: half way between the tackle (2.67) and the second receiver (9), at backer depth, as his rule has him.
  ['10 doubles', 5.83, 4.5, 'rule'],
  ['10 trips', 7.33, 4.5, 'rule'],
  ['20 split backs', 5.83, 4.5, 'rule'],
  // On the tight end's outside foot, one yard behind the end's own stance (0.8).
  ['11 tight end', 4.33, 1.8, 'pressure'],
  ['21 pro I', 4.33, 1.8, 'pressure'],
  ['22 double tight I', 4.33, 1.8, 'pressure'],
];

describe('outside backer through B with inside backer through A (common practice, no source)', () => {
  it.each(OPPOSITE)('$look, opposite: the nose hears one thing', (row) => {
    const analysis = run(row.look, 'opposite');
    expect(printEleven(analysis)).toBe(row.eleven);
    expect(toldByBoth(analysis)).toBe(row.both);
    expect(rules(analysis)).toBe(row.findings);
    expect(cannotTell(analysis)).toBe('');
    expect(analysis.passCount).toEqual({ rush: 5, under: 3, deep: 3, man: 0, free: 0 });
  });

  it.each(SAME)('%s, same side: the nose hears two things', (look, both, findings) => {
    const analysis = run(look, 'same');
    expect(toldByBoth(analysis)).toBe(both);
    expect(rules(analysis)).toBe(findings);
    expect(cannotTell(analysis)).toBe('gap.open A-left');
    const conflict = analysis.findings.find((finding) => finding.rule === 'line.two-jobs');
    expect(conflict?.who).toEqual(['N']);
    expect(conflict?.severity).toBe('stop');
  });

  it.each(RUSHER_FROM)('%s: the outside backer comes from where his rule or the heels put him', (look, x, y, by) => {
    const rusher = run(look, 'opposite').assignments.find(({ aligned }) => aligned.role.letter === 'S')?.aligned;
    expect(rusher?.x).toBeCloseTo(x, 1);
    expect(rusher?.y).toBeCloseTo(y, 5);
    expect(rusher?.by).toBe(by);
  });

  it.each(OPPOSITE)('$look: the safeties rotate, force goes with the one who comes down', ({ look }) => {
    const support = new Map(
      run(look, 'opposite').assignments.map(({ aligned, run: column }) => [aligned.role.letter, column.support]),
    );
    // Call side: the strong safety. Away side: the free safety has left for the middle, the outside backer forces.
    expect(support.get('SS')).toBe('force');
    expect(support.get('FS')).toBeNull();
    expect(support.get('J')).toBe('force');
  });
});
