/**
 * Passing messages. They leave by themselves once they could be read; errors, and what holds something to copy, stay until
 * they are closed. They stand where they cover nothing that is being worked on, inside the dialog that is open, if one is.
 */
import { useRef, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import type { Notice } from '../../state/solution-slice.ts';
import { store, useBackbow } from '../../state/store.ts';
import { CopyLine } from './copy-line.tsx';
import { NOTICE_WORDS } from '../../speech/en/workshop/workshop.ts';
import { useTopDialog } from '../dialog/open-dialogs.ts';
import { useLeaving } from './use-leaving.ts';
import { usePlace } from './use-place.ts';
import './notices.css';

function NoticeItem({ notice }: { readonly notice: Notice }) {
  const dismiss = () => store.getState().dismiss(notice.id);
  const stays = notice.kind === 'error' || notice.copy !== undefined;
  const characters = [notice.text, ...notice.details].reduce((sum, text) => sum + text.length, 0);
  const held = useLeaving(stays ? null : characters, dismiss);
  return (
    <div className={`notice notice-${notice.kind}`} role={notice.kind === 'error' ? 'alert' : 'status'} {...held}>
      <div>
        <p lang={notice.lang}>{notice.text}</p>
        {notice.details.length > 0 && (
          <ul>
            {notice.details.map((detail) => (
              <li key={detail}>{detail}</li>
            ))}
          </ul>
        )}
        {notice.copy && <CopyLine {...notice.copy} />}
      </div>
      <button type="button" onClick={dismiss}>
        {NOTICE_WORDS.close}
      </button>
    </div>
  );
}

/** @param children other messages that pass, in the same place */
export function Notices({ children }: { readonly children?: ReactNode }) {
  const notices = useBackbow((state) => state.notices);
  const dialog = useTopDialog();
  const region = useRef<HTMLDivElement>(null);
  usePlace(region, `${dialog?.id ?? ''} ${notices.map(({ id }) => id).join(' ')} ${dialog !== null}`);
  const shown = (
    <div ref={region} className="notices">
      <div className="notice-list" role="log" aria-label={NOTICE_WORDS.title}>
        {notices.map((notice) => (
          <NoticeItem key={notice.id} notice={notice} />
        ))}
      </div>
      {children}
    </div>
  );
  return dialog ? createPortal(shown, dialog) : shown;
}
