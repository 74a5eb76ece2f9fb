import type { ReactElement } from 'react';
import type { Front, LookId } from '../../../engine/index.ts';
import { clearHands } from '../../../store/index.ts';
import { useApp } from '../../session/session.ts';
import { useEdit } from '../parts/useEdit.ts';

/** Who stands by hand in this front, in the look on the board and in the others, and the way back to the rules. */
export function HandSpots({ front }: { readonly front: Front }): ReactElement {
  const edit = useEdit();
  const look = useApp((state) => state.board.look);
  const looks = useApp((state) => state.playbook.looks);
  const readOnly = useApp((state) => state.readOnly);
  const here = front.byHand.filter((hand) => hand.look === look).length;
  const all = front.byHand.length;
  const clear = (which: LookId | null, where: string): void => {
    edit(`gave everybody back to his rule ${where}`, null, (now) => clearHands(now, { front: front.id, look: which }));
  };
  if (all === 0) return <p className="hint">Nobody stands by hand: all go by their rules.</p>;
  const lookName = looks.find(({ id }) => id === look)?.name ?? '';
  return (
    <div className="hand-spots">
      <p className="hint">
        By hand: {here} in this look, {all} in all looks. A hand counts before every rule.
      </p>
      <div className="button-row">
        {here > 0 && look !== null && (
          <button type="button" disabled={readOnly} onClick={() => clear(look, `against ${lookName}`)}>
            Clear in this look
          </button>
        )}
        <button type="button" disabled={readOnly} onClick={() => clear(null, `in ${front.name}`)}>
          Clear in all looks
        </button>
      </div>
    </div>
  );
}
