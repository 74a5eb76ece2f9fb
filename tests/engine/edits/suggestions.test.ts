/** What is offered for a finding, rule by rule; every edit offered is applied here and the finding is gone. */
import { describe, expect, it } from 'vitest';
import {
  analyse,
  evidenceOf,
  standardChecks,
  type Analysis,
  type Finding,
  type Setup,
} from '../../../src/engine/index.ts';
import {
  applyEdit,
  candidatesFor,
  sizeOf,
  suggestionsFor,
  type Edit,
  type Library,
  type Suggestions,
} from '../../../src/engine/edits/index.ts';
import { frozen, LOOKS, pressure, say, setup, tell } from '../book.ts';
import { CASES, type Case } from './cases.ts';
import { printEdit } from './editNotation.ts';

const ENOUGH = 200;

interface Asked {
  readonly analysis: Analysis;
  readonly finding: Finding;
  readonly library: Library;
}

function ask({ name: _name, rule, index = 0, shells = [], offers: _offers, keeps: _keeps, ...parts }: Case): Asked {
  const analysis = frozen(analyse(frozen(setup(parts))));
  const finding = analysis.findings.filter((each) => each.rule === rule)[index];
  if (finding === undefined) {
    throw new Error(`No ${rule} among ${analysis.findings.map((each) => each.rule).join(', ')}`);
  }
  return { analysis, finding, library: frozen({ coverages: shells }) };
}

const editsOf = (suggestions: Suggestions): readonly Edit[] => (suggestions.kind === 'none' ? [] : suggestions.edits);
const key = (finding: Finding): string => `${finding.rule} ${evidenceOf(finding)}`;
const count = (analysis: Analysis, finding: Finding): number =>
  analysis.verdict === 'left-out' ? 0 : analysis.findings.filter((each) => key(each) === key(finding)).length;

function after(before: Setup, edit: Edit): Analysis {
  const edited = applyEdit(before, frozen(edit));
  if (!edited.ok) throw new Error(say(edited.problem));
  expect(JSON.stringify(edited.value)).not.toBe(JSON.stringify(before));
  return analyse(frozen(edited.value));
}

describe.each(CASES.map((each) => [`${each.rule}: ${each.name}`, each] as const))('%s', (_, row) => {
  const { analysis, finding, library } = ask(row);
  const suggestions = suggestionsFor(finding, analysis, library, ENOUGH);
  const edits = editsOf(suggestions);

  it('offers what a coach would try', () => {
    expect(suggestions.kind).toBe('offered');
    const lines = edits.map(printEdit);
    expect(lines.filter((line) => row.offers.includes(line))).toEqual(row.offers);
    expect(lines.filter((line) => row.keeps?.includes(line) ?? false)).toEqual([]);
  });

  it('smallest first, each once', () => {
    const sizes = edits.map(sizeOf);
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(new Set(edits.map((edit) => JSON.stringify(edit))).size).toBe(edits.length);
  });

  it('each one, applied, clears the finding and makes no stop', () => {
    const had = new Set(analysis.findings.map(key));
    for (const edit of edits) {
      const then = after(analysis.setup, edit);
      expect([printEdit(edit), count(then, finding) < count(analysis, finding)]).toEqual([printEdit(edit), true]);
      if (then.verdict === 'left-out') continue;
      const made = then.findings.filter(
        (each) => each.severity === 'stop' && each.waived === null && !had.has(key(each)),
      );
      expect([printEdit(edit), made.map(key)]).toEqual([printEdit(edit), []]);
    }
  });

  it('the same input, the same bytes', () => {
    expect(JSON.stringify(suggestionsFor(finding, analysis, library, ENOUGH))).toBe(JSON.stringify(suggestions));
  });
});

describe('rules', () => {
  const NONE: Readonly<Record<string, string>> = {
    'look.illegal': 'the fault is in the drawing of the look, not in the call',
    'words.two-meanings': 'the fault is in the staff dictionary, not in the call',
    'align.tell': 'moving late, or showing it every time, is coaching and not another call',
    'rush.unblocked-answer': 'it says how the rush meets a protection; nothing is wrong with the call',
  };
  const analysis = analyse(setup({ look: LOOKS['11 tight end'], first: pressure('p', []) }));
  const finding = (rule: string): Finding => ({
    rule,
    severity: 'check',
    because: { template: '', data: {}, because: [] },
    who: [],
    gaps: [],
    players: [],
    where: [],
    waived: null,
  });

  it('every check has edits of its own, or says why none is natural to it', () => {
    const said = standardChecks.map(({ id }) => {
      const { because } = candidatesFor(finding(id), analysis, { coverages: [] });
      return [id, because === null ? null : say(because)];
    });
    expect(said).toEqual(standardChecks.map(({ id }) => [id, NONE[id] ?? null]));
  });

  it.each(Object.entries(NONE))('%s: none, and why', (rule, says) => {
    const suggestions = suggestionsFor(finding(rule), analysis, { coverages: [] }, ENOUGH);
    expect(suggestions.kind === 'none' && say(suggestions.because)).toBe(says);
  });

  it('each check with edits is shown by a case', () => {
    const shown = new Set(CASES.map(({ rule }) => rule));
    // Against iso with six coming nothing but leaving the look out is known to help: see the checks' own examples.
    const missing = standardChecks.map(({ id }) => id).filter((id) => NONE[id] === undefined && !shown.has(id));
    expect(missing).toEqual(['box.numbers']);
  });

  it('a rule nobody has heard of: none', () => {
    const suggestions = suggestionsFor(finding('no.such-rule'), analysis, { coverages: [] }, ENOUGH);
    expect(suggestions.kind === 'none' && say(suggestions.because)).toBe('no change that mends this is known');
  });
});

describe('limits', () => {
  const row = CASES[0];
  if (row === undefined) throw new Error('No cases');
  const { analysis, finding, library } = ask(row);
  const all = editsOf(suggestionsFor(finding, analysis, library, ENOUGH));

  it('says when the budget is spent, and keeps what it has', () => {
    const tried = candidatesFor(finding, analysis, library).edits.length;
    for (let budget = 0; budget < tried; budget += 1) {
      const suggestions = suggestionsFor(finding, analysis, library, budget);
      if (suggestions.kind !== 'spent') throw new Error(`Not spent at ${budget}`);
      expect(suggestions.untried).toBe(tried - budget);
      expect(suggestions.edits).toEqual(all.slice(0, suggestions.edits.length));
    }
    expect(suggestionsFor(finding, analysis, library, tried)).toEqual({ kind: 'offered', edits: all });
  });

  it('a call that is not run here needs no mending', () => {
    const { first } = analysis.setup;
    const out = analyse({ ...analysis.setup, first: { ...first, notAgainst: [analysis.setup.look.id] } });
    const suggestions = suggestionsFor(finding, out, library, ENOUGH);
    expect(suggestions.kind === 'none' && say(suggestions.because)).toBe('the call is not run against this look');
  });

  it('a waived finding is mended as any other, and stays no reason to refuse an edit', () => {
    const waivers = [
      { rule: finding.rule, look: analysis.setup.look.id, evidence: evidenceOf(finding), reason: 'we live with it' },
    ];
    const waived = analyse({ ...analysis.setup, waivers });
    const [same] = waived.findings.filter((each) => each.rule === finding.rule);
    if (same === undefined) throw new Error('The finding is gone');
    expect(same.waived).toBe('we live with it');
    expect(editsOf(suggestionsFor(same, waived, library, ENOUGH))).toEqual(all);
  });

  it('not to know is not mended: a tie hides the finding, and is not offered', () => {
    // The number of rushers hangs on a man who is told to come and to drop.
    const torn = analyse(
      setup({
        look: LOOKS['10 trips'],
        first: pressure('p', [tell('inside-call', 'path', 'rush A-call')]),
        second: pressure('q', [tell('inside-call', 'path', 'drop hook-call')]),
        turn: 'same',
        rushers: 5,
      }),
    );
    const [wrong] = torn.findings.filter(({ rule }) => rule === 'rush.count');
    if (wrong === undefined) throw new Error('Nothing is found');
    const suggestions = suggestionsFor(wrong, torn, { coverages: [] }, ENOUGH);
    expect(suggestions.kind === 'none' && say(suggestions.because)).toBe(
      'none of the 1 changes that were tried clears it without a new stop',
    );
  });
});
