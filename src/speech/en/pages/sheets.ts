/** Words of the papers as a whole; the page itself needs them before any paper is opened. */
import { words } from '../../language.ts';

export const SHEETS_WORDS = words('SHEETS_WORDS', {
  title: 'Papers',
  plan: 'Plan and bench sheet',
  template: 'Cutting template',
  files: 'Files',
  open: 'Plan and sheet',
  openHint: 'Fretwork plan, bench sheet to print, cutting template, files',
  back: 'Back to the neck',
  print: 'Print',
  working: 'The numbers are being computed.',
  stale: 'The build has changed; the numbers below are of the value before and are being computed again.',
  loading: 'The papers are being prepared.',
  documentTitle: (name: string, sheet: string) => `${name} – ${sheet} – Backbow`,
  version: (version: string) => `Backbow ${version}`,
});
