import { describe, expect, it } from 'vitest';
import { asRoleId, type Gap, type GapLetter, type Side } from '../../../src/engine/index.ts';
import {
  optionDuties,
  readMan,
  runConcept,
  type OptionMan,
  type ReadReaction,
  type RunConcept,
  type RunPicture,
} from '../../../src/engine/offence/index.ts';
import { factsOf, LOOKS, read, say, sayAll } from '../book.ts';

/*
 * Who is read, and who has the dive, the quarterback and the pitch. An odd front against spread looks: LE and RE outside the
 * tackles, W and M behind the guards, J and S in the alleys, LS and RS safeties. Sides are the DEFENCE's.
 */
const gap = (text: string): Gap => {
  const [letter, side] = text.split('-');
  const letters: readonly GapLetter[] = ['A', 'B', 'C', 'D'];
  const found = letters.find((each) => each === letter);
  if (found === undefined || (side !== 'left' && side !== 'right')) throw new Error(`No gap: ${text}`);
  return { side, letter: found };
};
const man = (role: string, x: number, y: number, ...gaps: readonly string[]): OptionMan => ({
  role: asRoleId(role),
  x,
  y,
  gaps: gaps.map(gap),
});

const BASE: readonly OptionMan[] = [
  man('N', 0, 0.8, 'A-right'),
  man('LE', -3, 0.8, 'C-left'),
  man('RE', 3, 0.8, 'C-right'),
  man('W', -1.67, 4.5, 'B-left'),
  man('M', 1.67, 4.5, 'B-right'),
  man('J', -6, 4.5),
  man('S', 6, 4.5),
  man('LS', -7, 11),
  man('RS', 7, 11),
];
const without = (men: readonly OptionMan[], ...roles: readonly string[]): readonly OptionMan[] =>
  men.filter((each) => !roles.includes(each.role));
const changed = (men: readonly OptionMan[], ...others: readonly OptionMan[]): readonly OptionMan[] => [
  ...without(men, ...others.map((each) => each.role)),
  ...others,
];

const picture = (concept: RunConcept, look: keyof typeof LOOKS, side: Side): RunPicture =>
  read(runConcept(factsOf(LOOKS[look]), concept, side));

/** `dive LE+N, quarterback W, keep`, the phases the concept has. */
function duties(of: RunPicture, men: readonly OptionMan[], reaction: ReadReaction): string {
  const { ball, missing, ...has } = read(optionDuties(of, men, reaction));
  const phases = (['dive', 'quarterback', 'pitch'] as const).flatMap((phase) =>
    has[phase].length > 0
      ? [`${phase} ${[...has[phase]].sort().join('+')}`]
      : missing.includes(phase)
        ? [`${phase} nobody`]
        : [],
  );
  return [...phases, ball].join(', ');
}

describe('the man who is read', () => {
  // Where he stands, from memory but for the first row ("Teaching Gap Exchanges & Defending the Zone Read", MatchQuarters).
  it.each([
    ['zone-read', '10 doubles', 'right', 'LE'],
    ['zone-read', '10 doubles', 'left', 'RE'],
    ['power-read', '10 doubles', 'right', 'RE'],
    ['midline', '10 doubles', 'right', 'RE'],
    ['inside-veer', '20 split backs', 'right', 'RE'],
    ['speed-option', '10 doubles', 'left', 'LE'],
    // The last blocker is the tight end: nobody of the line stands on or outside him, so it is the man in the alley.
    ['speed-option', '11 tight end', 'right', 'S'],
  ] as const)('%s against %s to the %s: %s', (concept, look, side, expected) => {
    expect(readMan(picture(concept, look, side), BASE)).toBe(expected);
  });

  it('is nobody in a run that reads nobody, and where nobody stands', () => {
    expect(readMan(picture('inside-zone', '10 doubles', 'right'), BASE)).toBeNull();
    expect(readMan(picture('zone-read', '10 doubles', 'right'), without(BASE, 'LE', 'J'))).toBeNull();
  });

  it('is the end outside the tackle, not a man inside his shoulder; a lineman before a man off the line', () => {
    const of = picture('zone-read', '10 doubles', 'right');
    const insideShoulder = man('LE', -2.33, 0.8, 'B-left');
    expect(readMan(of, changed(BASE, insideShoulder))).toBe('J');
    expect(readMan(of, changed(BASE, insideShoulder, man('J', -4.3, 1)))).toBe('J');
    expect(readMan(of, changed(BASE, man('J', -2.9, 4.5)))).toBe('LE');
  });

  it('is the inner lineman of midline, and the head-up one of veer', () => {
    const shaded = changed(BASE, man('X', 1.67, 0.8));
    expect(readMan(picture('midline', '10 doubles', 'right'), shaded)).toBe('X');
    expect(readMan(picture('inside-veer', '20 split backs', 'right'), shaded)).toBe('RE');
    expect(readMan(picture('inside-veer', '20 split backs', 'right'), changed(BASE, man('RE', 2.67, 0.8)))).toBe('RE');
  });
});

describe('zone read', () => {
  const of = picture('zone-read', '10 doubles', 'right');

  // The exchange: "Teaching Gap Exchanges & Defending the Zone Read", MatchQuarters; "Defending the zone-read: athleticism and
  // the 'scrape-exchange'", Smart Football: the end has the back, the linebacker over the top has the quarterback.
  it('the end crashes: he has the back, the linebacker beside goes over the top for the quarterback', () => {
    expect(duties(of, BASE, 'crash')).toBe('dive LE+M+N, quarterback W, keep');
  });

  // "Blitzing Zone Read from the 3-3-5", Blitzology, 2015, second option: the end away stays square, the ball is handed off.
  it.each(['square', 'upfield'] as const)(
    'the end stays (%s): he has the quarterback, the ball is handed off',
    (reaction) => {
      expect(duties(of, BASE, reaction)).toBe('dive M+N, quarterback LE, give');
    },
  );

  // Same source, first option: the pressure took the linebacker of that side; the man from the alley must come.
  it('with that linebacker sent elsewhere, the man in the alley comes', () => {
    expect(duties(of, changed(BASE, man('W', -1.67, 4.5, 'A-left')), 'crash')).toBe(
      'dive LE+M+N+W, quarterback J, keep',
    );
  });

  it('with nobody left on that side the quarterback is free, and it says so', () => {
    const gone = changed(BASE, man('W', -1.67, 4.5, 'A-right'), man('J', -6, 11));
    expect(duties(of, gone, 'crash')).toBe('dive LE+M+N+W, quarterback nobody, keep');
  });

  it('says why', () => {
    expect(sayAll(read(optionDuties(of, BASE, 'crash')).because)).toEqual([
      'by rule, LE is read: he comes down inside and takes the dive, so the ball is kept',
      'the first man outside the tackle away from the run',
      'W goes over the top to C-left in his place',
    ]);
  });
});

describe('other options', () => {
  // "3-4 Zone Pressure to Attack the Run", Blitzology, 2016: crashing flat forces the give, the man over the top is unblocked.
  it.each([
    ['power-read', '11 tight end', 'crash', 'dive S, quarterback RE, give'],
    ['power-read', '11 tight end', 'square', 'dive RE+S, quarterback M, keep'],
    // From memory: the read man at the pitch takes one runner, the ball goes to the other.
    ['speed-option', '10 doubles', 'crash', 'quarterback RE, pitch S, pitch'],
    ['speed-option', '10 doubles', 'upfield', 'quarterback M, pitch RE, keep'],
    ['midline', '10 doubles', 'crash', 'dive N+RE, quarterback M, keep'],
    // Dive, quarterback and pitch each have a man.
    ['inside-veer', '20 split backs', 'crash', 'dive RE, quarterback M, pitch S, keep'],
    ['inside-veer', '20 split backs', 'square', 'dive M, quarterback RE, pitch S, give'],
  ] as const)('%s against %s, he plays it %s', (concept, look, reaction, expected) => {
    const men = look === '11 tight end' ? changed(BASE, man('S', 6, 4.5, 'D-right')) : BASE;
    expect(duties(picture(concept, look, 'right'), men, reaction)).toBe(expected);
  });

  it('the pitch falls to a safety when the man in the alley is gone, and to nobody when he is too', () => {
    const of = picture('inside-veer', '20 split backs', 'right');
    expect(duties(of, without(BASE, 'S'), 'crash')).toBe('dive RE, quarterback M, pitch RS, keep');
    expect(duties(of, without(BASE, 'S', 'RS'), 'crash')).toBe('dive RE, quarterback M, pitch nobody, keep');
  });

  it('refuses a run without an option, and one with nobody to read', () => {
    const refusal = (of: RunPicture, men: readonly OptionMan[]): string => {
      const result = optionDuties(of, men, 'crash');
      return result.ok ? 'answered' : say(result.problem);
    };
    expect(refusal(picture('power', '11 tight end', 'right'), BASE)).toBe('this run has no option');
    expect(refusal(picture('quarterback-draw', '10 doubles', 'right'), BASE)).toBe('this run has no option');
    expect(refusal(picture('zone-read', '10 doubles', 'right'), [])).toBe('nobody stands where the read man should');
  });
});
