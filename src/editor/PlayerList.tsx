import { useRef, type KeyboardEvent, type MouseEvent, type ReactElement } from 'react';
import type { Point } from '../engine/index.ts';
import { includesMan, manKey, sameMan, toggledMan, type Man } from '../store/index.ts';

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
  /** The men who are picked, the one picked last behind. */
  readonly selection: readonly Man[];
  /** True: a press adds to those who are picked. */
  readonly several: boolean;
  readonly onSelect: (men: readonly Man[]) => void;
  /** Moves all who are picked by an arrow key; false for any other key. `gesture` is the same for all steps of one held key. */
  readonly onNudge: (key: string, big: boolean, gesture: string) => boolean;
  readonly onMoveEnd: () => void;
}

/**
 * The field for those who do not see or point: 22 buttons, one tab stop. Arrow keys move whoever is picked, Page Up and Page
 * Down go to the man before or after (with Shift they keep the others picked), Home and End to the first and the last.
 */
export function PlayerList(props: Props): ReactElement {
  const { rows, selection, several, onSelect, onNudge, onMoveEnd } = props;
  const list = useRef<HTMLDivElement>(null);
  const presses = useRef(0);
  // Who gets the focus by being pressed is picked by the press, not by the focus.
  const pressing = useRef(false);
  const last = selection.at(-1);
  const stop = last !== undefined && rows.some(({ man }) => sameMan(man, last)) ? last : (rows[0]?.man ?? null);

  const go = (index: number, extend: boolean): void => {
    const row = rows[Math.min(Math.max(index, 0), rows.length - 1)];
    if (row === undefined) return;
    const others = selection.filter((man) => !sameMan(man, row.man));
    onSelect(extend ? [...others, row.man] : [row.man]);
    pressing.current = true;
    list.current?.querySelectorAll('button')[rows.indexOf(row)]?.focus();
    pressing.current = false;
  };

  const press = (event: KeyboardEvent, row: ManRow): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const target = GOES[event.key]?.(rows.indexOf(row), rows.length);
    if (target !== undefined) {
      event.preventDefault();
      go(target, event.shiftKey);
      return;
    }
    if (!event.repeat) presses.current += 1;
    if (onNudge(event.key, event.shiftKey, `arrow ${presses.current}`)) event.preventDefault();
  };

  const click = (event: MouseEvent, { man }: ManRow): void => {
    const adding = several || event.shiftKey || event.ctrlKey || event.metaKey;
    onSelect(adding ? toggledMan(selection, man) : [man]);
  };

  return (
    <div
      className="player-list"
      ref={list}
      role="group"
      aria-labelledby="players-title"
      aria-describedby="players-help"
      onPointerDown={() => {
        pressing.current = true;
      }}
      onPointerUp={() => {
        pressing.current = false;
      }}
      onPointerCancel={() => {
        pressing.current = false;
      }}
    >
      {rows.map((row) => (
        <button
          key={manKey(row.man)}
          type="button"
          className={`player player-${row.man.kind}`}
          tabIndex={sameMan(row.man, stop) ? 0 : -1}
          aria-pressed={includesMan(selection, row.man)}
          aria-label={row.words}
          onClick={(event) => click(event, row)}
          onFocus={() => {
            if (!pressing.current && !includesMan(selection, row.man)) onSelect([row.man]);
          }}
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
