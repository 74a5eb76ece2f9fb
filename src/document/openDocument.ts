import { ok, refused, type Result } from '../base/index.ts';
import { crossChecks } from './crossChecks/index.ts';
import { migrate, type RawPlaybook } from './migrations/index.ts';
import { isObject, ownValue, toRefusals, type Problem, type Refusal } from './refusal.ts';
import { FORMAT, playbookSchema, VERSION, type Playbook } from './schema/playbook.ts';
import { readJson } from './text/readJson.ts';
import { zodProblems } from './zodProblems.ts';

/**
 * Opens a playbook file, given as its bytes or its text. A file of an older version is brought up to date; a newer one, and
 * one with anything wrong in it, is refused whole, with the first 50 problems. Never throws.
 */
export function openDocument(file: string | Uint8Array): Result<Playbook, readonly Refusal[]> {
  const json = readJson(file);
  if (!json.ok) return refused([json.problem]);
  const root = json.value;
  const head = readHead(root);
  if (!head.ok) return refused(toRefusals(root, [head.problem]));
  const migrated = migrate(head.value.playbook, head.value.version);
  return migrated.ok ? checkPlaybook(migrated.value) : refused([migrated.problem]);
}

/**
 * Judges a value as a playbook of the present version: its shape first, then what must hold between its parts. For a
 * playbook changed in memory it says whether a file of it would open again.
 */
export function checkPlaybook(value: unknown): Result<Playbook, readonly Refusal[]> {
  const parsed = playbookSchema.safeParse(value);
  if (!parsed.success) return refused(toRefusals(value, zodProblems(parsed.error.issues)));
  const problems = crossChecks(parsed.data);
  return problems.length === 0 ? ok(parsed.data) : refused(toRefusals(parsed.data, problems));
}

/** Format and version: read before anything else, for they say how to read the rest. */
function readHead(root: unknown): Result<{ readonly playbook: RawPlaybook; readonly version: number }, Problem> {
  if (!isObject(root)) return refused({ path: [], found: null, expected: `an object with "format": "${FORMAT}"` });
  if (ownValue(root, 'format') !== FORMAT) return refused({ path: ['format'], found: null, expected: `"${FORMAT}"` });
  const version = ownValue(root, 'version');
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    return refused({ path: ['version'], found: null, expected: `a whole number from 1 to ${VERSION}` });
  }
  if (version > VERSION) {
    const found = `version ${version}, written by a newer Gapwright`;
    return refused({ path: ['version'], found, expected: `version ${VERSION} or older: open it with the newer one` });
  }
  return ok({ playbook: root, version });
}
