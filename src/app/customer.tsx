/** Starts the customer's page: nothing of the workshop is loaded, and nothing that it keeps is touched. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { CustomerPage } from '../pages/customer/customer-page.tsx';
import { loadPreferences } from '../state/preferences.ts';
import { START_WORDS } from '../speech/start-words.ts';
import { LIGHT } from './palettes.ts';
import type { Language } from '../speech/language.ts';

/**
 * Pictures are drawn on light paper whatever the page is, since they are printed too.
 * @param missing the language whose words did not come
 */
export function startCustomer(root: HTMLElement, link: string, missing: Language | null): void {
  createRoot(root).render(
    <StrictMode>
      {missing && (
        <p className="customer" lang={missing}>
          {START_WORDS[missing].wordsMissing}
        </p>
      )}
      <CustomerPage link={link} palette={LIGHT} system={loadPreferences().unitSystem} />
    </StrictMode>,
  );
}
