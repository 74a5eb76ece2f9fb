import { useId, type ReactElement } from 'react';
import type { Option } from '../../parts/Choice.tsx';
import { useFieldGesture } from '../../parts/useFieldGesture.ts';

/** Options under a heading; an empty heading: none. */
export interface OptionGroup {
  readonly name: string;
  readonly options: readonly Option<string>[];
}

interface Props {
  readonly label: string;
  /** True: the label is for those who hear it; the sentence around the list says it to those who see. */
  readonly hideLabel?: boolean;
  readonly value: string;
  /** What stands in the list for a value that none of the options has: it is kept until another one is picked. */
  readonly ownWords?: string;
  readonly groups: readonly OptionGroup[];
  readonly disabled: boolean;
  readonly onPick: (value: string) => void;
}

/** A list to pick one from, in groups, for values that are keys of something. */
export function PickList(props: Props): ReactElement {
  const { label, hideLabel = false, value, ownWords, groups, disabled, onPick } = props;
  const id = useId();
  const gesture = useFieldGesture();
  const known = groups.some(({ options }) => options.some((option) => option.value === value));
  return (
    <div className="field">
      <label htmlFor={id} className={hideLabel ? 'unseen' : undefined}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        disabled={disabled}
        onChange={(event) => {
          const picked = event.target.value;
          gesture.during(() => onPick(picked));
        }}
        {...gesture.edges}
      >
        {!known && <option value={value}>{ownWords ?? 'not said'}</option>}
        {groups.map(({ name, options }) =>
          name === '' ? (
            <Options key={name} options={options} />
          ) : (
            <optgroup key={name} label={name}>
              <Options options={options} />
            </optgroup>
          ),
        )}
      </select>
    </div>
  );
}

function Options({ options }: Pick<OptionGroup, 'options'>): ReactElement {
  return (
    <>
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </>
  );
}
