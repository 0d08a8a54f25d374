/** The language of the page. It changes at once; the bench, what is open and what is typed stay as they are. */
import { chooseLanguage } from '../../../speech/choose.ts';
import { LANGUAGE_NAMES, LANGUAGES } from '../../../speech/language.ts';
import { LANGUAGE_WORDS } from '../../../speech/en/workshop/languages.ts';
import { START_WORDS } from '../../../speech/start-words.ts';
import { loadPreferences, pageLanguage, type Preferences } from '../../../state/preferences.ts';
import { store, useBackbow } from '../../../state/store.ts';
import './language-switch.css';

type Choice = Preferences['language'];

const CHOICES: readonly Choice[] = ['system', ...LANGUAGES];

/** Where the words do not come the choice is taken back; where it cannot be kept it holds until the page is closed. */
async function choose(choice: Choice): Promise<void> {
  const { language: before, setLanguage, notify } = store.getState();
  const wanted = pageLanguage(choice, navigator.languages);
  setLanguage(choice);
  if (!(await chooseLanguage(wanted))) {
    if (store.getState().language === choice) setLanguage(before);
    notify('warning', START_WORDS[wanted].wordsMissing, [], { lang: wanted });
  } else if (loadPreferences().language !== choice) notify('warning', LANGUAGE_WORDS.notKept);
}

export function LanguageSwitch() {
  const language = useBackbow((state) => state.language);
  return (
    <div className="language">
      <select
        aria-label={LANGUAGE_WORDS.language}
        value={language}
        onChange={(event) => void choose(CHOICES.find((known) => known === event.currentTarget.value)!)}
      >
        <option value="system">{LANGUAGE_WORDS.system}</option>
        {LANGUAGES.map((one) => (
          <option key={one} value={one} lang={one}>
            {LANGUAGE_NAMES[one]}
          </option>
        ))}
      </select>
    </div>
  );
}
