/**
 * The demo playbook grown to any size, for tests and the bench: the same sizes and seed, the same playbook to the byte.
 * Plausible, not taught: it is as full of conflicts as pairs nobody has chosen are.
 */
import { checkPlaybook, refusalText, type Playbook } from '../../../src/document/index.ts';
import { asCallId, TURNS, type Call } from '../../../src/engine/index.ts';
import { fitsFront } from '../../../src/menu/index.ts';
import { grownLook } from './looks.ts';
import { grownPressure } from './pressures.ts';
import { seeded, type Chance } from './seeded.ts';

export { seeded, type Chance };

/** How many of each there are at least; what the playbook has itself stays, and comes first. */
export interface Sizes {
  readonly pressures: number;
  readonly looks: number;
  readonly calls: number;
}

/** A playbook grown to those sizes. */
export function grow(playbook: Playbook, sizes: Sizes, seed: number): Playbook {
  const chance = seeded(seed);
  const pressures = filled(playbook.pressures, sizes.pressures, (at) => grownPressure(playbook, chance, at));
  const looks = filled(playbook.looks, sizes.looks, (at) => grownLook(playbook.looks, chance, at));
  const whole = { ...playbook, pressures, looks };
  const calls = filled(playbook.calls, sizes.calls, (at) => grownCall(whole, chance, at));
  const checked = checkPlaybook({ ...whole, calls });
  if (!checked.ok) throw new Error(checked.problem.map(refusalText).join('\n'));
  return checked.value;
}

function filled<Item>(own: readonly Item[], size: number, make: (at: number) => Item): readonly Item[] {
  return [
    ...own,
    ...Array.from({ length: Math.max(0, size - own.length) }, (_, index) => make(own.length + index + 1)),
  ];
}

/** Two pressures that are both written for a front, at once. */
function grownCall({ fronts, pressures, roles }: Playbook, chance: Chance, at: number): Call {
  const front = chance.pick(fronts);
  const here = pressures.filter((pressure) => fitsFront(pressure, front, roles));
  const first = chance.pick(here);
  const second = chance.pick(here.filter((each) => each !== first));
  return {
    id: asCallId(`call-${String(at)}`),
    name: `${first.name} ${second.name} (${String(at)})`,
    front: front.id,
    first: first.id,
    second: second.id,
    turn: chance.pick(TURNS),
    combination: { kind: 'together' },
    coverage: null,
    rushers: null,
    waivers: [],
    tags: [],
    installDay: null,
  };
}
