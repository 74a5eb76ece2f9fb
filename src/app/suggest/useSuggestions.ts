import { useEffect, useSyncExternalStore } from 'react';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import type { Known } from './suggester.ts';

/** How long a look must stand still before it is searched, in milliseconds. */
const STILL = 350;

/** What would mend the findings of the board, as far as it is known; asked for once nothing moves any more. */
export function useSuggestions({ analysis, state }: BoardModel): Known {
  const { suggester } = useSession();
  const { coverages } = state.playbook;
  const moving = state.preview !== null;
  const needless = analysis.findings.length === 0 || analysis.verdict === 'left-out';
  useEffect(() => {
    if (moving || needless) return undefined;
    const timer = setTimeout(() => suggester.ask(analysis, { coverages }), STILL);
    return () => clearTimeout(timer);
  }, [analysis, coverages, moving, needless, suggester]);
  return useSyncExternalStore(suggester.subscribe, () => suggester.known(analysis));
}
