import { useEffect, useState } from 'react';
import type { LookId, Verdict } from '../../engine/index.ts';
import type { AppState } from '../../store/index.ts';
import { useSession } from '../session/session.ts';

/** How long the looks may be worked on before the screen gets its turn, in milliseconds. */
const SLICE = 8;

/**
 * The verdict of the board's call in every look of the playbook; null for one that is not worked out yet. Looks are worked
 * through a few at a time between frames, and only those that a change can have touched.
 */
export function useLookVerdicts(state: AppState): ReadonlyMap<LookId, Verdict | null> {
  const { analyst, now } = useSession();
  const [, setRounds] = useState(0);
  const verdicts = new Map(
    state.playbook.looks.map(({ id }) => [id, analyst.known(state, id)?.verdict ?? null] as const),
  );
  const open = state.playbook.looks.find(({ id }) => verdicts.get(id) === null)?.id ?? null;

  useEffect(() => {
    if (open === null) return undefined;
    const timer = setTimeout(() => {
      const end = now().getTime() + SLICE;
      for (const { id } of state.playbook.looks) {
        if (analyst.known(state, id) === null && !analyst.inLook(state, id).ok) return;
        if (now().getTime() >= end) break;
      }
      setRounds((rounds) => rounds + 1);
    });
    return () => clearTimeout(timer);
  });

  return verdicts;
}
