import type { ReactElement } from 'react';
import type { Look, Motion, OffenceKind } from '../../../engine/index.ts';
import { playerWords } from '../../../report/index.ts';
import { setMotion } from '../../../store/index.ts';
import { Select } from '../../parts/Choice.tsx';
import { useApp } from '../../session/session.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { useLookEdit } from './useLookEdit.ts';

/** The line does not move before the snap; a man in motion must be off it or become so (NFHS 7-2-7; NCAA 7-1-4-b, from memory). */
const STANDS_STILL: readonly OffenceKind[] = ['snapper', 'lineman'];

/** Who goes in motion before the snap, and where he is when the ball is snapped. */
export function MotionFields({ look }: { readonly look: Look }): ReactElement {
  const edit = useLookEdit(look.id);
  const readOnly = useApp((state) => state.readOnly);
  const words = playerWords(look.players);
  const { motion } = look;
  const put = (next: Motion | null, gesture: string | null): void => {
    const mover = next?.player ?? motion?.player;
    const name = mover === undefined ? 'nobody' : (words.get(mover)?.spoken ?? '');
    const label = next === null ? `took the motion from ${name}` : `changed the motion of ${name}`;
    edit(label, gesture, (now) => setMotion(now, { look: look.id, motion: next }));
  };
  const movers = look.players.filter(({ kind, id }) => !STANDS_STILL.includes(kind) || id === motion?.player);
  return (
    <div className="editor-part">
      <h3 className="part-title">Motion</h3>
      <div className="rule-fields">
        <Select
          label="Who moves before the snap"
          wide
          value={motion?.player ?? null}
          none="nobody"
          options={movers.map(({ id }) => ({ value: id, label: words.get(id)?.spoken ?? '' }))}
          disabled={readOnly}
          onChoose={(player) => {
            const man = look.players.find(({ id }) => id === player);
            // He starts from the other side of the ball, as most motion does; then he is dragged or typed to his spot.
            put(man === undefined ? null : { player: man.id, to: { x: 0 - man.x, y: man.y } }, null);
          }}
        />
        {motion !== null && (
          <>
            <NumberField
              label="Across at the snap"
              unit="yards"
              value={motion.to.x}
              min={-40}
              max={40}
              step={0.25}
              disabled={readOnly}
              onChange={(x, gesture) => put({ ...motion, to: { ...motion.to, x } }, gesture)}
            />
            <NumberField
              label="Depth at the snap"
              unit="yards"
              value={0 - motion.to.y}
              min={0}
              max={40}
              step={0.25}
              disabled={readOnly}
              onChange={(depth, gesture) => put({ ...motion, to: { ...motion.to, y: 0 - depth } }, gesture)}
            />
          </>
        )}
      </div>
    </div>
  );
}
