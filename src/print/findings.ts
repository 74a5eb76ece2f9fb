import type { Report, WaivedRow } from '../report/index.ts';
import { asSentences, paragraphBlock, signedBlock, titled } from './blocks.ts';
import { cannotTellBlock, deciding, findingBlocks } from './brief.ts';
import type { Block, Flow } from './flow.ts';
import { FACES } from './page.ts';
import type { SheetRoom } from './types.ts';

/**
 * What does not stand above the picture: the other findings (on a room's sheet, of those that do not decide, only its own), what cannot be
 * told, what the coach lives with.
 */
export function otherFindings(flow: Flow, room: SheetRoom | null, report: Report): readonly Block[] {
  const top = deciding(report);
  const above = top.findings.length + top.cannotTell.length > 0;
  const below = report.findings.filter((finding) => !top.findings.includes(finding));
  const rest = below.filter(
    ({ who, decides }) => room === null || decides || who.length === 0 || who.some((role) => room.roles.includes(role)),
  );
  const untold = report.cannotTell.filter((row) => !top.cannotTell.includes(row));
  return [
    ...titled(flow, above ? 'Other findings' : 'Findings', findingBlocks(flow, rest)),
    ...titled(
      flow,
      'Cannot be told',
      untold.map((row) => cannotTellBlock(flow, row)),
    ),
    ...titled(
      flow,
      'Waived',
      report.waived.map((row) => waivedBlock(flow, row)),
    ),
    paragraphBlock(flow, lastWords(report, below.length - rest.length), FACES.small),
  ];
}

function waivedBlock(flow: Flow, { severity, title, text, reason }: WaivedRow): Block {
  return signedBlock(flow, severity, [`${title}: ${text}`], `Reason: ${reason}`);
}

/** What was looked for, so that an empty list is not taken for more than it is, and what only the staff's sheet has. */
function lastWords({ checked, findings }: Report, elsewhere: number): string {
  return asSentences([
    elsewhere === 0 ? '' : `${countOf(elsewhere)} about other rooms: on the sheet for everybody`,
    checked.length > 0 && findings.length === 0 ? 'Nothing was found' : '',
    checked.length === 0
      ? ''
      : `Looked for ${String(checked.length)} kinds of fault, which the program lists; what it was not told it cannot see`,
  ]);
}

function countOf(count: number): string {
  return count === 1 ? '1 finding' : `${String(count)} findings`;
}
