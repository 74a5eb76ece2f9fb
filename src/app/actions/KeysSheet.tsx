import type { ReactElement } from 'react';
import { Dialog } from '../parts/Dialog.tsx';
import { ACTION_GROUPS, chordText, type Action } from './actions.ts';
import { BOARD_KEYS } from './boardKeys.ts';
import { onMac } from './onMac.ts';

interface Props {
  readonly actions: readonly Action[];
  readonly onClose: () => void;
}

/** Every key there is, made of the same list the keys themselves are made of. */
export function KeysSheet({ actions, onClose }: Props): ReactElement {
  const withKeys = actions.filter(({ keys }) => keys.length > 0);
  return (
    <Dialog title="All keys" onClose={onClose}>
      <table className="keys-sheet">
        <thead className="unseen">
          <tr>
            <th scope="col">What it does</th>
            <th scope="col">Keys</th>
          </tr>
        </thead>
        {ACTION_GROUPS.map((group) => (
          <Group
            key={group}
            title={group}
            rows={withKeys
              .filter((action) => action.group === group)
              .map(({ title, keys }) => ({
                does: title,
                keys: keys.map((key) => chordText(key, onMac())).join(' or '),
              }))}
          />
        ))}
        <Group title="On the field and its list of players" rows={BOARD_KEYS} />
      </table>
      <div className="button-row">
        <button type="button" onClick={onClose}>
          Close
        </button>
      </div>
    </Dialog>
  );
}

interface GroupProps {
  readonly title: string;
  readonly rows: readonly { readonly does: string; readonly keys: string }[];
}

function Group({ title, rows }: GroupProps): ReactElement | null {
  if (rows.length === 0) return null;
  return (
    <tbody>
      <tr>
        <th colSpan={2} scope="rowgroup">
          {title}
        </th>
      </tr>
      {rows.map(({ does, keys }) => (
        <tr key={does}>
          <td>{does}</td>
          <td>
            <kbd>{keys}</kbd>
          </td>
        </tr>
      ))}
    </tbody>
  );
}
