import { createNumbering } from '../base/index.ts';
import { refusalText, toSetup, type Playbook } from '../document/index.ts';
import { briefOf } from '../engine/index.ts';
import { createNumbers, keysOf, type KeyOf } from './keys.ts';
import { keepSame } from './keepSame.ts';
import { summarise, summaryText } from './summary.ts';
import type { MenuCase, Summary } from './types.ts';

/**
 * Judges the cases of a playbook from version to version. An answer is worked out again only when something it depends on
 * has changed; the parts of a new version that equal the last one's count as the same, also when they are copies.
 */
export interface MenuJudge {
  /** Goes on with this version; returns it with its unchanged parts being the last version's own. */
  readonly open: (playbook: Playbook) => Playbook;
  /** The number of the case's summary in `summaries`. The case is made of parts of the version `open` returned. */
  readonly judge: (menuCase: MenuCase) => number;
  /** Every different summary seen, by number: large menus have few. The list only grows. */
  readonly summaries: readonly Summary[];
  /** How many cases have really been worked out. */
  readonly worked: () => number;
  /** A whole grid is answered: what neither it nor the one before needed is forgotten. */
  readonly settle: () => void;
}

/** A judge that has seen nothing yet. */
export function createMenuJudge(): MenuJudge {
  const numberOf = createNumbers();
  const numbering = createNumbering(summaryText);
  let version: { readonly playbook: Playbook; readonly keyOf: KeyOf } | null = null;
  let fresh = new Map<string, number>();
  let old = new Map<string, number>();
  let worked = 0;

  return {
    open: (playbook) => {
      const shared = version === null ? playbook : keepSame(version.playbook, playbook);
      version = { playbook: shared, keyOf: keysOf(shared, numberOf) };
      return shared;
    },
    judge: (menuCase) => {
      if (version === null) throw new Error('No playbook is open');
      const key = version.keyOf(menuCase);
      let number = fresh.get(key) ?? old.get(key);
      if (number === undefined) {
        worked += 1;
        number = numbering.numberOf(summaryOf(version.playbook, menuCase));
      }
      fresh.set(key, number);
      return number;
    },
    summaries: numbering.things,
    worked: () => worked,
    settle: () => {
      old = fresh;
      fresh = new Map<string, number>();
    },
  };
}

/** The summary of one case, worked out from nothing. */
export function summaryOf(playbook: Playbook, { call, look, spot }: MenuCase): Summary {
  const setup = toSetup(playbook, { call, look: look.id, spot });
  // A checked playbook names nothing it does not have.
  if (!setup.ok) throw new Error(refusalText(setup.problem));
  return summarise(briefOf(setup.value));
}
