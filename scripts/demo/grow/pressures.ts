/** More pressures: the demo's own, run to the other side, with another line movement, or the rush of one over the line of another. */
import {
  asPressureId,
  mirrorSide,
  turnedTell,
  type Pressure,
  type SideStep,
  type Tell,
} from '../../../src/engine/index.ts';
import type { Playbook } from '../../../src/document/index.ts';
import { fitsFront } from '../../../src/menu/index.ts';
import type { Chance } from './seeded.ts';

/** Words for names, as the demo's are from wet country. */
const WORDS = ['Reed', 'Fen', 'Mire', 'Dyke', 'Heron', 'Rush', 'Tarn', 'Beck', 'Holm', 'Shoal'] as const;

const WAYS = ['other side', 'line the other way', 'two in one'] as const;

/** One more pressure, told with what the demo tells. `at` makes its id and name its own. */
export function grownPressure(playbook: Playbook, chance: Chance, at: number): Pressure {
  const base = chance.pick(playbook.pressures);
  const made = grown(base, playbook, chance);
  const word = WORDS[at % WORDS.length] ?? WORDS[0];
  return { ...made, id: asPressureId(`pressure-${String(at)}`), name: `${base.name} ${word} ${String(at)}` };
}

function grown(base: Pressure, playbook: Playbook, chance: Chance): Pressure {
  const isLine = ({ who }: Tell): boolean => roomOf(who, playbook) === 'line';
  const [line, others] = [base.tells.filter(isLine), base.tells.filter((tell) => !isLine(tell))];
  switch (chance.pick(WAYS)) {
    case 'other side':
      return { ...base, callSide: base.callSide.map(otherWay) };
    case 'line the other way':
      return { ...base, tells: [...others, ...line.map(turnedTell)] };
    case 'two in one': {
      const mate = chance.pick(matesOf(base, playbook));
      const { callSide, coverage } = chance.pick([base, mate]);
      const tells = [...others, ...mate.tells.filter(isLine)];
      return { ...base, tells, callSide, coverage, tags: [...base.tags, 'two in one'], rushers: null };
    }
  }
}

/** Pressures that are run out of the same front; the pressure itself among them. */
function matesOf(base: Pressure, { calls, fronts, pressures, roles }: Playbook): readonly Pressure[] {
  const home = calls.find(({ first }) => first === base.id)?.front;
  const front = fronts.find(({ id }) => id === home);
  return front === undefined ? [base] : pressures.filter((each) => fitsFront(each, front, roles));
}

function roomOf(who: Tell['who'], { roles }: Playbook): string | undefined {
  return roles.find((role) => (who.kind === 'role' ? role.id === who.role : role.group === who.group))?.room;
}

function otherWay(step: SideStep): SideStep {
  if (step.kind === 'fixed') return { ...step, side: mirrorSide(step.side) };
  return { ...step, toward: step.toward === 'to' ? 'away' : 'to' };
}
