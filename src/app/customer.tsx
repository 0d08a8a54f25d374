/** Starts the customer's page: nothing of the workshop is loaded, and nothing that it keeps is touched. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { CustomerPage } from '../panels/customer/customer-page.tsx';
import { loadPreferences } from '../state/preferences.ts';
import { LIGHT } from './palettes.ts';

/** Pictures are drawn on light paper whatever the page is, since they are printed too. */
export function startCustomer(root: HTMLElement, link: string): void {
  createRoot(root).render(
    <StrictMode>
      <CustomerPage link={link} palette={LIGHT} system={loadPreferences().unitSystem} />
    </StrictMode>,
  );
}
