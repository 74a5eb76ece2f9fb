import type { Analysis, Assignment, PassColumn } from '../types/index.ts';

function printPass(pass: PassColumn): string {
  switch (pass.kind) {
    case 'rush':
    case 'spy':
      return pass.kind;
    case 'contain':
      return `contain-${pass.side}`;
    case 'zone':
      return pass.side === 'middle' ? pass.zone : `${pass.zone}-${pass.side}`;
    case 'man':
      return `man:${pass.receiver}`;
    case 'none':
      return '-';
  }
}

/** One man's two columns: `LE=C-left/contain-left`, `SS=D-right+force/seam-right`, `FS=-/middle`. */
export function printAssignment(man: Assignment): string {
  const gaps = man.run.gaps.map((gap) => `${gap.letter}-${gap.side}`);
  const run = [...gaps, ...(man.run.support === null ? [] : [man.run.support])].join('+');
  return `${man.aligned.role.letter}=${run === '' ? '-' : run}/${printPass(man.pass)}`;
}

/** All eleven in the analysis' own order (line, linebackers, secondary, left to right): a row of a test table. */
export function printEleven(analysis: Analysis): string {
  return analysis.assignments.map(printAssignment).join(' ');
}
