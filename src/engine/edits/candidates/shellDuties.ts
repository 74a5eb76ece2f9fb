import { compareBy, gather } from '../../../base/index.ts';
import { gapKey } from '../../gaps.ts';
import { findReceiver } from '../../resolve/names.ts';
import type {
  Assignment,
  Gap,
  GapRef,
  PlayerId,
  ReceiverRef,
  RoleId,
  RuleJob,
  RunSupport,
  Yards,
} from '../../types/index.ts';
import { GAP_LETTERS, type Side, type Support, type Zone } from '../../vocabulary.ts';
import { gapRef, nameOf, relative, type Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';

/** So many men are asked for one duty, the freest and nearest first. */
const ASKED = 6;

const NO_RUN: RunSupport<GapRef> = { fits: [], firm: false, support: null };

/** One man's new row in the shell; none where the shell has no side to tell it from. */
function duty(bench: Bench, role: RoleId, jobOf: (callSide: Side) => RuleJob | null): readonly Edit[] {
  const { coverage, side } = bench.shell;
  const job = side === null ? null : jobOf(side);
  if (side === null || job === null) return [];
  const { id, name } = coverage;
  return [{ kind: 'duty', coverage: { id, name }, who: nameOf(role, side, bench.aligned), job }];
}

/** Whether the shell may tell him something: no pressure sends him, and he does not rush at base. */
function isLeftToShell({ combined, pass }: Assignment): boolean {
  if (combined.status === 'conflict' || combined.status === 'unresolved') return false;
  if (pass.kind === 'rush' || pass.kind === 'contain') return false;
  const tellings = [combined.first, combined.second].filter((each) => each !== null);
  return combined.from === 'shell' || tellings.every((each) => each.kind === 'told' && each.basis === 'coverage');
}

/** How much he would leave behind: nothing, a zone that is not needed and takes nobody, or something. */
function ties(bench: Bench, { pass, aligned }: Assignment): number {
  const role = aligned.role.id;
  const { zones, answers } = bench.analysis;
  if (pass.kind === 'none') return 0;
  const takes = answers.some((answer) => answer.by === role);
  const needed = zones.some((zone) => zone.by === role);
  return (takes ? 1 : 0) + (needed ? 1 : 0) + 1;
}

/** The men a duty can go to, the freest first, then the nearest to it. */
function freeMen(
  bench: Bench,
  distance: (man: Assignment) => number,
  mayBe: (man: Assignment) => boolean = () => true,
): readonly Assignment[] {
  return bench.men
    .filter((man) => isLeftToShell(man) && mayBe(man))
    .toSorted(
      compareBy(
        (man) => ties(bench, man),
        (man) => Math.round(distance(man) * 1000),
      ),
    )
    .slice(0, ASKED);
}

/** What he may do against the run now: by the shell, else the gaps of his base job, if nobody else has them. */
function runNow(bench: Bench, role: RoleId): RunSupport<GapRef> {
  const job = bench.shellJob(role);
  switch (job?.kind) {
    case 'drop':
    case 'man':
    case 'spy':
      return job.run;
    case 'fit':
      return { fits: job.gaps, firm: false, support: job.support };
    default: {
      const base = bench.analysis.setup.front.roles.find((entry) => entry.role === role)?.base;
      return { ...NO_RUN, fits: base?.gaps ?? [] };
    }
  }
}

/** What he does in the shell with another run duty; a man the shell tells nothing fits that gap and no more. */
function withRun(job: RuleJob | null, gap: GapRef, support: Support | null, firm: boolean): RuleJob | null {
  if (job === null) return { kind: 'fit', gaps: [gap], manner: 'read', support };
  if (job.kind === 'fit') return support === null ? null : { ...job, support };
  if (job.kind === 'rush' || job.kind === 'contain') return null;
  const key = JSON.stringify(gap);
  const others = job.run.fits.filter((each) => JSON.stringify(each) !== key);
  // A force man has the edge first of all; any other gap is the last he would leave his place for.
  const fits = firm ? [gap] : support === 'force' ? [gap, ...others] : [...others, gap];
  return { ...job, run: { fits, firm: firm || job.run.firm, support: support ?? job.run.support } };
}

/** Deep zones are for the secondary, and nobody in one has a gap as well. */
const DEEP: readonly Zone[] = ['middle', 'third', 'half', 'quarter'];
/** A man in one of these is too deep for too long to be first at the edge. */
const NO_FORCE: readonly Zone[] = ['middle', 'third'];
/** Across the ball a man fits a gap no farther away than this: an inside backer the near A gap on the other side. */
const ACROSS: Yards = 5.5;
/** On his own side nobody comes to a gap from farther outside than this, a corner on a split receiver least of all. */
const SIDEWAYS: Yards = 8;
/** A man this deep gets to no gap inside the tackle in time. */
const TOO_DEEP: Yards = 9;

/** Somebody who is free drops to a zone of his side; underneath he keeps what he may do against the run. */
export function zoneDuties(
  bench: Bench,
  zone: Zone,
  side: Side | 'middle',
  support: Support | null = null,
): readonly Edit[] {
  const deep = DEEP.includes(zone);
  const mayBe = ({ aligned }: Assignment): boolean =>
    (side === 'middle' || aligned.place === side) && (!deep || aligned.role.room === 'secondary');
  return gather(
    freeMen(bench, ({ aligned }) => Math.abs(aligned.x), mayBe),
    ({ aligned: { role } }) =>
      duty(bench, role.id, (callSide) => ({
        kind: 'drop',
        zone,
        side: side === 'middle' ? side : relative(side, callSide),
        run: { ...(deep ? NO_RUN : runNow(bench, role.id)), support },
      })),
  );
}

/** Somebody outside the last body of that side is force, beside what else the shell gives him. */
export function forceDuties(bench: Bench, side: Side): readonly Edit[] {
  const last = Math.abs(bench.analysis.facts.surface[side].at(-1)?.x ?? 0);
  const mayBe = ({ aligned, pass }: Assignment): boolean =>
    aligned.place === side && Math.abs(aligned.x) >= last && !(pass.kind === 'zone' && NO_FORCE.includes(pass.zone));
  return gather(
    freeMen(bench, ({ aligned }) => aligned.y, mayBe),
    ({ aligned: { role } }) =>
      duty(bench, role.id, (callSide) =>
        withRun(bench.shellJob(role.id), { kind: 'edge', side: relative(side, callSide) }, 'force', false),
      ),
  );
}

/** Somebody who is free, of that side or close by, may fit the gap (`firm`: has it for his own). */
export function fitDuties(bench: Bench, gap: Gap, firm = false): readonly Edit[] {
  const at = bench.analysis.facts.gaps.find((each) => gapKey(each.gap) === gapKey(gap));
  if (at === undefined) return [];
  const way = ({ aligned }: Assignment): Yards => Math.hypot(aligned.x - at.x, aligned.y);
  const inside = GAP_LETTERS.indexOf(gap.letter) <= GAP_LETTERS.indexOf('B');
  const mayBe = (man: Assignment): boolean => {
    const { aligned } = man;
    if (way(man) <= ACROSS) return true;
    if (inside && aligned.y > TOO_DEEP) return false;
    return aligned.place === gap.side && Math.abs(aligned.x - at.x) <= SIDEWAYS;
  };
  return gather(freeMen(bench, way, mayBe), ({ aligned: { role } }) =>
    duty(bench, role.id, (callSide) => withRun(bench.shellJob(role.id), gapRef(gap, callSide), null, firm)),
  );
}

/** A receiver this close to the ball is anybody's; one farther out only a man of his side goes to. */
const ANYBODYS: Yards = 4;

/** Somebody who is free has that receiver man to man; not `except`, who has enough to do. */
export function manDuties(bench: Bench, player: PlayerId, except: readonly RoleId[] = []): readonly Edit[] {
  const at = bench.analysis.facts.players.get(player);
  if (at === undefined) return [];
  const way = ({ aligned }: Assignment): Yards => Math.hypot(aligned.x - at.x, aligned.y - at.y);
  const mayBe = ({ aligned }: Assignment): boolean =>
    !except.includes(aligned.role.id) && (Math.abs(at.x) <= ANYBODYS || aligned.x * at.x >= 0);
  return gather(freeMen(bench, way, mayBe), ({ aligned: { role } }) =>
    duty(bench, role.id, (callSide) => {
      const receiver = receiverRef(bench, player, role.id, callSide);
      return receiver === null ? null : { kind: 'man', receiver, run: runNow(bench, role.id) };
    }),
  );
}

/** A receiver as a rule for that man names him: by number and side, or as a back counted from the man's own side. */
function receiverRef(bench: Bench, player: PlayerId, role: RoleId, callSide: Side): ReceiverRef | null {
  const { facts } = bench.analysis;
  const receiver = facts.receivers.find((each) => each.player === player);
  if (receiver !== undefined) {
    return { kind: 'number', side: relative(receiver.side, callSide), number: receiver.number };
  }
  const place = bench.aligned.get(role)?.place ?? 'middle';
  const context = { facts, callSide, mySide: place === 'middle' ? null : place };
  const named = facts.backs
    .map((_, index): ReceiverRef => ({ kind: 'back', number: index + 1 }))
    .find((ref) => {
      const found = findReceiver(ref, context);
      return found.ok && found.value === player;
    });
  return named ?? null;
}

/** What the shell gives him, changed; none where it gives him nothing or the change is none. */
export function shellRetold(bench: Bench, role: RoleId, change: (job: RuleJob) => RuleJob | null): readonly Edit[] {
  const job = bench.shellJob(role);
  if (job === null) return [];
  const changed = change(job);
  if (changed === null || JSON.stringify(changed) === JSON.stringify(job)) return [];
  return duty(bench, role, () => changed);
}

/** The same job without being force. */
export function notForce(job: RuleJob): RuleJob | null {
  switch (job.kind) {
    case 'fit':
      return { ...job, support: null };
    case 'drop':
    case 'man':
    case 'spy':
      return { ...job, run: { ...job.run, support: null } };
    case 'rush':
    case 'contain':
      return null;
  }
}

/** The same job without a gap against the run. */
export function withoutFits(job: RuleJob): RuleJob | null {
  return job.kind === 'drop' || job.kind === 'man' || job.kind === 'spy'
    ? { ...job, run: { ...job.run, fits: [], firm: false } }
    : null;
}
