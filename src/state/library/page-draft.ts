/** The draft of this window: what is on the bench of the one store. */
import { store } from '../store.ts';
import { createDraftKeeper } from './keep-draft.ts';

export const draftKeeper = createDraftKeeper(store, (state) => state.build);
