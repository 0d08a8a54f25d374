/**
 * Starts the page: chooses its language, then loads the workshop, or the customer's page when the address names one.
 * Nothing that speaks is imported here: a table takes the language that is chosen when it is loaded.
 */
import { speak, type Language } from '../speech/language.ts';
import { loadPreferences, pageLanguage } from '../state/preferences.ts';
import { routeOf } from '../state/share/address.ts';
import { loadLanguage } from '../speech/load.ts';
import { START_WORDS } from '../speech/start-words.ts';
import './style/index.css';

const root = document.getElementById('root')!;
const route = routeOf(location.hash);

/** From one to the other, and from one customer's page to the next, the page starts afresh; the bench is kept. */
function startAfresh(): void {
  if (route?.kind === 'customer' || routeOf(location.hash)?.kind === 'customer') location.reload();
}

function label(language: Language): void {
  document.documentElement.lang = language;
  document.querySelector('meta[name="description"]')?.setAttribute('content', START_WORDS[language].description);
}

/** @returns whether the words of the language came; without them the page speaks English */
async function choose(language: Language): Promise<boolean> {
  try {
    speak(language, await loadLanguage(language));
    label(language);
    return true;
  } catch {
    return false;
  }
}

async function start(wanted: Language): Promise<void> {
  addEventListener('hashchange', startAfresh);
  const missing = (await choose(wanted)) ? null : wanted;
  if (route?.kind === 'customer') (await import('./customer.tsx')).startCustomer(root, route.link, missing);
  else await (await import('./workshop.tsx')).startWorkshop(root, missing);
}

const language = pageLanguage(loadPreferences().language, navigator.languages);
start(language).catch(() => {
  label(language);
  root.textContent = START_WORDS[language].failed;
});
