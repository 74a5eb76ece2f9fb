/** What a tab may do: write, only read because another tab writes, or not know. */
export type TabTurn = 'writer' | 'reader' | 'unknown';

const NAME = 'gapwright-playbook';

/**
 * Asks to be the one tab that writes. The lock is held until the tab goes away; the browser then passes it on by itself.
 * `onWriter` is called later, should a reader's turn come.
 */
export function askForTurn(onWriter: () => void): Promise<TabTurn> {
  // Missing on pages that are not served from a secure address, whatever the type says.
  if (!('locks' in navigator)) return Promise.resolve('unknown');
  const { locks } = navigator;
  return new Promise((answer) => {
    void (async () => {
      try {
        await locks.request(NAME, { ifAvailable: true }, (lock) => {
          answer(lock === null ? 'reader' : 'writer');
          return lock === null ? undefined : forEver();
        });
        // Only a reader gets here: a writer holds on for ever.
        await locks.request(NAME, () => {
          onWriter();
          return forEver();
        });
      } catch {
        // A browser may refuse locks altogether (storage switched off): then nobody knows whose turn it is.
        answer('unknown');
      }
    })();
  });
}

function forEver(): Promise<never> {
  return new Promise(() => undefined);
}
