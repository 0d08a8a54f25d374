/** Die eigene Anschlagstärke, von Hälsen, die gerade schnarren. */
import type * as english from '../../en/workshop/matches.ts';

export const MATCH_WORDS: typeof english.MATCH_WORDS = {
  own: 'wie ich',
  title: 'Meine Anschlagstärke',
  how: 'Nehmen Sie einen Hals, der gerade schnarrt, wenn Sie spielen, wie Sie spielen. Saiten senken oder Hals strecken, bis ein Ton zu schnarren beginnt; den Bund suchen, an dem er schnarrt; Halskrümmung und Saitenlage messen, wie sie dann sind.',
  string: 'Saite',
  note: 'Gegriffen am Bund',
  open: 'leer',
  fret: 'Schnarrt gerade an Bund',
  numbers: {
    reliefMm: 'Halskrümmung',
    actionMm: 'Saitenlage dieser Saite am 12. Bund',
    reliefErrorMm: 'Fehler der Halskrümmung, ±',
    actionErrorMm: 'Fehler der Saitenlage, ±',
    fretErrorMm: 'Unebenheit der Bünde, ±',
  },
  errors: 'Fehler sind Standardabweichungen: Zwei von drei Ablesungen liegen näher.',
  says: (force, error) => `Dieser Anschlag hatte ${force}, ± ${error}.`,
  parts: (relief, action, frets) => `Davon: Halskrümmung ± ${relief}, Saitenlage ± ${action}, Bundköpfe ± ${frets}.`,
  keep: 'Ablesung behalten',
  kept: (neck, note, fret, force) => `${neck}, ${note}: schnarrt an Bund ${fret}, ${force}`,
  unnamed: 'ein Hals ohne Namen',
  remove: 'Entfernen',
  removeName: (which) => `Ablesung entfernen: ${which}`,
  joined: (matches, force, from, to) =>
    `${matches === 1 ? 'Eine Ablesung' : `${matches} Ablesungen zusammen`}: ${force}, zu 90 % sicher: ${from} bis ${to}.`,
  accept: 'Mit dieser Stärke spielen',
  accepted: 'Die Tafel spielt damit.',
  release: 'Zurück zu leise, mittel, kräftig',
  notBeyond: 'Getroffen wird nur ein Bund jenseits dessen, an dem gegriffen wird.',
  liesOn: (room) =>
    `Mit dieser Halskrümmung und Saitenlage liegt die Saite dort schon ohne Anschlag ${room} zu tief. Gerade schnarren kann sie dort bei keiner Stärke. Bitte beides noch einmal messen.`,
  justLiesOn:
    'Mit dieser Halskrümmung und Saitenlage liegt die Saite dort schon ohne Anschlag an. Gerade schnarren kann sie dort bei keiner Stärke. Bitte beides noch einmal messen.',
  otherFirst: (fret, force, would) =>
    `Dort kann dieser Hals bei keiner Stärke gerade schnarren: Er trifft zuerst Bund ${fret}, ab ${force}, und jenen erst ab ${would}. Ein Bund steht vor, oder Halskrümmung oder Saitenlage sind andere als eingegeben.`,
  tooUnsure: 'Die Fehler sind so groß wie die Stärke selbst. Bitte Halskrümmung und Saitenlage genauer messen.',
  newer: 'Die Ablesungen auf diesem Gerät stammen von einer neueren Ausgabe und bleiben, wie sie sind.',
  notKept: 'Dieser Browser behält nichts: Die Ablesung bleibt so lange wie diese Seite.',
  full: (most) => `Dieses Gerät behält höchstens ${most} Ablesungen. Bitte zuerst eine entfernen.`,
};
