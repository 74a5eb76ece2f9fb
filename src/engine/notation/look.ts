import { ok, refused, type Result } from '../../base/index.ts';
import { asLookId, asPlayerId, type Look, type OffencePlayer, type Yards } from '../types/index.ts';
import { OFFENCE_KINDS, type OffenceKind } from '../vocabulary.ts';
import type { NotationProblem } from './problem.ts';

/** Where a man on the line is drawn, and the snapper a little closer to the ball. */
const ON_LINE_Y: Yards = -0.6;
const SNAPPER_Y: Yards = -0.4;
/** Two-foot bodies and two-foot splits: centres 4 ft apart (a choice within the published range, toe-to-toe to 6 ft). */
const SPLIT: Yards = 4 / 3;

const KIND_CODES: Readonly<Record<OffenceKind, string>> = {
  snapper: 'sn',
  lineman: 'ol',
  'tight-end': 'te',
  receiver: 'wr',
  back: 'rb',
  passer: 'qb',
};

/** The five linemen at default splits, from the defence's left to its right. */
export const STANDARD_LINE: readonly OffencePlayer[] = [
  { id: asPlayerId('T1'), letter: 'T', kind: 'lineman', x: -2 * SPLIT, y: ON_LINE_Y },
  { id: asPlayerId('G1'), letter: 'G', kind: 'lineman', x: -SPLIT, y: ON_LINE_Y },
  { id: asPlayerId('C'), letter: 'C', kind: 'snapper', x: 0, y: SNAPPER_Y },
  { id: asPlayerId('G2'), letter: 'G', kind: 'lineman', x: SPLIT, y: ON_LINE_Y },
  { id: asPlayerId('T2'), letter: 'T', kind: 'lineman', x: 2 * SPLIT, y: ON_LINE_Y },
];

const PLAYER =
  /^(sn|ol|te|wr|rb|qb):([A-Za-z0-9_-]{1,40})(?:=([^\s@]{1,3}))?@(-?\d+(?:\.\d+)?(?:e-\d+)?)(?:,(-?\d+(?:\.\d+)?(?:e-\d+)?))?$/;

/** The letter a man gets from his name when none is written: his name without digits. */
function letterOf(id: string): string {
  return id.replace(/\d+$/, '') || id;
}

function parsePlayer(token: string): Result<OffencePlayer, NotationProblem> {
  const found = PLAYER.exec(token);
  const [, code, id, letter, x, y] = found ?? [];
  const kind = OFFENCE_KINDS.find((each) => KIND_CODES[each] === code);
  if (kind === undefined || id === undefined || x === undefined) {
    return refused({ found: token, expected: 'a man such as te:Y@4 or rb:T@1.5,-5, or the word line' });
  }
  const onLine = kind === 'snapper' ? SNAPPER_Y : ON_LINE_Y;
  return ok({
    id: asPlayerId(id),
    letter: letter ?? letterOf(id),
    kind,
    x: Number(x),
    y: y === undefined ? onLine : Number(y),
  });
}

/**
 * A look in one line: `line te:Y@4 wr:X@-18 wr:Z@14,-1.5 qb:Q@0,-5 rb:T@1.5,-5`. `line` is the standard five; a man is
 * kind:name@x,y in yards, y left out for a man on the line, `=letter` after the name where the letter differs from it.
 */
export function parseLook(text: string, name = text): Result<Look, NotationProblem> {
  const players: OffencePlayer[] = [];
  for (const token of text.split(/\s+/).filter((each) => each !== '')) {
    if (token === 'line') {
      players.push(...STANDARD_LINE);
      continue;
    }
    const player = parsePlayer(token);
    if (!player.ok) return player;
    players.push(player.value);
  }
  const ids = new Set(players.map((player) => player.id));
  if (ids.size !== players.length) return refused({ found: text, expected: 'every name once' });
  if (players.length !== 11) {
    return refused({ found: `${String(players.length)} men`, expected: 'eleven' });
  }
  if (players.filter((player) => player.kind === 'snapper').length !== 1) {
    return refused({ found: text, expected: 'exactly one snapper' });
  }
  return ok({ id: asLookId('look'), name, players, motion: null, runs: [], protections: [] });
}

/** The line of notation of a look; `parseLook` gives the same men back, in the same order. */
export function printLook(look: Look): string {
  const standard = STANDARD_LINE.every((man, index) => JSON.stringify(look.players[index]) === JSON.stringify(man));
  const rest = standard ? look.players.slice(STANDARD_LINE.length) : look.players;
  return [...(standard ? ['line'] : []), ...rest.map(printPlayer)].join(' ');
}

function printPlayer(player: OffencePlayer): string {
  const letter = player.letter === letterOf(player.id) ? '' : `=${player.letter}`;
  const onLine = player.kind === 'snapper' ? SNAPPER_Y : ON_LINE_Y;
  const y = player.y === onLine ? '' : `,${String(player.y)}`;
  return `${KIND_CODES[player.kind]}:${player.id}${letter}@${String(player.x)}${y}`;
}
