/** Das Messbuch als Datei, und woher die Spannen kommen. */
import type { Sentences } from '../../catalogue.ts';

export const MECHANICS_SENTENCES: Sentences = {
  // Einträge des Messbuchs; die Spalten der Datei heißen in jeder Sprache gleich
  '{0} to {1}{2}': '{0} bis {1}{2}',
  'Row {0}: ': 'Zeile {0}: ',
  '{0} is {1}; it takes a number, {2}.': '„{0}“ ist {1}; möglich ist eine Zahl, {2}.',
  '{0} is {1}{2}; it takes {3}.': '„{0}“ ist {1}{2}; möglich ist {3}.',
  'date is “{0}”; it takes a day as yyyy-mm-dd.':
    'Das Datum („date“) ist „{0}“; möglich ist ein Tag in der Form JJJJ-MM-TT.',
  'neck has no name.': 'Der Hals („neck“) hat keinen Namen.',
  'neck has a name of {0} characters; it takes at most {1} characters.':
    'Der Name des Halses („neck“) hat {0} Zeichen; möglich sind höchstens {1} Zeichen.',
  'method is “{0}”; it takes one of: {1}.': 'Der Sitz („method“) ist „{0}“; möglich ist eines von: {1}.',
  'nothing was measured: it takes “measured with frets in”, “measured strung” or both.':
    'Nichts ist gemessen: nötig ist eine Messung mit Bünden („measured with frets in“), eine besaitet („measured strung“) oder beides.',
  '{0} is missing; it is needed with “{1}”.': '„{0}“ fehlt; mit „{1}“ ist es nötig.',

  // Die Datei
  'column “{0}” stands twice in the header.': 'Die Spalte „{0}“ steht zweimal im Kopf.',
  '“{0} (mm)” or “{1} (in)”': '„{0} (mm)“ oder „{1} (in)“',
  '“{0}” without a unit': '„{0}“ ohne Einheit',
  'column “{0}” has no unit that is known: it takes {1}.':
    'Die Spalte „{0}“ hat keine Einheit, die bekannt ist: möglich ist {1}.',
  'column “{0}” is not one that a bench log has.': 'Eine Spalte „{0}“ gibt es im Messbuch nicht.',
  'column “{0}” is missing from the header.': 'Die Spalte „{0}“ fehlt im Kopf.',
  'column “{0} (mm)” is missing from the header.': 'Die Spalte „{0} (mm)“ fehlt im Kopf.',
  '{0} is empty; it takes {1}.': '„{0}“ ist leer; möglich ist {1}.',
  '{0} is “{1}”; it takes a number with a decimal point, {2}.':
    '„{0}“ ist „{1}“; möglich ist eine Zahl, {2}, in der Datei mit Punkt als Dezimalzeichen.',
  'this is not CSV: {0}.': 'Das ist kein CSV: {0}.',
  'a quoted field is not closed': 'Anführungszeichen werden nicht geschlossen',
  'a quoted field goes on after its quotes': 'nach schließenden Anführungszeichen geht das Feld weiter',
  'The file is empty.': 'Die Datei ist leer.',
  'it has {0} cells, the header {1}.': 'Sie hat {0} Zellen, der Kopf {1}.',
};
