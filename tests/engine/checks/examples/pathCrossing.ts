import { pathCrossing } from '../../../../src/engine/checks/pathCrossing.ts';
import { asLookId, asRoleId, type Front } from '../../../../src/engine/index.ts';
import { LOOKS, ODD, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];

/** The usual front with some men put somewhere by hand. */
function front(...men: readonly (readonly [role: string, x: number, y: number])[]): Front {
  return { ...ODD, byHand: men.map(([role, x, y]) => ({ look: asLookId('look'), role: asRoleId(role), x, y })) };
}
const outside = front(['RE', 3, 1], ['S', 4.8, 1.6]);
const mugged = front(['M', 0.7, 1.5], ['W', -0.7, 1.5]);
const endLoops = tell('end-call', 'movement', 'rush C-call loop');
const backerComesIn = tell('outside-call', 'path', 'rush B-call slant');
const UNTOLD = 'neither is told to go first';

/*
 * "DL hits first and LBs second", never one wave (K. Bowers, "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O
 * Labs, 2022). Nose and both inside backers in one twist, first, second and third: "Breaking Half Slide Protection",
 * Blitzology, 3 May 2019. The times are the engine's own estimates.
 */
export const examples: CheckExamples = {
  check: pathCrossing,
  found: [
    {
      name: 'an end loops out into a backer who comes in',
      look,
      front: outside,
      first: pressure('p', [endLoops, backerComesIn]),
      finds: [{ says: ['RE+S run into each other, by estimate 0.7 s after the snap', UNTOLD], who: 'RE S' }],
    },
    {
      name: 'each is told to go after the other',
      look,
      front: outside,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush C-call loop second:outside-call'),
        tell('outside-call', 'path', 'rush B-call slant second:end-call'),
      ]),
      finds: [
        {
          says: [
            'RE+S run into each other, by estimate 1.3 s after the snap',
            'the orders they are told contradict each other',
          ],
          who: 'RE S',
        },
      ],
    },
    {
      name: 'three twist inside and nobody is told anything',
      look,
      front: mugged,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-away'),
        tell('@N', 'movement', 'rush B-away loop'),
        tell('inside-away', 'path', 'rush A-call'),
      ]),
      finds: [
        { says: ['M+N run into each other, by estimate 0.5 s after the snap', UNTOLD], who: 'M N' },
        { says: ['M+W run into each other, by estimate 0.7 s after the snap', UNTOLD], who: 'M W' },
        { says: ['N+W run into each other, by estimate 0.5 s after the snap', UNTOLD], who: 'N W' },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the backer is told to go second',
      look,
      front: outside,
      first: pressure('p', [endLoops, tell('outside-call', 'path', 'rush B-call slant second:end-call')]),
    },
    {
      name: 'the end is told to go first',
      look,
      front: outside,
      first: pressure('p', [tell('end-call', 'movement', 'rush C-call loop first:outside-call'), backerComesIn]),
    },
    {
      name: 'off the end’s hip: that is behind him',
      look,
      front: outside,
      first: pressure('p', [endLoops, tell('outside-call', 'path', 'rush B-call inside-hip:end-call')]),
    },
    {
      name: 'three twist, the nose is told whom he follows, and the third that he follows the nose',
      look,
      front: mugged,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-away'),
        tell('@N', 'movement', 'rush B-away loop second:inside-call'),
        tell('inside-away', 'path', 'rush A-call second:@N'),
      ]),
    },
    {
      name: 'the backer comes from depth, the end is gone',
      look,
      first: pressure('p', [endLoops, tell('inside-call', 'path', 'rush B-call')]),
    },
  ],
  cannotTell: [TIE],
};
