import type { Playbook } from '../../document/index.ts';
import { ROOM_WORDS } from '../../report/index.ts';
import type { Entry, Section } from '../../store/index.ts';
import { shownName } from '../parts/shownName.ts';

/** One line of a section's list. */
export interface EntryRow {
  readonly entry: Entry;
  /** Its name as shown; never empty. */
  readonly name: string;
  /** What helps to tell it apart, in a few words; may be empty. */
  readonly small: string;
  /** What it is found by. */
  readonly text: string;
}

/** The lines of a section, in the order of the playbook. */
export function entriesOf(playbook: Playbook, section: Section): readonly EntryRow[] {
  switch (section) {
    case 'pressures':
      return playbook.pressures.map(({ id, name, tags }) => row({ section, id }, name, tags.join(', ')));
    case 'looks':
      return playbook.looks.map(({ id, name }) => row({ section, id }, name, ''));
    case 'fronts':
      return playbook.fronts.map(({ id, name }) => row({ section, id }, name, ''));
    case 'coverages':
      return playbook.coverages.map(({ id, name }) => row({ section, id }, name, ''));
    case 'roles':
      return playbook.roles.map(({ id, name, letter, room }) =>
        row({ section, id }, name, `${letter}, ${ROOM_WORDS[room]}`),
      );
  }
}

/** The name of an entry as the coach knows it. */
export function entryName(playbook: Playbook, { section, id }: Entry): string {
  return shownName(playbook[section].find((each) => each.id === id)?.name ?? '');
}

function row(entry: Entry, name: string, small: string): EntryRow {
  return { entry, name: shownName(name), small, text: `${name} ${small}` };
}
