import { useEffect, useState } from 'react';
import type { Library, Mending, Setup } from '../../engine/index.ts';
import { startSearcher } from './searcher.ts';

/** What is known of a search over all looks. */
export type MendingState =
  | { readonly kind: 'searching' }
  | { readonly kind: 'done'; readonly mending: Mending }
  | { readonly kind: 'failed'; readonly reason: string };

/** Searches once for what would mend a call in all these looks; leaving the screen ends the search. */
export function useMending(setups: readonly Setup[], library: Library): MendingState {
  const [state, setState] = useState<MendingState>({ kind: 'searching' });
  useEffect(() => {
    const searcher = startSearcher();
    searcher.addEventListener('message', ({ data }) => {
      if (data.kind === 'mended') setState({ kind: 'done', mending: data.mending });
      else if (data.kind === 'failed') setState(data);
    });
    searcher.postMessage({ kind: 'call', number: 1, setups, library });
    return () => searcher.terminate();
  }, [setups, library]);
  return state;
}
