import { compareBy, gather } from '../../../base/index.ts';
import { gapKey, gapsEqual } from '../../gaps.ts';
import { gapsThatExist } from '../../resolve/names.ts';
import type { Assignment, Gap, RoleId, RuleJob } from '../../types/index.ts';
import { GAP_LETTERS, type EdgePlay, type Side } from '../../vocabulary.ts';
import { gapRef, type Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';
import { retold, settle, toldAnew } from './oneMan.ts';

/** Linemen who have one of these gaps in the base front and are told something else. */
export function linemenOf(bench: Bench, gaps: readonly Gap[]): readonly RoleId[] {
  return bench.men
    .filter(({ aligned, combined }) => aligned.role.room === 'line' && combined.job !== null)
    .filter(({ aligned }) => {
      const base = bench.analysis.setup.front.roles.find((entry) => entry.role === aligned.role.id)?.base;
      const mySide = aligned.place === 'middle' ? null : aligned.place;
      const own = gapsThatExist(base?.gaps ?? [], { facts: bench.analysis.facts, callSide: null, mySide });
      return own.some((gap) => gaps.some((each) => gapsEqual(each, gap)));
    })
    .map(({ aligned }) => aligned.role.id);
}

/** What would bring those men back to the gaps they left. */
export function backToTheirGaps(bench: Bench, gaps: readonly Gap[]): readonly Edit[] {
  return gather(linemenOf(bench, gaps), (role) => settle(bench, role));
}

/** Send him to that gap instead, by the same work; a man who two-gaps keeps his two. */
export function sentTo(bench: Bench, role: RoleId, gap: Gap): readonly Edit[] {
  return retold(bench, role, (job, which) => {
    const side = bench.sideOf(which);
    if (side === null || (job.kind !== 'rush' && job.kind !== 'contain' && job.kind !== 'fit')) return null;
    return job.manner === 'two-gap' ? null : { ...job, gaps: [gapRef(gap, side)] };
  });
}

/** Of these gaps the two nearest to where he stands, the nearest first. */
export function nearGaps(bench: Bench, role: RoleId, gaps: readonly Gap[]): readonly Gap[] {
  const from = bench.aligned.get(role)?.x ?? 0;
  const x = (gap: Gap): number => bench.analysis.facts.gaps.find((each) => gapsEqual(each.gap, gap))?.x ?? 0;
  return bench
    .gapsInOrder(gaps)
    .toSorted(compareBy((gap) => Math.round(Math.abs(x(gap) - from) * 1000)))
    .slice(0, 2);
}

/** Take the block on the edge that way instead. */
export function edgePlayed(bench: Bench, role: RoleId, edge: EdgePlay | null): readonly Edit[] {
  return retold(bench, role, (job) => (job.kind === 'rush' || job.kind === 'contain' ? { ...job, edge } : null));
}

/** How far out on that side he plays, counted in gaps from the ball; -1: not on that side. */
function outness({ run }: Assignment, side: Side): number {
  return Math.max(-1, ...run.gaps.filter((gap) => gap.side === side).map((gap) => GAP_LETTERS.indexOf(gap.letter)));
}

/** The men with a gap of that side, the outermost first. */
export function outsideIn(bench: Bench, side: Side): readonly Assignment[] {
  return bench.men.filter((man) => outness(man, side) >= 0).toSorted(compareBy((man) => -outness(man, side)));
}

/** Nobody keeps the passer in from the A gap: contain begins with B. */
const CONTAIN_FROM = GAP_LETTERS.indexOf('B');

/** A rusher of that side keeps the passer inside, the outermost first; not `except`. */
export function containing(bench: Bench, side: Side, except: RoleId | null = null): readonly Edit[] {
  return gather(
    outsideIn(bench, side)
      .filter((man) => outness(man, side) >= CONTAIN_FROM)
      .filter(({ pass, aligned }) => pass.kind === 'rush' && aligned.role.id !== except),
    ({ aligned, run }): readonly Edit[] => {
      const role = aligned.role.id;
      const [gap] = run.gaps.filter((each) => each.side === side);
      if (gap === undefined) return [];
      return [
        ...retold(bench, role, (job) => (job.kind === 'rush' ? { ...job, kind: 'contain' } : null)),
        ...toldAnewIfUntold(bench, role, (callSide) => ({
          kind: 'contain',
          gaps: [gapRef(gap, callSide)],
          manner: 'penetrate',
          track: { kind: 'straight' },
          edge: null,
          peel: false,
          order: null,
        })),
      ];
    },
  );
}

function toldAnewIfUntold(bench: Bench, role: RoleId, jobOf: (callSide: Side) => RuleJob): readonly Edit[] {
  return bench.man(role)?.combined.job === null ? toldAnew(bench, role, jobOf) : [];
}

/** Nobody leaves with the back. */
export function withoutPeel(bench: Bench, role: RoleId): readonly Edit[] {
  return retold(bench, role, (job) => (job.kind === 'rush' || job.kind === 'contain' ? { ...job, peel: false } : null));
}

/** Every gap told by a letter or a body becomes the edge of that side, whatever its letter in a look. */
export function edgeByName(bench: Bench, role: RoleId): readonly Edit[] {
  return retold(bench, role, (job) => {
    if (job.kind !== 'rush' && job.kind !== 'contain' && job.kind !== 'fit') return null;
    return job.manner === 'two-gap' ? null : { ...job, gaps: job.gaps.map(({ side }) => ({ kind: 'edge', side })) };
  });
}

/** The men who are nearest to a gap among those a pressure sends, nearest first. */
export function nearestTo(bench: Bench, roles: readonly RoleId[], gap: Gap, most: number): readonly RoleId[] {
  const x = bench.analysis.facts.gaps.find((each) => gapKey(each.gap) === gapKey(gap))?.x ?? 0;
  const away = (role: RoleId): number => Math.round(Math.abs((bench.aligned.get(role)?.x ?? 0) - x) * 1000);
  return bench.inOrder(roles).toSorted(compareBy(away)).slice(0, most);
}
