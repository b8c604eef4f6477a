import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';

interface ModalParts {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A modal dialog of the browser: it keeps the focus inside and gives it back. Escape puts it away. */
export function Modal({ title, open, onClose, children }: ModalParts) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const element = dialog.current;
    if (element === null || element.open === open) return;
    if (open) element.showModal();
    else element.close();
  }, [open]);
  return (
    <dialog ref={dialog} aria-labelledby={id} onClose={() => open && onClose()}>
      {open && (
        <>
          <h2 id={id}>{title}</h2>
          {children}
        </>
      )}
    </dialog>
  );
}
