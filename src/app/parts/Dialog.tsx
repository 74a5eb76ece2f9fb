import { useLayoutEffect, useRef, type ReactElement, type ReactNode } from 'react';

interface Props {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

/** A native modal dialog: the browser keeps focus inside, closes it on Escape, and gives focus back. */
export function Dialog({ title, onClose, children, wide = false }: Props): ReactElement {
  const dialog = useRef<HTMLDialogElement>(null);
  // Before it is taken from the page, or the browser would not know whom to give the focus back to.
  useLayoutEffect(() => {
    const element = dialog.current;
    if (element !== null && !element.open) element.showModal();
    return () => element?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={wide ? 'dialog is-wide' : 'dialog'}
      aria-labelledby="dialog-title"
      onClose={onClose}
    >
      <h2 id="dialog-title">{title}</h2>
      {children}
    </dialog>
  );
}
