/** Worauf der Griff eines Entwurfs beruht. */
import type * as english from '../../en/pages/bite-standing.ts';

export const BITE_STANDING_WORDS: typeof english.BITE_STANDING_WORDS = {
  summary: (necks, factor, low, high) =>
    `${necks === 1 ? 'ein gemessener Hals' : `${necks} gemessene Hälse`}: Greiffaktor ${factor}, zu 90 % sicher: ${low} bis ${high}`,
  earlier: (factor) =>
    `Eine frühere Fassung hat den Greiffaktor ${factor} aus dem Protokoll genommen und nicht festgehalten, aus welchen Einträgen. Gezeigt wird die breite Spanne eines ungemessenen Griffs, bis Sie das Protokoll neu übernehmen.`,
  otherFactor: (factor, measured) =>
    `Der Greiffaktor wurde von Hand auf ${factor} geändert; das Protokoll gab ${measured}. Gezeigt wird die breite Spanne eines ungemessenen Griffs.`,
  notAccepted: (summary) =>
    `Dieser Entwurf bezieht sich auf Messungen, die hier im Protokoll stehen (${summary}). Sie machen nichts enger, bis Sie sie annehmen.`,
  notHere: (summary) =>
    `Dieser Entwurf bezieht sich auf Messungen, die nicht auf diesem Gerät sind (${summary}). Gezeigt wird die breite Spanne eines ungemessenen Griffs. Ist es Ihr Protokoll, dann lesen Sie seine CSV-Datei ein.`,
  edited:
    'Die Messung hinter dieser Spanne hat sich geändert: Ein Eintrag sagt etwas anderes als damals, als sein Griff übernommen wurde, oder die Noppen dieses Halses gelten jetzt als andere. Gezeigt wird die breite Spanne, bis Sie das Protokoll neu übernehmen.',
  deleted: (count) =>
    `Die Messung hinter dieser Spanne hat sich geändert: ${count === 1 ? 'Ein Eintrag ist' : `${count} Einträge sind`} nicht mehr im Protokoll. Gezeigt wird die breite Spanne, bis Sie das Protokoll neu übernehmen.`,
  accept: 'Hier annehmen',
  givesOther: (here, there) => `Diese Messungen geben ${here}; der Entwurf sagt ${there}. Sie wurden nicht angenommen.`,
};
