/** The search for the smallest set of edits done the plain way: every set, everywhere, by a judge written once more. */
import { analyse, evidenceOf, type Analysis, type Finding, type Setup } from '../../../src/engine/index.ts';
import { applySet, sizeOf, type Edit } from '../../../src/engine/edits/index.ts';
import { placeOf } from '../../../src/engine/edits/edit.ts';

/** What mending means, said once more: no stop, and no stop, check or doubt that was not there. */
export function isMended(before: Analysis, after: Analysis): boolean {
  if (after.verdict === 'left-out') return true;
  const key = (finding: Finding): string => `${finding.rule} ${evidenceOf(finding)}`;
  const left = before.verdict === 'left-out' ? [] : before.findings.filter(({ waived }) => waived === null).map(key);
  for (const finding of after.findings.filter(({ waived }) => waived === null)) {
    if (finding.severity === 'stop') return false;
    const at = left.indexOf(key(finding));
    if (at < 0 && finding.severity === 'check') return false;
    if (at >= 0) left.splice(at, 1);
  }
  const known = before.undetermined.flatMap(({ rules }) => rules);
  return after.undetermined.every(({ rules }) => rules.every((rule) => known.includes(rule)));
}

/** Every set of one size that mends all setups, by trying them all everywhere, the smallest change first. */
export function bruteForce(
  setups: readonly Setup[],
  edits: readonly Edit[],
  size: number,
): readonly (readonly Edit[])[] {
  const before = setups.map(analyse);
  const sets = (from: number, count: number): readonly (readonly Edit[])[] =>
    count === 0
      ? [[]]
      : edits.flatMap((edit, index) =>
          index < from ? [] : sets(index + 1, count - 1).map((rest): readonly Edit[] => [edit, ...rest]),
        );
  const total = (set: readonly Edit[]): number => set.reduce((sum, edit) => sum + sizeOf(edit), 0);
  return sets(0, size)
    .filter((set) => new Set(set.map(placeOf)).size === set.length)
    .filter((set) => setups.every((made, at) => isMended(entry(before, at), analyse(applySet(made, set)))))
    .toSorted((a, b) => total(a) - total(b));
}

function entry<Item>(list: readonly Item[], at: number): Item {
  const item = list[at];
  if (item === undefined) throw new Error('Out of the list');
  return item;
}

/** The fewest edits that mend all setups, trying up to `most`; null: none do. */
export function fewestEdits(setups: readonly Setup[], edits: readonly Edit[], most: number): number | null {
  for (let size = 0; size <= most; size += 1) if (bruteForce(setups, edits, size).length > 0) return size;
  return null;
}
