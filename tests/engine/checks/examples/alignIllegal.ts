import { alignIllegal } from '../../../../src/engine/checks/alignIllegal.ts';
import { asLookId, asRoleId, type Front } from '../../../../src/engine/index.ts';
import { LOOKS, ODD, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';

const look = LOOKS['11 tight end'];
const first = pressure('p', []);
const byHand = (role: string, x: number, y: number): Front => ({
  ...ODD,
  byHand: [{ look: asLookId('look'), role: asRoleId(role), x, y }],
});
const BY_HAND = 'the coach put him there by hand for this look';
const CLOSER = 'the sideline is closer than that';

/*
 * Neutral zone, the ball's length, about 11 in: half of it, 0.155 yd, is the defence's edge. NFL 3-18 ("between the points"),
 * NCAA 2-17. A defender in it at the snap is offside: NCAA 2-18-2-a, NFL 7-4-5; encroachment, NFHS 7-1-5. Sidelines of a high
 * school field: 26.67 yd from the ball in the middle, 17.78 from a hash to the near one.
 */
export const examples: CheckExamples = {
  check: alignIllegal,
  found: [
    {
      name: 'a nose in the neutral zone',
      look,
      first,
      front: byHand('N', 0, 0.15),
      finds: [{ says: ['N is in or beyond the neutral zone', BY_HAND], who: 'N' }],
    },
    {
      name: 'a backer beyond it',
      look,
      first,
      front: byHand('M', 2, -1),
      finds: [{ says: ['M is in or beyond the neutral zone', BY_HAND], who: 'M' }],
    },
    {
      name: 'moved there by the pressure itself',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush A-call', { kind: 'depth', depth: 0.1 })]),
      finds: [{ says: ['M is in or beyond the neutral zone', 'the pressure has him 0.1 yards deep'], who: 'M' }],
    },
    {
      name: 'a corner over the right sideline',
      look,
      first,
      front: byHand('RC', 26.7, 7),
      finds: [{ says: ['RC is off the field', BY_HAND, CLOSER], who: 'RC' }],
    },
    {
      name: 'a corner outside a split end who stands near the sideline of the short side',
      look,
      first,
      spot: 'left',
      finds: [{ says: ['LC is off the field', 'alignment rule 1 of the front puts him there', CLOSER], who: 'LC' }],
    },
  ],
  leftAlone: [
    { name: 'a nose on the ball', look, first, front: byHand('N', 0, 0.16) },
    { name: 'a backer on the line', look, first, front: byHand('M', 2, 0.5) },
    {
      name: 'moved up to the line',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush A-call', { kind: 'depth', depth: 1 })]),
    },
    { name: 'a corner on the right sideline', look, first, front: byHand('RC', 26.6, 7) },
    { name: 'the same look in the middle of the field', look, first },
    { name: 'on the other hash the wide side is the left one', look, first, spot: 'right', front: byHand('RC', 17, 7) },
  ],
  cannotTell: [],
};
