/**
 * The language of the page. Another one starts the page afresh, so that is a button of its own, in the words of the
 * language that it leads to; choosing in the list alone changes nothing.
 */
import { useId, useState } from 'react';
import { LANGUAGE_NAMES, LANGUAGES, spokenLanguage, type Language } from '../../../speech/language.ts';
import { draftKeeper } from '../../../state/library/page-draft.ts';
import { DRAFT_WORDS } from '../../../speech/en/drafts.ts';
import { loadPreferences, pageLanguage, type Preferences } from '../../../state/preferences.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { LANGUAGE_WORDS } from '../../../speech/en/languages.ts';
import './language-switch.css';

type Choice = Preferences['language'];

const CHOICES: readonly Choice[] = ['system', ...LANGUAGES];

/** In its own words: whoever needs the button may not read those of the page. */
const START_IN: Readonly<Record<Language, string>> = {
  en: 'Load the page in English',
  de: 'Die Seite auf Deutsch laden',
};

const languageOf = (choice: Choice) => pageLanguage(choice, navigator.languages);

/** The work on the bench is kept before the page goes; where it or the choice cannot be kept, the page stays. */
function startIn(choice: Choice): void {
  const { language, setLanguage, notify } = store.getState();
  const trouble = draftKeeper.keepNow();
  if (trouble !== null) {
    notify('warning', DRAFT_WORDS[trouble]);
    return;
  }
  setLanguage(choice);
  if (loadPreferences().language === choice) location.reload();
  else {
    setLanguage(language);
    notify('warning', LANGUAGE_WORDS.notKept);
  }
}

export function LanguageSwitch() {
  const id = useId();
  const kept = useBackbow((state) => state.language);
  const [choice, setChoice] = useState(kept);
  const wanted = languageOf(choice);
  const isOther = wanted !== spokenLanguage();

  function choose(next: Choice): void {
    setChoice(next);
    if (languageOf(next) === spokenLanguage()) store.getState().setLanguage(next);
  }

  return (
    <div className="language">
      <select
        aria-label={LANGUAGE_WORDS.language}
        aria-describedby={id}
        value={choice}
        onChange={(event) => choose(CHOICES.find((known) => known === event.currentTarget.value)!)}
      >
        <option value="system">{LANGUAGE_WORDS.system}</option>
        {LANGUAGES.map((language) => (
          <option key={language} value={language} lang={language}>
            {LANGUAGE_NAMES[language]}
          </option>
        ))}
      </select>
      {isOther && (
        <button type="button" lang={wanted} onClick={() => startIn(choice)}>
          {START_IN[wanted]}
        </button>
      )}
      <output id={id} className="quiet">
        {isOther && LANGUAGE_WORDS.afresh}
      </output>
    </div>
  );
}
