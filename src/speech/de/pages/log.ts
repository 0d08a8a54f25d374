/** Das Messbuch. */
import type * as english from '../../en/pages/log.ts';

export const LOG_WORDS: typeof english.LOG_WORDS = {
  title: 'Messbuch',
  action: 'Messbuch …',
  intro:
    'Was Sie an fertigen Hälsen gemessen haben, neben dem, was für sie vorhergesagt war. Es zeigt, wie fest Ihre Noppen wirklich greifen, und macht die Spannen des nächsten Halses enger. Das Messbuch liegt auf diesem Gerät, in diesem Browser.',
  troubles: {
    full: 'Auf diesem Gerät ist kein Platz mehr: Was Sie jetzt ändern, ist fort, wenn die Seite geschlossen wird. Sichern Sie das Messbuch als CSV-Datei.',
    refused:
      'Dieser Browser behält für diese Seite nichts (ein privates Fenster, oder der Speicher ist gesperrt): Das Messbuch ist fort, wenn die Seite geschlossen wird. Sichern Sie es als CSV-Datei.',
    silent:
      'Der Speicher des Browsers antwortet nicht: Was Sie jetzt ändern, ist vielleicht fort, wenn die Seite geschlossen wird. Schließen Sie andere Fenster dieses Programms, und sichern Sie das Messbuch als CSV-Datei.',
    newer:
      'Das Messbuch auf diesem Gerät ist von einer neueren Fassung geschrieben und bleibt, wie es ist. Was Sie hier eintragen, ist fort, wenn die Seite geschlossen wird; sichern Sie es als CSV-Datei.',
  },
  reading: 'Das Messbuch wird gelesen.',
  unreadable: (count) =>
    count === 1
      ? 'Ein Eintrag hat eine Form, die diese Fassung nicht lesen kann. Er bleibt, wo er ist.'
      : `${count} Einträge haben eine Form, die diese Fassung nicht lesen kann. Sie bleiben, wo sie sind.`,
  entries: 'Die gemessenen Hälse',
  empty: 'Noch ist kein Hals gemessen.',
  caption: 'Gemessene Hälse, der älteste zuerst',
  date: 'Datum',
  neck: 'Hals',
  method: 'Sitz',
  fretted: 'Bundiert',
  strung: 'Besaitet',
  gauge: 'Messfehler',
  does: 'Ändern oder löschen',
  notMeasured: '–',
  edit: 'Ändern',
  editName: (neck, date) => `Den Eintrag von ${neck}, ${date}, ändern`,
  remove: 'Löschen',
  removeName: (neck, date) => `Den Eintrag von ${neck}, ${date}, löschen`,
  addTitle: 'Den Hals auf der Werkbank eintragen',
  editTitle: (neck) => `Den Eintrag von ${neck} ändern`,
  addIntro:
    'Name, Sitz und Vorhersage kommen vom Entwurf auf der Werkbank. Legen Sie das Lineal von Bund 1 bis zum Korpusansatz; eine Mulde zählt plus, ein Buckel (Rückkrümmung) minus. Lassen Sie leer, was Sie nicht gemessen haben.',
  editIntro: 'Die Vorhersage bleibt die des Tages, an dem sie eingetragen wurde.',
  measuredFretted: (unit) => `Gemessen mit Bünden, ohne Saiten, ${unit}`,
  measuredStrung: (unit) => `Gemessen besaitet, Spannstab neutral, ${unit}`,
  strungDays: 'Tage seit dem Besaiten',
  gaugeError: (unit) => `Fehler von Lineal und Fühlerlehre, ${unit}`,
  predicted: (bow) => `vorhergesagt: ${bow}`,
  noPrediction: 'Die Vorhersage wird noch gerechnet.',
  save: 'Eintragen',
  saveChange: 'Die Änderung behalten',
  cancel: 'Lassen',
  notNumber: (text, field, range) => `„${text}“ ist keine Zahl für ${field}: möglich ist ${range}.`,
  outOfRange: (text, field, range) => `${text} für ${field}: möglich ist ${range}.`,
  range: (low, high) => `${low} bis ${high}`,
  fields: {
    measuredFrettedMm: 'gemessen mit Bünden',
    measuredStrungMm: 'gemessen besaitet',
    gaugeErrorMm: 'Fehler von Lineal und Fühlerlehre',
    days: 'Tage seit dem Besaiten',
  },
  needsNumber: (field, range) => `Leer: ${field}; möglich ist ${range}.`,
  added: (neck) => `${neck} steht im Messbuch.`,
  changed: (neck) => `Der Eintrag von ${neck} ist geändert.`,
  removed: (neck) => `Der Eintrag von ${neck} ist gelöscht.`,
  undo: 'Rückgängig',
  undone: 'Das Messbuch ist, wie es war.',
  alreadyThere: 'Dieser Eintrag steht schon im Messbuch.',
  importFile: 'Eine CSV-Datei hereinholen …',
  exportFile: 'Als CSV sichern',
  fileName: 'messbuch.csv',
  imported: (count) =>
    count === 0
      ? 'Nichts kam dazu: Jeder Eintrag der Datei steht schon im Messbuch.'
      : count === 1
        ? 'Ein Eintrag kam dazu.'
        : `${count} Einträge kamen dazu.`,
  notImported: (file) => `„${file}“ wurde nicht hereingeholt; das Messbuch ist, wie es war:`,
  unreadableFile: 'Die Datei ließ sich nicht lesen.',
  moreProblems: (count) => `und ${count} weitere`,
  biteTitle: 'Wie fest Ihre Noppen greifen',
  biteNone:
    'Noch sagt kein gemessener Hals etwas darüber. Vor jeder Messung können die Noppen halb oder doppelt so fest greifen wie angenommen.',
  biteSays: (necks, factor, low, high) =>
    `Nach ${necks === 1 ? 'einem Hals' : `${necks} Hälsen`}: ${factor} mal so fest wie angenommen; mit 90 % Sicherheit zwischen ${low} und ${high}.`,
  gluedOnly: 'Ein Hals, der nur geleimt wurde, sagt nichts über den Griff: Seine Bünde keilen nicht.',
  picture: (low, high) =>
    `Zwei Kurven über dem Greiffaktor: vor jeder Messung breit, von 0,52 bis 1,93; nach dem Messbuch von ${low} bis ${high}.`,
  before: 'vorher',
  after: 'nach Ihren Hälsen',
  axis: 'Greiffaktor',
  takeBite: (factor) => `${factor} in diesem Entwurf nehmen`,
  inUse: (factor) => `Dieser Entwurf nimmt ihn: Greiffaktor ${factor}, und die engeren Spannen, die dazugehören.`,
  step: (factor) => `Greiffaktor ${factor}`,
  effect: 'Was er an diesem Entwurf ändert',
  effectCaption: 'Wo 90 von 100 solchen Hälsen liegen',
  state: 'Zustand',
  states: { fretted: 'bundiert', strung: 'besaitet', settled: 'gesetzt' },
  without: 'ohne das Messbuch',
  with: 'mit dem Messbuch',
  glueNoEffect: 'Dieser Entwurf ist geleimt: Der Griff spielt für ihn keine Rolle.',
};
