/** The fronts a playbook can start from: three, four or five men on the line. */
import { asFrontId, type Front } from '../../engine/index.ts';
import { edgeGap, gap, onBody } from '../words.ts';
import {
  atTheTackle,
  corners,
  edgePlays,
  FIRST_LEVEL,
  insideBacker,
  nose,
  onTheEdge,
  overTheSlot,
  place,
  plays,
  safeties,
} from './spots.ts';

/** Ends outside the tackles with the C gaps, inside backers with the B gaps, the nose both A gaps. */
const oddEnd = [onBody('tackle', 'outside-foot', FIRST_LEVEL)];
const oddEndPlays = plays('contain', gap('C', 'mine'), gap('B', 'mine'));
const oddInside = plays('none', gap('B', 'mine'), gap('A', 'mine'), gap('A', 'other'), gap('C', 'mine'));

/** The three down linemen and the two inside backers of the fronts with the ends outside. */
export const endsOutside = [
  nose,
  place('left-end', oddEndPlays, ...oddEnd),
  place('right-end', oddEndPlays, ...oddEnd),
  place('strong-inside', oddInside, ...insideBacker),
  place('weak-inside', oddInside, ...insideBacker),
];

/** Three on the line, the ends outside the tackles. */
export const odd: Front = {
  id: asFrontId('odd'),
  name: 'Odd, ends outside',
  roles: [
    ...endsOutside,
    place('strong-edge', edgePlays, ...onTheEdge),
    place('weak-edge', edgePlays, ...onTheEdge),
    ...safeties,
    ...corners,
  ],
  byHand: [atTheTackle('weak-edge')],
};

/** Ends outside the tackles with the C gaps; the strong tackle has B, the weak one A; the backers the two gaps between. */
const fourEnd = [onBody('tackle', 'outside-foot', FIRST_LEVEL)];
const fourEndPlays = plays('contain', gap('C', 'mine'), gap('B', 'mine'));

/** Four on the line, a fifth back for the strong outside backer. */
export const even: Front = {
  id: asFrontId('even'),
  name: 'Even, four on the line',
  roles: [
    place('strong-end', fourEndPlays, ...fourEnd),
    place('weak-end', fourEndPlays, ...fourEnd),
    place(
      'strong-tackle',
      plays('rush', gap('B', 'mine'), gap('A', 'mine')),
      onBody('guard', 'outside-foot', FIRST_LEVEL),
    ),
    place(
      'weak-tackle',
      plays('rush', gap('A', 'mine'), gap('B', 'mine')),
      onBody('guard', 'inside-foot', FIRST_LEVEL),
    ),
    place(
      'strong-inside',
      plays('none', gap('A', 'mine'), gap('B', 'mine'), gap('A', 'other'), gap('C', 'mine')),
      ...insideBacker,
    ),
    place(
      'weak-inside',
      plays('none', gap('B', 'mine'), gap('A', 'mine'), gap('A', 'other'), gap('C', 'mine')),
      ...insideBacker,
    ),
    place('fifth-back', edgePlays, ...overTheSlot, ...onTheEdge),
    ...safeties,
    ...corners,
  ],
  byHand: [],
};

/** Snapper and both guards are covered, the outside backers are on the line outside everybody; the inside backers are spare. */
const bearEdge = onBody('last', 'outside', FIRST_LEVEL);
const bearEdgePlays = plays('contain', edgeGap('mine'), gap('C', 'mine'));
const bearEnd = onBody('guard', 'outside-foot', FIRST_LEVEL);
const bearEndPlays = plays('rush', gap('B', 'mine'), gap('A', 'mine'));
const bearInside = plays('none', gap('C', 'mine'), gap('A', 'mine'), gap('A', 'other'), gap('D', 'mine'));

/** Five on the line: snapper and both guards covered. */
export const bear: Front = {
  id: asFrontId('bear'),
  name: 'Bear, five on the line',
  roles: [
    nose,
    place('left-end', bearEndPlays, bearEnd),
    place('right-end', bearEndPlays, bearEnd),
    place('strong-edge', bearEdgePlays, bearEdge),
    place('weak-edge', bearEdgePlays, bearEdge),
    place('strong-inside', bearInside, ...insideBacker),
    place('weak-inside', bearInside, ...insideBacker),
    ...safeties,
    ...corners,
  ],
  byHand: [atTheTackle('weak-edge')],
};
