import { useState, type ReactElement } from 'react';
import type { RoleId } from '../../../engine/index.ts';
import { ELEVEN, newFront, type Entry } from '../../../store/index.ts';
import { useApp } from '../../session/session.ts';
import { MakeDialog } from '../../dialogs/MakeDialog.tsx';
import { PlainText } from '../parts/PlainText.tsx';
import { useMake } from '../parts/useMake.ts';

interface Props {
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

/** Asks for the name of a new front and its eleven; a front like one there is already is made by Copy. */
export function NewFront({ onMade, onClose }: Props): ReactElement {
  const make = useMake('fronts', onMade);
  const roles = useApp((state) => state.playbook.roles);
  const onField = useApp(
    (state) => state.playbook.fronts.find(({ id }) => id === state.board.front) ?? state.playbook.fronts[0],
  );
  const [name, setName] = useState('');
  const [picked, setPicked] = useState<ReadonlySet<RoleId>>(
    () => new Set(onField?.roles.map(({ role }) => role) ?? roles.slice(0, ELEVEN).map(({ id }) => id)),
  );
  const turn = (role: RoleId): void => {
    const next = new Set(picked);
    if (!next.delete(role)) next.add(role);
    setPicked(next);
  };
  return (
    <MakeDialog
      title="New front"
      action="Make it"
      onMake={() => make(`made the front ${name}`, (now) => newFront(now, { name, roles: [...picked] }))}
      onClose={onClose}
    >
      <p className="hint">For one that is much like another, copy that one instead: its rules come along.</p>
      <PlainText label="Name of the front" value={name} onChange={setName} />
      <fieldset className="check-list">
        <legend>
          Its eleven <span className="hint">{picked.size} of 11 picked</span>
        </legend>
        {roles.map((role) => (
          <label key={role.id}>
            <input type="checkbox" checked={picked.has(role.id)} onChange={() => turn(role.id)} />
            <span className="letter">{role.letter}</span> {role.name}
          </label>
        ))}
      </fieldset>
    </MakeDialog>
  );
}
