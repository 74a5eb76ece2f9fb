import { lazy, Suspense, type ReactElement } from 'react';
import type { Refusal } from '../../document/index.ts';
import type { Files } from '../files/useFiles.ts';
import { Dialog } from '../parts/Dialog.tsx';

/** Loaded when somebody starts a playbook of his own. */
const StartDialog = lazy(async () => ({ default: (await import('../start/StartDialog.tsx')).StartDialog }));

/** What has to be said or asked about a file that was chosen, or about a playbook that is started. */
export function FileDialogs({ files }: { readonly files: Files }): ReactElement | null {
  const { talk } = files;
  if (talk === null) return null;
  if (talk.kind === 'start') {
    return (
      <Suspense fallback={null}>
        <StartDialog onSave={files.save} onStart={files.started} onClose={files.close} />
      </Suspense>
    );
  }
  if (talk.kind === 'refused') return <RefusedDialog name={talk.name} refusals={talk.refusals} onClose={files.close} />;
  return (
    <Dialog title={`Open ${talk.name}?`} onClose={files.close}>
      <p>The playbook that is open has changes that are in no file. You can save it to a file first.</p>
      <p>If you open the other one now, Undo brings this one back until you close or reload this page.</p>
      <div className="button-row">
        <button type="button" className="is-main" onClick={files.save}>
          Save this one to a file
        </button>
        <button type="button" onClick={files.openAnyway}>
          Open {talk.name}
        </button>
        <button type="button" onClick={files.close}>
          Cancel
        </button>
      </div>
    </Dialog>
  );
}

interface RefusedProps {
  readonly name: string;
  readonly refusals: readonly Refusal[];
  readonly onClose: () => void;
}

function RefusedDialog({ name, refusals, onClose }: RefusedProps): ReactElement {
  return (
    <Dialog title={`${name} was not opened`} onClose={onClose} wide>
      <p>Nothing was changed: what was open is still open. This is what is wrong with the file:</p>
      <RefusalTable refusals={refusals} />
      <div className="button-row">
        <button type="button" className="is-main" onClick={onClose}>
          Close
        </button>
      </div>
    </Dialog>
  );
}

/** Where a file is wrong, what stands there, and what should. */
export function RefusalTable({ refusals }: { readonly refusals: readonly Refusal[] }): ReactElement {
  return (
    // The only way to scroll a long list by keyboard is to be able to reach it.
    <div className="scroll-box" tabIndex={0} role="region" aria-label="What is wrong with the file">
      <table className="refusal-table">
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Found</th>
            <th scope="col">Expected</th>
          </tr>
        </thead>
        <tbody>
          {refusals.map((refusal, index) => (
            <tr key={index}>
              <td>{refusal.path}</td>
              <td>{refusal.found}</td>
              <td>{refusal.expected}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
