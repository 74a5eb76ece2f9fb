import { compareBy, gather, ok, remembered, type Result } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import { signOf } from '../../facts/surface.ts';
import { opposite } from '../../resolve/sides.ts';
import type { Because, LookFacts, PlayerId, RoleId } from '../../types/index.ts';
import { SIDES, type Side } from '../../vocabulary.ts';
import { gapAt, gapsToward, thousandths, type RowBody } from '../row.ts';
import type { Stand } from '../stand.ts';
import { crewOf, type Crew } from './crew.ts';
import { boxThreats, covered, pairInOrder } from './cover.ts';
import type { ProtectionScheme, Threat } from './types.ts';

/** What one blocker is told before the snap. Men are followed first, then gaps are held, then backs look through the rest. */
export type Duty = {
  readonly blocker: PlayerId;
  readonly because: Because;
  /** The side he is counted to when rushers are counted against blockers. */
  readonly party: Side;
  /** The body of the surface; null for a back. */
  readonly body: RowBody | null;
} & (
  | { readonly kind: 'man'; readonly man: RoleId }
  /** Places in `LookFacts.gaps`, the first to be looked at first. */
  | { readonly kind: 'gap'; readonly gaps: readonly number[] }
  /** Whoever is left over and ends on that side, from the inside out. */
  | { readonly kind: 'scan'; readonly side: Side }
  /** Whoever is left over, as they stand before the snap, from the inside out; on one side only, or `first` on equal terms. */
  | { readonly kind: 'scan-as-aligned'; readonly side: Side | null; readonly first: Side }
);

/** What every blocker is told. */
export interface Plan {
  readonly duties: readonly Duty[];
  /** The same in the turn in which they look for their men. */
  readonly inTurn: readonly Duty[];
}

/** What a plan is made from. */
interface PlanInput {
  readonly facts: LookFacts;
  readonly scheme: ProtectionScheme;
  readonly crew: Crew;
  readonly defenders: readonly Threat[];
}

/**
 * What every blocker is told, by the scheme. It is set against where the defenders stand and not against who comes, so the
 * same plan serves every pressure out of a front. Refused where the look lacks somebody the protection keeps in.
 */
export const plan = remembered(planOnce);

function planOnce({ facts, men }: Stand, scheme: ProtectionScheme): Result<Plan, Because> {
  const crew = crewOf(facts, scheme);
  if (!crew.ok) return crew;
  const duties = dutiesOf({ facts, scheme, crew: crew.value, defenders: men });
  return ok({ duties, inTurn: duties.toSorted(compareBy(turnOf)) });
}

/** Men are followed, then gaps are held, then the backs look. */
function turnOf(duty: Duty): number {
  return duty.kind === 'man' ? 0 : duty.kind === 'gap' ? 1 : 2;
}

function dutiesOf(input: PlanInput): readonly Duty[] {
  switch (input.scheme.scheme) {
    case 'half-slide':
      return halfSlide(input);
    case 'full-slide':
      return fullSlide(input);
    case 'man':
      return manForMan(input);
  }
}

/**
 * From the tackle away from the slide inward, covered linemen are man; the first uncovered one starts the slide, and he and
 * everyone past him take the gap toward it; with nobody uncovered all are man. The back takes whoever is left on the man side,
 * from the inside out. Sources: "Understanding 1/2 Slide Protection", Blitzology, 2010; "Breaking Half Slide Protection",
 * Blitzology, 2019 (covered up, it becomes man); "Tools of the Trade: Six Man Slide Pass", Gridiron R&D, 2015.
 */
function halfSlide({ facts, scheme, crew, defenders }: PlanInput): readonly Duty[] {
  const { slideSide } = scheme;
  const manSide = opposite(slideSide);
  const { atLine } = boxThreats(defenders, facts);
  const on = covered([...crew.line, ...crew.ends.left, ...crew.ends.right], atLine, slideSide);
  const inward = manSide === 'left' ? crew.line : crew.line.toReversed();
  const start = inward.findIndex((body) => !on.has(body.player));
  const allCovered = start < 0;
  const men = gather(allCovered ? inward : inward.slice(0, start), (body) => {
    const man = on.get(body.player);
    return man === undefined ? [] : [manDuty(body, man, allCovered ? sideOf(body, manSide) : manSide)];
  });
  const sliders = allCovered ? [] : [...inward.slice(start), ...crew.ends[slideSide]];
  const edges = [...crew.ends[manSide], ...(allCovered ? crew.ends[slideSide] : [])].map((body): Duty => {
    const man = on.get(body.player);
    return man === undefined ? edgeDuty(body, facts) : manDuty(body, man, sideOf(body, manSide));
  });
  return [...men, ...edges, ...slide(sliders, slideSide, facts), ...scans(crew, scheme)];
}

/**
 * Everybody takes the gap toward the slide, the last one everything outside him; the back has the edge they leave behind.
 * Sources: "What GT Does - Pass Blocking", GTSwarm; "Pass Protection 101", Dawgs By Nature, 2011.
 */
function fullSlide({ facts, scheme, crew }: PlanInput): readonly Duty[] {
  const { slideSide } = scheme;
  const behind = opposite(slideSide);
  const inward = behind === 'left' ? crew.line : crew.line.toReversed();
  const everybody = [...crew.ends[behind].toReversed(), ...inward, ...crew.ends[slideSide]];
  const [last] = everybody;
  const duties: Duty[] = [...slide(everybody, slideSide, facts)];
  if (crew.back !== null && last !== undefined) {
    const gaps = gapsToward(last, behind, true, facts);
    const why = because('the slide leaves the {side} edge to the back', { side: datum.side(behind) });
    duties.push({ kind: 'gap', blocker: crew.back, party: behind, body: null, gaps, because: why });
  }
  return crew.second === null ? duties : [...duties, scanDuty(crew.second, slideSide)];
}

/**
 * Big on big, back on backer. The man on the snapper is his; the other men at the line go to the blockers of their side in
 * order, so that a second man outside fans guard and tackle out; a lineman left over takes the nearest man behind the line, or
 * helps beside him if there is none; the backs take who remains, from the inside out as they stand. Sources: "Pass Protection
 * 101", Dawgs By Nature, 2011 (five on the line and the middle backer, a back for each side); "3-4 Zone Pressure to Attack the
 * Pass", Blitzology, 2016 (guard on the end, tackle on the edge man); "Pass Protection Schemes", Iowa Wesleyan staff (edge man
 * off the line: the guard works inside).
 */
function manForMan({ facts, scheme, crew, defenders }: PlanInput): readonly Duty[] {
  const { atLine, behind } = boxThreats(defenders, facts);
  const over = covered([...crew.line, ...crew.ends.left, ...crew.ends.right], atLine, scheme.slideSide).get(
    crew.snapper.player,
  );
  const pairs = gather(SIDES, (side) => {
    const outward = (each: { readonly x: number }): number => each.x * signOf(side);
    const bodies = crew.line.filter((body) => outward(body) > outward(crew.snapper)).sort(compareBy(outward));
    const men = atLine.filter((man) => man !== over && sideOf(man, scheme.slideSide) === side).sort(compareBy(outward));
    return pairInOrder([...bodies, ...crew.ends[side]], men);
  });
  if (over !== undefined) pairs.push({ body: crew.snapper, man: over });
  const free = (bodies: readonly RowBody[]): readonly RowBody[] =>
    bodies.filter((body) => pairs.every((pair) => pair.body.player !== body.player));
  const towardFirst = <Item extends { readonly x: number }>(items: readonly Item[]): readonly Item[] =>
    [...items].sort(compareBy((each) => thousandths(-each.x * signOf(scheme.slideSide))));
  pairs.push(...pairInOrder(towardFirst(free(crew.line)), towardFirst(behind)));
  return [
    ...pairs.map(({ body, man }) => manDuty(body, man, sideOf(body, opposite(scheme.slideSide)))),
    ...towardFirst(free(crew.line)).map((body) => helpDuty(body, scheme.slideSide, facts)),
    ...free([...crew.ends.left, ...crew.ends.right]).map((body) => edgeDuty(body, facts)),
    ...scans(crew, scheme),
  ];
}

/** The side a man stands on; over the ball he counts to the given one. */
function sideOf(man: { readonly x: number }, middle: Side): Side {
  return man.x === 0 ? middle : man.x < 0 ? 'left' : 'right';
}

function manDuty(body: RowBody, man: Threat, party: Side): Duty {
  const data = { blocker: datum.player(body.player), man: datum.role(man.role) };
  return {
    kind: 'man',
    blocker: body.player,
    party,
    body,
    man: man.role,
    because: because('{blocker} has {man}', data),
  };
}

/** Sliders from the start of the slide to its end; the last one has everything outside him. */
function slide(sliders: readonly RowBody[], side: Side, facts: LookFacts): readonly Duty[] {
  return sliders.map((body, index): Duty => {
    const gaps = gapsToward(body, side, index === sliders.length - 1, facts);
    const data = {
      blocker: datum.player(body.player),
      gaps: datum.gaps(gaps.map((at) => gapAt(at, facts).gap)),
    };
    return {
      kind: 'gap',
      blocker: body.player,
      party: side,
      body,
      gaps,
      because: because('{blocker} slides to {gaps}', data),
    };
  });
}

/** A lineman with nobody on him and nobody left behind the line helps beside him, toward the slide first (ours, no source). */
function helpDuty(body: RowBody, toward: Side, facts: LookFacts): Duty {
  const gaps = gather([toward, opposite(toward)], (side) => gapsToward(body, side, false, facts));
  const data = { blocker: datum.player(body.player) };
  return {
    kind: 'gap',
    blocker: body.player,
    party: sideOf(body, toward),
    body,
    gaps,
    because: because('{blocker} has nobody on him and helps beside him', data),
  };
}

/** An end with nobody on him has the edge: the gap inside him and everything outside. */
function edgeDuty(body: RowBody, facts: LookFacts): Duty {
  const side: Side = body.x < 0 ? 'left' : 'right';
  const gaps = [...gapsToward(body, opposite(side), false, facts), ...gapsToward(body, side, true, facts)];
  const data = { blocker: datum.player(body.player), side: datum.side(side) };
  return {
    kind: 'gap',
    blocker: body.player,
    party: side,
    body,
    gaps,
    because: because('{blocker} has the {side} edge', data),
  };
}

function scanDuty(blocker: PlayerId, side: Side): Duty {
  const data = { blocker: datum.player(blocker), side: datum.side(side) };
  const why = because('{blocker} reads the {side} from the inside out', data);
  return { kind: 'scan', blocker, party: side, body: null, side, because: why };
}

/** The backs of a half slide or a man protection: the first away from the slide, the second with it. */
function scans({ back, second }: Crew, { scheme, slideSide }: ProtectionScheme): readonly Duty[] {
  const away = opposite(slideSide);
  const duties: Duty[] = [];
  const add = (blocker: PlayerId | null, side: Side): void => {
    if (blocker === null) return;
    if (scheme !== 'man') {
      duties.push(scanDuty(blocker, side));
      return;
    }
    const alone = second === null;
    const why = fact('a back has the backers, from the inside out as they stand');
    const data = { blocker: datum.player(blocker), side: datum.side(side) };
    duties.push({
      kind: 'scan-as-aligned',
      blocker,
      party: side,
      body: null,
      side: alone ? null : side,
      first: side,
      because: alone
        ? because('{blocker} reads both sides, the {side} first', data, why)
        : because('{blocker} reads the {side}', data, why),
    });
  };
  add(back, away);
  add(second, slideSide);
  return duties;
}
