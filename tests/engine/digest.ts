import { mirrorSide, printAssignment, type Analysis, type Gap } from '../../src/engine/index.ts';

const flipWords = (text: string): string => text.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));

/** Stands, both columns, owners, zones, answers and findings, each kind in an order that has no left or right; flipped if asked. */
export function digest({ assignments, gaps, zones, answers, findings, verdict }: Analysis, flipped: boolean): string {
  const words = (text: string): string => (flipped ? flipWords(text) : text);
  const gap = ({ side, letter }: Gap): string => `${letter}-${flipped ? mirrorSide(side) : side}`;
  const men = assignments.map((man) => {
    const { aligned, combined, run } = man;
    const x = (flipped ? -aligned.x : aligned.x).toFixed(6).replace(/^-(0\.0+)$/, '$1');
    const pass = words(printAssignment(man).replace(/^.*\//, ''));
    const column = [...run.gaps.map(gap).sort(), run.twoGaps, run.edge, run.support, pass].join();
    return `${aligned.role.letter} ${x} ${aligned.y} ${combined.status} ${column}`;
  });
  const owned = gaps.map(
    (each) =>
      `${gap(each.gap)} ${each.owners
        .map(({ role, how, sure, shared }) => `${role}${how}${String(sure)}${String(shared)}`)
        .sort()
        .join()} ${
        each.proof === null
          ? ''
          : `${each.proof.gaps.map(gap).sort().join()} ${[...each.proof.reachable].sort().join()}`
      }`,
  );
  const found = findings.map(
    ({ rule, who, gaps: about, players }) =>
      `${rule} ${[...who].sort().join()} ${about.map(gap).sort().join()} ${[...players].sort().join()}`,
  );
  const filled = zones.map(
    ({ zone, side, by, how, proof }) =>
      `${zone} ${words(side)} ${by ?? ''} ${how ?? ''} ${proof === null ? '' : [...proof.reachable].sort().join()}`,
  );
  const answered = answers.map(
    ({ player, by, how, proof }) =>
      `${player} ${by ?? ''} ${how ?? ''} ${
        proof === null ? '' : `${[...proof.players].sort().join()} ${[...proof.reachable].sort().join()}`
      }`,
  );
  return [verdict, ...filled.sort(), ...answered.sort(), ...men.sort(), ...owned.sort(), ...found.sort()].join('\n');
}
