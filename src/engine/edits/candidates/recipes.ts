import { gather } from '../../../base/index.ts';
import { fact } from '../../because.ts';
import type { Assignment, Because, Finding, Gap, PlayerId } from '../../types/index.ts';
import { SIDES, type Side } from '../../vocabulary.ts';
import type { Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';
import type { Library } from '../library.ts';
import { leaveOuts, shells, swap, turns } from './callWide.ts';
import * as edges from './gapsAndEdges.ts';
import { settle, toldNothing } from './oneMan.ts';
import { meetingApart, nearerToJob } from './paths.ts';
import * as duties from './shellDuties.ts';
import * as sides from './callSides.ts';
import { legalSpot, nearerSpots } from './standing.ts';
import { lostAddressees, unresolvedTelling } from './unresolved.ts';

/** What one rule's findings are mended with: edits worth trying, in the order of sense, or why there are none. */
export type Recipe =
  | { readonly kind: 'edits'; readonly make: (finding: Finding, bench: Bench, library: Library) => readonly Edit[] }
  | { readonly kind: 'none'; readonly because: Because };

const edits = (make: (finding: Finding, bench: Bench, library: Library) => readonly Edit[]): Recipe => ({
  kind: 'edits',
  make,
});
const none = (because: Because): Recipe => ({ kind: 'none', because });

/** The men of a finding, in an order that a mirrored look has mirrored. */
const menOf = (finding: Finding, bench: Bench) => bench.inOrder(finding.who);
/** The sides a finding's gaps lie on. */
const sidesOf = (finding: Finding): readonly Side[] =>
  SIDES.filter((side) => finding.gaps.some((gap) => gap.side === side));

const twoTellings = edits((finding, bench, library) => [
  ...turns(bench),
  ...gather(menOf(finding, bench), (role) => settle(bench, role)),
  // The shell counts as what the first pressure tells: another shell may leave him alone.
  ...(menOf(finding, bench).some((role) => toldByShell(bench, role)) ? shells(bench, library) : []),
  ...leaveOuts(bench),
]);

function toldByShell(bench: Bench, role: Finding['who'][number]): boolean {
  const combined = bench.man(role)?.combined;
  return [combined?.first, combined?.second].some((each) => each?.kind === 'told' && each.basis === 'coverage');
}

/** Gaps of a side that nobody has. */
const openOn = (bench: Bench, side: Side): readonly Gap[] =>
  bench.analysis.gaps.filter(({ gap, owners }) => gap.side === side && owners.length === 0).map(({ gap }) => gap);

/** Linemen back to these gaps, or somebody who is free into them. */
const filled = (bench: Bench, gaps: readonly Gap[]): readonly Edit[] => [
  ...edges.backToTheirGaps(bench, gaps),
  ...gather(bench.gapsInOrder(gaps), (gap) => duties.fitDuties(bench, gap)),
];

const openGaps = edits((finding, bench, library) => [
  ...turns(bench),
  ...filled(bench, finding.gaps),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const doubledGap = edits((finding, bench, library) => {
  const [, ...thin] = finding.gaps;
  return [
    ...turns(bench),
    ...gather(menOf(finding, bench), (role) => [
      ...gather(edges.nearGaps(bench, role, thin), (gap) => edges.sentTo(bench, role, gap)),
      ...settle(bench, role),
    ]),
    ...shells(bench, library),
    ...leaveOuts(bench),
  ];
});

const orphaned = edits((finding, bench, library) => {
  const job = finding.because.data['job'];
  const lost = job?.kind === 'job' && job.job.kind === 'drop' ? job.job : null;
  return [
    ...turns(bench),
    ...swap(bench),
    ...(lost === null ? [] : duties.zoneDuties(bench, lost.zone, lost.side, lost.run.support)),
    ...(lost?.run.support === 'force' && lost.side !== 'middle' ? duties.forceDuties(bench, lost.side) : []),
    ...gather(menOf(finding, bench), (role) => settle(bench, role)),
    ...shells(bench, library),
    ...leaveOuts(bench),
  ];
});

const noForce = edits((finding, bench, library) => [
  ...turns(bench),
  ...swap(bench),
  ...gather(sidesOf(finding), (side) => [
    ...duties.forceDuties(bench, side),
    ...gather(edges.outsideIn(bench, side).slice(0, 1), (man) => edges.edgePlayed(bench, man.aligned.role.id, 'box')),
  ]),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const twoForce = edits((finding, bench, library) => [
  ...turns(bench),
  ...swap(bench),
  ...gather(menOf(finding, bench), (role) => [
    ...duties.shellRetold(bench, role, duties.notForce),
    ...settle(bench, role),
  ]),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const edge = edits((finding, bench, library) => [
  ...turns(bench),
  ...swap(bench),
  ...gather(menOf(finding, bench), (role) =>
    gather(['box', 'spill', null] as const, (play) => edges.edgePlayed(bench, role, play)),
  ),
  ...gather(sidesOf(finding), (side) => [...duties.forceDuties(bench, side), ...filled(bench, openOn(bench, side))]),
  ...gather(menOf(finding, bench), (role) => toldNothing(bench, role)),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const noContain = edits((finding, bench, library) => [
  ...turns(bench),
  ...gather(sidesOf(finding), (side) => [
    ...edges.containing(bench, side),
    ...gather(
      bench.men.filter(({ aligned }) => aligned.role.room === 'line' && aligned.place === side),
      ({ aligned }) => toldNothing(bench, aligned.role.id),
    ),
  ]),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const peel = edits((finding, bench) => [
  ...turns(bench),
  ...gather(menOf(finding, bench), (role) => [
    ...edges.withoutPeel(bench, role),
    ...gather(sidesOf(finding), (side) => edges.containing(bench, side, role)),
  ]),
  ...leaveOuts(bench),
]);

/** Whether somebody has him man to man already: a second man on him would mend nothing. */
const hasMan = (bench: Bench, player: PlayerId): boolean =>
  bench.analysis.answers.some((answer) => answer.player === player && answer.how === 'man');

const receivers = edits((finding, bench, library) => [
  ...turns(bench),
  ...swap(bench),
  ...gather(bench.playersInOrder(finding.players), (player) =>
    hasMan(bench, player) ? [] : duties.manDuties(bench, player),
  ),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const emptyZone = edits((finding, bench, library) => {
  const zone = finding.because.data['zone'];
  return [
    ...turns(bench),
    ...swap(bench),
    ...(zone?.kind === 'zone' ? duties.zoneDuties(bench, zone.zone, zone.side) : []),
    ...shells(bench, library),
    ...leaveOuts(bench),
  ];
});

const option = edits((_, bench, library) => [
  ...turns(bench),
  ...swap(bench),
  ...gather(bench.analysis.runs, (run) => {
    if (run.kind !== 'answered' || run.option === null || run.option.missing.length === 0) return [];
    const { keeper, pitch, option: rule } = run.picture;
    const gaps = [
      ...(rule?.give ?? []),
      ...(keeper === null ? [] : [keeper.where]),
      ...(pitch === null ? [] : [pitch.where]),
    ];
    return gather(gaps, (gap) => duties.fitDuties(bench, gap, true));
  }),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const conflict = edits((finding, bench, library) => [
  ...turns(bench),
  ...gather(menOf(finding, bench), (role) => duties.shellRetold(bench, role, duties.withoutFits)),
  ...gather(bench.playersInOrder(finding.players), (player) => duties.manDuties(bench, player, finding.who)),
  ...shells(bench, library),
  ...leaveOuts(bench),
]);

const tooFar = edits((finding, bench) => [
  ...turns(bench),
  ...gather(menOf(finding, bench), (role) => [
    ...gather(bench.gapsInOrder(finding.gaps), (gap) => nearerSpots(bench, role, gap)),
    ...settle(bench, role),
  ]),
  ...leaveOuts(bench),
]);

/** Men asked to take an empty lane. */
const LANE_ASKED = 3;

const lane = edits((finding, bench) => {
  const rushes = ({ pass }: Assignment): boolean => pass.kind === 'rush' || pass.kind === 'contain';
  const rushers = bench.men.filter(rushes).map((man) => man.aligned.role.id);
  const asked = finding.who.length > 0 ? finding.who : rushers;
  const droppers = bench.men.filter((man) => man.aligned.role.room === 'line' && !rushes(man));
  return [
    ...turns(bench),
    ...gather(bench.gapsInOrder(finding.gaps), (gap) =>
      gather(edges.nearestTo(bench, asked, gap, LANE_ASKED), (role) => edges.sentTo(bench, role, gap)),
    ),
    ...gather(menOf(finding, bench), (role) => settle(bench, role)),
    ...gather(droppers, (man) => settle(bench, man.aligned.role.id)),
    ...leaveOuts(bench),
  ];
});

const rushCount = edits((_, bench) => {
  const { setup, passCount } = bench.analysis;
  const sent = bench.men.filter(({ aligned, pass }) => aligned.role.room !== 'line' && pass.kind === 'rush');
  return [
    { kind: 'rushers', count: passCount.rush },
    ...(setup.rushers !== null && passCount.rush > setup.rushers
      ? gather(sent, ({ aligned }) => toldNothing(bench, aligned.role.id))
      : []),
  ];
});

/** What mends the findings of each rule. A rule that is not in the list has no edit that is known. */
export const RECIPES: ReadonlyMap<string, Recipe> = new Map<string, Recipe>([
  ['line.two-jobs', twoTellings],
  ['line.two-manners', twoTellings],
  ['player.two-jobs', twoTellings],
  [
    'side.undecided',
    edits((_, bench) => [...turns(bench), ...swap(bench), ...sides.tieBreaks(bench), ...leaveOuts(bench)]),
  ],
  ['side.split', edits((_, bench) => [...turns(bench), ...leaveOuts(bench)])],
  ['side.motion-flips', edits((_, bench) => [...turns(bench), ...swap(bench), ...leaveOuts(bench)])],
  [
    'rule.unresolved',
    edits((finding, bench, library) => [
      ...turns(bench),
      ...gather(menOf(finding, bench), (role) => unresolvedTelling(bench, role)),
      ...(finding.who.length === 0 ? lostAddressees(bench) : []),
      ...shells(bench, library),
      ...leaveOuts(bench),
    ]),
  ],
  ['gap.open', openGaps],
  ['front.unreplaced', openGaps],
  ['gap.doubled', doubledGap],
  ['player.orphaned-duty', orphaned],
  ['force.missing', noForce],
  ['force.doubled', twoForce],
  ['edge.inconsistent', edge],
  ['contain.missing', noContain],
  ['peel.unconverted', peel],
  ['cover.unmatched', receivers],
  ['cover.mismatch', receivers],
  ['cover.zone-empty', emptyZone],
  [
    'cover.no-post',
    edits((_, bench, library) => [
      ...swap(bench),
      ...duties.zoneDuties(bench, 'middle', 'middle'),
      ...shells(bench, library),
    ]),
  ],
  ['option.unassigned', option],
  ['conflict.run-pass', conflict],
  [
    'box.numbers',
    edits((_, bench, library) => [...turns(bench), ...swap(bench), ...shells(bench, library), ...leaveOuts(bench)]),
  ],
  ['align.illegal', edits((finding, bench) => gather(menOf(finding, bench), (role) => legalSpot(bench, role)))],
  ['line.too-far', tooFar],
  ['lane.empty', lane],
  ['rush.count', rushCount],
  ['align.reach', edits(nearerToJob)],
  ['path.crossing', edits(meetingApart)],
  ['look.illegal', none(fact('the fault is in the drawing of the look, not in the call'))],
  ['words.two-meanings', none(fact('the fault is in the staff dictionary, not in the call'))],
  ['align.tell', none(fact('moving late, or showing it every time, is coaching and not another call'))],
  ['rush.unblocked-answer', none(fact('it says how the rush meets a protection; nothing is wrong with the call'))],
]);
