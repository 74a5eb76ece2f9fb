import type * as z from 'zod';
import type { Path, Problem } from './refusal.ts';

/** What the schema says against a value, as problems in our own words; the leaf schemas bring theirs along. */
export function zodProblems(issues: readonly z.core.$ZodIssue[]): readonly Problem[] {
  return issues.flatMap(problemsOf);
}

function problemsOf(issue: z.core.$ZodIssue): readonly Problem[] {
  const path = plainPath(issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({ path: [...path, key], found: null, expected: 'no entry of this name here' }));
    case 'invalid_type':
      return [{ path, found: null, expected: issue.expected === 'object' ? 'an object' : issue.message }];
    case 'invalid_value':
      return [{ path, found: null, expected: oneOf(issue.values) }];
    case 'invalid_union':
      return [{ path, found: null, expected: oneOf('options' in issue ? (issue.options ?? []) : []) }];
    default:
      return [{ path, found: null, expected: issue.message }];
  }
}

function oneOf(values: readonly unknown[]): string {
  const words = values.map((value) => (typeof value === 'string' ? `"${value}"` : String(value)));
  return words.length === 1 ? words.join('') : `one of ${words.join(', ')}`;
}

/** Playbooks have no keys but text and indexes. */
function plainPath(path: readonly PropertyKey[]): Path {
  return path.map((step) => (typeof step === 'number' ? step : String(step)));
}
