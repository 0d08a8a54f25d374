/** What has just happened to the log, and how it is taken back. */
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

export interface Said {
  readonly title: string;
  readonly lines?: readonly string[];
  readonly undo?: () => Promise<void>;
  /** What else can be done. */
  readonly more?: { readonly label: string; readonly run: () => void };
}

export function SaidLine({ said, say }: { readonly said: Said | null; readonly say: (said: Said) => void }) {
  return (
    <output className="answer-said">
      {said && (
        <>
          <p>
            {said.title}{' '}
            {said.undo && (
              <button type="button" onClick={() => void said.undo!().then(() => say({ title: LOG_WORDS.undone }))}>
                {LOG_WORDS.undo}
              </button>
            )}{' '}
            {said.more && (
              <button type="button" onClick={said.more.run}>
                {said.more.label}
              </button>
            )}
          </p>
          {said.lines && (
            <ul className="refusal">
              {said.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </>
      )}
    </output>
  );
}
