/** What was on the bench of windows that have been closed since. */
import { useEffect, useState } from 'react';
import { isolated } from '../../speech/isolate.ts';
import type { Draft } from '../../state/library/drafts.ts';
import { formatWhen } from '../../state/library/when.ts';
import { draftKeeper } from '../../state/library/page-draft.ts';
import { LIBRARY_WORDS } from '../../speech/en/library.ts';

export function LeftNecks({ open }: { readonly open: (draft: Draft) => void }) {
  const [left, setLeft] = useState<readonly Draft[]>([]);
  useEffect(() => {
    let isHere = true;
    void draftKeeper.left().then((drafts) => {
      if (isHere) setLeft(drafts);
    });
    return () => {
      isHere = false;
    };
  }, []);
  if (left.length === 0) return null;
  return (
    <details className="more-necks">
      <summary>{LIBRARY_WORDS.leftTitle(left.length)}</summary>
      <p className="quiet">{LIBRARY_WORDS.leftIntro}</p>
      <ul>
        {left.map((draft) => (
          <li key={draft.windowId}>
            <span>
              {isolated(draft.build.name)} <span className="quiet">{formatWhen(draft.savedAt)}</span>
            </span>
            <span className="button-row">
              <button type="button" aria-label={LIBRARY_WORDS.openName(draft.build.name)} onClick={() => open(draft)}>
                {LIBRARY_WORDS.open}
              </button>
              <button
                type="button"
                aria-label={LIBRARY_WORDS.discardName(draft.build.name)}
                onClick={() => {
                  draftKeeper.drafts.remove(draft.windowId);
                  setLeft(left.filter((other) => other !== draft));
                }}
              >
                {LIBRARY_WORDS.discard}
              </button>
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
