import type { Who } from '../../engine/index.ts';
import type { Path, Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

const PARTS = ['roles', 'fronts', 'coverages', 'looks', 'pressures', 'calls', 'opponents', 'sheets'] as const;

/** Every id once in its part, and nothing said twice where only one of the two could count. */
export function duplicates(playbook: Playbook): readonly Problem[] {
  return [
    ...PARTS.flatMap((part) =>
      repeated(
        playbook[part].map(({ id }) => id),
        [part],
        'id',
        'an id used only once in this part',
      ),
    ),
    ...playbook.looks.flatMap((look, index) => inLook(look, ['looks', index])),
    ...playbook.fronts.flatMap((front, index) => inFront(front, ['fronts', index])),
    ...playbook.coverages.flatMap(({ needs }, index) =>
      needs.flatMap(({ takers }, at) =>
        repeated(takers.map(whoKey), ['coverages', index, 'needs', at, 'takers'], null, 'each taker of a zone once'),
      ),
    ),
    ...playbook.calls.flatMap(({ waivers }, index) =>
      repeated(
        waivers.map(({ rule, look, evidence }) => `${rule} ${look} ${evidence}`),
        ['calls', index, 'waivers'],
        'evidence',
        'one reason for a finding',
      ),
    ),
    ...inCheckOuts(playbook),
    ...inWords(playbook),
  ];
}

function inLook({ players, runs, protections }: Playbook['looks'][number], path: Path): readonly Problem[] {
  return [
    ...repeated(
      players.map(({ id }) => id),
      [...path, 'players'],
      'id',
      'an id used only once in this look',
    ),
    ...repeated(
      runs.map(({ concept, side, passOption }) => `${concept} ${side} ${passOption}`),
      [...path, 'runs'],
      'concept',
      'each run to a side once',
    ),
    ...repeated(
      protections.map(({ protection, slideSide }) => `${protection} ${slideSide}`),
      [...path, 'protections'],
      'protection',
      'each protection to a side once',
    ),
  ];
}

function inFront({ roles, byHand }: Playbook['fronts'][number], path: Path): readonly Problem[] {
  return [
    ...repeated(
      roles.map(({ role }) => role),
      [...path, 'roles'],
      'role',
      'eleven different roles',
    ),
    ...repeated(
      byHand.map(({ look, role }) => `${look} ${role}`),
      [...path, 'byHand'],
      'role',
      'one spot by hand for a role in a look',
    ),
  ];
}

function inCheckOuts({ checkOuts }: Playbook): readonly Problem[] {
  return [
    ...repeated(
      checkOuts.map(({ call }) => call),
      ['checkOuts'],
      'call',
      'one table for a call',
    ),
    ...checkOuts.flatMap(({ rows }, index) =>
      repeated(
        rows.map(({ formation }) => formation),
        ['checkOuts', index, 'rows'],
        'formation',
        'one row for a formation',
      ),
    ),
  ];
}

/** A word may be in the dictionary with two meanings: a check says so, and the coach decides. */
function inWords({ dictionary, words }: Playbook): readonly Problem[] {
  return [
    ...repeated(
      dictionary.map(({ word, meaning }) => JSON.stringify([word, meaning])),
      ['dictionary'],
      'meaning',
      'each meaning of a word once',
    ),
    ...repeated(
      words.techniques.map(({ on, leverage }) => `${on} ${leverage}`),
      ['words', 'techniques'],
      'leverage',
      'one word for a body and leverage',
    ),
  ];
}

function whoKey(who: Who): string {
  return who.kind === 'role' ? who.role : `${who.group} ${who.side}`;
}

/** A problem at each entry (null), or at a field of it, whose key an earlier entry of the list has. */
function repeated(keys: readonly string[], list: Path, field: string | null, expected: string): readonly Problem[] {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  keys.forEach((key, index) => {
    const path = field === null ? [...list, index] : [...list, index, field];
    if (seen.has(key)) problems.push({ path, found: null, expected });
    seen.add(key);
  });
  return problems;
}
