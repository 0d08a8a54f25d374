/** Passing messages. They stay until they are closed: nobody is hurried. */
import { store, useBackbow } from '../../state/store.ts';
import { CopyLine } from './copy-line.tsx';
import { NOTICE_WORDS } from '../../speech/en/workshop/workshop.ts';
import './notices.css';

export function Notices() {
  const notices = useBackbow((state) => state.notices);
  return (
    <div className="notices" role="log" aria-label={NOTICE_WORDS.title}>
      {notices.map((notice) => (
        <div
          key={notice.id}
          className={`notice notice-${notice.kind}`}
          role={notice.kind === 'error' ? 'alert' : 'status'}
        >
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
          <button type="button" onClick={() => store.getState().dismiss(notice.id)}>
            {NOTICE_WORDS.close}
          </button>
        </div>
      ))}
    </div>
  );
}
