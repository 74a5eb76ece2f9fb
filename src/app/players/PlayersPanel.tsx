import { useMemo, type ReactElement } from 'react';
import { PlayerList } from '../../editor/index.ts';
import { sameMan } from '../../store/index.ts';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { GroupCard } from './GroupCard.tsx';
import { ManCard } from './ManCard.tsx';
import { PickButtons } from './PickButtons.tsx';
import { manRows } from './rows.ts';
import { useHand } from './useHand.ts';
import { useHandKeys } from './useHandKeys.ts';

interface Props {
  readonly model: BoardModel;
  /** The next click on the field puts the selected man down. */
  readonly placing: boolean;
  readonly onPlacing: (placing: boolean) => void;
}

/** Everybody on the field as buttons, and what can be done with those who are picked. */
export function PlayersPanel({ model, placing, onPlacing }: Props): ReactElement {
  const { store } = useSession();
  const rows = useMemo(() => manRows(model), [model]);
  const hand = useHand(model);
  useHandKeys(hand);
  const { selection, several } = model.state.view;
  const [only] = hand.picked;
  const row = rows.find(({ man }) => only !== undefined && sameMan(man, only.man)) ?? null;
  return (
    <section className="panel players-panel" aria-labelledby="players-title">
      <h2 id="players-title">Players on the field</h2>
      <p className="hint" id="players-help">
        Pick one here or on the field; with Shift, several. Arrows move them ¼ yard, with Shift 1 yd; Page Down: the
        next man.
      </p>
      <PickButtons model={model} hand={hand} />
      <PlayerList
        rows={rows}
        selection={selection}
        several={several}
        onSelect={(men) => store.setView({ selection: men })}
        onNudge={hand.nudge}
        onMoveEnd={store.endGesture}
      />
      {hand.picked.length > 1 ? (
        <GroupCard model={model} hand={hand} />
      ) : (
        row !== null && <ManCard model={model} row={row} hand={hand} placing={placing} onPlacing={onPlacing} />
      )}
    </section>
  );
}
