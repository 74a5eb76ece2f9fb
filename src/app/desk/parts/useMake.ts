import type { Result } from '../../../base/index.ts';
import type { Playbook } from '../../../document/index.ts';
import { nextEntry, type CommandProblem, type Entry, type Section } from '../../../store/index.ts';
import { useSession } from '../../session/session.ts';
import { useEdit } from './useEdit.ts';

/** Makes a new entry of a section by a command that gives it the id that is next; it is open then. True when it was made. */
export function useMake(
  section: Section,
  onMade: (entry: Entry) => void,
): (label: string, change: (playbook: Playbook) => Result<Playbook, CommandProblem>) => boolean {
  const { store } = useSession();
  const edit = useEdit();
  return (label, change) => {
    const made = nextEntry(store.get().playbook, section);
    const done = edit(label, null, change);
    if (done) onMade(made);
    return done;
  };
}
