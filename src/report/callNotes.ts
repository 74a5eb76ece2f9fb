import type { Analysis, RoleId, Setup, SideDecision } from '../engine/index.ts';
import { fill } from './fill.ts';
import type { CheckOutNote, ChoiceNote, MotionNote } from './types.ts';
import { checkOutWords, type CheckOutNames } from './words/checkOuts.ts';
import type { Lexicon } from './words/lexicon.ts';
import { FORMATION_WORDS } from './words/formations.ts';
import { capitalised, listed, yardsText } from './words/lists.ts';

/** What the check-out table makes of the call here; null: no row of it is about this formation. */
export function checkOutNote({ setup }: Analysis, lexicon: Lexicon): CheckOutNote | null {
  const { checkOut } = setup;
  if (checkOut === null) return null;
  const formation = FORMATION_WORDS[checkOut.formation];
  const text = `this look counts as ${formation}, and the call's check-out table has a row for it`;
  return {
    text: `${capitalised(formation)}: ${checkOutWords(checkOut.action, namesOf(setup, lexicon))}`,
    why: { text: capitalised(text), because: [] },
  };
}

/** The setup is already what the row made of it, so the names are those of what is run. */
function namesOf(setup: Setup, lexicon: Lexicon): CheckOutNames {
  const { second } = setup;
  const both = second === null ? (['first'] as const) : (['first', 'second'] as const);
  return {
    turned: second === null ? null : lexicon.pressure('second'),
    nowFirst: second === null ? null : lexicon.pressure('first'),
    coverage: () => setup.coverage.name,
    call: () => listed(both.map(lexicon.pressure), ''),
  };
}

/** Which half of an either-or call is run, by what key, and who must hear it. */
export function choiceNote({ setup, choice }: Analysis, lexicon: Lexicon): ChoiceNote | null {
  if (choice === null || setup.combination.kind !== 'either-or') return null;
  const [first, second] = [lexicon.pressure('first'), lexicon.pressure('second')];
  const conditions = setup.combination.key.map(lexicon.rules.test);
  const { mustHear, ran } = choice;
  return {
    text: `${lexicon.pressure(ran)} is run`,
    key:
      conditions.length === 0
        ? `${first} whatever the look`
        : `${first} if ${listed(conditions, '')}, otherwise ${second}`,
    hear:
      mustHear.length === 0
        ? 'Nobody: both halves tell everybody the same'
        : `${lexicon.roles(mustHear)} must hear the check`,
    who: mustHear,
    why: fill(choice.because, lexicon),
  };
}

/** What the look's motion does: where the man goes, what becomes of the call sides, who moves with it. */
export function motionNote(
  { setup, motion, first, second, assignments }: Analysis,
  lexicon: Lexicon,
): MotionNote | null {
  const moving = setup.look.motion;
  const from = setup.look.players.find((player) => player.id === moving?.player);
  if (motion === null || moving === null || from === undefined) return null;
  const side = (which: 'first' | 'second', before: SideDecision, after: SideDecision) =>
    sideNote(lexicon.pressure(which), before, after);
  return {
    text: `${capitalised(lexicon.player(moving.player))} goes ${wayText(from.x, moving.to.x)}`,
    sides: [
      side('first', motion.first, first.side),
      ...(motion.second === null || second === null ? [] : [side('second', motion.second, second.side)]),
    ],
    moves: movesText(motion.moved, assignments, lexicon),
    who: motion.moved,
    players: [moving.player],
  };
}

/** Who stands or works elsewhere after it; where most of them do, who does not. */
function movesText(moved: readonly RoleId[], men: Analysis['assignments'], lexicon: Lexicon): string {
  if (moved.length === 0) return 'No defender moves for it';
  const still = men.map(({ aligned }) => aligned.role.id).filter((role) => !moved.includes(role));
  const end = 'another spot or job after it';
  if (moved.length < still.length + 2) {
    return `${lexicon.roles(moved)} ${moved.length === 1 ? 'has' : 'have'} ${end}`;
  }
  return `Everybody ${still.length === 0 ? '' : `but ${lexicon.roles(still)} `}has ${end}`;
}

function sideNote(name: string, before: SideDecision, after: SideDecision): MotionNote['sides'][number] {
  const [was, is] = [before, after].map((each) => (each.kind === 'decided' ? each.side : 'a tie'));
  return was === is
    ? { text: `Call side of ${name}: ${String(is)} before and after`, turns: false }
    : { text: `Call side of ${name}: ${String(was)} before, ${String(is)} after`, turns: true };
}

/** "9 yd to the right, across the ball"; whole yards where he goes far. */
function wayText(from: number, to: number): string {
  const way = to - from;
  if (Math.abs(way) < 0.05) return 'straight back or up';
  const across = from * to < 0 ? ', across the ball' : '';
  return `${yardsText(Math.abs(way) < 3 ? Math.abs(way) : Math.round(Math.abs(way)))} to the ${way < 0 ? 'left' : 'right'}${across}`;
}
