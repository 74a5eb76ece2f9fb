/** What counts once is said once: each promise broken alone, beside a lawful neighbour. */
import { describe, expect, it } from 'vitest';
import { sampleJson } from './samplePlaybook.ts';
import { refusals } from './spoilt.ts';

describe('ids are used once', () => {
  it.each([
    ['roles[1].id', 'LE', 'Nose'],
    ['coverages[1].id', 'three-deep', 'Man with a free safety'],
    ['looks[1].id', 'tight', 'Spread'],
    ['pressures[1].id', 'anvil', 'Bellows'],
    ['calls[1].id', 'anvil', 'Anvil and Bellows'],
  ])('%s', (path, value, name) => {
    expect(refusals([path, value])).toContain(
      `${path} (${name}): found "${value}" (text), expected an id used only once in this part`,
    );
  });

  it.each(['fronts', 'opponents', 'sheets'])('a second of the same in %s', (part) => {
    const own = sampleJson()[part];
    if (!Array.isArray(own)) throw new Error(`No list ${part}`);
    expect(refusals([part, [...own, ...own]])).toEqual([
      expect.stringMatching(`^${part}\\[1\\]\\.id .*expected an id used only once in this part$`),
    ]);
  });

  it('two players with one id, in one look only', () => {
    expect(refusals(['looks[0].players[1].id', 'T1'])).toEqual([
      'looks[0].players[1].id (Tight right): found "T1" (text), expected an id used only once in this look',
    ]);
    expect(refusals(['looks[0].players[1].id', 'H'])).toEqual([]);
  });

  it('a role twice in a front', () => {
    expect(refusals(['fronts[0].roles[4].role', 'O'])).toEqual([
      'fronts[0].roles[4].role (Odd): found "O" (text), expected eleven different roles',
    ]);
  });

  it('two spots by hand for one role in one look', () => {
    const spot = { look: 'spread', role: 'SS', x: 1, y: 9 };
    expect(refusals(['fronts[0].byHand', [spot, { ...spot, x: 2 }]])).toEqual([
      'fronts[0].byHand[1].role (Odd): found "SS" (text), expected one spot by hand for a role in a look',
    ]);
    expect(refusals(['fronts[0].byHand', [spot, { ...spot, look: 'tight' }]])).toEqual([]);
  });

  it('two words for one technique', () => {
    const word = { on: 'tackle', leverage: 'head', label: '4' };
    expect(refusals(['words.techniques', [word, { ...word, label: '44' }]])).toEqual([
      'words.techniques[1].leverage: found "head" (text), expected one word for a body and leverage',
    ]);
    expect(refusals(['words.techniques', [word, { ...word, leverage: 'inside' }]])).toEqual([]);
  });

  it('a run, or a protection, twice in a look', () => {
    const run = { concept: 'power', side: 'right', passOption: false };
    expect(refusals(['looks[0].runs', [run, { ...run }]])).toEqual([
      'looks[0].runs[1].concept (Tight right): found "power" (text), expected each run to a side once',
    ]);
    for (const other of [{ side: 'left' }, { concept: 'duo' }, { passOption: true }]) {
      expect(refusals(['looks[0].runs', [run, { ...run, ...other }]])).toEqual([]);
    }
    expect(refusals(['looks[0].runs', [run]], ['looks[1].runs', [run]])).toEqual([]);
    const protection = { protection: 'max', slideSide: 'left' };
    expect(refusals(['looks[0].protections', [protection, { ...protection }]])).toEqual([
      'looks[0].protections[1].protection (Tight right): found "max" (text), expected each protection to a side once',
    ]);
    for (const other of [{ slideSide: 'right' }, { protection: 'man-six' }]) {
      expect(refusals(['looks[0].protections', [protection, { ...protection, ...other }]])).toEqual([]);
    }
  });

  it('a man twice among those who may take a zone', () => {
    const takers = 'coverages[0].needs[0].takers';
    const role = { kind: 'role', role: 'SS' };
    const group = { kind: 'group', group: 'safeties', side: 'call' };
    expect(refusals([takers, [role, group, role]])).toEqual([
      `${takers}[2] (Three deep): found an object, expected each taker of a zone once`,
    ]);
    expect(refusals([takers, [group, group]])).toEqual([
      `${takers}[1] (Three deep): found an object, expected each taker of a zone once`,
    ]);
    expect(refusals([takers, [role, group, { ...group, side: 'away' }, { ...role, role: 'FS' }]])).toEqual([]);
    // The same zone may be needed twice: two men drop there.
    const need = { when: [], zone: 'hook', side: 'call', takers: [role] };
    expect(refusals(['coverages[0].needs', [need, need]])).toEqual([]);
  });

  it('two reasons for one finding', () => {
    const waiver = { rule: 'align.tell', look: 'tight', evidence: 'LI||', reason: 'It is late.' };
    expect(refusals(['calls[1].waivers', [waiver, { ...waiver, reason: 'He is fast.' }]])).toEqual([
      'calls[1].waivers[1].evidence (Anvil and Bellows): found "LI||" (text), expected one reason for a finding',
    ]);
    for (const other of [{ rule: 'align.reach' }, { look: 'spread' }, { evidence: 'RI||' }]) {
      expect(refusals(['calls[1].waivers', [waiver, { ...waiver, ...other }]])).toEqual([]);
    }
    expect(refusals(['calls[0].waivers', [waiver]])).toEqual([]);
  });

  it('two check-out tables for a call, or two rows for a formation', () => {
    const rows = [{ formation: 'trips', action: { kind: 'run' } }];
    expect(
      refusals([
        'checkOuts',
        [
          { call: 'both', rows },
          { call: 'both', rows: [] },
        ],
      ]),
    ).toEqual(['checkOuts[1].call: found "both" (text), expected one table for a call']);
    expect(
      refusals([
        'checkOuts',
        [
          { call: 'both', rows },
          { call: 'anvil', rows },
        ],
      ]),
    ).toEqual([]);
    const again = { formation: 'trips', action: { kind: 'swap' } };
    expect(refusals(['checkOuts[0].rows', [...rows, again]])).toEqual([
      'checkOuts[0].rows[1].formation: found "trips" (text), expected one row for a formation',
    ]);
    expect(refusals(['checkOuts[0].rows', [...rows, { ...again, formation: 'quads' }]])).toEqual([]);
  });

  it('a meaning twice in the dictionary; two meanings of a word are for the coach to see', () => {
    const entry = { word: 'hinge', meaning: 'the man who keeps the passer inside' };
    expect(refusals(['dictionary', [entry, { ...entry }]])).toEqual([
      'dictionary[1].meaning: found "the man who keeps the passer inside" (text), expected each meaning of a word once',
    ]);
    expect(refusals(['dictionary', [entry, { ...entry, meaning: 'the deep middle' }]])).toEqual([]);
    expect(refusals(['dictionary', [entry, { ...entry, word: 'latch' }]])).toEqual([]);
  });
});
