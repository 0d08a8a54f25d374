/** Was die Rechnung, das Bild und das Einlesen verweigern. */
import type { Sentences } from '../../catalogue.ts';

export const FAILURES: Sentences = {
  'the matrix is not positive definite: pivot {0} is {1}': 'die Matrix ist nicht positiv definit: Pivot {0} ist {1}',
  'element is turned inside out at x = {0} mm, y = {1} mm': 'ein Element ist umgestülpt bei x = {0} mm, y = {1} mm',
  'relief wanted is {0} mm; it must be {1} to {2} mm':
    'die gewünschte Halskrümmung ist {0} mm; möglich ist {1} bis {2} mm',
  'rod setting is {0}; it must be −100 to 100 %': 'die Stellung des Spannstabs ist {0}; möglich ist −100 bis 100 %',
  'no kerf fits this wire: at least {0} mm for its tang of {1} mm, at most {2} mm under its studs and crown':
    'zu diesem Draht passt keine Schlitzbreite: mindestens {0} mm für seinen Bundfuß von {1} mm, höchstens {2} mm unter Noppen und Bundkopf',
  'number of stretches is {0}; it must be a whole number from 1 to {1}':
    'die Zahl der Strecken ist {0}; möglich ist eine ganze Zahl von 1 bis {1}',
  'at least one stretch and one tang are needed': 'es braucht mindestens eine Strecke und einen Bundfuß',
  '{0} tangs in {1} stretches make {2} mixtures; at most {3} can be tried':
    '{0} Bundfüße in {1} Strecken ergeben {2} Mischungen; höchstens {3} lassen sich durchrechnen',
  'the seating forces did not settle: {0} N are left':
    'die Kräfte beim Einsetzen kommen nicht ins Gleichgewicht: {0} N bleiben übrig',
  'days since stringing is {0}; it must be 0 or more days':
    'die Tage seit dem Besaiten sind {0}; möglich sind 0 Tage und mehr',
  'fret {0} is not on this neck: frets are 1 to {1}': 'Bund {0} gibt es an diesem Hals nicht: Bünde sind 1 bis {1}',
  'number of samples is {0}; it must be a whole number from 100 to {1}':
    'die Zahl der Stichproben ist {0}; möglich ist eine ganze Zahl von 100 bis {1}',
  'seed is {0}; it must be a whole number': 'der Startwert ist {0}; möglich ist eine ganze Zahl',
  'spread of ln bite is {0}; it must be 0 or more':
    'die Streuung von ln des Greiffaktors ist {0}; möglich sind 0 und mehr',
  'a quoted field is not closed': 'Anführungszeichen werden nicht geschlossen',
  'a quoted field goes on after its quotes': 'nach schließenden Anführungszeichen geht das Feld weiter',
  'this browser cannot make a picture file': 'dieser Browser kann keine Bilddatei machen',
  'the picture is not drawn yet': 'das Bild ist noch nicht gezeichnet',
};
