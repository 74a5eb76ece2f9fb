import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { FilledZone, Played, RoleId } from '../types/index.ts';
import { coverInDoubt } from './coverDoubt.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { whoDoes } from './outcomes.ts';

/** The shell needs a zone nobody drops to; cannot tell of one that only a man who is told two things would take. */
export const coverZoneEmpty = checkOfPlay({
  id: 'cover.zone-empty',
  title: 'The shell needs a zone nobody drops to',
  severity: 'stop',
  matters: 'A shell with a hole in it is not that shell: the others play as if somebody were there.',
  source:
    'three under three deep: "Multiple 3-4 Fire Zone Blitz Coverages", Strong Football Coach; "Fire Zone Coverage", a staff handout',
  needsSide: true,
  report: (draft) => gather(draft.zones, (zone) => judgeZone(zone, draft)),
});

function judgeZone(zone: FilledZone, draft: Played): readonly Report[] {
  const where = { zone: datum.zone(zone.zone, zone.side) };
  const who = doubtfulMen(zone, draft);
  if (who.length > 0) {
    return [
      {
        undetermined: true,
        because: because(
          'whether anybody drops to {zone} depends on {who}',
          { ...where, who: datum.roles(who) },
          fact('of the two jobs told one drops there and the other does not'),
        ),
        who,
      },
    ];
  }
  if (zone.proof === null) return [];
  const { reachable } = zone.proof;
  return [
    {
      because: because(
        'nobody drops to {zone}',
        where,
        reachable.length === 0
          ? zone.because
          : because('it can only be reached by {who}, already in another zone', { who: datum.roles(reachable) }),
        fact('the shell cannot do without it'),
      ),
      who: reachable,
    },
  ];
}

/** Men told two things on whom this zone depends: one has it for now, or would have it by his other job. */
function doubtfulMen(zone: FilledZone, draft: Played): readonly RoleId[] {
  const shaky = coverInDoubt(draft);
  if (zone.by !== null) return shaky.includes(zone.by) ? [zone.by] : [];
  const { maybe } = whoDoes(
    draft,
    ({ pass }) => pass.kind === 'zone' && pass.zone === zone.zone && pass.side === zone.side,
  );
  return maybe;
}
