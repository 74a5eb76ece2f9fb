/**
 * The engine against two general solvers on 2,000 random checks of the grown playbook: yalps (mixed integer linear programs)
 * and logic-solver (boolean formulas). They are asked from what goes into a stage, and must say what comes out of it: how many
 * run gaps, zones and receivers can be taken care of, and who is told two things that cannot both be done.
 */
import { describe, expect, it } from 'vitest';
import { grow, seeded } from '../../../scripts/demo/grow/index.ts';
import { canDoAll, mostShared } from '../../../scripts/bench/solvers/milp.ts';
import { engineSays, questionsOf, type Sharing } from '../../../scripts/bench/solvers/questions.ts';
import { createSat } from '../../../scripts/bench/solvers/sat.ts';
import { toSetup } from '../../../src/document/index.ts';
import { analyse, PLACES, TURNS, type Analysis } from '../../../src/engine/index.ts';
import { fitsFront, pairCall } from '../../../src/menu/index.ts';
import { demo } from '../../store/demo.ts';

const CHECKS = 2_000;
const playbook = grow(demo(), { pressures: 40, looks: 40, calls: 40 }, 11);
const chance = seeded(5);

/**
 * A random pair at once; of three, one is from pressures of another front, whose men are not all there, and one plays any shell
 * of the playbook.
 */
function randomCheck(at: number): Analysis {
  for (;;) {
    const front = chance.pick(playbook.fronts);
    const here = playbook.pressures.filter((each) => at % 3 === 0 || fitsFront(each, front, playbook.roles));
    const [first, second] = [chance.pick(here), chance.pick(here)];
    if (first === second) continue;
    const pair = pairCall(front.id, first, second, chance.pick(TURNS));
    const call = at % 3 === 1 ? { ...pair, coverage: chance.pick(playbook.coverages).id } : pair;
    const setup = toSetup(playbook, { call, look: chance.pick(playbook.looks).id, spot: chance.pick(PLACES) });
    if (!setup.ok) throw new Error(setup.problem.path);
    const analysis = analyse(setup.value);
    if (analysis.first.side.kind === 'decided') return analysis;
  }
}

/** How often each answer was given, so that neither is only ever the one. */
class Tally {
  yes = 0;
  no = 0;
  count(answer: boolean): void {
    if (answer) this.yes += 1;
    else this.no += 1;
  }
}

describe('engine and general solvers', () => {
  it(`agree on ${CHECKS} random checks`, () => {
    const sat = createSat();
    const tallies = { gaps: new Tally(), zones: new Tally(), receivers: new Tally(), men: new Tally() };
    const differ: unknown[] = [];
    const share = (kind: 'gaps' | 'zones' | 'receivers', sharing: Sharing, missing: number, where: string): void => {
      const all = missing === 0;
      tallies[kind].count(all);
      const milp = sharing.items - mostShared(sharing);
      if (milp !== missing || sat.allShared(sharing) !== all) differ.push([where, kind, missing, milp]);
    };
    for (let at = 0; at < CHECKS; at += 1) {
      const analysis = randomCheck(at);
      const { setup } = analysis;
      const where = `${setup.front.name}: ${setup.first.name} + ${setup.second?.name ?? ''} ${setup.turn}, ${setup.look.name}`;
      const asked = questionsOf(analysis);
      const said = engineSays(analysis);
      share('gaps', asked.gaps, said.openGaps, where);
      share('zones', asked.zones, said.emptyZones, where);
      share('receivers', asked.receivers, said.unanswered, where);
      for (const man of asked.men) {
        const both = !said.conflicts.includes(man.role);
        tallies.men.count(both);
        if (canDoAll(man) !== both || sat.canDoAll(man) !== both) differ.push([where, man]);
      }
      // Nobody else is told two things.
      const asking = asked.men.map(({ role }) => role);
      if (said.conflicts.some((role) => !asking.includes(role))) differ.push([where, said.conflicts]);
    }
    expect(differ).toEqual([]);
    for (const [kind, { yes, no }] of Object.entries(tallies)) {
      // Both answers often: at least one check in twenty.
      expect([kind, Math.min(yes, no) >= CHECKS / 20, yes, no]).toEqual([kind, true, yes, no]);
    }
  }, 120_000);
});
