import {
  gapKey,
  standardChecks,
  type Analysis,
  type Combined,
  type Finding,
  type GapOwner,
  type OwnedGap,
  type ResolvedPressure,
  type Telling,
} from '../engine/index.ts';
import { fill } from './fill.ts';
import { jobRow } from './jobRow.ts';
import type { FindingRow, GapRow, LinemanRow, Report } from './types.ts';
import { NOTHING } from './words/cells.ts';
import { makeLexicon, type Lexicon } from './words/lexicon.ts';
import type { StaffWords } from './words/staffWords.ts';
import { STATUS_WORDS, VERDICT_WORDS } from './words/verdicts.ts';

/**
 * One call in one look in words: reads an analysis, computes no football. The same analysis and words give the same
 * report to the byte. Throws where the analysis breaks a promise: an id that is not in its setup, a sentence with an
 * empty blank, a finding of a check nobody knows.
 */
export function buildReport(analysis: Analysis, staff: StaffWords): Report {
  const lexicon = makeLexicon(analysis.setup, staff);
  const leftOut = analysis.verdict === 'left-out';
  const paired = analysis.second !== null;
  const linemen = analysis.assignments.filter(({ combined }) => combined.role.room === 'line');
  return {
    verdict: analysis.verdict,
    verdictText: VERDICT_WORDS[analysis.verdict],
    sides: sideRows(analysis, lexicon),
    linemen: linemen.map(({ combined }) => linemanRow(combined, paired, lexicon)),
    jobs: analysis.assignments.map((assignment) => jobRow(assignment, analysis, lexicon)),
    gaps: analysis.gaps.map((gap) => gapRow(gap, lexicon)),
    // A call that is not run against this look is not judged.
    findings: leftOut ? [] : findingRows(analysis.findings, lexicon),
    checked: leftOut ? [] : standardChecks.map((check) => check.title),
  };
}

function sideRows(analysis: Analysis, lexicon: Lexicon): Report['sides'] {
  const row = (which: 'first' | 'second', { side }: ResolvedPressure): Report['sides'][number] => ({
    pressure: lexicon.pressure(which),
    text: `Call side: ${side.kind === 'decided' ? side.side : 'a tie'}`,
    why: fill(side.because, lexicon),
  });
  return [row('first', analysis.first), ...(analysis.second === null ? [] : [row('second', analysis.second)])];
}

function linemanRow(combined: Combined, paired: boolean, lexicon: Lexicon): LinemanRow {
  const { role, first, second, status } = combined;
  const says = (telling: Telling | null): string => {
    if (telling === null) return 'Nothing';
    return telling.kind === 'told' ? lexicon.job(telling.job) : fill(telling.because, lexicon).text;
  };
  return {
    role: role.id,
    letter: role.letter,
    name: role.name,
    first: says(first),
    second: paired ? says(second) : NOTHING,
    status,
    verdict: STATUS_WORDS[status],
    why: fill(combined.because, lexicon),
  };
}

function gapRow({ gap, owners }: OwnedGap, lexicon: Lexicon): GapRow {
  return {
    gap,
    name: lexicon.gap(gap),
    owners: owners.length === 0 ? 'nobody' : owners.map((owner) => ownerText(owner, lexicon)).join(', '),
    open: owners.length === 0,
  };
}

function ownerText(owner: GapOwner, lexicon: Lexicon): string {
  const notes = [
    ...(owner.shared ? ['two-gap'] : []),
    ...(owner.how === 'filled' ? ['filled in'] : []),
    ...(owner.sure ? [] : ['if he comes']),
  ];
  const who = lexicon.role(owner.role);
  return notes.length === 0 ? who : `${who} (${notes.join(', ')})`;
}

/** Findings keep the engine's order. Two of one rule about the same people get keys of their own. */
function findingRows(findings: readonly Finding[], lexicon: Lexicon): readonly FindingRow[] {
  const used = new Map<string, number>();
  return findings.map((finding) => {
    const about = [...finding.who, ...finding.gaps.map(gapKey), ...finding.players].join(',');
    const key = `${finding.rule}:${about}`;
    const times = (used.get(key) ?? 0) + 1;
    used.set(key, times);
    return findingRow(finding, times === 1 ? key : `${key}#${String(times)}`, lexicon);
  });
}

function findingRow(finding: Finding, key: string, lexicon: Lexicon): FindingRow {
  const check = standardChecks.find((each) => each.id === finding.rule);
  if (check === undefined) throw new Error(`No check is called ${finding.rule}`);
  const why = fill(finding.because, lexicon);
  return {
    key,
    rule: finding.rule,
    title: check.title,
    severity: finding.severity,
    text: why.text,
    matters: check.matters,
    why: why.because,
    who: finding.who,
    gaps: finding.gaps,
    players: finding.players,
  };
}
