import { sideSplit } from '../../../../src/engine/checks/sideSplit.ts';
import { asRoleId, type SideStep } from '../../../../src/engine/index.ts';
import { LOOKS, pressure, TO_TIGHT_END } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const open = LOOKS['10 doubles'];
const tight = LOOKS['11 tight end'];
const [toTightEnd] = TO_TIGHT_END;
const steps = (...list: readonly (SideStep | undefined)[]): readonly SideStep[] => list.flatMap((step) => step ?? []);
const first = pressure('p', [], TO_TIGHT_END);
/** To the tight end like the first; without one always left. */
const alike = pressure('q', [], steps(toTightEnd, { kind: 'fixed', side: 'left' }));
/** Away from the tight end; without one always right. */
const opposite = pressure(
  'q',
  [],
  [
    { kind: 'strength', by: 'tight-end', toward: 'away' },
    { kind: 'fixed', side: 'right' },
  ],
);
const toTheBack = pressure('q', [], [{ kind: 'strength', by: 'back', toward: 'to' }]);
const withBacker = (toward: 'to' | 'away') => pressure(toward, [], [{ kind: 'role', role: asRoleId('S'), toward }]);
const always = (side: 'left' | 'right') => pressure(side, [], [{ kind: 'fixed', side }]);

export const examples: CheckExamples = {
  check: sideSplit,
  found: [
    {
      name: 'both go to the tight end; there is none, and the tie-breaks differ',
      look: open,
      first,
      second: alike,
      finds: [
        {
          says: [
            'first goes right and second goes left',
            'their rules begin alike, so in most looks they go to one side',
            'the side is right',
            'the side is left',
          ],
        },
      ],
    },
    {
      name: 'one goes to the tight end, one away from him; there is none, and both go right',
      look: open,
      first,
      second: opposite,
      finds: [
        {
          says: [
            'first goes right and second goes right',
            'their rules begin opposite, so in most looks they go to different sides',
            'the side is right',
            'the side is right',
          ],
        },
      ],
    },
    {
      name: 'one goes to the tight end, one to the back, who stands on the other side',
      look: tight,
      first,
      second: toTheBack,
      finds: [
        {
          severity: 'note',
          says: [
            'first goes right and second goes left',
            'each goes by its own rule',
            'the side is right',
            'the side is left',
          ],
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'there is a tight end: both go to him', look: tight, first, second: alike },
    { name: 'there is a tight end: one goes to him, one away', look: tight, first, second: opposite },
    { name: 'the back stands on the side of the receivers', look: open, first, second: toTheBack },
    {
      name: 'the call turns the second opposite: it is meant',
      look: tight,
      first,
      second: toTheBack,
      turn: 'opposite',
    },
    { name: 'one always left, one always right', look: open, first: always('left'), second: always('right') },
    { name: 'to the strong backer and away from him', look: open, first: withBacker('to'), second: withBacker('away') },
    { name: 'one pressure', look: open, first },
    {
      name: 'either-or: only one of them is run',
      look: open,
      first,
      second: alike,
      combination: { kind: 'either-or', key: [] },
    },
  ],
  cannotTell: [TIE],
};
