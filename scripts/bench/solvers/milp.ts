/** The questions put to a solver of mixed integer linear programs (yalps, MIT). */
import { solve } from 'yalps';
import type { Sharing, TwoTellings } from './questions.ts';

/** How many of the items can be shared out at most. */
export function mostShared({ items, men }: Sharing): number {
  if (items === 0 || men.every(({ may }) => may.length === 0)) return 0;
  const constraints = new Map<string, { readonly max: number }>();
  const variables = new Map<string, ReadonlyMap<string, number>>();
  for (let item = 0; item < items; item += 1) constraints.set(`item ${item}`, { max: 1 });
  men.forEach(({ may, most }, man) => {
    constraints.set(`man ${man}`, { max: most });
    for (const item of may) {
      variables.set(
        `${man} takes ${item}`,
        new Map([
          ['taken', 1],
          [`item ${item}`, 1],
          [`man ${man}`, 1],
        ]),
      );
    }
  });
  const { status, result } = solve({
    direction: 'maximize',
    objective: 'taken',
    constraints,
    variables,
    binaries: true,
  });
  if (status !== 'optimal') throw new Error(`The solver says ${status}`);
  return Math.round(result);
}

/** Whether one man can do all he is told: each gap is his or is not, and he has one duty. */
export function canDoAll({ told }: TwoTellings): boolean {
  const gaps = [...new Set(told.flatMap((each) => each.gaps))];
  const duties = [...new Set(told.map(({ duty }) => duty))];
  const constraints = new Map<string, { readonly equal: number }>([['one duty', { equal: 1 }]]);
  const variables = new Map<string, Map<string, number>>([
    ...gaps.map((gap) => [gap, new Map<string, number>()] as const),
    ...duties.map((duty) => [`duty ${duty}`, new Map([['one duty', 1]])] as const),
  ]);
  told.forEach((each, which) => {
    for (const gap of gaps) {
      constraints.set(`${which} ${gap}`, { equal: each.gaps.includes(gap) ? 1 : 0 });
      variables.get(gap)?.set(`${which} ${gap}`, 1);
    }
    constraints.set(`${which} duty`, { equal: 1 });
    variables.get(`duty ${each.duty}`)?.set(`${which} duty`, 1);
  });
  return solve({ constraints, variables, binaries: true }).status === 'optimal';
}
