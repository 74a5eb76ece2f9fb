/** The playbooks that are measured, and their cases. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import type { Setup } from '../../src/engine/index.ts';
import { gridOf, pressuresOf, sizeOfGrid, type MenuCase, type MenuJudge } from '../../src/menu/index.ts';
import { grow, seeded } from '../demo/grow/index.ts';

/** The demo playbook, opened as the program opens any file. */
export function demo(): Playbook {
  const opened = openDocument(readFileSync(join(process.cwd(), 'demo-data/playbook.json'), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  return opened.value;
}

/** The demo playbook grown to so many pressures and looks. */
export function grown(pressures: number, looks: number): Playbook {
  return grow(demo(), { pressures, looks, calls: 60 }, 40);
}

/** Every pair of pressures out of the first front in every look at every spot, or the first so many of them. */
export function pairCases(playbook: Playbook, most = Infinity): readonly MenuCase[] {
  const [front] = playbook.fronts;
  if (front === undefined) throw new Error('A playbook without a front');
  const grid = gridOf(playbook, { kind: 'pairs', front: front.id, turn: 'own' });
  const cases: MenuCase[] = [];
  for (let index = 0; index < sizeOfGrid(grid) && cases.length < most; index += 1) {
    const each = grid.caseAt(index);
    if (each !== null) cases.push(each);
  }
  return cases;
}

/** Some of a list, the same ones every time. */
export function some<Item>(list: readonly Item[], count: number): readonly Item[] {
  const chance = seeded(3);
  return Array.from({ length: count }, () => chance.pick(list));
}

/** What the engine is told of a case. */
export function setupOf(playbook: Playbook, { call, look, spot }: MenuCase): Setup {
  const setup = toSetup(playbook, { call, look: look.id, spot });
  if (!setup.ok) throw new Error(setup.problem.path);
  return setup.value;
}

/** Judges cases of a version of the playbook that has just been opened. */
export function judgeAll(judge: MenuJudge, cases: readonly MenuCase[]): void {
  for (const each of cases) judge.judge(each);
}

/** The playbook with one man of one look a quarter yard from where he stood, another step each time. */
export function dragged(playbook: Playbook, round: number): Playbook {
  const looks = playbook.looks.map((look, at) =>
    at !== 0
      ? look
      : {
          ...look,
          players: look.players.map((man, index) => (index === 7 ? { ...man, x: man.x + 0.25 * (round + 1) } : man)),
        },
  );
  return { ...playbook, looks };
}

/** The playbook with one pressure told differently, another way each time. */
export function retold(playbook: Playbook, round: number): Playbook {
  const [front] = playbook.fronts;
  const changed = front === undefined ? undefined : pressuresOf(playbook, front.id)[0];
  const pressures = playbook.pressures.map((each) =>
    each !== changed
      ? each
      : {
          ...each,
          rushers: 4 + (round % 2),
          tells: each.tells.slice(round % 2),
          name: `${each.name} ${String(round)}`,
        },
  );
  return { ...playbook, pressures };
}
