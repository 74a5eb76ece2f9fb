import { analyse } from '../analyse.ts';
import { briefOf, wholeOf, type Brief, type Spoken } from '../brief/index.ts';
import type { Analysis, Finding, LookId, Setup } from '../types/index.ts';
import type { Place } from '../vocabulary.ts';
import { applySet } from './applySet.ts';
import type { Edit, Named } from './edit.ts';
import { findingKey, newDoubts, newFindings } from './judge.ts';

/** A finding in one look at one ball spot. */
export interface Standing {
  readonly look: Named<LookId>;
  readonly spot: Place;
  readonly finding: Finding;
}

/** What stands against a changed call: what a check finds, or, with nobody and nothing named, what it can no longer tell. */
export type Stands = Spoken | { readonly rule: string; readonly doubt: true };

/** A set of edits (as places in the list) that does not do in one look, and what stands there. */
export interface Failure {
  readonly set: readonly number[];
  readonly look: number;
  readonly stands: readonly Stands[];
}

/** Judges sets of edits, look by look, within a number of analyses. */
export interface Court {
  /** The first look found in which the set does not do, with what stands there; null: it does everywhere. */
  readonly failureOf: (set: readonly number[]) => Failure | null | 'spent';
  /** What stands in one look (by its place in the list) under a set; null: the analyses have run out. */
  readonly standingIn: (set: readonly number[], look: number) => readonly Stands[] | null;
  /** The same in words, for one thing that stands there. */
  readonly tell: (set: readonly number[], look: number, stands: Stands) => Standing;
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
  const before = setups.map(briefOf);
  let spent = setups.length;
  const known = new Map<string, readonly Stands[]>();
  const reachingOf = (set: readonly number[], look: number): readonly number[] =>
    set.filter((index) => concerns(entryAt(edits, index), entryAt(setups, look)));
  const edited = (reaching: readonly number[], look: number): Setup => {
    const setup = entryAt(setups, look);
    if (reaching.length === 0) return setup;
    return applySet(
      setup,
      reaching.map((index) => entryAt(edits, index)),
    );
  };
  const standingIn = (set: readonly number[], look: number): readonly Stands[] | null => {
    const reaching = reachingOf(set, look);
    const key = `${look}:${reaching.join()}`;
    const remembered = known.get(key);
    if (remembered !== undefined) return remembered;
    const after = edited(reaching, look);
    const isChanged = after !== entryAt(setups, look);
    if (isChanged && spent === most) return null;
    if (isChanged) spent += 1;
    const stands = notDone(entryAt(before, look), isChanged ? briefOf(after) : entryAt(before, look));
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
    tell: (set, look, stands) => {
      const { look: drawn, spot } = entryAt(setups, look);
      return {
        look: { id: drawn.id, name: drawn.name },
        spot,
        finding: inWords(stands, analyse(edited(reachingOf(set, look), look))),
      };
    },
    spent: () => spent,
  };
}

const stops = (brief: Brief): number => standingOf(brief).filter(({ severity }) => severity === 'stop').length;

/**
 * What still stands against a changed call in one look: every stop, every check it did not have before, and whatever could be
 * told before and no longer can.
 */
function notDone(before: Brief, after: Brief): readonly Stands[] {
  const then = standingOf(after);
  const checks = newFindings(
    standingOf(before),
    then.filter(({ severity }) => severity === 'check'),
  );
  const doubts = newDoubts(wholeOf(before).doubts, after.verdict === 'left-out' ? [] : wholeOf(after).doubts);
  return [
    ...then.filter(({ severity }) => severity === 'stop'),
    ...checks,
    ...doubts.map((rule) => ({ rule, doubt: true }) as const),
  ];
}

/** What stands against a call in a look; nothing where it is not run at all. */
function standingOf(brief: Brief): readonly Spoken[] {
  return brief.verdict === 'left-out' ? [] : wholeOf(brief).found;
}

/** What stands, as the whole analysis tells it; what can no longer be told as a check. */
function inWords(stands: Stands, { findings, undetermined }: Analysis): Finding {
  if (!('doubt' in stands)) {
    const key = findingKey(stands);
    return entryAt(
      findings.filter((finding) => finding.waived === null && findingKey(finding) === key),
      0,
    );
  }
  const doubts = undetermined.filter(({ rules }) => rules.includes(stands.rule));
  const { because, who, gaps, players, where } = entryAt(doubts, 0);
  return { rule: stands.rule, severity: 'check', because, who, gaps, players, where, waived: null };
}

/** Whether an edit is about this look at all: leaving out, and standing a man, are about one. */
function concerns(edit: Edit, setup: Setup): boolean {
  return (edit.kind !== 'leave-out' && edit.kind !== 'stand') || edit.look.id === setup.look.id;
}
