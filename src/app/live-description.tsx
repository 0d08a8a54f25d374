/** Says what the picture shows after it has changed and come to rest, so that a screen reader is not flooded. */
import { useEffect, useState } from 'react';
import { onLanguage } from '../speech/language.ts';
import { store } from '../state/store.ts';
import { describePicture } from './use-description.ts';

const REST_MS = 900;

export function LiveDescription() {
  const [text, setText] = useState('');
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = store.subscribe((state, before) => {
      const sameShown =
        state.solution === before.solution &&
        state.notComputed === before.notComputed &&
        state.rail === before.rail &&
        state.view === before.view &&
        state.bowFactor === before.bowFactor &&
        state.chosenFactor === before.chosenFactor &&
        state.trueScale === before.trueScale &&
        state.unitSystem === before.unitSystem;
      if (sameShown) return;
      clearTimeout(timer);
      timer = setTimeout(() => setText(describePicture(store.getState())), REST_MS);
    });
    // What was announced is not said again in another language; the next change is.
    const forget = onLanguage(() => setText(''));
    return () => {
      forget();
      stop();
      clearTimeout(timer);
    };
  }, []);
  return (
    <output className="visually-hidden" aria-live="polite">
      {text}
    </output>
  );
}
