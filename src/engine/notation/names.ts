import { asGroupId, asPlayerId, asRoleId } from '../types/index.ts';
import type { Gap, GapRef, LookNames, Names, ReceiverRef, RuleNames, SideRef, Who } from '../types/index.ts';
import { BODIES, GAP_LETTERS, SIDES, type Side } from '../vocabulary.ts';
import { wordOf } from './problem.ts';

/** How the names inside a job are written and read. `read` gives null for text that is no such name. */
export interface NameCodec<N extends Names> {
  readonly gap: Codec<N['gap']>;
  readonly who: Codec<N['who']>;
  readonly side: Codec<N['side']>;
  readonly receiver: Codec<N['receiver']>;
}

interface Codec<Value> {
  readonly read: (text: string) => Value | null;
  readonly write: (value: Value) => string;
  readonly expected: string;
}

/** Splits at the last dash: "outside:end-call" → ["outside:end", "call"]. */
function splitLast(text: string): readonly [string, string] {
  const at = text.lastIndexOf('-');
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
}

const SIDE_REFS: readonly SideRef[] = ['call', 'away', 'mine', 'other', ...SIDES];

/** Names in one look: gaps `A-left`, men and receivers by their ids. */
export const lookNames: NameCodec<LookNames> = {
  gap: {
    read: (text): Gap | null => {
      const [head, tail] = splitLast(text);
      const letter = wordOf(GAP_LETTERS, head);
      const side = wordOf(SIDES, tail);
      return letter === null || side === null ? null : { side, letter };
    },
    write: (gap) => `${gap.letter}-${gap.side}`,
    expected: 'a gap such as A-left',
  },
  who: { read: (text) => (text === '' ? null : asRoleId(text)), write: (who) => who, expected: 'a role' },
  side: {
    read: (text): Side | 'middle' | null => wordOf([...SIDES, 'middle'] as const, text),
    write: (side) => side,
    expected: 'left, middle or right',
  },
  receiver: { read: (text) => asPlayerId(text), write: (player) => player, expected: 'a player' },
};

/** Names in a rule: gaps `A-call`, `edge-away`, `outside:end-call`; men `end-call` or `@role`; receivers `#2-call`, `back`, `back2`. */
export const ruleNames: NameCodec<RuleNames> = {
  gap: { read: readGapRef, write: writeGapRef, expected: 'a gap such as A-call, edge-away or outside:end-call' },
  who: { read: readWho, write: writeWho, expected: 'a man such as end-call or @role' },
  side: {
    read: (text): SideRef | 'middle' | null => wordOf([...SIDE_REFS, 'middle'] as const, text),
    write: (side) => side,
    expected: 'call, away, mine, other, left, right or middle',
  },
  receiver: { read: readReceiver, write: writeReceiver, expected: 'a receiver such as #2-call, or back' },
};

function readGapRef(text: string): GapRef | null {
  const [head, tail] = splitLast(text);
  const side = wordOf(SIDE_REFS, tail);
  if (side === null) return null;
  if (head === 'edge') return { kind: 'edge', side };
  const body = head.startsWith('outside:') ? wordOf(BODIES, head.slice('outside:'.length)) : null;
  if (body !== null) return { kind: 'outside', side, body };
  const letter = wordOf(GAP_LETTERS, head);
  return letter === null ? null : { kind: 'letter', side, letter };
}

function writeGapRef(gap: GapRef): string {
  switch (gap.kind) {
    case 'letter':
      return `${gap.letter}-${gap.side}`;
    case 'edge':
      return `edge-${gap.side}`;
    case 'outside':
      return `outside:${gap.body}-${gap.side}`;
  }
}

function readWho(text: string): Who | null {
  if (text.startsWith('@')) return text === '@' ? null : { kind: 'role', role: asRoleId(text.slice(1)) };
  const [head, tail] = splitLast(text);
  const side = wordOf(['call', 'away'] as const, tail);
  return side === null || head === '' ? null : { kind: 'group', group: asGroupId(head), side };
}

function writeWho(who: Who): string {
  return who.kind === 'role' ? `@${who.role}` : `${who.group}-${who.side}`;
}

function readReceiver(text: string): ReceiverRef | null {
  const back = /^back([1-4]?)$/.exec(text);
  if (back !== null) return { kind: 'back', number: Number(back[1] === '' ? 1 : back[1]) };
  const [head, tail] = splitLast(text);
  const side = wordOf(SIDE_REFS, tail);
  const number = /^#([1-9]|1[01])$/.exec(head)?.[1];
  return side === null || number === undefined ? null : { kind: 'number', side, number: Number(number) };
}

function writeReceiver(receiver: ReceiverRef): string {
  if (receiver.kind === 'back') return receiver.number === 1 ? 'back' : `back${String(receiver.number)}`;
  return `#${String(receiver.number)}-${receiver.side}`;
}
