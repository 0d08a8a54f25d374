/** Was an einem Eintrag des Messprotokolls oder an einer Datei nicht stimmt; Spalten heißen wie in der Datei. */
import type * as english from '../../en/pages/log-problems.ts';

export const LOG_PROBLEM_WORDS: typeof english.LOG_PROBLEM_WORDS = {
  inRow: (row, sentence) => `Zeile ${row}: ${sentence}`,
  'not-a-day': (column, value) =>
    `„${column}“ ist „${value}“; möglich ist ein Tag des Kalenders, als 14.02.2026 oder 2026-02-14.`,
  'day-or-month': (value) =>
    `„date“ ist „${value}“: Steht der Tag vorn oder der Monat? Die Datei verrät es nicht. Schreiben Sie 14.02.2026 oder 2026-02-14.`,
  'no-name': (column) => `„${column}“ ist leer; der Hals braucht einen Namen.`,
  'text-too-long': (column, characters, most) =>
    `„${column}“ hat ${characters} Zeichen; möglich sind höchstens ${most}.`,
  'not-an-option': (column, value, options) => `„${column}“ ist „${value}“; möglich ist eines von: ${options}.`,
  'not-an-id': (value) =>
    `„id“ ist „${value}“, das ist keine Kennung dieses Protokolls. Lassen Sie die Zelle leer, dann bekommt der Eintrag eine.`,
  'no-number': (column, value, range) => `„${column}“ ist „${value}“; möglich ist eine Zahl, ${range}.`,
  'out-of-range': (column, value, range) => `„${column}“ ist ${value}; möglich ist ${range}.`,
  empty: (column, range) => `„${column}“ ist leer; möglich ist ${range}.`,
  'nothing-measured': (fretted, strung) => `Nichts ist gemessen: Nötig ist „${fretted}“, „${strung}“ oder beides.`,
  'needed-with': (column, other) => `„${column}“ fehlt; mit „${other}“ ist es nötig.`,
  'file-empty': 'Die Datei ist leer.',
  'file-too-large': (size, most) => `Die Datei hat ${size}; ein Messprotokoll hat höchstens ${most}.`,
  'too-many-rows': (most) => `Die Datei hat mehr als ${most} Einträge, so viele fasst ein Messprotokoll.`,
  'not-text': 'Die Datei ist kein lesbarer Text. Speichern Sie sie als CSV in UTF-8.',
  'quotes-open': 'Das ist kein CSV: Anführungszeichen werden nicht geschlossen.',
  'quotes-go-on': 'Das ist kein CSV: Nach den schließenden Anführungszeichen geht die Zelle weiter.',
  'column-twice': (cell) => `Die Spalte „${cell}“ kommt zweimal vor.`,
  'column-unknown': (cell) => `Eine Spalte „${cell}“ gibt es im Messprotokoll nicht.`,
  'column-unit': (cell, column) => `Die Spalte „${cell}“ hat die falsche Einheit: möglich ist ${column}.`,
  'column-missing': (column) => `Die Spalte „${column}“ fehlt.`,
  'cell-without-column': (cell) => `„${cell}“ gehört zu keiner Spalte: Der Kopf endet davor.`,
  'same-id': (id, row) =>
    `Die Kennung ist die von Zeile ${row} (${id}), der Inhalt ein anderer. Ist es ein anderer Hals, dann leeren Sie die Kennung.`,
  withUnit: (column, unit) => `„${column} (${unit})“`,
  eitherUnit: (column) => `„${column} (mm)“ oder „${column} (in)“`,
  withoutUnit: (column) => `„${column}“ ohne Einheit`,
  more: (count) => `und ${count} weitere`,
};
