import { useCallback } from 'react';
import type { LookId } from '../../../engine/index.ts';
import { useCommit } from '../../session/session.ts';
import type { Edit } from '../parts/useEdit.ts';

/** Makes changes of a look; undoing one shows the look again. */
export function useLookEdit(look: LookId): Edit {
  const commit = useCommit();
  return useCallback((label, gesture, change) => commit({ label, look, gesture, change }), [commit, look]);
}
