/** A word on the first visit. It asks for nothing, and goes away with the first change of the neck. */
import { useEffect, useState } from 'react';
import { store } from '../../../state/store.ts';
import { WELCOME_WORDS } from '../../../speech/en/pages/welcome.ts';
import { isFirstVisit, rememberVisit } from './visit.ts';
import './welcome.css';

export function Welcome() {
  const [isShown, setShown] = useState(isFirstVisit);
  useEffect(() => {
    if (!isShown) return undefined;
    return store.subscribe((state, before) => {
      if (state.build === before.build) return;
      rememberVisit();
      setShown(false);
    });
  }, [isShown]);
  if (!isShown) return null;
  const { openDialog } = store.getState();
  function leave(): void {
    rememberVisit();
    setShown(false);
  }
  return (
    <section className="welcome" aria-label={WELCOME_WORDS.title}>
      <h2>{WELCOME_WORDS.title}</h2>
      {WELCOME_WORDS.says.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <div className="button-row">
        <button
          type="button"
          onClick={() => {
            leave();
            openDialog('lessons');
          }}
        >
          {WELCOME_WORDS.lesson}
        </button>
        <button type="button" onClick={() => openDialog('glossary')}>
          {WELCOME_WORDS.glossary}
        </button>
        <button type="button" onClick={leave}>
          {WELCOME_WORDS.close}
        </button>
      </div>
    </section>
  );
}
