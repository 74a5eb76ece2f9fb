import { readFileSync } from 'node:fs';
import { openDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import {
  analyse,
  PLACES,
  type Analysis,
  type Call,
  type LookId,
  type Place,
  type Setup,
} from '../../src/engine/index.ts';

/** The committed file, as text. */
export const fileText = readFileSync(new URL('../../demo-data/playbook.json', import.meta.url), 'utf8');

function open(): Playbook {
  const opened = openDocument(fileText);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem, null, 1));
  return opened.value;
}

/** The demo playbook, opened as the program opens any file. */
export const playbook = open();

/** A call of the demo by its id. */
export function callOf(id: string): Call {
  const call = playbook.calls.find((each) => each.id === id);
  if (call === undefined) throw new Error(`The demo has no call ${id}`);
  return call;
}

/** One call in one look at one ball spot, as the engine takes it. */
export function setupOf(call: Call, look: LookId, spot: Place): Setup {
  const setup = toSetup(playbook, { call, look, spot });
  if (!setup.ok) throw new Error(JSON.stringify(setup.problem));
  return setup.value;
}

/** One call in every look at every ball spot, in the order of the playbook, spots from left to right. */
export function everywhere(call: Call): readonly Analysis[] {
  return playbook.looks.flatMap((look) => PLACES.map((spot) => analyse(setupOf(call, look.id, spot))));
}

/**
 * One sign for what an analysis says: `.` clean, `-` left out, `n` the nose alone is told two things, `e` both ends, `l`
 * all three linemen; anything else in full, so that a table never hides it.
 */
export function sign(analysis: Analysis): string {
  if (analysis.verdict === 'left-out') return '-';
  if (analysis.verdict === 'clean') return '.';
  const said = analysis.findings.map(({ rule, who }) => `${rule} ${who.join('+')}`).sort();
  switch (said.join(', ')) {
    case 'line.two-jobs nose':
      return 'n';
    case 'line.two-jobs left-end, line.two-jobs right-end':
      return 'e';
    case 'line.two-jobs left-end, line.two-jobs nose, line.two-jobs right-end':
      return 'l';
    default:
      return `[${said.join(', ')}]`;
  }
}

/** The signs of a call, one text of three (left hash, middle, right hash) for each look. */
export function rows(call: Call): Readonly<Record<string, string>> {
  const signs = everywhere(call).map(sign);
  return Object.fromEntries(
    playbook.looks.map((look, index) => [look.id, signs.slice(index * 3, index * 3 + 3).join('')]),
  );
}
