import { because, datum, fact } from './because.ts';
import { compareJobs } from './combine/compareJobs.ts';
import { allHold } from './resolve/holds.ts';
import type { Choice, Combination, LookFacts, ResolvedPressure, Role, Telling } from './types/index.ts';
import type { Side } from './vocabulary.ts';

/** Which of the two an either-or call runs in this look: the first if its key holds, else the second. */
export function chooseHalf(
  key: Extract<Combination, { readonly kind: 'either-or' }>['key'],
  callSide: Side | null,
  facts: LookFacts,
): 'first' | 'second' {
  return allHold(key, { facts, callSide, mySide: null }) ? 'first' : 'second';
}

/** The job two tellings leave a man with if only one of them is run: the same, or he must hear which. */
function mustHear(first: Telling | null, second: Telling | null): boolean {
  if (first === null && second === null) return false;
  if (first?.kind !== 'told' || second?.kind !== 'told') return true;
  return compareJobs(first.job, second.job) !== 'same';
}

/**
 * The choice of an either-or call in one look, and everybody whose row differs between the two halves, linemen first: they
 * must hear the check (common practice; the either-or of two pressures by the surface to the field: "Blitz of the Week #3",
 * Blitzology, 16 Mar 2010).
 */
export function choiceOf(
  ran: 'first' | 'second',
  roles: readonly Role[],
  first: ResolvedPressure,
  second: ResolvedPressure,
): Choice {
  const differs = roles.filter((role) =>
    mustHear(first.tellings.get(role.id) ?? null, second.tellings.get(role.id) ?? null),
  );
  const inOrder = [
    ...differs.filter((role) => role.room === 'line'),
    ...differs.filter((role) => role.room !== 'line'),
  ];
  return {
    ran,
    mustHear: inOrder.map((role) => role.id),
    because:
      ran === 'first'
        ? because('the key holds, so {which} is run', { which: datum.pressure('first') })
        : because(
            'the key does not hold, so {which} is run',
            { which: datum.pressure('second') },
            fact('the other half waits'),
          ),
  };
}
