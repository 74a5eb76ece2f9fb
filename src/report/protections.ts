import {
  PROTECTIONS,
  type Block,
  type BlockBy,
  type IdleBlocker,
  type KnownProtection,
  type ProtectionAnswer,
  type UnblockedRusher,
} from '../engine/index.ts';
import { fill } from './fill.ts';
import type { BlockRow, FreeRow, ProtectionRow } from './types.ts';
import type { Lexicon } from './words/lexicon.ts';
import { capitalised, lowered } from './words/lists.ts';

type Idle = ProtectionRow['idle'][number];

/** One protection the look is known for, in words. */
export function protectionRow(answer: ProtectionAnswer, lexicon: Lexicon): ProtectionRow {
  const name = protectionName(answer.known);
  if (answer.kind === 'not-here') {
    const why = fill(answer.because, lexicon);
    const headline = `Cannot be had from this look: ${lowered(why.text)}`;
    return { name, here: false, headline, free: [], blocks: [], idle: [], notes: [], hot: null, why };
  }
  const { picture } = answer;
  const free = picture.unblocked.map((each) => freeRow(each, lexicon));
  const hot =
    picture.hot === null ? null : { text: `hot to the ${picture.hot.side}`, why: fill(picture.hot.why, lexicon) };
  return {
    name,
    here: true,
    headline: headline(free, picture.blocks.length, hot?.text ?? null),
    free,
    blocks: picture.blocks.map((each) => blockRow(each, lexicon)),
    idle: picture.idle.map((each) => idleRow(each, lexicon)),
    notes: [...picture.mismatches, ...picture.passOff].map((each) => fill(each.because, lexicon)),
    hot,
    why: fill(picture.because, lexicon),
  };
}

function protectionName({ protection, slideSide }: KnownProtection): string {
  const named = PROTECTIONS.find((each) => each.id === protection);
  if (named === undefined) throw new Error(`No protection is called ${protection}`);
  // A man protection turns nowhere; its side only breaks ties.
  return named.scheme === 'man' ? named.name : `${named.name}, to the ${slideSide}`;
}

function headline(free: readonly FreeRow[], blocked: number, hot: string | null): string {
  if (free.length === 0) return blocked === 0 ? 'Nobody comes' : 'Everybody is blocked';
  const come = free.map(({ rusher, through }) => `${rusher} through ${through}`).join(', ');
  return capitalised(`free: ${come}${hot === null ? '' : `; ${hot}`}`);
}

function freeRow({ rusher, endGap, because }: UnblockedRusher, lexicon: Lexicon): FreeRow {
  return {
    rusher: lexicon.role(rusher),
    through: lexicon.gap(endGap),
    why: fill(because, lexicon),
    who: [rusher],
    players: [],
    gaps: [endGap],
  };
}

const BY_WORDS: Readonly<Record<BlockBy, string>> = { man: 'his man', gap: 'in his gap', scan: 'on his read' };

function blockRow({ blocker, rusher, by, because }: Block, lexicon: Lexicon): BlockRow {
  return {
    blocker: lexicon.playerLetter(blocker),
    rusher: lexicon.role(rusher),
    how: BY_WORDS[by],
    why: fill(because, lexicon),
    who: [rusher],
    players: [blocker],
    gaps: [],
  };
}

function idleRow({ blocker, because }: IdleBlocker, lexicon: Lexicon): Idle {
  return { blocker: lexicon.player(blocker), players: [blocker], why: fill(because, lexicon) };
}
