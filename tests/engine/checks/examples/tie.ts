import type { SideStep } from '../../../../src/engine/index.ts';
import { pressure, tell } from '../../book.ts';
import type { Unsure } from '../example.ts';

/** Two receivers on each side, back behind the ball, ball in the middle: nothing leans anywhere. */
export const EVEN = 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-4 rb:B@0,-7';

export const TO_RECEIVERS: readonly SideStep[] = [{ kind: 'strength', by: 'receivers', toward: 'to' }];

/** What every check that needs a call side says where nothing decides it. */
export const TIE: Unsure = {
  name: 'nothing decides the call side',
  look: EVEN,
  first: pressure('p', [tell('inside-call', 'path', 'rush A-call')], TO_RECEIVERS),
  cannotTell: [
    {
      says: ['nothing decides the side of first, so nobody knows his job', 'no step of the rule decides a side'],
    },
  ],
};
