import { readFileSync } from 'node:fs';
import { openDocument, type Playbook } from '../../src/document/index.ts';
import { createAppStore, type AppStore } from '../../src/store/index.ts';

const opened = openDocument(readFileSync(new URL('../../demo-data/playbook.json', import.meta.url)));

/** The demo playbook, which is real enough to work on and ours. */
export function demo(): Playbook {
  if (!opened.ok) throw new Error('The demo playbook does not open');
  return opened.value;
}

/** A store that may be written to, on the demo. */
export function demoStore(): AppStore {
  return createAppStore(demo(), { readOnly: false });
}

/** The first of a list that a test takes for granted. */
export function firstOf<Item>(list: readonly Item[]): Item {
  const [item] = list;
  if (item === undefined) throw new Error('The demo playbook lacks what this test needs');
  return item;
}

/** A value that must have come out well. */
export function valueOf<Value>(result: { readonly ok: true; readonly value: Value } | { readonly ok: false }): Value {
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result)}`);
  return result.value;
}
