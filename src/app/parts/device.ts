/**
 * Small things kept on this device outside of the playbook, each under a name of its own. A browser may refuse storage
 * altogether (a private window): then nothing is kept, and nothing breaks.
 */

/** What is kept under that name; null: nothing, or this browser keeps nothing. */
export function readDevice(name: string): string | null {
  return attempt(() => localStorage.getItem(key(name)));
}

/** Keeps a text under that name; false: this browser keeps nothing. */
export function writeDevice(name: string, text: string): boolean {
  const kept = attempt(() => {
    localStorage.setItem(key(name), text);
    return true;
  });
  return kept === true;
}

/** Forgets what is kept under that name. */
export function forgetDevice(name: string): void {
  attempt(() => localStorage.removeItem(key(name)));
}

function key(name: string): string {
  return `gapwright-${name}`;
}

function attempt<Value>(step: () => Value): Value | null {
  try {
    return step();
  } catch {
    return null;
  }
}
