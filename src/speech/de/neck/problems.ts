/** Was an Entwürfen und Projektdateien abgelehnt wird, und warum. */
import type * as english from '../../en/neck/problems.ts';

export const PLACE_WORDS: typeof english.PLACE_WORDS = {
  name: 'Name des Entwurfs',
  notes: 'Notizen',
  laminates: 'Streifen des Halses',
  ownWoods: 'Eigene Hölzer',
  binding: 'Lagen der Einfassung',
  strings: 'Saiten',
  regions: 'Strecken von Bünden',
  startingReliefMm: 'Gemessene Halskrümmung je Bund',
  biteReference: 'Messungen hinter dem Griff',
  gripReference: 'Messungen hinter Griff und Noppenform',
  build: 'Entwurf',
  file: 'Projektdatei',
  format: 'Projektdatei',
  version: 'Projektdatei',
};

export const ENTRY_WORDS: typeof english.ENTRY_WORDS = {
  diameterMm: 'Saitendurchmesser',
  coreMm: 'Kerndurchmesser',
  pitch: 'Ton als MIDI-Notennummer',
  besidePreviousMm: 'Abstand von der vorigen Saite ihres Chors',
  thicknessMm: 'Dicke der Lage',
  share: 'Anteil an der Breite',
  widthMm: 'Breite des Streifens',
  daysIn: 'Tage, die ein Bund drin war',
  modulusGPa: 'E-Modul längs der Faser',
  densityKgM3: 'Rohdichte',
  crushingMPa: 'Druckfestigkeit längs der Faser',
  like: 'ähnliches Holz',
  fromFret: 'erster Bund der Strecke',
  toFret: 'letzter Bund der Strecke',
  kerfMm: 'Schlitzbreite in der Strecke',
  tangWidthMm: 'Stegdicke des Bundfußes in der Strecke',
  studWidthMm: 'Breite über die Noppen in der Strecke',
  startingReliefMm: 'gemessene Halskrümmung',
  wood: 'Holz',
  colour: 'Farbe als #rrggbb',
  construction: 'Machart der Saite',
};

export const KIND_WORDS: typeof english.KIND_WORDS = {
  'whole-number': 'eine ganze Zahl',
  number: 'eine Zahl',
  text: 'ein Text',
  flag: 'ja oder nein (true, false)',
  list: 'eine Liste',
  object: 'ein Objekt',
};

export const IMPOSSIBLE_WORDS: typeof english.IMPOSSIBLE_WORDS = {
  'cone-narrows': () =>
    'Der Kegel wird bis zum Ende des Griffbretts enger, und noch dort muss sein Radius so groß sein, wie das Griffbrett breit ist',
  'frets-on-board': (frets) => `Das Griffbrett hat nur ${frets} Bünde`,
  'crowns-too-close': (least) =>
    `Bei dieser Mensur bliebe zwischen den letzten beiden Bundköpfen weniger als ${least} Griffbrett`,
  'board-under-slot': (thickness, least) =>
    `Das Griffbrett ist unter dem Schlitz an der dünnsten Stelle ${thickness} dick, und ${least} müssen bleiben`,
  'flat-slot-at-edge': (drop) =>
    `Ein gerader Schnitt muss auch an der Kante des Griffbretts noch ein Schlitz sein, und die liegt ${drop} tiefer`,
  'crown-covers-slot': () => 'Der Bundkopf muss den Schlitz decken',
  'studs-stand-out': () => 'Die Noppen stehen vom Steg ab, darum ist der Bundfuß über die Noppen mindestens so breit',
  'crown-covers-studs': () => 'Der Bundkopf muss die Noppen decken',
  'back-all-along': () => 'Griffbrett, Schulter und Rückseite müssen auf der ganzen Länge des Halses darin Platz haben',
  'lines-of-binding': (lines) => `Mehr Lagen hat die Einfassung nicht (${lines})`,
  'binding-at-nut': (total, most) =>
    `Die Lagen der Einfassung sind zusammen ${total} dick; an diesem Sattel möglich sind höchstens ${most} je Seite.`,
  'strings-clear-frets': () => 'Die Saiten müssen frei über die Bünde laufen',
  'fall-away-beyond': (frets) =>
    `von den ${frets} Bünden müssen welche jenseits des Bundes liegen, an dem der Abfall beginnt`,
  'rod-under-board': () => 'Der Halsspannstab muss unter dem Griffbrett enden',
  'one-way-rod': () => 'Ein einfach wirkender Halsspannstab lässt sich nur anziehen',
  'wood-under-bar': (least) => `Am Sattel müssen unter dem Versteifungsstab ${least} Holz bleiben`,
  'bars-and-channel': () => 'Versteifungsstäbe und Spannstabnut dürfen am Sattel höchstens 60 % der Breite einnehmen',
  'wall-of-bar': (width, depth) => `so dicke Wände passen nicht in einen Stab von ${width} mal ${depth}`,
  'rods-apart': (least) => `zwischen den Nuten zweier Spannstäbe müssen mindestens ${least} Holz bleiben`,
  'rods-in-neck': (most) => `zwei Nuten dürfen am Sattel zusammen höchstens ${most} breit sein`,
  'wood-under-channel': (least) => `unter der Spannstabnut müssen überall mindestens ${least} Holz bleiben`,
  'channel-at-ends': (curve, least) =>
    `ihre Enden sind um den Bogen des Spannstabs (${curve}) flacher als ihre Mitte und müssen mindestens ${least} tief sein`,
  'width-of-piece': (piece) =>
    `Streifen ${piece} passt nicht zu den anderen: von Streifen gleicher Breite hat jeder bis auf den äußersten eine Breite.`,
  'widths-at-nut': (sum, most) =>
    `Die Streifen gleicher Breite nehmen zusammen ${sum} ein; am Sattel ist Platz für ${most}.`,
  'region-order': (region, from, to, frets) =>
    `Strecke ${region} geht von Bund ${from} bis Bund ${to}; auf diesem Hals geht sie von einem Bund bis zum selben oder einem späteren, höchstens bis Bund ${frets}.`,
  'region-studs': (region, studs, tang) =>
    `In Strecke ${region} misst der Bundfuß über die Noppen ${studs} und im Steg ${tang}; über die Noppen ist er mindestens so breit wie im Steg.`,
  'crown-covers-regions': () => 'Der Bundkopf muss Schlitze und Noppen jeder Strecke decken',
  'reliefs-per-fret': (reliefs, frets) =>
    `Die Liste der Halskrümmungen hat die Länge ${reliefs}, der Hals hat ${frets} Bünde; möglich ist eine für jeden Bund oder keine.`,
  'shares-sum': (sum) => `Die Anteile der Streifen des Halses ergeben zusammen ${sum}; es muss 1 sein.`,
  'core-in-string': (string, core, diameter, least) =>
    `Saite ${string} hat einen Kern von ${core} bei einem Durchmesser von ${diameter}; der Kern muss mindestens ${least} dünner sein.`,
  'course-of-first': () => 'Vor der ersten Saite liegt keine, mit der sie einen Chor bilden könnte.',
  'strings-of-course': (string, beside, least) =>
    `Saite ${string} liegt von Mitte zu Mitte ${beside} neben der vorigen; bei ${least} berühren sie sich.`,
  'courses-at-nut': (width) =>
    `Auf einem Sattel von ${width} Breite haben die Saiten in ihren Chören nebeneinander keinen Platz.`,
  'span-on-blank': () => 'der Rohling muss über beide Auflager reichen',
};

export const PROBLEM_WORDS: typeof english.PROBLEM_WORDS = {
  entry: (list, entry) => `${list}, Eintrag ${entry}`,
  entryPart: (list, entry, part) => `${list}, Eintrag ${entry}, ${part}`,
  // Steht nach „ist“.
  nothing: 'nicht angegeben',
  atLeast: (size) => `mindestens ${size}`,
  atMost: (size) => `höchstens ${size}`,
  tooLow: (label, given, least, reason) => `„${label}“ ist ${given}; hier möglich ist mindestens ${least}: ${reason}.`,
  tooHigh: (label, given, most, reason) => `„${label}“ ist ${given}; hier möglich ist höchstens ${most}: ${reason}.`,
  missing: (label, path) => `„${label}“ (${path}) fehlt.`,
  missingOf: (label, path, range) => `„${label}“ (${path}) fehlt; möglich ist ${range}.`,
  takes: (label, path, given, wanted) => `„${label}“ (${path}) ist ${given}; möglich ist ${wanted}.`,
  takesKind: (label, path, given, kind, range) => `„${label}“ (${path}) ist ${given}; möglich ist ${kind}, ${range}.`,
  takesOneOf: (label, path, given, options) => `„${label}“ (${path}) ist ${given}; möglich ist eines von: ${options}.`,
  takesNot: (label, path, given) => `„${label}“ (${path}) ist ${given}, und das ist nicht möglich.`,
  textSize: (label, path, size, limit) => `„${label}“ (${path}) hat ${size} Zeichen; möglich sind ${limit}.`,
  // Auch bei einem: „die Länge 1“.
  listSize: (label, path, size, limit) => `„${label}“ (${path}) hat die Länge ${size}; möglich ist ${limit}.`,
  unknown: (path) => `${path} kommt in einem Entwurf nicht vor.`,
  notABuild: (given) => `Der Entwurf ist ${given}; möglich ist nur ein Objekt.`,
  notJson: (detail) => `Das ist keine Projektdatei: Es ist kein JSON (${detail}).`,
  notAProject: (format) => `Das ist keine Projektdatei: Darin steht nicht "format": "${format}".`,
  noVersion: (given, latest) =>
    `Die Version der Projektdatei ist ${given}; möglich ist eine ganze Zahl von 1 bis ${latest}.`,
  newerVersion: (given, latest) =>
    `Die Projektdatei ist von Version ${given}; dieses Programm liest bis Version ${latest}. Öffnen Sie sie mit einer neueren Fassung.`,
};
