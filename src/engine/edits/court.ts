import { analyse } from '../analyse.ts';
import type { Analysis, Finding, LookId, Setup } from '../types/index.ts';
import type { Place } from '../vocabulary.ts';
import { applySet } from './applySet.ts';
import type { Edit, Named } from './edit.ts';
import { newDoubts, newFindings, standing } from './judge.ts';

/** A finding in one look at one ball spot. */
export interface Standing {
  readonly look: Named<LookId>;
  readonly spot: Place;
  readonly finding: Finding;
}

/** A set of edits (as places in the list) that does not do in one look, and what stands there. */
export interface Failure {
  readonly set: readonly number[];
  readonly look: number;
  readonly stands: readonly Finding[];
}

/** Judges sets of edits, look by look, within a number of analyses. */
export interface Court {
  /** The first look found in which the set does not do, with what stands there; null: it does everywhere. */
  readonly failureOf: (set: readonly number[]) => Failure | null | 'spent';
  /** What stands in one look (by its place in the list) under a set; null: the analyses have run out. */
  readonly standingIn: (set: readonly number[], look: number) => readonly Finding[] | null;
  readonly tell: (look: number, finding: Finding) => Standing;
  readonly spent: () => number;
}

/** An entry that is there by construction. */
export function entryAt<Item>(list: readonly Item[], index: number): Item {
  const item = list[index];
  if (item === undefined) throw new Error(`No entry ${index} in a list of ${list.length}`);
  return item;
}

/** Opens the case of one call in its setups, `most` analyses at hand. Null: not even the unchanged setups can be analysed. */
export function openCourt(setups: readonly Setup[], edits: readonly Edit[], most: number): Court | null {
  if (setups.length > most) return null;
  const before = setups.map(analyse);
  let spent = setups.length;
  const known = new Map<string, readonly Finding[]>();
  const standingIn = (set: readonly number[], look: number): readonly Finding[] | null => {
    const setup = entryAt(setups, look);
    const reaching = set.filter((index) => concerns(entryAt(edits, index), setup));
    const key = `${look}:${reaching.join()}`;
    const remembered = known.get(key);
    if (remembered !== undefined) return remembered;
    const edited =
      reaching.length === 0
        ? setup
        : applySet(
            setup,
            reaching.map((index) => entryAt(edits, index)),
          );
    if (edited !== setup && spent === most) return null;
    if (edited !== setup) spent += 1;
    const stands = notDone(entryAt(before, look), edited === setup ? entryAt(before, look) : analyse(edited));
    known.set(key, stands);
    return stands;
  };
  const order = setups
    .map((_, look) => look)
    .sort((a, b) => stops(entryAt(before, b)) - stops(entryAt(before, a)) || a - b);
  return {
    standingIn,
    failureOf: (set) => {
      for (const [place, look] of order.entries()) {
        const stands = standingIn(set, look);
        if (stands === null) return 'spent';
        if (stands.length === 0) continue;
        order.splice(place, 1);
        order.unshift(look);
        return { set, look, stands };
      }
      return null;
    },
    tell: (look, finding) => {
      const { look: drawn, spot } = entryAt(setups, look);
      return { look: { id: drawn.id, name: drawn.name }, spot, finding };
    },
    spent: () => spent,
  };
}

const stops = (analysis: Analysis): number =>
  standing(analysis).filter((finding) => finding.severity === 'stop').length;

/**
 * What still stands against a changed call in one look: every stop, every check it did not have before, and, as a check,
 * whatever could be told before and no longer can.
 */
function notDone(before: Analysis, after: Analysis): readonly Finding[] {
  const then = standing(after);
  const checks = newFindings(
    standing(before),
    then.filter((finding) => finding.severity === 'check'),
  );
  const doubts = newDoubts(before, after).map(([rule, doubt]): Finding => {
    const { because, who, gaps, players, where } = doubt;
    return { rule, severity: 'check', because, who, gaps, players, where, waived: null };
  });
  return [...then.filter((finding) => finding.severity === 'stop'), ...checks, ...doubts];
}

/** Whether an edit is about this look at all: leaving out, and standing a man, are about one. */
function concerns(edit: Edit, setup: Setup): boolean {
  return (edit.kind !== 'leave-out' && edit.kind !== 'stand') || edit.look.id === setup.look.id;
}
