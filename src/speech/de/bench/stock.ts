/** Der Bestand der Werkstatt. */
import type * as english from '../../en/bench/stock.ts';

export const STOCK_WORDS: typeof english.STOCK_WORDS = {
  title: 'Sägeblätter und Bunddraht der Werkstatt',
  intro:
    'Der Rat wählt aus dem, was hier steht. Ist kein Sägeblatt eingetragen, nennt er eine Schlitzbreite und überlässt Ihnen das Blatt.',
  blades: 'Sägeblätter',
  wires: 'Bunddraht',
  noBlades: 'Kein Sägeblatt eingetragen.',
  noWires: 'Kein Bunddraht eingetragen.',
  name: 'Name',
  kerfMm: 'Schlitzbreite, im Schlitz gemessen',
  spreadMm: 'Streuung von Schlitz zu Schlitz, ±',
  tangWidthMm: 'Bundfuß',
  studWidthMm: 'Über die Noppen',
  studAreaMm2: 'Fläche einer Noppe, falls bekannt',
  studPitchMm: 'Noppe zu Noppe, falls bekannt',
  blade: (number) => `Sägeblatt ${number}`,
  wire: (number) => `Bunddraht ${number}`,
  addBlade: 'Sägeblatt hinzufügen',
  addWire: 'Bunddraht hinzufügen',
  remove: 'Entfernen',
  removeName: (name) => `${name} entfernen`,
  added: (name) => `${name} ist hinzugefügt.`,
  changed: (name) => `${name} ist geändert.`,
  removed: (name) => `${name} ist entfernt.`,
  studsOverTang: (tang) => `Die Noppen müssen breiter sein als der Bundfuß (${tang}).`,
  full: (most) => `Es ist Platz für ${most} Sägeblätter und Bunddrähte.`,
  unreadable: (count) =>
    count === 1
      ? 'Ein Eintrag hat eine Form, die diese Fassung nicht lesen kann. Er bleibt, wo er ist.'
      : `${count} Einträge haben eine Form, die diese Fassung nicht lesen kann. Sie bleiben, wo sie sind.`,
  troubles: {
    full: 'Auf diesem Gerät ist kein Platz mehr: Was Sie hier ändern, ist fort, wenn die Seite geschlossen wird.',
    refused:
      'Dieser Browser behält für diese Seite nichts: Was Sie hier ändern, ist fort, wenn die Seite geschlossen wird.',
    silent:
      'Der Speicher des Browsers antwortet nicht: Was Sie hier ändern, ist vielleicht fort, wenn die Seite geschlossen wird.',
    newer:
      'Der Bestand auf diesem Gerät ist von einer neueren Fassung geschrieben und bleibt, wie er ist. Was Sie hier ändern, ist fort, wenn die Seite geschlossen wird.',
  },
};
