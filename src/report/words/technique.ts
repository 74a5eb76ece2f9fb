import type { Aligned, BodyName, Leverage, LookFacts, ReceiverFact, Side, Technique } from '../../engine/index.ts';
import { BODY_WORDS, LEVERAGE_WORDS } from './names.ts';
import { numberText, yardsText } from './lists.ts';
import type { StaffWords } from './staffWords.ts';

type NumberedBody = Exclude<BodyName, 'last'>;

const BODY_BY_INDEX: readonly NumberedBody[] = ['snapper', 'guard', 'tackle', 'end', 'wing'];

/**
 * The numbers with the widest agreement: even is head up, odd the outside shoulder, "i" the inside shoulder; 7 for both
 * inside spots of the tight end, 8 outside everything. A man outside the snapper's shoulder stands in the same place as
 * one inside the guard's: 1. Sources: "Defensive Numbering & Defensive Line", Garnet and Black Attack, 2016; "Gap
 * (American football)", Wikipedia; 8 from P. W. Bryant, "Building a Championship Football Team".
 */
const COMMON: Readonly<Record<NumberedBody, Readonly<Partial<Record<Leverage, string>>>>> = {
  snapper: { 'inside-foot': '0 shade', head: '0', 'outside-foot': '0 shade', outside: '1' },
  guard: { inside: '1', 'inside-foot': '2i', head: '2', 'outside-foot': '3', outside: 'wide 3' },
  tackle: { inside: '4i', 'inside-foot': '4i', head: '4', 'outside-foot': '5', outside: 'wide 5' },
  end: { inside: '7', 'inside-foot': '7', head: '6', 'outside-foot': '9', outside: '8' },
  wing: { outside: '8' },
};

/** From this depth on a man is a linebacker, and his number has a zero more (a convention of ours for "linebacker depth"). */
const LINEBACKER_DEPTH = 2.5;

/** A cover man this close to a receiver, across the field, stands on him (a convention of ours). */
const ON_RECEIVER = 2.5;
/** Closer than this he is head up. */
const HEAD_UP = 0.5;

/** What a technique is measured against: the body's number outward, whether nobody stands farther out, and the depth. */
export interface Standing {
  readonly index: number;
  readonly leverage: Leverage;
  readonly ghost: boolean;
  readonly last: boolean;
  readonly depth: number;
}

/** The technique number in the staff's words: "5", "4i", "0 shade", "30", "ghost 7", "6i" where their table says so. */
export function techniqueNumber(standing: Standing, staff: StaffWords): string {
  const words = leverageText(bodyWord(standing.index), standing.leverage);
  const label = techniqueLabel(standing, staff) ?? words;
  // Outside everything is the same spot whether or not a tight end stands inside it.
  const ghost = standing.ghost && standing.leverage !== 'outside' ? 'ghost ' : '';
  return ghost + atDepth(label, standing.depth);
}

/** What the staff or the common table calls that spot at the line; null where neither has a number for it. */
export function techniqueLabel(standing: Omit<Standing, 'ghost' | 'depth'>, staff: StaffWords): string | null {
  const body = BODY_BY_INDEX[standing.index];
  const common = body === undefined ? undefined : COMMON[body][standing.leverage];
  return ownLabel(standing, staff) ?? common ?? null;
}

function bodyWord(index: number): string {
  const body = BODY_BY_INDEX[index];
  return body === undefined ? 'man outside the wing' : BODY_WORDS[body];
}

function ownLabel(standing: Omit<Standing, 'ghost' | 'depth'>, staff: StaffWords): string | null {
  const matching = staff.techniques.filter((each) => each.leverage === standing.leverage);
  const body = BODY_BY_INDEX[standing.index];
  const own =
    matching.find((each) => each.on === body) ??
    (standing.last ? matching.find((each) => each.on === 'last') : undefined);
  return own?.label ?? null;
}

/** "outside foot of the wing": for bodies that have no number. */
export function leverageText(body: string, leverage: Leverage): string {
  return `${LEVERAGE_WORDS[leverage]} the ${body}`;
}

/** Linebackers add a zero: 30, 50, 00. A label without a number says the depth instead. Source: J. T. Reed, "Terms of Football". */
export function atDepth(label: string, depth: number): string {
  if (depth < LINEBACKER_DEPTH) return label;
  return /\d/.test(label) ? label.replace(/\d+/, '$&0') : `${label}, ${yardsText(depth)}`;
}

/** Where a defender stands, in the staff's words: "5 left", "0", "00", "on #2 left, inside, 6 yd", "10 yd deep over the ball". */
export function alignmentText(aligned: Aligned, facts: LookFacts, staff: StaffWords): string {
  if (aligned.technique !== null && aligned.inBox) return techniqueText(aligned.technique, aligned.y, facts, staff);
  const receiver = receiverUnder(aligned, facts);
  return receiver === null ? depthText(aligned) : receiverText(aligned, receiver, facts);
}

/** "inside foot of the tackle", "outside foot of a tight end who is not there". */
export function bodyLeverage({ index, leverage, ghost }: Technique): string {
  const body = bodyWord(index);
  return ghost ? `${LEVERAGE_WORDS[leverage]} a ${body} who is not there` : leverageText(body, leverage);
}

/** A technique with its side: "4i left"; of a man over the ball the number alone. */
export function techniqueText(technique: Technique, depth: number, facts: LookFacts, staff: StaffWords): string {
  const { side, index, leverage, ghost } = technique;
  const last = side !== 'middle' && index >= facts.surface[side].length - 1;
  const number = techniqueNumber({ index, leverage, ghost, last, depth }, staff);
  return side === 'middle' ? number : `${number} ${side}`;
}

function xOf(receiver: ReceiverFact, facts: LookFacts): number {
  const player = facts.players.get(receiver.player);
  if (player === undefined) throw new Error(`Receiver ${receiver.player} is not in the look`);
  return player.x;
}

function receiverUnder(aligned: Aligned, facts: LookFacts): ReceiverFact | null {
  let best: ReceiverFact | null = null;
  let nearest = ON_RECEIVER;
  for (const receiver of facts.receivers) {
    const away = Math.abs(xOf(receiver, facts) - aligned.x);
    if (receiver.eligible && away <= nearest) {
      best = receiver;
      nearest = away;
    }
  }
  return best;
}

function receiverText(aligned: Aligned, receiver: ReceiverFact, facts: LookFacts): string {
  const inward: Record<Side, number> = { left: 1, right: -1 };
  const inside = (aligned.x - xOf(receiver, facts)) * inward[receiver.side];
  const how = Math.abs(inside) < HEAD_UP ? 'head up' : inside > 0 ? 'inside' : 'outside';
  return `on #${numberText(receiver.number)} ${receiver.side}, ${how}, ${yardsText(aligned.y)}`;
}

function depthText(aligned: Aligned): string {
  const across = Math.abs(aligned.x);
  const where =
    across < HEAD_UP ? 'over the ball' : `${yardsText(across)} ${aligned.x < 0 ? 'left' : 'right'} of the ball`;
  return `${yardsText(aligned.y)} deep, ${where}`;
}
