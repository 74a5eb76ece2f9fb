import type { ReactElement } from 'react';
import { Select } from '../../parts/Choice.tsx';

interface Props<Item> {
  readonly label: string;
  readonly value: Item;
  readonly items: readonly Item[];
  readonly say: (item: Item) => string;
  /** Whether two mean the same; left out for plain words. */
  readonly same?: (a: Item, b: Item) => boolean;
  readonly disabled?: boolean;
  readonly wide?: boolean;
  /** True: the label is for those who hear it. */
  readonly hideLabel?: boolean;
  readonly hint?: string;
  readonly onChoose: (item: Item) => void;
}

/** A list to choose one thing from that is no plain text. What the file says and the list lacks is shown all the same. */
export function OneOf<Item>(props: Props<Item>): ReactElement {
  const {
    label,
    value,
    items,
    say,
    same = Object.is,
    disabled = false,
    wide = false,
    hideLabel = false,
    hint,
    onChoose,
  } = props;
  const all = items.some((item) => same(item, value)) ? items : [...items, value];
  return (
    <Select
      label={label}
      value={String(all.findIndex((item) => same(item, value)))}
      options={all.map((item, index) => ({ value: String(index), label: say(item) }))}
      disabled={disabled}
      wide={wide}
      hideLabel={hideLabel}
      {...(hint === undefined ? {} : { hint })}
      onChoose={(chosen) => {
        const item = all[Number(chosen)];
        if (item !== undefined) onChoose(item);
      }}
    />
  );
}
