import type { ReactElement } from 'react';
import { newPressure, nextIds, type Entry } from '../../../store/index.ts';
import { NameDialog } from '../../dialogs/NameDialog.tsx';
import { useSession } from '../../session/session.ts';
import { useEdit } from '../parts/useEdit.ts';

interface Props {
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

/** Asks for the name of a new pressure; it starts with the coverage of the board. */
export function NewPressure({ onMade, onClose }: Props): ReactElement {
  const { store } = useSession();
  const edit = useEdit();
  return (
    <NameDialog
      title="A new pressure"
      label="Its name"
      start=""
      action="Make it"
      onName={(name) => {
        const { playbook, board } = store.get();
        const id = nextIds.pressure(playbook);
        const coverage = board.coverage ?? playbook.pressures.find((each) => each.id === board.first)?.coverage ?? null;
        const done = edit(`made the pressure ${name.trim()}`, null, (now) => newPressure(now, { id, name, coverage }));
        if (done) onMade({ section: 'pressures', id });
        return done;
      }}
      onClose={onClose}
    />
  );
}
