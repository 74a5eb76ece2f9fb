import { useState, type ReactElement } from 'react';
import { ROOMS, type Room } from '../../../engine/index.ts';
import { ROOM_WORDS } from '../../../report/index.ts';
import { newRole, type Entry } from '../../../store/index.ts';
import { Radios } from '../../parts/Choice.tsx';
import { MakeDialog } from '../../dialogs/MakeDialog.tsx';
import { PlainText } from '../parts/PlainText.tsx';
import { useMake } from '../parts/useMake.ts';

interface Props {
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

/** Asks for the name, letter and room of a new role; how he chooses his side is set in his editor. */
export function NewRole({ onMade, onClose }: Props): ReactElement {
  const make = useMake('roles', onMade);
  const [name, setName] = useState('');
  const [letter, setLetter] = useState('');
  const [room, setRoom] = useState<Room>('secondary');
  return (
    <MakeDialog
      title="New role"
      action="Make it"
      onMake={() => make(`made the role ${name}`, (now) => newRole(now, { name, letter, room }))}
      onClose={onClose}
    >
      <PlainText label="Name" unit="such as Fifth back" value={name} onChange={setName} />
      <PlainText label="Letter on the board" unit="one or two" value={letter} onChange={setLetter} />
      <Radios
        legend="Room"
        value={room}
        options={ROOMS.map((value) => ({ value, label: ROOM_WORDS[value] }))}
        onChoose={setRoom}
      />
    </MakeDialog>
  );
}
