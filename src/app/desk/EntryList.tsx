import { useEffect, useRef, useState, type ReactElement } from 'react';
import { GridList, GridListItem, Input, Label, SearchField } from 'react-aria-components';
import type { Playbook } from '../../document/index.ts';
import { copyEntry, deleteEntry, nextEntry, renameEntry, type Entry, type Section } from '../../store/index.ts';
import { NameDialog } from '../dialogs/NameDialog.tsx';
import { showInList } from '../parts/showInRow.ts';
import { useApp, useCommit } from '../session/session.ts';
import { DeleteDialog } from './DeleteDialog.tsx';
import { entriesOf, entryName } from './entries.ts';
import { SECTION_WORDS } from './sections.ts';

interface Props {
  readonly section: Section;
  readonly chosen: Entry | null;
  readonly onChoose: (entry: Entry) => void;
  /** Asks for what a new entry needs. */
  readonly onNew: () => void;
}

/** The entries of a section: found by typing, chosen by mouse or arrow keys; and what can be done to the chosen one. */
export function EntryList({ section, chosen, onChoose, onNew }: Props): ReactElement {
  const playbook = useApp((state) => state.playbook);
  const readOnly = useApp((state) => state.readOnly);
  const [sought, setSought] = useState('');
  const [asking, setAsking] = useState<'copy' | 'rename' | 'delete' | null>(null);
  const { one, tab } = SECTION_WORDS[section];
  const all = entriesOf(playbook, section);
  const shown = all.filter(({ text }) => text.toLowerCase().includes(sought.trim().toLowerCase()));
  return (
    <div className="entry-list">
      <SearchField className="entry-search" value={sought} onChange={setSought}>
        <Label className="unseen">Find a {one}</Label>
        <Input placeholder={`Find one of ${all.length}`} />
      </SearchField>
      <GridList
        className="entries"
        aria-label={tab}
        selectionMode="single"
        selectionBehavior="replace"
        disallowEmptySelection
        selectedKeys={chosen === null ? [] : [chosen.id]}
        onSelectionChange={(keys) => {
          const found = all.find(({ entry }) => keys !== 'all' && keys.has(entry.id));
          if (found !== undefined) onChoose(found.entry);
        }}
        renderEmptyState={() => <p className="hint entries-empty">{all.length === 0 ? EMPTY[section] : NOT_FOUND}</p>}
      >
        {shown.map(({ entry, name, small }) => (
          <GridListItem key={entry.id} id={entry.id} textValue={name}>
            {({ isSelected }) => <EntryWords name={name} small={small} chosen={isSelected} />}
          </GridListItem>
        ))}
      </GridList>
      <div className="button-row">
        <button
          type="button"
          disabled={readOnly}
          onClick={() => {
            // What was sought need not be in the name of the new one.
            setSought('');
            onNew();
          }}
        >
          New…<span className="unseen"> {one}</span>
        </button>
        {chosen !== null &&
          (['copy', 'rename', 'delete'] as const).map((what) => (
            <button key={what} type="button" disabled={readOnly} onClick={() => setAsking(what)}>
              {BUTTONS[what]}
              <span className="unseen"> the {one}</span>
            </button>
          ))}
      </div>
      {chosen !== null && asking !== null && (
        <Asked
          what={asking}
          playbook={playbook}
          entry={chosen}
          onMade={(entry) => {
            setSought('');
            onChoose(entry);
          }}
          onClose={() => setAsking(null)}
        />
      )}
    </div>
  );
}

interface WordsProps {
  readonly name: string;
  readonly small: string;
  readonly chosen: boolean;
}

/** An entry in words; the one that is chosen, by whatever hand, is scrolled to. */
function EntryWords({ name, small, chosen }: WordsProps): ReactElement {
  const words = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const row = words.current?.closest<HTMLElement>('[role="row"]');
    if (chosen && row !== null && row !== undefined) showInList(row);
  }, [chosen]);
  return (
    <>
      <span className="entry-name" ref={words}>
        {name}
      </span>
      {small !== '' && <span className="entry-small">{small}</span>}
    </>
  );
}

/** What to do where there is nothing. */
const EMPTY: Readonly<Record<Section, string>> = {
  pressures: 'No pressure yet. Make one with New, and tell two or three men what to do.',
  looks: 'No look yet. Make one with New: what the offence lines up in.',
  fronts: 'No front yet. Make one with New: eleven men and where each stands. Without roles, make those first.',
  coverages: 'No coverage yet. Make one with New: who covers whom, or which zone.',
  roles: 'No role yet. Make eleven with New, or start your own playbook below.',
};
const NOT_FOUND = 'None is called that. Try fewer letters, or clear the field with Escape.';

const BUTTONS = { copy: 'Copy…', rename: 'Rename…', delete: 'Delete…' } as const;

interface AskedProps {
  readonly what: 'copy' | 'rename' | 'delete';
  readonly playbook: Playbook;
  readonly entry: Entry;
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

function Asked({ what, playbook, entry, onMade, onClose }: AskedProps): ReactElement {
  const commit = useCommit();
  const { one } = SECTION_WORDS[entry.section];
  const name = entryName(playbook, entry);
  const inNoLook = { look: null, gesture: null };
  if (what === 'delete') {
    return (
      <DeleteDialog
        playbook={playbook}
        entry={entry}
        onDelete={() =>
          commit({
            ...inNoLook,
            label: `deleted the ${one} ${name}`,
            change: (now) => deleteEntry(now, { entry }),
          })
        }
        onClose={onClose}
      />
    );
  }
  return (
    <NameDialog
      title={what === 'copy' ? `Copy the ${one} ${name}` : `Rename the ${one}`}
      label={what === 'copy' ? 'Name of the copy' : 'New name'}
      start={what === 'copy' ? `${name} copy` : name}
      action={what === 'copy' ? 'Copy' : 'Rename'}
      onName={(text) => {
        if (what === 'rename') {
          return commit({
            ...inNoLook,
            label: `renamed the ${one} ${name}`,
            change: (now) => renameEntry(now, { entry, name: text }),
          });
        }
        const made = nextEntry(playbook, entry.section);
        const done = commit({
          ...inNoLook,
          label: `copied the ${one} ${name}`,
          change: (now) => copyEntry(now, { entry, name: text }),
        });
        if (done) onMade(made);
        return done;
      }}
      onClose={onClose}
    />
  );
}
