import type { Playbook } from '../document/index.ts';
import { PLACES, type Call, type Look } from '../engine/index.ts';
import type { MenuCase } from './types.ts';

/** Names cases by what their answers depend on: two cases with the same key have the same answer. */
export type KeyOf = (menuCase: MenuCase) => string;

/** Gives every object a number of its own, the same as long as it is the same object; and every text, by what it says. */
export type NumberOf = (part: object | string) => number;

/** Numbers that outlive one version of the playbook. */
export function createNumbers(): NumberOf {
  const objects = new WeakMap<object, number>();
  const texts = new Map<string, number>();
  let last = 0;
  return (part) => {
    const known = typeof part === 'string' ? texts.get(part) : objects.get(part);
    if (known !== undefined) return known;
    last += 1;
    if (typeof part === 'string') texts.set(part, last);
    else objects.set(part, last);
    return last;
  };
}

/**
 * The keys of one version of a playbook. What an answer depends on: what the call says; the front, pressures and coverages it
 * names; the look, and where men were put by hand in it; the ball spot; roles, dictionary and level of play. A call with a
 * check-out table may become any other call with any coverage, so it depends on all of them.
 */
export function keysOf(playbook: Playbook, numberOf: NumberOf): KeyOf {
  const shared = [playbook.team.level, numberOf(playbook.roles), numberOf(playbook.dictionary)].join();
  const byCall = remember((call: Call) => numberOf(`${shared}|${partsOfCall(call, playbook, numberOf)}`));
  const hands = playbook.fronts.flatMap(({ byHand }) => byHand);
  const byLook = remember((look: Look) =>
    numberOf([look, ...hands.filter((hand) => hand.look === look.id)].map(numberOf).join()),
  );
  // Short: a large menu keeps a hundred thousand of them.
  return ({ call, look, spot }) => `${byCall(call)} ${byLook(look)} ${PLACES.indexOf(spot)}`;
}

/** By content what the call itself says, without its names, and by number what it points at. */
function partsOfCall(call: Call, playbook: Playbook, numberOf: NumberOf): string {
  const { fronts, pressures, coverages, calls, checkOuts } = playbook;
  const number = (part: object | undefined): number => (part === undefined ? 0 : numberOf(part));
  const table = checkOuts.find((each) => each.call === call.id);
  if (table !== undefined) return [call, table, fronts, pressures, coverages, calls].map(number).join();
  const [first, second] = [call.first, call.second].map((id) => pressures.find((each) => each.id === id));
  const shells = [call.coverage ?? first?.coverage, call.coverage ?? second?.coverage].map((id) =>
    coverages.find((each) => each.id === id),
  );
  const front = fronts.find(({ id }) => id === call.front);
  const { turn, combination, rushers, waivers } = call;
  const numbers = [front?.roles, first, second, ...shells].map(number);
  return [call.front, ...numbers, JSON.stringify([turn, combination, rushers, waivers])].join();
}

function remember<Part extends object, Value>(work: (part: Part) => Value): (part: Part) => Value {
  const known = new Map<Part, Value>();
  return (part) => {
    const value = known.get(part);
    if (value !== undefined) return value;
    const made = work(part);
    known.set(part, made);
    return made;
  };
}
