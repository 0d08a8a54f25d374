/** Was `npm run predict` von sich und von dem sagt, was es nicht lesen kann. */
import type * as english from '../../en/workshop/predict.ts';

export const PREDICT_WORDS: typeof english.PREDICT_WORDS = {
  usage: 'Aufruf: npm run --silent predict -- hals.json [--log messprotokoll.csv] [--strips probestreifen.json]',
  seeHelp: 'Mehr: npm run --silent predict -- --help',
  help: [
    'Gibt die Vorhersage für einen Hals als JSON aus, mit ihren Prüfungen.',
    '',
    '  hals.json         der Hals, wie die Seite ihn speichert; - liest ihn von der Standardeingabe',
    '  --log datei.csv   ein Messprotokoll, wie die Seite es speichert: es verengt die Bänder eines Halses,\n                    der sich auf seine Einträge bezieht, wie die Seite es in den Hals schreibt',
    '  --strips datei    Probestreifen, wie die Seite sie speichert: ebenso, für einen Hals, der sich auf sie bezieht',
    '  --schema          gibt den Aufbau des Ergebnisses als JSON Schema aus',
    '  --help, -h        gibt dies aus',
    '  --                alles danach ist eine Datei',
    '',
    'Dateien werden in UTF-8 oder UTF-16 gelesen. Das Ergebnis geht in die Standardausgabe, Meldungen in die Fehlerausgabe.',
    'Jede Größe trägt ihre Einheit im Namen (Mm, N, MPa, Percent, Days); p05, p50 und p95 sind ihr Band.',
    'Gespielt wird leise, mittel und kräftig; eine eigene Anschlagstärke bleibt auf dem Gerät, auf dem sie gemessen wurde.',
    'Prüfungen sind Kennungen mit ihren Zahlen; sie ändern den Rückgabewert nicht.',
    '',
    'Rückgabewerte: 0 ausgegeben; 1 ein Fehler des Programms, oder es ließ sich nicht einrichten; 2 Aufruf, Datei oder ein Wert darin abgelehnt.',
  ].join('\n'),
  noFile: 'Es ist kein Hals genannt.',
  twoFiles: (files) =>
    `Es ist mehr als ein Hals genannt: ${files}. Möglich ist einer; ein Messprotokoll steht hinter --log, und mit npm steht alles hinter „--“.`,
  unknownOption: (option) => `${option} gibt es nicht; möglich sind --log, --strips, --schema und --help.`,
  noValue: (option) => `Hinter ${option} fehlt die Datei.`,
  twice: (option) => `${option} steht zweimal da; möglich ist eine Datei.`,
  takesNoValue: (option) => `Hinter ${option} kommt nichts.`,
  bothFromInput: 'Nur eines von Hals, Messprotokoll und Streifen kann aus der Standardeingabe kommen.',
  standardInput: 'Die Standardeingabe',
  missing: (file) => `${file} lässt sich nicht lesen: Diese Datei gibt es nicht.`,
  folder: (file) => `${file} lässt sich nicht lesen: Es ist ein Ordner.`,
  forbidden: (file) => `${file} lässt sich nicht lesen: Dieser Benutzer darf es nicht.`,
  system: (file, code) => `${file} lässt sich nicht lesen: Das System meldet ${code}.`,
  empty: (file) => `${file} ist leer.`,
  tooLarge: (file, most) => `${file} ist größer als ${most}; so groß kann eine solche Datei nicht sein.`,
  notUtf8: (file) => `${file} ist weder in UTF-8 noch in UTF-16. Bitte als UTF-8 speichern.`,
  notUtf16: (file) => `${file} beginnt als UTF-16, ist aber beschädigt. Bitte noch einmal speichern, als UTF-8.`,
  utf32: (file) => `${file} ist in UTF-32; das wird nicht gelesen. Bitte als UTF-8 speichern.`,
  inFile: (file, message) => `${file}: ${message}`,
  nothingOfBite: (file) =>
    `${file} sagt nichts darüber, wie fest die Noppen greifen: Bei keinem Hals darin sind die Bünde eingepresst. Lassen Sie --log weg.`,
  noReference: (file) =>
    `Der Hals bezieht sich auf keine Messungen, darum sagt ${file} nichts über ihn: Übernehmen Sie das Protokoll auf der Seite in den Hals und speichern Sie ihn neu, oder lassen Sie --log weg.`,
  'not-here': (file) =>
    `Der Hals bezieht sich auf Messungen, die nicht in ${file} stehen. Nennen Sie das Protokoll, in dem sie stehen, oder lassen Sie --log weg.`,
  changed: (file) =>
    `Die Messungen, auf die sich der Hals bezieht, haben sich geändert: In ${file} fehlen welche oder sagen etwas anderes. Übernehmen Sie das Protokoll auf der Seite neu in den Hals, oder lassen Sie --log weg.`,
  noStripReference: (file) =>
    `Der Hals bezieht sich auf keine Probestreifen, darum sagt ${file} nichts über ihn: Nehmen Sie die Streifen auf der Seite für den Hals und speichern Sie ihn neu, oder lassen Sie --strips weg.`,
  gripNotHere: (files) =>
    `Der Hals bezieht sich auf Streifen oder Messungen, die nicht in ${files} stehen. Nennen Sie die Dateien, in denen sie stehen, mit --strips und --log, oder lassen Sie beides weg.`,
  gripChanged: (files) =>
    `Die Streifen oder Messungen, auf die sich der Hals bezieht, haben sich geändert: In ${files} fehlen welche oder sagen etwas anderes. Nehmen Sie sie auf der Seite neu für den Hals, oder lassen Sie --strips und --log weg.`,
  gripByHand:
    'Griff oder Noppenform im Hals sind nicht die, die seine Messungen gaben. Nehmen Sie sie auf der Seite neu für den Hals, oder lassen Sie --strips und --log weg.',
  otherBite: (given, file, measured) =>
    `biteFactor ist im Hals ${given}; aus ${file} ergibt sich ${measured}. Die engeren Bänder gehören zu diesem Wert: Setzen Sie biteFactor im Hals auf ${measured}, oder lassen Sie --log weg.`,
  fault: (message) =>
    `Die Vorhersage ist an einem Fehler des Programms gescheitert (${message}). Bitte melden Sie ihn zusammen mit dem Hals.`,
};
