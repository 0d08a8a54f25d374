/** Which program this is, whether it works without a network, and whose work is in it. */
import { useStore } from 'zustand';
import { PROGRAM_VERSION } from '../../../neck/version.ts';
import { offlineStore } from '../../../state/offline/offline-store.ts';
import { store } from '../../../state/store.ts';
import { ActionButton } from '../../workshop/actions/action-button.tsx';
import { PROGRAM_WORDS } from '../../../speech/en/pages/licences.ts';
import { OFFLINE_WORDS } from '../../../speech/en/workshop/offline.ts';

export function ThisProgram() {
  const kept = useStore(offlineStore, (offline) => offline.kept);
  return (
    <>
      <h3>{PROGRAM_WORDS.title}</h3>
      <p>
        {PROGRAM_WORDS.version(PROGRAM_VERSION)} {OFFLINE_WORDS.kept[kept]}
      </p>
      <p>
        <button type="button" onClick={() => store.getState().openDialog('licences')}>
          {PROGRAM_WORDS.open}
        </button>{' '}
        <ActionButton id="proof" />
      </p>
    </>
  );
}
