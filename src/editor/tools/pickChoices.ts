import { assertNever } from '../../base/index.ts';
import {
  gapNames,
  namingFor,
  receiverNames,
  zoneSideNames,
  type Aligned,
  type Gap,
  type GapRef,
  type LookFacts,
  type Manner,
  type NamingContext,
  type RuleJob,
  type Side,
} from '../../engine/index.ts';
import type { PickPlace } from '../../store/index.ts';

/** The man a job is picked for, in the look it is picked in. */
export interface PickedMan {
  readonly aligned: Aligned;
  readonly facts: LookFacts;
  /** Where the pressure goes in this look; null: it is a tie. */
  readonly callSide: Side | null;
}

/** One thing he may do at the picked place, and every way to say it: all the same in this look, the most natural first. */
export interface PickChoice {
  readonly kind: RuleJob['kind'];
  readonly jobs: readonly RuleJob[];
}

/** What a man may be told by pointing at a place: each kind of job that means something there, the likeliest first. */
export function pickChoices(place: PickPlace, man: PickedMan): readonly PickChoice[] {
  const context = namingFor(man.facts, man.callSide, man.aligned);
  return choicesAt(place, man, context).filter(({ jobs }) => jobs.length > 0);
}

function choicesAt(place: PickPlace, man: PickedMan, context: NamingContext): readonly PickChoice[] {
  switch (place.kind) {
    case 'gap':
      return atGap(place.gap, man, context);
    case 'zone':
      return [
        {
          kind: 'drop',
          jobs: zoneSideNames(place.side, context).map((side) => ({
            kind: 'drop',
            zone: place.zone,
            side,
            run: NO_RUN,
          })),
        },
      ];
    case 'receiver':
      return [
        {
          kind: 'man',
          jobs: receiverNames(place.player, context).map((receiver) => ({ kind: 'man', receiver, run: NO_RUN })),
        },
      ];
    case 'passer':
      return atPasser(man, context);
    default:
      return assertNever(place);
  }
}

const NO_RUN = { fits: [], firm: false, support: null } as const;

function atGap(gap: Gap, man: PickedMan, context: NamingContext): readonly PickChoice[] {
  const names = gapNames(gap, context);
  return [
    { kind: 'rush', jobs: names.map((name) => rushJob('rush', name, mannerOf(man))) },
    // Nobody keeps a passer in from between the guards.
    { kind: 'contain', jobs: gap.letter === 'A' ? [] : names.map((name) => rushJob('contain', name, 'penetrate')) },
    { kind: 'fit', jobs: names.map((name) => ({ kind: 'fit', gaps: [name], manner: 'read', support: null })) },
  ];
}

/** Toward the passer: through the gap in front of him, around the edge of his side, or no rush at all. */
function atPasser(man: PickedMan, context: NamingContext): readonly PickChoice[] {
  const { facts, aligned, callSide } = man;
  const nearest = facts.gaps.toSorted((a, b) => Math.abs(a.x - aligned.x) - Math.abs(b.x - aligned.x))[0];
  const side = context.mySide ?? callSide;
  const edge: Gap | null = side === null ? null : { side, letter: facts.edge[side] };
  const edgeNames = edge === null ? [] : gapNames(edge, context).filter(({ kind }) => kind === 'edge');
  return [
    {
      kind: 'rush',
      jobs:
        nearest === undefined ? [] : gapNames(nearest.gap, context).map((name) => rushJob('rush', name, mannerOf(man))),
    },
    { kind: 'contain', jobs: edgeNames.map((name) => rushJob('contain', name, 'penetrate')) },
    { kind: 'spy', jobs: [{ kind: 'spy', run: NO_RUN }] },
  ];
}

/** A lineman who is sent to a gap slants to it; everybody else goes through. Common practice, no source. */
function mannerOf({ aligned }: PickedMan): Manner {
  return aligned.role.room === 'line' ? 'slant' : 'penetrate';
}

function rushJob(kind: 'rush' | 'contain', gap: GapRef, manner: Manner): RuleJob {
  return { kind, gaps: [gap], manner, track: { kind: 'straight' }, edge: null, peel: false, order: null };
}
