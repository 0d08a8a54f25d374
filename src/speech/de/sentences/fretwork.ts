/** Sätze der Bundierung: hier die zur vorauseilenden Biegung, zur Sägeschablone und was abgelehnt wird. */
import type { Sentences } from '../../catalogue.ts';
import { FRETWORK_CHECK_SENTENCES } from './fretwork-checks.ts';
import { FRETWORK_STEP_SENTENCES } from './fretwork-steps.ts';
import { FRETWORK_TABLE_SENTENCES } from './fretwork-tables.ts';
import { FRETWORK_WIRE_SENTENCES } from './fretwork-wire.ts';

export const FRETWORK_SENTENCES: Sentences = {
  ...FRETWORK_CHECK_SENTENCES,
  ...FRETWORK_STEP_SENTENCES,
  ...FRETWORK_TABLE_SENTENCES,
  ...FRETWORK_WIRE_SENTENCES,

  // Wenn die Biegung vorauseilt
  'The bow is where it should be. Seat the next quarter.':
    'Die Biegung ist, wo sie sein soll. Das nächste Viertel einsetzen.',
  'The bow runs ahead. Stop. Gauge the kerf of an empty slot: one that came out too narrow, or dust and filler left in it, is the usual reason. Widen the empty slots a little, seat one fret, and lay the straightedge on again.':
    'Die Biegung eilt voraus. Anhalten. Einen leeren Schlitz nachmessen: Meist ist er zu schmal geraten, oder Staub und Füllstoff stecken noch darin. Die leeren Schlitze etwas weiten, einen Bund einsetzen und das Lineal wieder auflegen.',
  'The bow is already all that was wanted. Open the remaining slots until the tang drops in by hand, and glue those frets.':
    'Die Biegung ist schon alles, was gewünscht war. Die übrigen Schlitze weiten, bis der Bundfuß von Hand hineinfällt, und diese Bünde leimen.',
  'The bow is past what was wanted, and the remaining frets can only hold it. Glue them in without wedging, or lift the last frets, open their slots and glue them too. Slacken a rod that was tight. Do not count on string tension for the rest before you have looked at the strung prediction.':
    'Die Biegung ist über das Gewünschte hinaus, und die übrigen Bünde können sie nur noch halten. Sie ohne Keil einleimen, oder die letzten Bünde heben, ihre Schlitze weiten und auch sie leimen. Einen angezogenen Spannstab lockern. Nicht darauf bauen, dass der Saitenzug den Rest macht, bevor die Vorhersage für den besaiteten Hals angesehen ist.',
  'There is less bow than predicted. Nothing needs mending now: check that the frets are home and hold, and enter the measurement in the bench log.':
    'Die Biegung ist geringer als vorhergesagt. Jetzt ist nichts zu beheben: Prüfen, ob die Bünde ganz unten sind und halten, und die Messung ins Messbuch eintragen.',

  // Sägeschablone
  nut: 'Sattel',
  '{0} — print at 100 %, then measure both bars': '{0} – mit 100 % drucken, dann beide Maßstäbe nachmessen',
  '{0}, page {1} of {2}': '{0}, Blatt {1} von {2}',
  'join here: lay the crosses on each other': 'hier ansetzen: die Kreuze aufeinanderlegen',
  'the template is {0} mm high with its labels; {1} gives at most {2} mm':
    'die Schablone ist mit Beschriftung {0} mm hoch; {1} gibt höchstens {2} mm her',

  // Was abgelehnt wird
  'wanted radius': 'gewünschter Radius',
  'radius as it comes': 'Radius, wie der Draht kommt',
  'height of the wire': 'Höhe des Drahts',
  '{0} is {1} mm; it must be more than 0 mm': '{0} ist {1} mm; möglich ist mehr als 0 mm',
  'stick length is {0} mm; it must be more than 0 mm': 'die Stangenlänge ist {0} mm; möglich ist mehr als 0 mm',
  'loss at a cut is {0} mm; it must be 0 mm or more':
    'der Verlust an einem Schnitt ist {0} mm; möglich sind 0 mm und mehr',
  'the piece for fret {0} is {1} mm; a stick of {2} mm gives more than 0 and at most {3} mm':
    'das Stück für Bund {0} ist {1} mm lang; eine Stange von {2} mm gibt mehr als 0 und höchstens {3} mm her',
  'fret {0} is not on this board: frets are 1 to {1}':
    'Bund {0} gibt es auf diesem Griffbrett nicht: Bünde sind 1 bis {1}',
  'binding of {0} mm per side is too wide at fret {1}: it must be less than half the board, {2} mm':
    'die Einfassung ist mit {0} mm je Seite am Bund {1} zu breit: Sie muss schmaler als das halbe Griffbrett sein, {2} mm',
  "nip clearance of {0} mm leaves no tang at fret {1}: it must be less than the slot's half length, {2} mm":
    'mit {0} mm Luft am abgezwickten Ende bleibt am Bund {1} kein Bundfuß: Es muss weniger als der halbe Schlitz sein, {2} mm',
  'bevel of {0}° leaves no crown at fret {1}: it takes {2} mm of {3} mm per side':
    'mit einer Schräge von {0}° bleibt am Bund {1} kein Bundkopf: Sie nimmt {2} mm von {3} mm je Seite',
  'predicted bow so far is {0} mm and {1} mm with all frets in; both must bow the same way and not be 0 mm':
    'die vorhergesagte Biegung ist bis hierher {0} mm und mit allen Bünden {1} mm; beide müssen in eine Richtung gehen und dürfen nicht 0 mm sein',
};
