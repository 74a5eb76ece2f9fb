import type { Aligned, LookFacts, LookTest, Pressure, RoleId, TellCase, Who } from '../types/index.ts';
import type { Side } from '../vocabulary.ts';
import { allHold } from '../resolve/holds.ts';
import { findWho } from '../resolve/who.ts';
import { casesOf } from './applyEdit.ts';

/** Where the men stand in a look, and what the look is. */
export interface Lined {
  readonly facts: LookFacts;
  readonly aligned: ReadonlyMap<RoleId, Aligned>;
}

/** What a pressure tells a man in a look: the name it has for him, all his cases, and which of them holds. */
export interface TellHere {
  readonly who: Who;
  readonly cases: readonly TellCase[];
  readonly at: number;
  readonly now: TellCase;
}

/** Whether all conditions hold for that man in that look, the call going to that side. */
export function holdFor(when: readonly LookTest[], role: RoleId, callSide: Side, { facts, aligned }: Lined): boolean {
  const place = aligned.get(role)?.place ?? 'middle';
  return allHold(when, { facts, callSide, mySide: place === 'middle' ? null : place });
}

/** What the rush of a pressure tells that man in that look, the call going to that side; null: nothing. */
export function tellHere(pressure: Pressure, role: RoleId, callSide: Side, lined: Lined): TellHere | null {
  for (const { who } of pressure.tells) {
    const man = findWho(who, callSide, lined.aligned);
    if (!man.ok || man.value !== role) continue;
    const cases = casesOf(pressure, who);
    const at = cases.findIndex((each) => holdFor(each.when, role, callSide, lined));
    const now = cases[at];
    if (now !== undefined) return { who, cases, at, now };
  }
  return null;
}
