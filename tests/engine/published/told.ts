import {
  SIDES,
  type Analysis,
  type Assignment,
  type Gap,
  type Place,
  type RoleId,
  type Side,
} from '../../../src/engine/index.ts';
import type { Row } from './row.ts';

/** What the engine answers, in the words of the tables. */

/** `call` or `away` for a side, as the tables say it. */
const told = (side: Side, call: Side): string => (side === call ? 'call' : 'away');
const gapTold = (gap: Gap, call: Side): string => `${gap.letter}-${told(gap.side, call)}`;

/** `#2-call`, or the letter of a back. */
export function receiverTold(analysis: Analysis, player: string, call: Side): string {
  const receiver = analysis.facts.receivers.find((each) => each.player === player);
  return receiver === undefined ? player : `#${receiver.number}-${told(receiver.side, call)}`;
}

function passTold(analysis: Analysis, { pass }: Assignment, call: Side): string {
  switch (pass.kind) {
    case 'contain':
      return `contain-${told(pass.side, call)}`;
    case 'zone':
      return pass.side === 'middle' ? pass.zone : `${pass.zone}-${told(pass.side, call)}`;
    case 'man':
      return `man ${receiverTold(analysis, pass.receiver, call)}`;
    case 'rush':
    case 'spy':
      return pass.kind;
    case 'none':
      return '-';
  }
}

/** The run role: how he plays a block on the edge, his support, or that he keeps the two-gap of his base. */
function runTold(analysis: Analysis, { run: column, aligned, combined }: Assignment): string {
  const base = analysis.setup.front.roles.find((entry) => entry.role === aligned.role.id)?.base;
  const keepsTwo = combined.status === 'untold' && base?.style === 'two-gap';
  return [column.edge, column.support, keepsTwo ? 'two-gap' : null].filter((word) => word !== null).join('+') || '-';
}

/** The eleven in the order and the form of the table: man, run gap, run role, pass. */
export function elevenTold(analysis: Analysis, row: Row, call: Side): readonly (readonly string[])[] {
  return row.men.map(({ man }) => {
    const found = analysis.assignments.find((each) => each.aligned.role.id === man);
    if (found === undefined) return [man, 'not in the analysis'];
    const gaps = found.run.gaps.map((gap) => gapTold(gap, call)).join('+') || '-';
    return [man, gaps, runTold(analysis, found), passTold(analysis, found, call)];
  });
}

const sorted = (ids: readonly RoleId[]): string => [...ids].sort().join(' ');

export const containTold = (analysis: Analysis): string =>
  sorted(analysis.assignments.filter(({ pass }) => pass.kind === 'contain').map((man) => man.aligned.role.id));

/** The side a man works on: that of his zone, of his gap, or the one he stands on. */
function worksOn({ pass, run: column, aligned }: Assignment): Place {
  if (pass.kind === 'zone' && pass.side !== 'middle') return pass.side;
  return column.gaps[0]?.side ?? aligned.place;
}

/** Who is force: the man told so, and on a side without one whoever boxes in the edge gap, for he turns the ball back in. */
export function forceTold({ assignments, facts }: Analysis): string {
  const men = SIDES.flatMap((side) => {
    const forced = assignments.filter((man) => man.run.support === 'force' && worksOn(man) === side);
    if (forced.length > 0) return forced;
    return assignments.filter(
      ({ run: column }) =>
        column.edge === 'box' && column.gaps.some((gap) => gap.side === side && gap.letter === facts.edge[side]),
    );
  });
  return sorted(men.map((man) => man.aligned.role.id));
}

/** Receiver → who answers him, as the tables say it. */
export function coverTold(analysis: Analysis, call: Side): Readonly<Record<string, string>> {
  return Object.fromEntries(
    analysis.answers.map((answer) => [receiverTold(analysis, answer.player, call), answer.by ?? 'nobody']),
  );
}

/** Every gap with its owners. */
export function gapsTold(analysis: Analysis, call: Side): Readonly<Record<string, string>> {
  return Object.fromEntries(
    analysis.gaps.map(({ gap, owners }) => [gapTold(gap, call), owners.map((owner) => owner.role).join(' ')]),
  );
}

/** Every finding as its rule id and whom it names, by the alphabet: their order turns with the call. */
export const findingsTold = (analysis: Analysis): readonly string[] =>
  analysis.findings.map(({ rule, who: men }) => [rule, ...[...men].sort()].join(' ')).sort();
