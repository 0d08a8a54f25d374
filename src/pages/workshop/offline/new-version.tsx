/** Asks before a new version is loaded. Nothing happens until a button is pressed. */
import { useStore } from 'zustand';
import { offlineStore } from '../../../state/offline/offline-store.ts';
import { OFFLINE_WORDS } from '../../../speech/en/workshop/offline.ts';
import './new-version.css';

export function NewVersion() {
  const newVersion = useStore(offlineStore, (offline) => offline.newVersion);
  const putOff = useStore(offlineStore, (offline) => offline.putOff);
  return (
    <output className="new-version" aria-label={OFFLINE_WORDS.title}>
      {newVersion !== 'none' && newVersion !== putOff && (
        <>
          <p>{newVersion === 'waiting' ? OFFLINE_WORDS.waiting : OFFLINE_WORDS.inUse}</p>
          <div className="button-row">
            <button type="button" onClick={() => offlineStore.getState().useNewVersion()}>
              {OFFLINE_WORDS.load}
            </button>
            <button type="button" onClick={() => offlineStore.setState({ putOff: newVersion })}>
              {OFFLINE_WORDS.later}
            </button>
          </div>
        </>
      )}
    </output>
  );
}
