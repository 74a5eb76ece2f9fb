import { lazy, Suspense, useState, type ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { CallId } from '../../engine/index.ts';

const CheckOutRows = lazy(async () => ({ default: (await import('./CheckOutRows.tsx')).CheckOutRows }));

interface Props {
  readonly playbook: Playbook;
  readonly call: CallId | null;
}

/** When a kept call is checked out of, folded away: what is called is read and changed more often. */
export function CheckOuts({ playbook, call: id }: Props): ReactElement | null {
  const [open, setOpen] = useState(false);
  const call = playbook.calls.find((each) => each.id === id);
  if (call === undefined) return null;
  const rows = playbook.checkOuts.find((table) => table.call === call.id)?.rows ?? [];
  const count = rows.length === 0 ? 'never' : rows.length === 1 ? '1 formation' : `${rows.length} formations`;
  return (
    <details
      className="day-tags check-outs"
      onToggle={(event) => {
        // Rows inside are unfolded too, and tell of it.
        if (event.target === event.currentTarget) setOpen(event.currentTarget.open);
      }}
    >
      <summary>When to check out of it: {count}</summary>
      {open && (
        <Suspense fallback={null}>
          <CheckOutRows key={call.id} playbook={playbook} call={call} rows={rows} />
        </Suspense>
      )}
    </details>
  );
}
