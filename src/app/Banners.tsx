import { useState, type ReactElement } from 'react';
import { RefusalTable } from './dialogs/FileDialogs.tsx';
import { download } from './files/download.ts';
import { useApp } from './session/session.ts';
import type { Started } from './session/start.ts';

/** What the coach must know before he goes on: another tab writes, or what is kept here cannot be opened. */
export function Banners({ damaged }: { readonly damaged: Started['damaged'] }): ReactElement {
  const readOnly = useApp((state) => state.readOnly);
  return (
    <>
      {readOnly && (
        <p className="banner" role="status">
          <strong>Open in another tab.</strong> Here you can look and print, but not change anything, so that the two
          never overwrite each other. Close the other tab to go on here.
        </p>
      )}
      {damaged !== null && <DamagedBanner damaged={damaged} />}
    </>
  );
}

function DamagedBanner({ damaged }: { readonly damaged: NonNullable<Started['damaged']> }): ReactElement {
  const [open, setOpen] = useState(true);
  if (!open) return <></>;
  return (
    <section className="banner" aria-label="The kept playbook cannot be opened">
      <p>
        <strong>The playbook kept in this browser cannot be opened.</strong> It is left untouched, and the demo playbook
        is shown instead. Nothing you change now is kept here: save it to a file.
      </p>
      <RefusalTable refusals={damaged.refusals} />
      <div className="button-row">
        <button
          type="button"
          onClick={() => download('kept.gapwright.json', new TextEncoder().encode(damaged.text), 'application/json')}
        >
          Save what is kept to a file
        </button>
        <button type="button" onClick={() => setOpen(false)}>
          Hide this
        </button>
      </div>
    </section>
  );
}
