/** Wenn die Biegung vorauseilt. */
import type * as english from '../../en/fretwork/run-ahead.ts';

export const RUN_AHEAD_TEXTS: typeof english.RUN_AHEAD_TEXTS = {
  'go-on': {
    label: 'weiter',
    text: 'Die Biegung ist, wo sie sein soll. Das nächste Viertel einsetzen.',
  },
  'widen-kerf': {
    label: 'die leeren Schlitze weiten',
    text: 'Die Biegung eilt voraus. Anhalten. Einen leeren Schlitz nachmessen: Meist ist er zu schmal geraten, oder Staub und Füllstoff stecken noch darin. Die leeren Schlitze etwas weiten, einen Bund einsetzen und das Richtlineal wieder auflegen.',
  },
  'glue-the-rest': {
    label: 'den Rest leimen',
    text: 'Die Biegung ist schon alles, was gewünscht war. Die übrigen Schlitze weiten, bis der Bundfuß von Hand hineinfällt, und diese Bünde leimen.',
  },
  'past-target': {
    label: 'über das Gewünschte hinaus',
    text: 'Die Biegung ist über das Gewünschte hinaus, und die übrigen Bünde können sie nur noch halten. Sie ohne Keil einleimen, oder die letzten Bünde heben, ihre Schlitze weiten und auch sie leimen. Einen angezogenen Spannstab lockern. Nicht darauf bauen, dass der Saitenzug den Rest macht, bevor die Vorhersage für den besaiteten Hals angesehen ist.',
  },
  behind: {
    label: 'im Rückstand',
    text: 'Die Biegung ist geringer als vorhergesagt. Jetzt ist nichts zu beheben: Prüfen, ob die Bünde ganz unten sind und halten, und die Messung ins Messprotokoll eintragen.',
  },
};
