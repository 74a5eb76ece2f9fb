import { capital } from '../parts/capital.ts';

/** Where an action stands in the palette and on the sheet of keys. */
export const ACTION_GROUPS = ['Playbook', 'Go to', 'Board', 'Look', 'Call', 'Help'] as const;
export type ActionGroup = (typeof ACTION_GROUPS)[number];

/** Something the coach can do from anywhere. The palette, the keys and the sheet of keys all come from one list of these. */
export interface Action {
  /** Stable, and its own among all. */
  readonly id: string;
  readonly group: ActionGroup;
  /** What it does, as he would ask for it: "Turn the board". */
  readonly title: string;
  /** Key chords as tinykeys reads them ("$mod+Shift+z"; $mod is Command on a Mac, else Control). The first is the one shown. */
  readonly keys: readonly string[];
  /** True: it makes no sense now. */
  readonly disabled: boolean;
  readonly run: () => void;
}

/** The chord as it is written on the keys of this machine: "Ctrl+Shift+Z", "⌘⇧Z". */
export function chordText(chord: string, mac: boolean): string {
  const parts = chord.split('+').map((part) => (mac ? MAC[part] : OTHERS[part]) ?? capital(part.replace(/^Digit/, '')));
  return parts.join(mac ? '' : '+');
}

const MAC: Readonly<Record<string, string>> = { $mod: '⌘', Shift: '⇧', Alt: '⌥' };
const OTHERS: Readonly<Record<string, string>> = { $mod: 'Ctrl' };
