import type { ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import { usesOf, type Entry, type Use } from '../../store/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { entryName } from './entries.ts';
import { SECTION_WORDS } from './sections.ts';
import { shownName } from '../parts/shownName.ts';

interface Props {
  readonly playbook: Playbook;
  readonly entry: Entry;
  /** True when it is gone. */
  readonly onDelete: () => boolean;
  readonly onClose: () => void;
}

/** What uses the entry, before it is deleted; where something cannot be without it, it can only be looked at. */
export function DeleteDialog({ playbook, entry, onDelete, onClose }: Props): ReactElement {
  const uses = usesOf(playbook, entry);
  const holding = uses.filter(({ holds }) => holds);
  const mentions = uses.filter(({ holds }) => !holds);
  const { one } = SECTION_WORDS[entry.section];
  return (
    <Dialog title={`Delete the ${one} ${entryName(playbook, entry)}?`} onClose={onClose}>
      {uses.length === 0 && <p>Nothing else uses it. You can undo this.</p>}
      {holding.length > 0 && (
        <>
          <p>These cannot be without it. Change or delete them first.</p>
          <UseList uses={holding} />
        </>
      )}
      {mentions.length > 0 && (
        <>
          <p>These only mention it; what they say of it goes with it.</p>
          <UseList uses={mentions} />
        </>
      )}
      <div className="button-row">
        {holding.length === 0 && (
          <button
            type="button"
            className="is-main"
            onClick={() => {
              if (onDelete()) onClose();
            }}
          >
            Delete
          </button>
        )}
        <button type="button" onClick={onClose}>
          {holding.length === 0 ? 'Cancel' : 'Close'}
        </button>
      </div>
    </Dialog>
  );
}

const BY_WORDS: Readonly<Record<Use['by'], string>> = {
  pressures: 'the pressure',
  looks: 'the look',
  fronts: 'the front',
  coverages: 'the coverage',
  roles: 'the role',
  calls: 'the call',
  opponents: 'the opponent',
  'check-outs': 'the check-outs of the call',
};

function UseList({ uses }: { readonly uses: readonly Use[] }): ReactElement {
  return (
    <ul className="use-list">
      {uses.map(({ by, name }, index) => (
        // A use has no id; the list is made anew with the dialog.
        <li key={index}>
          {BY_WORDS[by]} {shownName(name)}
        </li>
      ))}
    </ul>
  );
}
