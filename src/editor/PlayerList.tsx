import { useRef, type KeyboardEvent, type ReactElement } from 'react';
import type { Point } from '../engine/index.ts';
import { manKey, sameMan, type Man } from '../store/index.ts';
import { nudge } from './tools/index.ts';

/** One of the 22 in words. */
export interface ManRow {
  readonly man: Man;
  readonly letter: string;
  /** Everything about him in one line: "Defence, N, Nose, head up on the snapper; rush the A gap left". */
  readonly words: string;
  readonly at: Point;
}

interface Props {
  readonly rows: readonly ManRow[];
  readonly selected: Man | null;
  readonly turned: boolean;
  readonly onSelect: (man: Man) => void;
  /** `gesture` is the same for all steps of one held key. */
  readonly onMove: (man: Man, to: Point, gesture: string) => void;
  readonly onMoveEnd: () => void;
}

/**
 * The field for those who do not see or point: 22 buttons, one tab stop. Arrow keys move the man who has the focus, Page Up
 * and Page Down go to the man before or after, Home and End to the first and the last.
 */
export function PlayerList(props: Props): ReactElement {
  const { rows, selected, turned, onSelect, onMove, onMoveEnd } = props;
  const list = useRef<HTMLDivElement>(null);
  const presses = useRef(0);
  const stop = rows.some(({ man }) => sameMan(man, selected)) ? selected : (rows[0]?.man ?? null);

  const go = (index: number): void => {
    const row = rows[Math.min(Math.max(index, 0), rows.length - 1)];
    if (row === undefined) return;
    onSelect(row.man);
    list.current?.querySelectorAll('button')[rows.indexOf(row)]?.focus();
  };

  const press = (event: KeyboardEvent, row: ManRow): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const index = rows.indexOf(row);
    const target = GOES[event.key]?.(index, rows.length);
    const to = nudge(row.at, event.key, event.shiftKey, turned);
    if (target === undefined && to === null) return;
    event.preventDefault();
    if (target !== undefined) go(target);
    if (to === null) return;
    if (!event.repeat) presses.current += 1;
    onMove(row.man, to, `arrow ${presses.current}`);
  };

  return (
    <div
      className="player-list"
      ref={list}
      role="group"
      aria-labelledby="players-title"
      aria-describedby="players-help"
    >
      {rows.map((row) => (
        <button
          key={manKey(row.man)}
          type="button"
          className={`player player-${row.man.kind}`}
          tabIndex={sameMan(row.man, stop) ? 0 : -1}
          aria-pressed={sameMan(row.man, selected)}
          aria-label={row.words}
          onClick={() => onSelect(row.man)}
          onFocus={() => onSelect(row.man)}
          onKeyDown={(event) => press(event, row)}
          onKeyUp={onMoveEnd}
          onBlur={onMoveEnd}
        >
          {row.letter}
        </button>
      ))}
    </div>
  );
}

const GOES: Readonly<Record<string, (index: number, count: number) => number>> = {
  Home: () => 0,
  End: (_index, count) => count - 1,
  PageUp: (index) => index - 1,
  PageDown: (index) => index + 1,
};
