/** What is said before any table has come, or when none comes: it stands here in every language. */
import type { Language } from './language.ts';

interface StartWords {
  /** Of the page, for those who list it. */
  readonly description: string;
  /** Nothing of the page has come. */
  readonly failed: string;
  /** The words of this language have not come, and the page speaks English. */
  readonly wordsMissing: string;
}

export const START_WORDS: Readonly<Record<Language, StartWords>> = {
  en: {
    description: 'Backbow shows, on a three-dimensional model of one particular neck, what its frets will do to it.',
    failed: 'Backbow could not be fetched whole. Load the page again when the network is back.',
    wordsMissing: 'The English words could not be fetched. Choose the language again when the network is back.',
  },
  de: {
    description: 'Backbow zeigt am dreidimensionalen Modell eines bestimmten Halses, was seine Bünde aus ihm machen.',
    failed: 'Backbow kam nicht vollständig an. Laden Sie die Seite noch einmal, wenn das Netz wieder da ist.',
    wordsMissing:
      'Die deutschen Texte ließen sich nicht holen; die Seite spricht weiter Englisch. Wählen Sie die Sprache noch einmal, wenn das Netz wieder da ist.',
  },
};
