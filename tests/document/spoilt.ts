/** The sample playbook with some places changed, and what it is then refused with. */
import { checkPlaybook, refusalText } from '../../src/document/index.ts';
import { withAt, type Step } from './json.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';

/** What the sample is refused with once these places are changed; empty when it is still sound. */
export function refusals(...changes: readonly (readonly [path: string, value: Json])[]): readonly string[] {
  const spoilt = changes.reduce<Json>((json, [path, value]) => withAt(json, stepsOf(path), value), sampleJson());
  const checked = checkPlaybook(spoilt);
  return checked.ok ? [] : checked.problem.map(refusalText);
}

/** `looks[0].players[3].id` as steps. */
function stepsOf(path: string): readonly Step[] {
  return path
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}
