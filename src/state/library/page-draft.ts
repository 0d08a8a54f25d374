/** The draft of this window: what is on the bench of the one store. */
import { ownBuild } from '../lesson-slice.ts';
import { store } from '../store.ts';
import { createDraftKeeper } from './keep-draft.ts';

export const draftKeeper = createDraftKeeper(store, ownBuild);
