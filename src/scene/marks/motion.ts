import { distance, toward, type Analysis } from '../../engine/index.ts';
import { OFFENCE_RADIUS } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import { ellipse, part, path, type Tag } from './shape.ts';

/** The man in motion: a thin line from where he was set, an empty ring there, to where he is as the ball is snapped. */
export function motionShapes({ setup, facts }: Analysis, faint: boolean): readonly Shape[] {
  const { motion, players } = setup.look;
  const set = players.find((player) => player.id === motion?.player);
  const now = motion === null ? undefined : facts.players.get(motion.player);
  if (motion === null || set === undefined || now === undefined) return [];
  const from = { x: set.x, y: set.y };
  // Where both places are one, there is nothing to show.
  if (distance(from, now) <= OFFENCE_RADIUS) return [];
  const tag: Tag = { key: `motion/${motion.player}`, layer: 'zone', target: null, faint };
  const points = [toward(from, now, OFFENCE_RADIUS), toward(now, from, OFFENCE_RADIUS)];
  return [
    ellipse(
      { ...part(tag, 'set'), layer: 'gap' },
      {
        at: from,
        rx: OFFENCE_RADIUS,
        ry: OFFENCE_RADIUS,
        fill: 'ground',
        line: 'offence',
        stroke: 'dotted',
        width: 0.07,
      },
    ),
    path(tag, { points, ink: 'offence', width: 0.07, stroke: 'dash-dot' }),
  ];
}
