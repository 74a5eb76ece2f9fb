import { gather } from '../../base/index.ts';
import type { Played } from '../types/index.ts';
import { align } from '../align/align.ts';
import { because, datum } from '../because.ts';
import { checkOfPlay } from './defineCheck.ts';

/** Yards a passer can see a man move without measuring: two steps (convention of ours). Less is a lineman's stagger. */
const SEEN = 2;

/** Men the pressure stands elsewhere before the snap, so far from their place in the front that the passer can see it. */
export const alignTell = checkOfPlay({
  id: 'align.tell',
  title: 'He shows it before the snap',
  severity: 'note',
  matters: 'A passer who sees him move knows where it comes from; move late, or show it every time.',
  source: 'keys a passer is told: "Understanding 1/2 Slide Protection", Blitzology, 2 Mar 2010; two yards: ours',
  needsSide: true,
  report: (draft) => {
    const moved = shown(draft);
    if (moved.length === 0) return [];
    const who = moved.map((each) => each.role);
    return [
      {
        because: because(
          'the passer can see it coming from {who}',
          { who: datum.roles(who) },
          ...moved.map(({ role, depth, usual, why }) =>
            because(
              '{who} stands {depth} yards deep, in the front it is {usual}',
              { who: datum.role(role), depth: datum.number(depth), usual: datum.number(usual) },
              why,
            ),
          ),
        ),
        who,
      },
    ];
  },
});

/** Who stands elsewhere because of the pressure, and by how much in depth. */
function shown(draft: Played) {
  const { front, roles, look } = draft.setup;
  if (draft.assignments.every(({ aligned }) => aligned.by !== 'pressure')) return [];
  const atRule = align(front, roles, draft.facts, look.id);
  return gather(draft.assignments, ({ aligned }) => {
    const usual = atRule.get(aligned.role.id)?.y;
    if (aligned.by !== 'pressure' || usual === undefined || Math.abs(usual - aligned.y) < SEEN) return [];
    return [{ role: aligned.role.id, depth: rounded(aligned.y), usual: rounded(usual), why: aligned.because }];
  });
}

/** To a tenth of a yard, as it is said. */
function rounded(yards: number): number {
  return Math.round(yards * 10) / 10;
}
