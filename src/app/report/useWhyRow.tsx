import { useId, useState, type ReactElement } from 'react';
import type { Why } from '../../report/index.ts';
import { WhyTree } from '../parts/Why.tsx';

interface Asked {
  /** What is explained, for those who hear the button out of its place. */
  readonly of: string;
  readonly reasons: readonly Why[];
  /** How many columns the table has. */
  readonly columns: number;
  /** The class of the row that is explained; the reasons look like a part of it. */
  readonly className: string | undefined;
}

/** "Why" in a cell of a table, and the reasons in a row of their own below: a cell is too narrow for reasons of reasons. */
export function useWhyRow({ of, reasons, columns, className = '' }: Asked): {
  readonly button: ReactElement;
  readonly row: ReactElement | null;
} {
  const id = useId();
  const [open, setOpen] = useState(false);
  return {
    button: (
      <button
        type="button"
        className="link-button why-button"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => setOpen(!open)}
      >
        Why<span className="unseen"> {of}</span>
      </button>
    ),
    row: open ? (
      <tr id={id} className={`why-row ${className}`}>
        <td colSpan={columns}>
          <WhyTree reasons={reasons} />
        </td>
      </tr>
    ) : null,
  };
}
