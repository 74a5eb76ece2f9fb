import { useEffect, useId, useRef, type ReactElement, type ReactNode } from 'react';

interface Props<Item> {
  /** What one item is called: "condition", "step". */
  readonly one: string;
  /** What the list belongs to, for those who hear it: "of rule 2". May be empty. */
  readonly of: string;
  readonly items: readonly Item[];
  /** The fewest and the most there may be. */
  readonly min: number;
  readonly max: number;
  /** False: their order has no meaning, so they cannot be moved. */
  readonly ordered: boolean;
  /** True: an item is large, so its buttons stand in its first line and it has the whole width below them. */
  readonly large?: boolean;
  readonly disabled: boolean;
  /** What is said when there is none. */
  readonly none?: string;
  /** A new item; null: no more can be added now. */
  readonly fresh: (() => Item) | null;
  readonly onChange: (items: readonly Item[]) => void;
  readonly children: (item: Item, index: number) => ReactNode;
}

/** Items one below the other, to be added, put in order and taken away; the focus goes with the item. */
export function OrderedList<Item>(props: Props<Item>): ReactElement {
  const { one, of, items, min, max, ordered, large = false, disabled, none, fresh, onChange, children } = props;
  const own = useId();
  const box = useRef<HTMLDivElement>(null);
  const wanted = useRef<string | null>(null);
  useEffect(() => {
    if (wanted.current === null) return;
    // The lists inside its items have buttons of the same kind: only this list's own are meant.
    const places = wanted.current.split(' ').map((act) => box.current?.querySelector(`[data-act="${own}${act}"]`));
    wanted.current = null;
    const place = places.find((each) => each instanceof HTMLButtonElement && !each.disabled);
    if (place instanceof HTMLButtonElement) place.focus();
  });
  const put = (next: readonly Item[], focus: string): void => {
    wanted.current = focus;
    onChange(next);
  };
  const tail = of === '' ? '' : ` ${of}`;
  return (
    <div className="ordered-list" ref={box}>
      {items.length === 0 && none !== undefined && <p className="hint">{none}</p>}
      {items.length > 0 && (
        <ol>
          {items.map((item, index) => (
            // Items have no id; what is typed into one is dropped as soon as another stands in its place.
            <li key={index} className={large ? 'ordered-row is-large' : 'ordered-row'}>
              <div className="ordered-item">{children(item, index)}</div>
              <div className="ordered-buttons">
                {ordered && items.length > 1 && (
                  <>
                    <SmallButton
                      act={`${own}up-${index}`}
                      sign="↑"
                      words={`Move ${one} ${index + 1}${tail} up`}
                      disabled={disabled || index === 0}
                      onPress={() => put(swapped(items, index, index - 1), `up-${index - 1} down-${index - 1}`)}
                    />
                    <SmallButton
                      act={`${own}down-${index}`}
                      sign="↓"
                      words={`Move ${one} ${index + 1}${tail} down`}
                      disabled={disabled || index === items.length - 1}
                      onPress={() => put(swapped(items, index, index + 1), `down-${index + 1} up-${index + 1}`)}
                    />
                  </>
                )}
                <SmallButton
                  act={`${own}remove-${index}`}
                  sign="×"
                  words={`Take away ${one} ${index + 1}${tail}`}
                  disabled={disabled || items.length <= min}
                  onPress={() =>
                    put(
                      items.filter((_, at) => at !== index),
                      `remove-${index} remove-${index - 1} add`,
                    )
                  }
                />
              </div>
            </li>
          ))}
        </ol>
      )}
      <div>
        <button
          type="button"
          className="link-button"
          data-act={`${own}add`}
          disabled={disabled || fresh === null || items.length >= max}
          onClick={() => {
            if (fresh !== null) put([...items, fresh()], `remove-${items.length}`);
          }}
        >
          Add a {one}
          <span className="unseen">{tail}</span>
        </button>
      </div>
    </div>
  );
}

interface ButtonProps {
  readonly act: string;
  readonly sign: string;
  readonly words: string;
  readonly disabled: boolean;
  readonly onPress: () => void;
}

function SmallButton({ act, sign, words, disabled, onPress }: ButtonProps): ReactElement {
  return (
    <button
      type="button"
      className="small-button"
      data-act={act}
      title={words}
      aria-label={words}
      disabled={disabled}
      onClick={onPress}
    >
      {sign}
    </button>
  );
}

function swapped<Item>(items: readonly Item[], from: number, to: number): readonly Item[] {
  return items.flatMap((item, index) => {
    const shown = index === from ? items[to] : index === to ? items[from] : item;
    return shown === undefined ? [] : [shown];
  });
}
