import { standardChecks, type Analysis, type GapOwner, type OwnedGap, type ResolvedPressure } from '../engine/index.ts';
import { checkOutNote, choiceNote, motionNote } from './callNotes.ts';
import { coverageSection } from './coverage.ts';
import { fill } from './fill.ts';
import { cannotTellRows, countText, findingRows } from './findings.ts';
import { jobRow } from './jobRow.ts';
import { pairRow } from './pairRow.ts';
import { protectionRow } from './protections.ts';
import { runRow } from './runs.ts';
import type { GapRow, Report } from './types.ts';
import { makeLexicon, type Lexicon } from './words/lexicon.ts';
import type { StaffWords } from './words/staffWords.ts';
import { VERDICT_WORDS } from './words/verdicts.ts';

/**
 * One call in one look in words: reads an analysis, computes no football. The same analysis and words give the same
 * report to the byte. Throws where the analysis breaks a promise: an id that is not in its setup, a sentence with an
 * empty blank, a finding of a check nobody knows.
 */
export function buildReport(analysis: Analysis, staff: StaffWords): Report {
  const lexicon = makeLexicon(analysis.setup, staff);
  const { verdict, assignments } = analysis;
  const leftOut = verdict === 'left-out';
  const paired = analysis.second !== null;
  const pair = assignments.map((assignment) => pairRow(assignment, paired, lexicon));
  // A call that is not run against this look is not judged.
  const findings = findingRows(leftOut ? [] : analysis.findings, verdict, lexicon);
  const cannotTell = cannotTellRows(leftOut ? [] : analysis.undetermined, lexicon);
  return {
    verdict,
    verdictText: VERDICT_WORDS[verdict],
    counts: leftOut ? 'not judged' : countText(findings, cannotTell),
    sides: sideRows(analysis, lexicon),
    checkOut: checkOutNote(analysis, lexicon),
    choice: choiceNote(analysis, lexicon),
    motion: motionNote(analysis, lexicon),
    pair,
    linemen: pair.filter((_, index) => assignments[index]?.combined.role.room === 'line'),
    jobs: assignments.map((assignment) => jobRow(assignment, analysis, lexicon)),
    gaps: analysis.gaps.map((gap) => gapRow(gap, lexicon)),
    coverage: coverageSection(analysis, lexicon),
    runs: analysis.runs.map((run) => runRow(run, lexicon)),
    protections: analysis.protections.map((protection) => protectionRow(protection, lexicon)),
    findings: findings.standing,
    waived: findings.waived,
    cannotTell,
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
