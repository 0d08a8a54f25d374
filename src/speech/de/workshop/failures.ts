/** Warum etwas nicht gerechnet oder gezeichnet wird. Steht mitten im Satz. */
import type * as failures from '../../en/workshop/failures.ts';

export const FAILURE_WORDS: typeof failures.FAILURE_WORDS = {
  noSuchFret: (fret, frets) => `Bund ${fret} gibt es an diesem Hals nicht: Er hat die Bünde 1 bis ${frets}`,
  days: (days) => `die Tage seit dem Besaiten sind ${days}; möglich sind 0 Tage und mehr`,
  narrower: (kerf, before) => `der Schlitz ist ${kerf} breit; er kann nicht enger sein, als er war: ${before}`,
  rod: (percent, least, most) => `die Stellung des Halsspannstabs ist ${percent}; möglich ist ${least} bis ${most} %`,
  relief: (relief, least, most) => `die gewünschte Halskrümmung ist ${relief}; möglich ist ${least} bis ${most}`,
  kerf: (least, tang, most) =>
    `zu diesem Bunddraht passt keine Schlitzbreite: mindestens ${least} für seinen Bundfuß von ${tang}, höchstens ${most} unter Noppen und Bundkopf`,
  stretches: (count, most) => `die Zahl der Strecken ist ${count}; möglich ist eine ganze Zahl von 1 bis ${most}`,
  noTangs: 'es braucht mindestens eine Strecke und einen Bundfuß',
  combinations: (tangs, stretches, combinations, most) =>
    `${tangs} Bundfüße in ${stretches} Strecken ergeben ${combinations} Kombinationen; höchstens ${most} lassen sich durchrechnen`,
  seating: (force) => `die Kräfte beim Einsetzen kommen nicht ins Gleichgewicht: ${force} bleiben übrig`,
  samples: (samples, least, most) =>
    `die Zahl der Stichproben ist ${samples}; möglich ist eine ganze Zahl von ${least} bis ${most}`,
  seed: (seed) => `der Startwert ist ${seed}; möglich ist eine ganze Zahl`,
  biteSpread: (spread) => `die Streuung von ln des Greiffaktors ist ${spread}; möglich sind 0 und mehr`,
  matrix: (row, pivot) => `die Matrix ist nicht positiv definit: Pivot ${row} ist ${pivot}`,
  element: (x, y) => `ein Element ist umgestülpt bei x = ${x}, y = ${y}`,
  brokeOff: 'die Rechnung ist abgebrochen',
  stoppedRepeatedly: 'die Rechnung ist mehrmals hintereinander stehengeblieben',
  pictures: {
    'no-picture-file': 'dieser Browser kann keine Bilddatei machen',
    'not-drawn': 'das Bild ist noch nicht gezeichnet',
  },
};
