import { useId, type ReactElement } from 'react';
import { useFieldGesture } from './useFieldGesture.ts';
import { shownName } from './shownName.ts';

/** One of a few, or of many. */
export interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

/** The entries of a playbook's list to choose from, by their names. */
export function named<Id extends string>(
  list: readonly { readonly id: Id; readonly name: string }[],
): readonly Option<Id>[] {
  return list.map(({ id, name }) => ({ value: id, label: shownName(name) }));
}

interface SelectProps<Value extends string> {
  readonly label: string;
  readonly value: Value | null;
  readonly options: readonly Option<Value>[];
  /** The words for "none"; leave out where one must be chosen. */
  readonly none?: string;
  readonly disabled?: boolean;
  readonly hint?: string;
  /** Its words are long: it gets a line of its own where there are two in a line. */
  readonly wide?: boolean;
  /** True: the label is for those who hear it. */
  readonly hideLabel?: boolean;
  readonly onChoose: (value: Value | null) => void;
}

/** A labelled list to choose one from. */
export function Select<Value extends string>(props: SelectProps<Value>): ReactElement {
  const { label, value, options, none, disabled = false, hint, wide = false, hideLabel = false, onChoose } = props;
  const id = useId();
  const gesture = useFieldGesture();
  return (
    <div className={wide ? 'field is-wide-field' : 'field'}>
      <label htmlFor={id} className={hideLabel ? 'unseen' : undefined}>
        {label}
      </label>
      <select
        id={id}
        value={value ?? ''}
        disabled={disabled}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.target.value);
          gesture.during(() => onChoose(chosen?.value ?? null));
        }}
        {...gesture.edges}
      >
        {none !== undefined && <option value="">{none}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      {hint !== undefined && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}

interface RadioProps<Value extends string> {
  readonly legend: string;
  readonly value: Value;
  readonly options: readonly Option<Value>[];
  readonly hint?: string;
  readonly hideLegend?: boolean;
  readonly onChoose: (value: Value) => void;
}

/** A few to choose one from, side by side; native radio buttons, so arrow keys work as everywhere. */
export function Radios<Value extends string>(props: RadioProps<Value>): ReactElement {
  const { legend, value, options, hint, hideLegend = false, onChoose } = props;
  const name = useId();
  const gesture = useFieldGesture();
  return (
    <fieldset className="radios" {...gesture.edges}>
      <legend className={hideLegend ? 'unseen' : undefined}>
        {legend}
        {hint !== undefined && <span className="hint"> {hint}</span>}
      </legend>
      <div className="segments">
        {options.map((option) => (
          <label key={option.value} className="segment">
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => gesture.during(() => onChoose(option.value))}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
