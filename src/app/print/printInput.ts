import { assertNever } from '../../base/index.ts';
import type { Analysis, Room, SideDecision } from '../../engine/index.ts';
import type { Paper, PrintInput, Sheet, SheetFonts, SheetTitle } from '../../print/index.ts';
import { buildReport, ROOM_WORDS } from '../../report/index.ts';
import { buildScene, WHOLE_PICTURE } from '../../scene/index.ts';
import { looksShown, type Analyst, type AppState } from '../../store/index.ts';
import { dateText } from '../session/clock.ts';
import { BALL_WORDS } from '../session/words.ts';

/** What the coach wants on paper. */
export interface PrintChoice {
  /** Null: everybody's sheet. */
  readonly room: Room | null;
  readonly paper: Paper;
  readonly looks: 'this' | 'shown';
}

/** The analyses that go on paper, in the order of the strip. They are the very ones the screen shows. */
export function analysesToPrint(state: AppState, analyst: Analyst, choice: PrintChoice): readonly Analysis[] {
  const { look } = state.board;
  const ids = choice.looks === 'shown' ? looksShown(state).map(({ id }) => id) : look === null ? [] : [look];
  return ids.flatMap((id) => {
    const result = analyst.inLook(state, id);
    return result.ok ? [result.value] : [];
  });
}

/** Everything the PDF is made of. `now` is printed as the date. */
export function printInput(
  state: AppState,
  analyses: readonly Analysis[],
  choice: PrintChoice,
  fonts: SheetFonts,
  now: Date,
): PrintInput {
  const { team, roles } = state.playbook;
  const book = [team.name, team.season].filter((word) => word !== '').join(' ');
  const { room } = choice;
  return {
    paper: choice.paper,
    fonts,
    title: `${book}: ${callName(state)}, ${room === null ? 'everyone' : ROOM_WORDS[room]}`,
    book,
    stamp: `printed ${dateText(now)}`,
    created: now,
    room:
      room === null
        ? null
        : { name: ROOM_WORDS[room], roles: roles.filter((role) => role.room === room).map(({ id }) => id) },
    sheets: analyses.map((analysis) => sheet(state, analysis, room)),
  };
}

function sheet(state: AppState, analysis: Analysis, room: Room | null): Sheet {
  const report = buildReport(analysis, state.playbook.words);
  const scene = buildScene(analysis, { ...WHOLE_PICTURE, room });
  return { title: sheetTitle(state, analysis, report.coverage.shell), scene, flip: state.view.turned, report };
}

function sheetTitle(state: AppState, analysis: Analysis, shell: string): SheetTitle {
  const { setup, facts } = analysis;
  return {
    call: callName(state),
    front: setup.front.name,
    pressures: pressuresText(setup),
    coverage: shell,
    look: setup.look.name,
    personnel: facts.personnel,
    spot: BALL_WORDS[setup.spot],
    callSide: callSideText(analysis),
  };
}

function callSideText({ setup, first, second }: Analysis): string {
  const one = sideText(first.side);
  const other = second === null ? one : sideText(second.side);
  if (one === other || setup.second === null) return `call side: ${one}`;
  return `call side: ${one} for ${setup.first.name}, ${other} for ${setup.second.name}`;
}

function sideText(decision: SideDecision): string {
  return decision.kind === 'decided' ? decision.side : 'a tie';
}

/** The name a sheet goes by: the kept call's, else the names of the pressures. */
export function callName({ playbook, board }: AppState): string {
  const call = playbook.calls.find(({ id }) => id === board.call);
  if (call !== undefined && call.name !== '') return call.name;
  const names = [board.first, board.second].map((id) => playbook.pressures.find((each) => each.id === id)?.name ?? '');
  return names.filter((name) => name !== '').join(board.combination.kind === 'together' ? ' + ' : ' or ');
}

function pressuresText({ first, second, turn, combination }: Analysis['setup']): string {
  if (second === null) return first.name;
  const both =
    combination.kind === 'together' ? `${first.name} + ${second.name}` : `${first.name} or ${second.name}, by a key`;
  switch (turn) {
    case 'own':
      return both;
    case 'same':
      return `${both}, turned to the same side`;
    case 'opposite':
      return `${both}, turned opposite`;
    default:
      return assertNever(turn);
  }
}
