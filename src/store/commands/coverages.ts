import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import type { Coverage, CoverageId, Who } from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { nextIds } from './entries.ts';
import { withEntry } from './lists.ts';
import { freeName } from './names.ts';

/** Makes a coverage that needs no zone and tells nobody anything yet. */
export function newCoverage(playbook: Playbook, args: { readonly name: string }): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.coverages, args.name, null, 'coverage');
  if (!name.ok) return name;
  const coverage: Coverage = { id: nextIds.coverage(playbook), name: name.value, needs: [], tells: [] };
  return ok({ ...playbook, coverages: [...playbook.coverages, coverage] });
}

/** Says which zones must be filled, when, and who may take each, the most natural first; each of them once. */
export function setNeeds(
  playbook: Playbook,
  args: { readonly coverage: CoverageId; readonly needs: Coverage['needs'] },
): Result<Playbook, CommandProblem> {
  if (args.needs.some(({ takers }) => new Set(takers.map(whoKey)).size < takers.length)) {
    return refused({ kind: 'twice' });
  }
  return withCoverage(playbook, args.coverage, (coverage) => ({ ...coverage, needs: args.needs }));
}

/** Says what each man is told. */
export function setCoverageTells(
  playbook: Playbook,
  args: { readonly coverage: CoverageId; readonly tells: Coverage['tells'] },
): Result<Playbook, CommandProblem> {
  return withCoverage(playbook, args.coverage, (coverage) => ({ ...coverage, tells: args.tells }));
}

function whoKey(who: Who): string {
  return who.kind === 'role' ? who.role : `${who.group} ${who.side}`;
}

function withCoverage(
  playbook: Playbook,
  id: CoverageId,
  change: (coverage: Coverage) => Coverage,
): Result<Playbook, CommandProblem> {
  const coverages = withEntry(playbook.coverages, id, (coverage) => ok(change(coverage)), {
    kind: 'not-there',
    what: 'coverage',
  });
  return coverages.ok ? ok({ ...playbook, coverages: coverages.value }) : coverages;
}
