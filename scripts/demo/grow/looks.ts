/** More looks: the demo's formations from the other side, wider or narrower, the back deeper or nearer. */
import { asLookId, mirrorLook, type Look, type OffencePlayer, type Yards } from '../../../src/engine/index.ts';
import type { Chance } from './seeded.ts';

/** Steps outward of all receivers who are split wide, and steps back of the backs, in yards. */
const WIDER: readonly Yards[] = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2];
const DEEPER: readonly Yards[] = [-0.75, -0.25, 0, 0.5, 1];

/** Split so far, a man may go in or out without joining the line or the backs. */
const SPLIT: Yards = 8;

/** The ball on a high school hash leaves 17.8 yd to the near sideline (`fieldAt`); nobody stands on the chalk. */
const WIDEST: Yards = 17;

/** One more look. `at` makes its id and name its own. */
export function grownLook(looks: readonly Look[], chance: Chance, at: number): Look {
  const drawn = chance.pick(looks);
  const base = chance.below(2) === 0 ? drawn : mirrorLook(drawn);
  const [wider, deeper] = [chance.pick(WIDER), chance.pick(DEEPER)];
  const side = base === drawn ? '' : ', the other way';
  return {
    ...base,
    id: asLookId(`look-${String(at)}`),
    name: `${drawn.name}${side} (${String(at)})`,
    players: base.players.map((player) => moved(player, wider, deeper)),
  };
}

function moved(player: OffencePlayer, wider: Yards, deeper: Yards): OffencePlayer {
  const out = Math.abs(player.x);
  if (player.kind === 'receiver' && out >= SPLIT) {
    return { ...player, x: Math.sign(player.x) * Math.min(WIDEST, out + wider) };
  }
  // A back right behind the line would stand in it.
  return player.kind === 'back' && player.y <= -4 ? { ...player, y: player.y - deeper } : player;
}
