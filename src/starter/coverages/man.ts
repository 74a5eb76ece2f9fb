/** Man to man: corners on the outside receivers, the second and third ones by who stands over them. */
import {
  aBack,
  awayMan,
  callMan,
  cover,
  drop,
  edgeGap,
  gap,
  ifFree,
  noBack,
  otherSide,
  receiver,
  tightEnd,
  trips,
  two,
  twoBacks,
  type CallSide,
} from '../words.ts';
import { edge, force, inside, manOf, need, shell, tells, tellsBy, theBack, type Told } from './parts.ts';

const onOne = (side: CallSide): Told => tells(manOf('corners', side), cover(receiver(side, 1)));

/** Of two backs the away inside backer has the nearer one, his mate the other from the hook. */
const backers: readonly Told[] = [
  tellsBy(
    awayMan('inside-backers'),
    [[trips('away')], cover(receiver('away', 3), inside('away'))],
    [[aBack], theBack('away')],
    [[], drop('hook', 'middle', inside('away'))],
  ),
  tellsBy(
    callMan('inside-backers'),
    [[trips('call')], cover(receiver('call', 3), inside('call'))],
    [[trips('away'), aBack], theBack('call')],
    [[], drop('hook', 'middle', inside('call'))],
  ),
];

/** The call safety is the middle player; the outside backer on his side has the second receiver, the other safety the other one. */
export const free = shell(
  'man-free',
  'Man, call safety free in the middle',
  [need('middle', 'middle', callMan('safeties'))],
  onOne('call'),
  onOne('away'),
  tellsBy(
    callMan('safeties'),
    [
      [tightEnd('call')],
      drop('middle', 'middle', ifFree('alley', gap('D', 'call'), edgeGap('call'), gap('C', 'call'))),
    ],
    [[], drop('middle', 'middle')],
  ),
  tellsBy(
    callMan('outside-backers'),
    [[two('call')], cover(receiver('call', 2), force('call'))],
    [[], drop('hole', 'middle', force('call'))],
  ),
  tellsBy(
    awayMan('safeties'),
    [[two('away')], cover(receiver('away', 2), force('away'))],
    [[], drop('hole', 'middle', force('away'))],
  ),
  ...backers,
  tells(awayMan('outside-backers'), drop('curl-flat', 'away', edge('away'))),
);

/**
 * Both safeties on the second receivers; where a side has only one, its safety takes the third one of the other side, or
 * the second of two backs, and only else is free.
 */
const onTwo = (side: CallSide): Told => {
  const other = otherSide(side);
  return tellsBy(
    manOf('safeties', side),
    [[two(side)], cover(receiver(side, 2), force(side))],
    [[trips(other)], cover(receiver(other, 3), force(side))],
    [[twoBacks], drop('hole', 'middle', force(side))],
    [[], drop('middle', 'middle', force(side))],
  );
};
export const nobodyFree = shell(
  'man-nobody-free',
  'Man, nobody in the middle',
  [],
  onOne('call'),
  onOne('away'),
  onTwo('call'),
  onTwo('away'),
  tellsBy(
    awayMan('inside-backers'),
    [[aBack], theBack('away')],
    [[trips('away')], cover(receiver('away', 3), inside('away'))],
  ),
  tellsBy(
    callMan('inside-backers'),
    [[noBack, trips('call')], cover(receiver('call', 3), inside('call'))],
    [[], drop('hole', 'middle', inside('call'))],
  ),
);
