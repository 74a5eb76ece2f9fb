import type { Setup } from '../types/index.ts';
import { applyEdit } from './applyEdit.ts';
import type { Edit } from './edit.ts';

/** The kinds that change what the others name come first. */
const ORDER: readonly Edit['kind'][] = ['swap', 'turn', 'coverage'];

/** A setup with every edit of a set that reaches it. */
export function applySet(setup: Setup, edits: readonly Edit[]): Setup {
  const rank = (edit: Edit): number => (ORDER.includes(edit.kind) ? ORDER.indexOf(edit.kind) : ORDER.length);
  return edits
    .toSorted((a, b) => rank(a) - rank(b))
    .reduce((current, edit) => {
      const edited = applyEdit(current, edit);
      return edited.ok ? edited.value : current;
    }, setup);
}
