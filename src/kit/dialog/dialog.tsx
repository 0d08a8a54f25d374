/** A dialog of the page: named, closed by its button, by Escape and by the browser's own means. */
import { useEffect, useId, useRef, type ReactNode } from 'react';
import { NOTICE_WORDS } from '../../speech/en/workshop/workshop.ts';
import './dialog.css';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly className?: string;
  readonly children: ReactNode;
}

/** Open for as long as it is mounted. */
export function Dialog({ title, onClose, className, children }: DialogProps) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current!;
    if (!element.open) element.showModal();
    return () => element.close();
  }, []);
  return (
    <dialog ref={dialog} className={`dialog ${className ?? ''}`} aria-labelledby={id} onCancel={onClose}>
      <header>
        <h2 id={id}>{title}</h2>
        <button type="button" onClick={onClose}>
          {NOTICE_WORDS.close}
        </button>
      </header>
      <div className="dialog-body">{children}</div>
    </dialog>
  );
}
