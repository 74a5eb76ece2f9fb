import { standardChecks } from '../../src/engine/index.ts';

/** The page of all checks, in the order their findings are told; made from the checks themselves. */
export function checksPage(): string {
  const rows = standardChecks.map((check) =>
    [
      `## ${check.title}`,
      '',
      `\`${check.id}\`, ${check.severity}. ${check.matters}`,
      '',
      `Source: ${check.source}.`,
    ].join('\n'),
  );
  return [
    '# What is checked',
    '',
    'Made from the checks by `npm run docs`; an id never changes its meaning. *Stop*: do not install the call. *Check*: the',
    'coach must decide. A finding names the men and gaps it is about, and why.',
    '',
    rows.join('\n\n'),
    '',
    '## Not checked yet',
    '',
    'Coverage of every receiver, force and contain on both sides, run concepts, protections, motion, crossing paths and time',
    'to the passer. An empty report says nothing about them.',
    '',
  ].join('\n');
}
