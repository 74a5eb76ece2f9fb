import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { SideDecision } from '../types/index.ts';
import { checkOfTelling, pressuresRun, type Report } from './defineCheck.ts';

/** The look's motion moves the call side after the call is made. */
export const sideMotionFlips = checkOfTelling({
  id: 'side.motion-flips',
  title: 'The motion turns the call',
  severity: 'check',
  matters: 'Everybody who moves with the call side must turn it before the snap, and must know that they do.',
  source: 'the pressure goes by the final strength: "Multiple 3-4 Fire Zone Blitz Coverages", Strong Football Coach',
  needsSide: false,
  report: (draft) => {
    const { motion } = draft;
    if (motion === null) return [];
    const moved = motion.moved;
    const flips = (which: 'first' | 'second', before: SideDecision | null, after: SideDecision): readonly Report[] => {
      if (before?.kind !== 'decided' || after.kind !== 'decided' || before.side === after.side) return [];
      return [
        {
          because: because(
            '{which} is called {a} and the motion turns it {b}',
            { which: datum.pressure(which), a: datum.side(before.side), b: datum.side(after.side) },
            after.because,
            moved.length === 0
              ? fact('nobody stands or works elsewhere for it')
              : because('another spot or job after it: {who}', { who: datum.roles(moved) }),
          ),
          who: moved,
        },
      ];
    };
    return gather(pressuresRun(draft), ({ which, pressure }) => flips(which, motion[which], pressure.side));
  },
});
