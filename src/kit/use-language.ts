import { useSyncExternalStore } from 'react';
import { onLanguage, spokenLanguage, type Language } from '../speech/language.ts';

/**
 * The language of the page; the component is drawn anew when it changes, and with it whatever it holds. The shell asks it
 * once for the whole page; a component that is drawn only when what it is given changes (`memo`), or that keeps texts in a
 * memo, has to ask for itself.
 */
export function useLanguage(): Language {
  return useSyncExternalStore(onLanguage, spokenLanguage);
}
