import { sideMotionFlips } from '../../../../src/engine/checks/sideMotionFlips.ts';
import { asPlayerId, type SideStep } from '../../../../src/engine/index.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TO_RECEIVERS } from './tie.ts';

const trips = LOOKS['10 trips'];
const doubles = LOOKS['10 doubles'];
const nobody = shell('Nobody told', []);
const toReceivers: readonly SideStep[] = [...TO_RECEIVERS, { kind: 'fixed', side: 'left' }];
const toTheBack: readonly SideStep[] = [{ kind: 'strength', by: 'back', toward: 'to' }];
/** The inside receiver of trips crosses the ball, two on each side: the inside backers change jobs, the outside backer there widens. */
const across = { player: asPlayerId('H'), to: { x: -9, y: -1.5 } };
/** He only goes outside the others. */
const outward = { player: asPlayerId('H'), to: { x: 20, y: -1.5 } };
/** The back crosses the passer's face. */
const backCrosses = { player: asPlayerId('T'), to: { x: -1.5, y: -5 } };
const throughB = pressure('p', [tell('inside-call', 'path', 'rush B-call')], toReceivers);
const quietToTheBack = pressure('q', [], toTheBack);

export const examples: CheckExamples = {
  check: sideMotionFlips,
  found: [
    {
      name: 'a receiver of trips crosses, and the strength goes with him',
      look: trips,
      motion: across,
      first: throughB,
      coverage: nobody,
      finds: [
        {
          says: [
            'first is called right and the motion turns it left',
            'the side is left',
            'another spot or job after it: J+W+M',
          ],
          who: 'J W M',
        },
      ],
    },
    {
      name: 'the back crosses, and only the second goes by him',
      look: doubles,
      motion: backCrosses,
      first: { ...throughB, callSide: [{ kind: 'fixed', side: 'right' }] },
      second: quietToTheBack,
      turn: 'own',
      coverage: nobody,
      finds: [
        {
          says: [
            'second is called right and the motion turns it left',
            'the side is left',
            'nobody stands or works elsewhere for it',
          ],
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'he stays on his side', look: trips, motion: outward, first: throughB, coverage: nobody },
    { name: 'no motion', look: trips, first: throughB, coverage: nobody },
    {
      name: 'the back crosses, and neither goes by him',
      look: doubles,
      motion: backCrosses,
      first: { ...throughB, callSide: [{ kind: 'fixed', side: 'right' }] },
      coverage: nobody,
    },
    {
      name: 'either-or: the half that goes by the back is not run here',
      look: doubles,
      motion: backCrosses,
      first: { ...throughB, callSide: [{ kind: 'fixed', side: 'right' }] },
      second: quietToTheBack,
      turn: 'own',
      coverage: nobody,
      combination: { kind: 'either-or', key: [] },
    },
  ],
  cannotTell: [],
};
