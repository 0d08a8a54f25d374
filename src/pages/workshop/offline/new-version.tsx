/** Asks before a new version is loaded. Nothing happens until a button is pressed. */
import { useState } from 'react';
import { useStore } from 'zustand';
import { offlineStore, type Offline } from '../../../state/offline/offline-store.ts';
import { OFFLINE_WORDS } from '../../../speech/en/workshop/offline.ts';
import './new-version.css';

export function NewVersion() {
  const newVersion = useStore(offlineStore, (offline) => offline.newVersion);
  const [dismissed, setDismissed] = useState<Offline['newVersion']>('none');
  return (
    <output className="new-version" aria-label={OFFLINE_WORDS.title}>
      {newVersion !== 'none' && newVersion !== dismissed && (
        <>
          <p>{newVersion === 'waiting' ? OFFLINE_WORDS.waiting : OFFLINE_WORDS.inUse}</p>
          <div className="button-row">
            <button type="button" onClick={() => offlineStore.getState().useNewVersion()}>
              {OFFLINE_WORDS.load}
            </button>
            <button type="button" onClick={() => setDismissed(newVersion)}>
              {OFFLINE_WORDS.later}
            </button>
          </div>
        </>
      )}
    </output>
  );
}
