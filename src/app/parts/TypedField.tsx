import { useId, type InputHTMLAttributes, type ReactElement } from 'react';

interface Props {
  readonly label: string;
  /** Said behind the label: "yards". */
  readonly unit: string | undefined;
  /** What is wrong with what is typed, said at the field; empty: nothing. */
  readonly problem: string;
  readonly invalid: boolean;
  readonly input: Pick<
    InputHTMLAttributes<HTMLInputElement>,
    'inputMode' | 'placeholder' | 'value' | 'disabled' | 'onChange' | 'onBlur' | 'onKeyDown'
  >;
}

/** A labelled text that is typed, with the place where a refusal is said. What is done with it is its owner's. */
export function TypedField({ label, unit, problem, invalid, input }: Props): ReactElement {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {unit !== undefined && <span className="hint"> {unit}</span>}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        aria-invalid={invalid}
        aria-describedby={`${id}-problem`}
        {...input}
      />
      <p className="problem" id={`${id}-problem`} role="alert">
        {problem}
      </p>
    </div>
  );
}
