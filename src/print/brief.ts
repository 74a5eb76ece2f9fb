import type { CannotTellRow, FindingRow, Report } from '../report/index.ts';
import { asSentences, BETWEEN, paragraphBlock, signedBlock, spaceBlock } from './blocks.ts';
import type { Block, Flow } from './flow.ts';
import { FACES } from './page.ts';

/** This many findings stand above the picture; the others come below the tables. */
const AT_THE_TOP = 3;

/** What made the verdict and stands above the picture: findings, and for a check also what cannot be told. */
export function deciding({ findings, cannotTell, verdict }: Report): {
  readonly findings: readonly FindingRow[];
  readonly cannotTell: readonly CannotTellRow[];
} {
  const first = findings.filter((finding) => finding.decides).slice(0, AT_THE_TOP);
  return { findings: first, cannotTell: verdict === 'check' ? cannotTell.slice(0, AT_THE_TOP - first.length) : [] };
}

/** What comes before the picture: what is run here and what moves, and what the verdict rests on. */
export function briefBlocks(flow: Flow, report: Report): readonly Block[] {
  const lines = noteLines(report).map((line) => paragraphBlock(flow, line, FACES.note));
  const { findings, cannotTell } = deciding(report);
  const blocks = [
    ...lines,
    ...(lines.length === 0 ? [] : [spaceBlock(flow, 3)]),
    ...findingBlocks(flow, findings),
    ...cannotTell.map((row) => cannotTellBlock(flow, row)),
  ];
  return blocks.length === 0 ? [] : [...blocks, spaceBlock(flow, BETWEEN - 2)];
}

/** One line each for the check-out, the choice of an either-or call and the motion. */
function noteLines({ checkOut, choice, motion }: Report): readonly string[] {
  const turns = motion?.sides.filter((side) => side.turns).map((side) => side.text) ?? [];
  return [
    ...(checkOut === null ? [] : [`Check-out: ${checkOut.text}.`]),
    ...(choice === null ? [] : [`Either-or: ${asSentences([choice.text, choice.key, choice.hear])}`]),
    ...(motion === null
      ? []
      : [
          `Motion: ${asSentences([motion.text, ...(turns.length === 0 ? ['No call side turns'] : turns), motion.moves])}`,
        ]),
  ];
}

/** Findings, those of one rule that follow each other as one: their sign, what is wrong, and below it why, said once. */
export function findingBlocks(flow: Flow, findings: readonly FindingRow[]): readonly Block[] {
  const groups: FindingRow[][] = [];
  for (const finding of findings) {
    const last = groups.at(-1);
    if (last?.[0]?.rule === finding.rule && last[0].severity === finding.severity) last.push(finding);
    else groups.push([finding]);
  }
  return groups.flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const reasons = group.flatMap((finding) => [finding.matters, ...finding.why.map((each) => each.text)]);
    const why = asSentences([...new Set(reasons)]);
    const texts = group.map((finding) => finding.text);
    return [
      signedBlock(
        flow,
        first.severity,
        texts.length === 1 ? [`${first.title}: ${first.text}`] : [first.title, ...texts],
        why === '' ? '' : `Why: ${why}`,
      ),
    ];
  });
}

/** Something that cannot be told, with its reasons, and the faults it leaves open. */
export function cannotTellBlock(flow: Flow, { text, titles, why }: CannotTellRow): Block {
  const because = asSentences(why.map((each) => each.text));
  const open = asSentences([`Not judged: ${titles.join('; ').toLowerCase()}`]);
  return signedBlock(flow, 'cannot-tell', [text], `${because} ${open}`);
}
