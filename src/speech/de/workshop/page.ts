/** Die Seite als Ganzes: Handlungen, Hilfe, Meldungen, Biegung, erster Besuch. */
import type * as app from '../../en/workshop/app.ts';
import type * as state from '../../en/workshop/solver.ts';
import type * as draft from '../../en/pages/drafts.ts';
import type * as actions from '../../en/workshop/actions.ts';
import type * as bow from '../../en/workshop/bow.ts';
import type * as offline from '../../en/workshop/offline.ts';
import type * as papers from '../../en/pages/sheets.ts';
import type * as welcome from '../../en/pages/welcome.ts';

export const APP_WORDS: typeof app.APP_WORDS = {
  skip: 'Zu den Reglern',
  loading: 'Die Regler werden vorbereitet.',
  partMissing:
    'Ein Teil der Seite ließ sich nicht holen. Ihr Entwurf bleibt erhalten: Laden Sie die Seite neu, sobald das Netz wieder da ist.',
  loadAgain: 'Seite neu laden',
};

export const SOLVER_WORDS: typeof state.SOLVER_WORDS = {
  restarted: 'Die Rechnung ist abgebrochen und wurde neu begonnen. Ihr Entwurf ist unverändert.',
  failed: (reason) =>
    `Dieser Hals ließ sich nicht rechnen: ${reason}. Ihr Entwurf ist unverändert; ändern Sie einen Wert, um es noch einmal zu versuchen.`,
  bandsFailed: (reason) =>
    `Wie sicher die Zahlen sind, ließ sich nicht rechnen: ${reason}. Die Zahlen selbst gelten; ändern Sie einen Wert, um es noch einmal zu versuchen.`,
  stressFailed: (reason) => `Die Spannung im Holz ließ sich nicht rechnen: ${reason}.`,
  notComputed: 'nicht gerechnet',
  noBand: 'Spanne nicht gerechnet',
  notComputedWhy: (reason) => `Nicht gerechnet: ${reason}.`,
  notChecked: (reason) => `Nicht geprüft, weil sich der Hals nicht rechnen ließ: ${reason}.`,
};

export const DRAFT_WORDS: typeof draft.DRAFT_WORDS = {
  restored: (name, when) =>
    `„${name}“ liegt wieder auf der Werkbank, wie Sie ihn verlassen haben (${when}). Mit Rückgängig beginnen Sie von vorn.`,
  stepRestore: 'Wiederhergestellte Arbeit',
  mayBeLeft:
    'Vielleicht ist ein anderes Fenster abgebrochen. Sehen Sie in der Sammlung nach, unter „Auf der Werkbank geblieben“.',
  crowded: (count) =>
    `Auf der Werkbank sind viele Hälse geblieben. Kommen weitere dazu, gehen die ${count} ältesten. Behalten Sie in der Sammlung, was Sie noch brauchen:`,
  full: 'Auf diesem Gerät ist kein Platz mehr, um den Hals auf der Werkbank zu behalten. Sichern Sie ihn als Datei, und löschen Sie, was Sie nicht mehr brauchen.',
  refused:
    'Dieser Browser behält für diese Seite nichts: ein privates Fenster, oder der Speicher ist gesperrt. Wird die Seite geschlossen, ist der Hals fort; sichern Sie ihn als Datei.',
  silent:
    'Der Speicher des Browsers antwortet nicht. Schließen Sie andere Fenster dieses Programms und laden Sie die Seite neu; sichern Sie den Hals bis dahin als Datei.',
};

export const OPENING_WORDS: typeof actions.OPENING_WORDS = {
  keep: 'In der Sammlung behalten',
  library: 'Sammlung …',
  share: 'Teilen …',
  compare: 'Vergleichen …',
  wanted: 'Vom Ziel her rechnen …',
  log: 'Messprotokoll …',
  bench: 'An der Werkbank …',
  refret: 'Bundfüße für eine Neubundierung …',
  reseat: 'Einen Bund wieder einsetzen …',
  proof: 'Wie gut es rechnet …',
  lessons: 'Lektionen …',
  glossary: 'Fachwörter …',
};

export const ACTION_WORDS: typeof actions.ACTION_WORDS = {
  nextMethod: 'Nächste Art des Sitzes',
  nextFret: 'Nächster Bund, zum Korpus hin',
  previousFret: 'Voriger Bund, zum Sattel hin',
  moreBow: 'Biegung stärker zeichnen',
  lessBow: 'Biegung schwächer zeichnen',
  trueSize: 'Wahre Größe',
  lift: 'Den Bund herausheben',
  rod: 'Den Spannstab zeigen',
  arrows: 'Die Kräfte zeigen',
  stress: 'Die Spannung im Holz zeigen (Schlitz im Schnitt)',
  comparing: 'Die Linien aller drei Arten des Sitzes',
  units: 'mm oder Zoll',
  help: 'Hilfe und Tasten',
};

export const ACTION_GROUP_WORDS: typeof actions.ACTION_GROUP_WORDS = {
  project: 'Das Projekt',
  edit: 'Den Entwurf ändern',
  job: 'Der Weg durch die Arbeit',
  view: 'Das Bild',
  page: 'Die Seite',
};

export const HELP_WORDS: typeof actions.HELP_WORDS = {
  title: 'Hilfe und Tasten',
  intro: [
    'Backbow zeigt, was die Bünde mit einem bestimmten Hals machen. Stellen Sie den Hals an den Reglern ein; das Bild, die Zahlen und die Linie darunter werden sofort neu gerechnet.',
    'Jeder eingepresste Bund verkeilt seinen Schlitz ein wenig und biegt den Hals nach hinten; die Saiten ziehen ihn wieder nach vorn. Die Biegung im Bild ist größer gezeichnet, als sie ist; um wie viel, steht im Bild.',
    'Holz streut um ein Fünftel und mehr. Nehmen Sie die Zahlen als gut begründete Schätzung, und messen Sie.',
  ],
  keys: 'Tasten',
  action: 'Was',
  combos: 'Taste',
  undoable: 'lässt sich rückgängig machen',
  numbers:
    'Auf einem Regler oder einer Zahl: Die Pfeiltasten gehen einen Schritt, mit der Umschalttaste feiner, die Bildtasten gröber, Pos1 und Ende gehen an die Grenzen. Ein Doppelklick setzt einen Regler zurück.',
  singleKeys: 'Einzelne Buchstaben wirken als Tasten (ausschalten, wenn Sie diktieren)',
  typed:
    'Längen dürfen mit ihrer Einheit eingegeben werden, was die Seite auch zeigt: 0,58 mm, 0.023 in, 23 thou, 1 5/8 in.',
};

/** Relief ist die Halskrümmung nach vorn, back-bow die nach hinten. */
export const BOW_WORDS: typeof bow.BOW_WORDS = {
  'back-bow': 'Rückbiegung',
  relief: 'Halskrümmung',
  flat: 'gerade',
};

export const BOW_MEANING: typeof bow.BOW_MEANING = {
  'back-bow': 'ein Buckel',
  relief: 'eine Mulde',
  flat: 'weder Buckel noch Mulde',
};

export const BOW_ENTRY_WORDS: typeof bow.BOW_ENTRY_WORDS = {
  hump: 'Buckel',
  hollow: 'Mulde',
  wayOf: (what) => `${what}: Buckel oder Mulde`,
  whichWay: (size) => `${size}: Ist es ein Buckel oder eine Mulde?`,
  noSign: 'Wählen Sie Buckel oder Mulde; das Maß hat kein Vorzeichen.',
};

export const OFFLINE_WORDS: typeof offline.OFFLINE_WORDS = {
  title: 'Neue Fassung',
  waiting:
    'Eine neue Fassung von Backbow liegt bereit. Die Seite bleibt, wie sie ist, bis Sie sie neu laden; Ihr Entwurf bleibt erhalten.',
  inUse: 'Ein anderes Fenster ist zu einer neuen Fassung von Backbow übergegangen. Dieses zeigt noch die vorige.',
  load: 'Neue Fassung laden',
  later: 'Später',
  kept: {
    'not-here': 'Dieser Browser behält nichts von der Seite: Sie braucht bei jedem Besuch das Netz.',
    preparing: 'Die Seite wird in diesem Browser abgelegt, damit sie ohne Netz geht.',
    ready: 'Die Seite liegt in diesem Browser und geht ohne Netz.',
    failed: 'Die Seite ließ sich nicht in diesem Browser ablegen: Sie braucht beim nächsten Besuch das Netz.',
  },
};

export const SHEETS_WORDS: typeof papers.SHEETS_WORDS = {
  title: 'Papiere',
  plan: 'Plan und Werkstattblatt',
  template: 'Sägeschablone',
  files: 'Dateien',
  open: 'Plan und Blatt',
  openHint: 'Bundierplan, Werkstattblatt zum Drucken, Sägeschablone, Dateien',
  back: 'Zurück zum Hals',
  print: 'Drucken',
  working: 'Die Zahlen werden gerechnet.',
  stale: 'Der Entwurf hat sich geändert; die Zahlen unten gehören zum vorigen Wert und werden neu gerechnet.',
  loading: 'Die Papiere werden vorbereitet.',
  documentTitle: (name, sheet) => `${name} – ${sheet} – Backbow`,
  version: (version) => `Backbow ${version}`,
};

export const WELCOME_WORDS: typeof welcome.WELCOME_WORDS = {
  title: 'Willkommen',
  neck: 'Ein Hals wie Ihrer',
  three: 'Drei Dinge entscheiden am meisten',
  wire: 'Ihr Draht, über die Noppen gemessen',
  saw: 'Ihre Säge, wie breit sie schneidet',
  seating: 'Wie die Bünde hineinkommen',
  read: 'Die Antwort steht sofort über dem Bild. Alles andere hat einen üblichen Wert und lässt sich darunter oder daneben einstellen.',
  lesson: 'Mit einer Lektion beginnen',
  glossary: 'Fachwörter',
  close: 'Schließen',
};
