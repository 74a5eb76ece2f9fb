import { gather } from '../../base/index.ts';
import { analyse } from '../analyse.ts';
import { because, datum, fact } from '../because.ts';
import type { Analysis, Because, Finding } from '../types/index.ts';
import { applyEdit } from './applyEdit.ts';
import { makeBench } from './bench.ts';
import { RECIPES } from './candidates/recipes.ts';
import { placeOf, smallestFirst, type Edit } from './edit.ts';
import { isMended, standing } from './judge.ts';
import type { Library } from './library.ts';

/** What may be changed to mend a finding; every edit is proved in the look of the analysis. */
export type Suggestions =
  /** All that help, smallest first; at least one. */
  | { readonly kind: 'offered'; readonly edits: readonly Edit[] }
  /** None, and why. */
  | { readonly kind: 'none'; readonly because: Because }
  /** The budget ran out: those that helped so far, smallest first, and how many were not tried. */
  | { readonly kind: 'spent'; readonly edits: readonly Edit[]; readonly untried: number };

/** Edits worth trying on a finding, smallest first, unproved; or why no edit is natural to its rule. */
export function candidatesFor(
  finding: Finding,
  analysis: Analysis,
  library: Library,
): { readonly edits: readonly Edit[]; readonly because: Because | null } {
  const recipe = RECIPES.get(finding.rule);
  if (recipe === undefined) return { edits: [], because: fact('no change that mends this is known') };
  if (recipe.kind === 'none') return { edits: [], because: recipe.because };
  return { edits: smallestFirst(recipe.make(finding, makeBench(analysis), library)), because: null };
}

/**
 * What a coach may change so that a finding goes away: the natural candidates of its rule, smallest first, each proved by
 * applying it and analysing the look again (the finding gone, nothing of its rule and no stop new). At most `budget`
 * analyses are made. Of several spots for one man only the first that helps is offered. Pure and deterministic.
 */
export function suggestionsFor(finding: Finding, analysis: Analysis, library: Library, budget: number): Suggestions {
  if (analysis.verdict === 'left-out') return { kind: 'none', because: fact('the call is not run against this look') };
  const { edits: candidates, because: why } = candidatesFor(finding, analysis, library);
  if (why !== null) return { kind: 'none', because: why };
  const edits: Edit[] = [];
  const stood = new Set<string>();
  let left = budget;
  for (const [index, edit] of candidates.entries()) {
    if (edit.kind === 'stand' && stood.has(placeOf(edit))) continue;
    const edited = applyEdit(analysis.setup, edit);
    if (!edited.ok) continue;
    if (left === 0) return { kind: 'spent', edits, untried: candidates.length - index };
    left -= 1;
    if (!isMended(finding, analysis, analyse(edited.value))) continue;
    edits.push(edit);
    if (edit.kind === 'stand') stood.add(placeOf(edit));
  }
  if (edits.length > 0) return { kind: 'offered', edits };
  const tried = { n: datum.number(candidates.length) };
  return {
    kind: 'none',
    because: because('none of the {n} changes that were tried clears it without a new stop', tried),
  };
}

/** The edits worth trying on any stop of these analyses, smallest first, each once: what `mend` is given to search. */
export function mendingEdits(analyses: readonly Analysis[], library: Library): readonly Edit[] {
  return smallestFirst(
    gather(analyses, (analysis) =>
      gather(
        standing(analysis).filter((finding) => finding.severity === 'stop'),
        (finding) => candidatesFor(finding, analysis, library).edits,
      ),
    ),
  );
}
