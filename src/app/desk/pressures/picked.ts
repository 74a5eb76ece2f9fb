import {
  manNames,
  sameWho,
  tellHere,
  type Aligned,
  type Analysis,
  type Pressure,
  type RoleId,
  type RuleJob,
  type Side,
  type SideRef,
  type TellCase,
  type Who,
} from '../../../engine/index.ts';
import { zoneName, type Lexicon } from '../../../report/index.ts';
import type { PickPlace } from '../../../store/index.ts';
import { alignedOf, callSideOf } from './roleNow.ts';

/** A place in words: "A gap left", "the tight end Y", "the passer", "hook right". Left and right are the defence's. */
export function placeName(place: PickPlace, lexicon: Lexicon): string {
  switch (place.kind) {
    case 'gap':
      return lexicon.gap(place.gap);
    case 'zone':
      return zoneName(place.zone, place.side);
    case 'receiver':
      return lexicon.player(place.player);
    case 'passer':
      return 'the passer';
  }
}

/** The man who is being told, and what the pressure tells him in this look now. */
export interface Listener {
  readonly aligned: Aligned;
  readonly callSide: Side | null;
  /** Every name the pressure could have for him, the most natural first; the one it has, where it tells him something. */
  readonly names: readonly Who[];
  /** The case that holds here, and its place; null: he is told nothing in this look. */
  readonly now: { readonly told: TellCase; readonly at: number } | null;
}

/** Everything about the man that the pressure can say in this look; null when he is not on the field. */
export function listener(analysis: Analysis, pressure: Pressure, role: RoleId): Listener | null {
  const aligned = alignedOf(analysis);
  const man = aligned.get(role);
  if (man === undefined) return null;
  const callSide = callSideOf(analysis, pressure.id);
  const names = manNames(role, callSide, aligned);
  const here = callSide === null ? null : tellHere(pressure, role, callSide, { facts: analysis.facts, aligned });
  if (here !== null) return { aligned: man, callSide, names: [here.who], now: { told: here.now, at: here.at } };
  const known = names.filter((who) => pressure.tells.some((tell) => sameWho(tell.who, who)));
  return { aligned: man, callSide, names: known.length > 0 ? known : names, now: null };
}

/** What the man is told when that job is kept: in his case of this look only the job changes. */
export function caseFor(job: RuleJob, { now, aligned }: Listener): TellCase {
  if (now !== null) return { ...now.told, job };
  const moves = aligned.role.room === 'line' && (job.kind === 'rush' || job.kind === 'contain');
  return { when: [], basis: moves ? 'movement' : 'path', preSnap: null, job };
}

/** Whether a job names its side plainly: then it does not turn with the call. */
export function isPlain(job: RuleJob): boolean {
  return sidesOf(job).some((side) => side === 'left' || side === 'right');
}

/** Whether a job is said in the simplest form of its place: a gap by its letter. */
export function isByLetter(job: RuleJob): boolean {
  return !('gaps' in job) || job.gaps.every(({ kind }) => kind === 'letter');
}

function sidesOf(job: RuleJob): readonly (SideRef | 'middle')[] {
  if ('gaps' in job) return job.gaps.map(({ side }) => side);
  if (job.kind === 'drop') return [job.side];
  return job.kind === 'man' && job.receiver.kind === 'number' ? [job.receiver.side] : [];
}
