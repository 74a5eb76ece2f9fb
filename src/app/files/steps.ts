import { checkPlaybook, saveDocument, type Playbook } from '../../document/index.ts';
import type { Step, Steps } from '../../store/index.ts';

/**
 * The history as it is kept beside the playbook: whole playbooks, not differences. The browser writes an object that stands
 * in many of them once, so a step costs what it changed.
 */
export interface KeptSteps extends Steps {
  /** The playbook between the two: steps that lead to another one are not taken up. */
  readonly present: Playbook;
}

/** How far undo goes after a reload, each way. */
const STEPS_OVER_RELOAD = 100;

/** The nearest steps of a history, to be kept. */
export function stepsToKeep(present: Playbook, { past, change, future }: Steps): KeptSteps {
  return { past: past.slice(-STEPS_OVER_RELOAD), present, change, future: future.slice(-STEPS_OVER_RELOAD) };
}

/**
 * What was kept as steps, as far as it is sound: from the nearest step back to the first that is not. Null: it does not
 * belong to that playbook, or was written by another version. It waits for `pause` before each step, since a whole
 * playbook is judged in it.
 */
export async function readSteps(kept: unknown, opened: Playbook, pause: () => Promise<void>): Promise<Steps | null> {
  if (!isRecord(kept) || !Array.isArray(kept['past']) || !Array.isArray(kept['future'])) return null;
  const { present, change } = kept;
  if (!isChange(change) || !isPlaybook(present) || saveDocument(present) !== saveDocument(opened)) return null;
  return { past: await sound(kept['past'], pause), change, future: await sound(kept['future'], pause) };
}

async function sound(steps: readonly unknown[], pause: () => Promise<void>): Promise<readonly Step[]> {
  const read: Step[] = [];
  for (const step of [...steps].reverse()) {
    await pause();
    if (!isStep(step)) break;
    read.unshift(step);
  }
  return read;
}

function isStep(value: unknown): value is Step {
  return isRecord(value) && isChange(value['change']) && isPlaybook(value['playbook']);
}

function isChange(value: unknown): value is Step['change'] {
  if (value === null) return true;
  return isRecord(value) && typeof value['label'] === 'string' && isLookName(value['look']);
}

function isLookName(value: unknown): boolean {
  return value === null || typeof value === 'string';
}

/** What passes is kept as it is, not as a copy: parts that two steps share stay one object. */
function isPlaybook(value: unknown): value is Playbook {
  return checkPlaybook(value).ok;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
