import { standardChecks } from '../../src/engine/index.ts';
import { SEVERITY_LINES } from './checkPage.ts';

/** Checks that are planned; each leaves this list by itself when it is made. */
const PLANNED: readonly (readonly [id: string, about: string])[] = [
  ['path.crossing', 'whether two paths meet'],
  ['align.reach', 'whether a man is in time'],
  ['rush.unblocked-answer', 'whether the hot throw beats the man the protection leaves free'],
];

/** The page of all checks, in the order their findings are told; made from the checks themselves. */
export function checksPage(): string {
  const rows = standardChecks.map(
    (check) => `| [${check.title}](checks/${check.id}.md) | \`${check.id}\` | ${check.severity} | ${check.matters} |`,
  );
  const made = standardChecks.map(({ id }) => id);
  const planned = PLANNED.filter(([id]) => !made.includes(id)).map(([, about]) => about);
  return [
    '# What is checked',
    '',
    'Made from the checks and their examples by `npm run docs`; an id never changes its meaning.',
    '',
    ...Object.entries(SEVERITY_LINES).map(
      ([severity, line]) => `- *${capitalised(severity)}*${line.slice(severity.length)}`,
    ),
    '- *Cannot be told*: a check that cannot know says so, and why. A call with such a line is never clean.',
    '',
    'A finding names the men, gaps and receivers it is about, and why. Where a page says "stop", a single case may be only a',
    'check, or the other way round; the page shows it.',
    '',
    '| what it says | id | usually | why it matters |',
    '| --- | --- | --- | --- |',
    ...rows,
    ...(planned.length === 0
      ? []
      : ['', '## Not checked yet', '', `${capitalised(listed(planned))}. An empty report says nothing about that.`]),
    '',
    '## How to read the examples',
    '',
    'All examples play one odd front of eleven: N nose; LE and RE ends outside the tackles, who contain at base; S and J outside',
    'backers (S to the strength), M and W inside backers (M on the side of S), SS and FS safeties (SS on the side of S), LC and RC',
    'corners. Unless it says otherwise the ball is in the middle, the call goes to the tight end (then receivers, back, field), and',
    'the shell is three deep: call-side safety down to force, the other one in the middle.',
    '',
    "- A look is a line of men, `kind:name@x,y` in yards from the ball; x grows to the DEFENCE's right, y into its backfield.",
    '- `line` is the five linemen, a man without y is on the line.',
    '- `end-call: rush B-call slant (movement)`: the end on the call side slants to the B gap on the call side, told as line movement.',
    '- `may A-away+B-away`: he takes one of these gaps if nobody else has it. `own C-away`: it is his.',
    '',
  ].join('\n');
}

function capitalised(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1] ?? ''}`;
}
