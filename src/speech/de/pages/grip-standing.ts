/** Worauf der Griff eines Entwurfs beruht, wo Probestreifen oder Messungen am Hals selbst sprechen. */
import type * as english from '../../en/pages/grip-standing.ts';

export const GRIP_STANDING_WORDS: typeof english.GRIP_STANDING_WORDS = {
  summary: (measured, factor, low, high) =>
    `${measured === 1 ? 'eine Messung' : `${measured} Messungen`}: Greiffaktor ${factor}, zu 90 % sicher: ${low} bis ${high}`,
  use: 'Für diesen Hals nehmen',
  step: (factor) => `Gemessener Griff, Greiffaktor ${factor}`,
  inUse: (factor) =>
    `Dieser Hals nimmt den gemessenen Griff: Greiffaktor ${factor}, und die engeren Spannen, die dazugehören, auf jeder Seite und jedem Blatt.`,
  refused:
    'Das wird für den Hals nicht genommen: Berichtigen Sie die Messung, die sich durch nichts erklären lässt, oder lassen Sie sie weg.',
  accept: 'Hier annehmen',
  beside: (measured) =>
    measured === 1
      ? 'Eine weitere Messung, die dieser Hals schon nimmt, zählt mit.'
      : `${measured} weitere Messungen, die dieser Hals schon nimmt, zählen mit.`,
  otherGrip: (summary) =>
    `Griff oder Noppenform wurden von Hand geändert, seit sie aus Messungen kamen (${summary}). Gezeigt wird die breite Spanne eines ungemessenen Griffs.`,
  notAccepted: (summary) =>
    `Dieser Hals bezieht sich auf Streifen oder Messungen, die auf diesem Gerät sind (${summary}). Sie machen nichts enger, bis Sie sie annehmen.`,
  notHere: (summary) =>
    `Dieser Hals bezieht sich auf Streifen oder Messungen, die nicht auf diesem Gerät sind (${summary}). Gezeigt wird die breite Spanne eines ungemessenen Griffs. Sind es Ihre, dann lesen Sie ihre Dateien ein.`,
  changed: (gone, edited) =>
    `Die Messungen hinter dem Griff dieses Halses haben sich geändert:${gone > 0 ? ` ${gone === 1 ? 'eine ist' : `${gone} sind`} fort` : ''}${gone > 0 && edited > 0 ? ',' : ''}${edited > 0 ? ` ${edited === 1 ? 'eine sagt' : `${edited} sagen`} etwas anderes als damals` : ''}. Gezeigt wird die breite Spanne, bis Sie sie neu nehmen.`,
  otherNeck:
    'Dieser Hals wurde geändert, seit an ihm gemessen wurde: Seine eigenen Messungen machen jetzt nichts enger. Streifen und andere Hälse tun es weiter.',
};
