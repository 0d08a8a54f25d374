/** Die Teile der Seite um das Bild herum. */
import type * as english from '../../en/workshop/workshop.ts';

export const METHOD_WORDS: typeof english.METHOD_WORDS = {
  press: { label: 'gepresst', says: 'die Noppen verkeilen den Schlitz; neben dem Bundfuß bleibt Luft' },
  glue: { label: 'geleimt', says: 'der Schlitz ist auf den Bundfuß gesägt und gefüllt; kein Keil' },
  both: { label: 'gepresst und geleimt', says: 'erst verkeilt, dann der Schlitz gefüllt' },
};

export const READOUT_WORDS: typeof english.READOUT_WORDS = {
  title: 'Was der Hals tut',
  origin: 'Woher diese Zahl kommt',
  fretted: 'Bundiert',
  strung: 'Besaitet',
  settled: (days) => `Gesetzt nach ${days}`,
  settledPlain: 'Gesetzt',
  force: 'Keilkraft je Bund',
  pull: 'Saitenzug',
  waiting: 'Spanne …',
  perFret: (low, high) => `${low} bis ${high} je nach Bund`,
  rodNeeded: 'Spannstab',
  rodFor: (relief) => `Spannstab für ${relief}`,
  ofRange: (percent) => `${percent} seines Wegs`,
  outOfReach: 'unerreichbar',
  rodChance: (percent) => `bei ${percent} möglich`,
  bandMeans: 'Die kleinen Zahlen umfassen 90 von 100 solchen Hälsen.',
  bandComing: '',
  drivers: (list) => `Was die Spanne am meisten ausmacht: ${list}.`,
  strings: (count) => (count === 1 ? '1 Saite' : `${count} Saiten`),
  noForce: 'kein Keil',
  band: (low, high) => `${low} bis ${high}`,
};

export const CHARTS_WORDS: typeof english.CHARTS_WORDS = {
  choice: 'Ansicht',
  line: {
    choice: 'am Hals entlang',
    action: 'Die Linie der Bundoberkanten',
    title: 'Die Linie der Bundoberkanten',
  },
  time: {
    choice: 'über die Zeit',
    action: 'Halskrümmung über die Zeit',
    title: 'Halskrümmung unter den Saiten über die Zeit, Spannstab neutral',
  },
  room: { choice: 'schnarrt es?', action: 'Schnarrt es?', title: 'Schnarrt es?' },
};

export const CHART_WORDS: typeof english.CHART_WORDS = {
  straightedge: 'Lineal',
  above: 'Buckel',
  below: 'Mulde',
  axis: 'Bund',
  method: 'Sitz',
  comparing: 'alle drei Linien',
  summary: (state, lines) => `Linie der Bundoberkanten gegen ein Lineal, ${state}. ${lines}`,
  line: (method, bow, fret) => `${method}: ${bow}, am größten nahe Bund ${fret}.`,
  table: 'als Tabelle',
  target: 'gewünschte Halskrümmung',
  rangeFrom: 'Gezeigt ab Bund',
  rangeTo: 'Gezeigt bis Bund',
  rangeJoin: 'bis',
  rangeHint:
    'Welchen Teil des Griffbretts die Linie zeigt; über der Zeichnung auch mit dem Mausrad und Strg, oder mit zwei Fingern',
  whole: 'ganzes Griffbrett',
  save: 'SVG sichern',
  saveHint: 'Die Linie als Zeichnung sichern (SVG)',
  tableTitle: 'Die Linie, Bund für Bund',
  caption: (state) => `Bundoberkanten gegen das Lineal, ${state}: minus ist ein Buckel, plus eine Mulde`,
  fret: 'Bund',
  hover: (fret, bow) => `Bund ${fret}: ${bow}`,
  vertical: (times) => `Höhen ×${times}`,
};

export const PHASE_WORDS: typeof english.PHASE_WORDS = {
  bare: 'leer',
  frets: 'bundiert',
  strung: 'besaitet',
  weeks: 'Setzen',
  rod: 'Stab',
};

export const RAIL_WORDS: typeof english.RAIL_WORDS = {
  title: 'Der Weg durch die Arbeit',
  slider: 'Stand der Arbeit',
  play: 'Abspielen',
  pause: 'Anhalten',
  back: 'Schritt zurück',
  forward: 'Schritt weiter',
  boardOn: 'bundiertes Griffbrett aufgeleimt, keine Saiten',
  bare: 'leeres Griffbrett, keine Bünde',
  frets: (count, total) =>
    count === total ? `alle ${total} Bünde eingesetzt, keine Saiten` : `${count} von ${total} Bünden eingesetzt`,
  count: (count, total) => `${count} von ${total}`,
  seated: (fret, force) => `Bund ${fret}: ${force}`,
  push: (force) => `${force} Druck`,
  byHand: 'gleitet hinein',
  stepMeans: 'Was der letzte Bund geändert hat; minus heißt zum Buckel hin.',
  strung: 'eben besaitet',
  weeks: (time) => `seit ${time} besaitet`,
  rod: (time, set) => `seit ${time} besaitet, Spannstab eingestellt${set === '' ? '' : `: ${set}`}`,
};

/** Im dritten Fall, wie er nach „seit“ und „nach“ steht. */
export const TIME_WORDS: typeof english.TIME_WORDS = {
  hours: (n) => (n === 1 ? 'einer Stunde' : `${n} Stunden`),
  days: (n) => (n === 1 ? 'einem Tag' : `${String(n).replace('.', ',')} Tagen`),
  weeks: (n) => (n === 1 ? 'einer Woche' : `${n} Wochen`),
  months: (n) => (n === 1 ? 'einem Monat' : `${n} Monaten`),
  years: (n) => (n === 1 ? 'einem Jahr' : `${n} Jahren`),
};

export const VIEW_WORDS: typeof english.VIEW_WORDS = {
  neck: { label: 'Ganzer Hals', says: 'schräg über das Griffbrett gesehen' },
  slot: { label: 'Schlitz im Schnitt', says: 'längs des Halses durch einen Schlitz geschnitten' },
  fret: { label: 'Längs des Bundes', says: 'längs eines Bundes geschnitten, über die ganze Breite des Griffbretts' },
  end: { label: 'Bundende', says: 'das Ende eines Bundes an der Kante des Griffbretts' },
  edge: { label: 'Lineal', says: 'von der Seite, mit einem Lineal auf den Bünden' },
  back: { label: 'Rückseite', says: 'die Rückseite des Halses' },
};

export const PICTURE_WORDS: typeof english.PICTURE_WORDS = {
  title: 'Der Hals',
  views: 'Ansicht',
  enlarged: (factor) => `Biegung ×${factor}`,
  trueSize: 'wahre Größe',
  chosenFactor: 'passend',
  times: (factor) => `×${factor}`,
  shown: (factor) => `Biegung ×${factor} gezeichnet`,
  trueShown: 'Biegung in wahrer Größe',
  straight: (reason) => `Ohne Biegung gezeichnet, denn sie ließ sich nicht rechnen: ${reason}.`,
  fret: 'Bund',
  nutwards: 'Sattel',
  bodywards: 'Korpus',
  shownGroup: 'Außerdem zeigen',
  lift: 'Bund heben',
  rod: 'Spannstab',
  forces: 'Kräfte',
  stress: 'Spannung',
  loading: 'Das Bild wird vorbereitet.',
  unavailable: 'Das Bild lässt sich hier nicht zeichnen',
  unavailableWhy: (reason) => `${reason} Zahlen, Linie und Tabelle gehen trotzdem.`,
  broke: 'Das Zeichnen ist abgebrochen.',
  retry: 'Neu zeichnen',
  description: (name, view, state, bow, method, shown) => `${name}, ${view}; ${method}, ${state}: ${bow}; ${shown}.`,
};

export const PROJECT_WORDS: typeof english.PROJECT_WORDS = {
  menu: 'Menü',
  presets: 'Beginnen mit',
  name: 'Name des Entwurfs',
  quoted: (name) => `„${name}“`,
  open: 'Öffnen …',
  save: 'Sichern',
  undo: (label) => (label ? `Rückgängig: ${label}` : 'Rückgängig'),
  redo: (label) => (label ? `Wiederholen: ${label}` : 'Wiederholen'),
  unsaved: 'nicht gesichert',
  saved: 'gesichert',
  opened: (name) => `„${name}“ ist geöffnet.`,
  notOpened: (file) => `„${file}“ wurde nicht geöffnet; Ihr Entwurf ist unverändert.`,
  unreadable: 'Die Datei ließ sich nicht lesen.',
  moreProblems: (count) => `und ${count} weitere`,
  tooBig: (size, most) => `Die Datei hat ${size}; eine Projektdatei hat höchstens ${most}.`,
  drop: 'Loslassen, um diese Projektdatei zu öffnen',
  stepOpen: 'Projekt öffnen',
  stepPreset: (label) => `Beginnen mit „${label}“`,
  stepName: 'Name',
};

export const SETTING_WORDS: typeof english.SETTING_WORDS = {
  units: 'Einheiten',
  metric: 'mm',
  inch: 'Zoll',
  appearance: 'Darstellung',
  appearances: { system: 'wie das System', light: 'hell', dark: 'dunkel' },
};

export const NOTICE_WORDS: typeof english.NOTICE_WORDS = {
  close: 'Schließen',
  title: 'Meldungen',
  copied: 'Kopiert.',
  copyByHand:
    'Dieser Browser lässt die Seite nichts kopieren. Der Text ist markiert: kopieren Sie ihn mit der Tastatur oder über das Menü.',
};
