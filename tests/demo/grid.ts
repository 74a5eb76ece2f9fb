import { readFileSync } from 'node:fs';
import { openDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import {
  analyse,
  PLACES,
  type Analysis,
  type Call,
  type Finding,
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

const worked = new Map<Call, readonly Analysis[]>();

/** One call in every look at every ball spot, in the order of the playbook, spots from left to right. */
export function everywhere(call: Call): readonly Analysis[] {
  const known = worked.get(call);
  if (known !== undefined) return known;
  const all = playbook.looks.flatMap((look) => PLACES.map((spot) => analyse(setupOf(call, look.id, spot))));
  worked.set(call, all);
  return all;
}

/** What a coach must act on: findings at stop or check that he has not waived. */
export function grave({ findings }: Analysis): readonly Finding[] {
  return findings.filter(({ severity, waived }) => severity !== 'note' && waived === null);
}

/** One letter for each thing a table speaks of; a capital is a stop. */
function letter({ rule, who }: Finding): string {
  switch (rule) {
    case 'line.two-jobs':
      return who.includes(NOSE) ? 'N' : 'E';
    case 'line.two-manners':
      return who.includes(NOSE) ? 'n' : 'e';
    case 'side.motion-flips':
      return 'f';
    case 'cover.mismatch':
      return 'b';
    case 'conflict.run-pass':
      return 'r';
    case 'words.two-meanings':
      return 'w';
    default:
      return `[${rule} ${who.join('+')}]`;
  }
}
const NOSE = playbook.roles.find(({ letter: drawn }) => drawn === 'N')?.id ?? never();

function never(): never {
  throw new Error('The demo has no nose');
}

/**
 * One sign for what an analysis says: `.` nothing a coach must act on, `-` left out, `N` the nose is told two jobs, `E` an end
 * is, `n` and `e` taught two ways, `f` the motion turns the call, `b` a big man with a receiver, `r` one man with run and pass,
 * `w` a word with two meanings; anything else in full, so that a table never hides it.
 */
export function sign(analysis: Analysis): string {
  if (analysis.verdict === 'left-out') return '-';
  const said = new Set(grave(analysis).map(letter));
  return said.size === 0 ? '.' : [...said].sort().join('');
}

/** The signs of a call: a text of three (left hash, middle, right hash) for each look. */
export function rows(call: Call): Readonly<Record<string, string>> {
  const signs = everywhere(call).map(sign);
  return Object.fromEntries(
    playbook.looks.map((look, index) => [look.id, signs.slice(index * 3, index * 3 + 3).join(' ')]),
  );
}

/** The looks that do not say `. . .`, with what they say. */
export function exceptions(call: Call): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(rows(call)).filter(([, said]) => said !== '. . .'));
}
