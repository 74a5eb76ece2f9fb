import { useCallback } from 'react';
import type { Result } from '../../../base/index.ts';
import type { Playbook } from '../../../document/index.ts';
import type { CommandProblem } from '../../../store/index.ts';
import { useCommit } from '../../session/session.ts';

/** One change of the entry that is open: what it is called in "Undone: …", the gesture it belongs to, and the command. */
export type Edit = (
  label: string,
  gesture: string | null,
  change: (playbook: Playbook) => Result<Playbook, CommandProblem>,
) => boolean;

/** Makes changes of the playbook that belong to no look. */
export function useEdit(): Edit {
  const commit = useCommit();
  return useCallback((label, gesture, change) => commit({ label, look: null, gesture, change }), [commit]);
}
