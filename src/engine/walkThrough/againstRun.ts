import { fitJob, passJob } from '../move/errands.ts';
import type { Assignment, RoleId, RunAnswer } from '../types/index.ts';

/** A run of the look that can be had. */
export type AnsweredRun = Extract<RunAnswer, { readonly kind: 'answered' }>;

/**
 * The eleven as they go against a run: a rusher rushes, whoever else owns a run gap fits it, and everybody else has nothing to
 * do that the engine could time, so he stays.
 */
export function againstRun(assignments: readonly Assignment[]): readonly Assignment[] {
  return assignments.map((assignment) => {
    const { combined } = assignment;
    const rush = combined.job ?? passJob(assignment);
    if (rush?.kind === 'rush' || rush?.kind === 'contain') return assignment;
    const job = combined.job?.kind === 'fit' ? combined.job : fitJob(assignment);
    return { ...assignment, combined: { ...combined, job }, pass: { kind: 'none' } };
  });
}

/** The gap that opens for this man to fit; null: none. */
export function openedFor({ floating }: AnsweredRun, role: RoleId): AnsweredRun['floating'][number] | null {
  return floating.find((fit) => fit.by === role) ?? null;
}
