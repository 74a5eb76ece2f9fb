import type { ReactElement, ReactNode } from 'react';
import { Dialog } from '../parts/Dialog.tsx';
import { useRefusal } from '../session/useRefusal.ts';

interface Props {
  readonly title: string;
  readonly action: string;
  /** True when it was made; otherwise the notice says why not, and the dialog stays as it is. */
  readonly onMake: () => boolean;
  readonly onClose: () => void;
  readonly wide?: boolean;
  /** The id of the line that says why not, for a field that is described by it. */
  readonly problemId?: string;
  readonly children: ReactNode;
}

/** Asks for what something new needs, and makes it. */
export function MakeDialog({ title, action, onMake, onClose, wide = false, problemId, children }: Props): ReactElement {
  const { problem, settle } = useRefusal();
  return (
    <Dialog title={title} onClose={onClose} wide={wide}>
      <form
        className="make-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (onMake()) onClose();
          else settle(false);
        }}
      >
        {children}
        <p className="problem" id={problemId} role="alert">
          {problem}
        </p>
        <div className="button-row">
          <button type="submit" className="is-main">
            {action}
          </button>
          <button type="button" onClick={onClose}>
            Cancel
          </button>
        </div>
      </form>
    </Dialog>
  );
}
