/** A dialog of the page: named, closed by its button, by Escape and by the browser's own means. */
import { useEffect, useId, useRef, type ReactNode } from 'react';
import { NOTICE_WORDS } from '../../speech/en/workshop/workshop.ts';
import { rememberFocus } from './give-back-focus.ts';
import { dialogOpened } from './open-dialogs.ts';
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
    const giveBack = rememberFocus();
    if (!element.open) element.showModal();
    const closed = dialogOpened(element);
    return () => {
      closed();
      // Out of the page it is closed already, and closing it would move the focus.
      if (element.isConnected) element.close();
      giveBack();
    };
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
