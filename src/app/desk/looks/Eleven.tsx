import type { ReactElement } from 'react';
import { OFFENCE_KINDS, type Look, type OffenceKind, type OffencePlayer } from '../../../engine/index.ts';
import { KIND_WORDS, playerWords } from '../../../report/index.ts';
import { setPlayerKind, setPlayerLetter, setPlayerSpot } from '../../../store/index.ts';
import { Select, type Option } from '../../parts/Choice.tsx';
import { useApp } from '../../session/session.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useLookEdit } from './useLookEdit.ts';

const KINDS: readonly Option<OffenceKind>[] = OFFENCE_KINDS.map((value) => ({ value, label: KIND_WORDS[value] }));

/** Where the numbers end: nobody stands farther from the ball, in yards. */
const WIDEST = 40;
const DEEPEST = 40;
const STEP = 0.25;

/** The eleven in a table: letter, kind and spot of each, to be typed. */
export function Eleven({ look }: { readonly look: Look }): ReactElement {
  const words = playerWords(look.players);
  return (
    <table className="eleven">
      <caption className="part-label">The eleven, as they are set</caption>
      <thead>
        <tr>
          <th scope="col">Letter</th>
          <th scope="col">Kind</th>
          <th scope="col">Across</th>
          <th scope="col">Depth</th>
        </tr>
      </thead>
      <tbody>
        {look.players.map((player) => (
          <Row
            key={player.id}
            look={look}
            player={player}
            name={words.get(player.id)?.spoken ?? KIND_WORDS[player.kind]}
          />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly look: Look;
  readonly player: OffencePlayer;
  /** "the tight end Y". */
  readonly name: string;
}

function Row({ look, player, name }: RowProps): ReactElement {
  const edit = useLookEdit(look.id);
  const readOnly = useApp((state) => state.readOnly);
  const man = { look: look.id, player: player.id };
  const stand = (at: { readonly x: number; readonly y: number }, gesture: string | null): void => {
    edit(`moved ${name}`, gesture, (now) => setPlayerSpot(now, { ...man, at }));
  };
  return (
    <tr>
      <td>
        <TextField
          label={`Letter of ${name}`}
          value={player.letter}
          disabled={readOnly}
          onChange={(letter) =>
            edit(`changed the letter of ${name}`, null, (now) => setPlayerLetter(now, { ...man, letter }))
          }
        />
      </td>
      <td>
        <Select
          label={`Kind of ${name}`}
          value={player.kind}
          options={KINDS}
          disabled={readOnly}
          onChoose={(kind) => {
            if (kind === null) return;
            edit(`made ${name} a ${KIND_WORDS[kind]}`, null, (now) => setPlayerKind(now, { ...man, kind }));
          }}
        />
      </td>
      <td>
        <NumberField
          label={`Across, ${name}`}
          value={player.x}
          min={-WIDEST}
          max={WIDEST}
          step={STEP}
          disabled={readOnly}
          onChange={(x, gesture) => stand({ x, y: player.y }, gesture)}
        />
      </td>
      <td>
        <NumberField
          label={`Depth, ${name}`}
          value={0 - player.y}
          min={0}
          max={DEEPEST}
          step={STEP}
          disabled={readOnly}
          onChange={(depth, gesture) => stand({ x: player.x, y: 0 - depth }, gesture)}
        />
      </td>
    </tr>
  );
}
