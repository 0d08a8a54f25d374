/** Starts the page: its language, then the workshop, or the customer's page when the address names one. */
import { chooseLanguage } from '../speech/choose.ts';
import { onLanguage, spokenLanguage, type Language } from '../speech/language.ts';
import { loadPreferences, pageLanguage } from '../state/preferences.ts';
import { routeOf } from '../state/share/address.ts';
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

const preferred = () => pageLanguage(loadPreferences().language, navigator.languages);

/** Somebody who opens a letter on the way reads its first words while words, page and worker come at the same time. */
async function startCustomer(wanted: Language, link: string): Promise<void> {
  const first = import('./customer-first.ts').then(({ showFirst }) => showFirst(root, link, wanted));
  const [page, isSpoken] = await Promise.all([import('./customer.tsx'), chooseLanguage(wanted)]);
  await first.catch(() => undefined);
  page.startCustomer(root, link, isSpoken ? null : wanted);
}

/** The words of its language come first, so that nothing is drawn in one language and then in another. */
async function start(wanted: Language): Promise<void> {
  addEventListener('hashchange', startAfresh);
  onLanguage(() => label(spokenLanguage()));
  addEventListener('languagechange', () => void chooseLanguage(preferred()));
  if (route?.kind === 'customer') {
    await startCustomer(wanted, route.link);
    return;
  }
  const missing = (await chooseLanguage(wanted)) ? null : wanted;
  await (await import('./workshop.tsx')).startWorkshop(root, missing);
}

const language = preferred();
start(language).catch(() => {
  label(language);
  root.textContent = START_WORDS[language].failed;
});
