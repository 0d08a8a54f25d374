/** Probestreifen. */
import type * as english from '../../en/pages/strips.ts';

export const STRIP_WORDS: typeof english.STRIP_WORDS = {
  title: 'Probestreifen',
  intro:
    'Ein Reststück, dieselbe Säge, derselbe Bunddraht, ein halbes Dutzend Bünde. Ein bloßer Streifen biegt sich um ein Vielfaches stärker als ein Hals; so zeigt schon ein Lineal, wie fest Ihre Noppen wirklich greifen, und die Spanne dieses Halses wird enger.',
  reading: 'Die Probestreifen werden gelesen …',
  unreadable: (count) =>
    count === 1
      ? 'Ein Streifen hat eine Form, die diese Fassung nicht lesen kann. Er bleibt, wo er ist.'
      : `${count} Streifen haben eine Form, die diese Fassung nicht lesen kann. Sie bleiben, wo sie sind.`,
  troubles: {
    full: 'Auf diesem Gerät ist kein Platz mehr: Was Sie jetzt ändern, ist fort, wenn die Seite geschlossen wird. Sichern Sie die Streifen in eine Datei.',
    refused:
      'Dieser Browser behält für diese Seite nichts (ein privates Fenster, oder der Speicher ist gesperrt): Die Streifen sind fort, wenn die Seite geschlossen wird. Sichern Sie sie in eine Datei.',
    silent:
      'Der Speicher des Browsers antwortet nicht: Was Sie jetzt ändern, ist vielleicht fort, wenn die Seite geschlossen wird. Sichern Sie die Streifen in eine Datei.',
    newer:
      'Die Streifen auf diesem Gerät sind von einer neueren Fassung geschrieben und bleiben, wie sie sind. Was Sie hier eintragen, ist fort, wenn die Seite geschlossen wird; sichern Sie es in eine Datei.',
  },
  mine: 'Ihre Streifen',
  fresh: 'Neuer Streifen',
  unnamed: 'Streifen',
  nameOf: (name, date) => `${name}, ${date}`,
  plan: 'Einen Streifen planen',
  name: 'Name',
  lengthMm: 'Länge des Reststücks',
  widthMm: 'Breite',
  thicknessMm: 'Dicke',
  ownBoard: 'Vom Griffbrett dieses Halses abgeschnitten',
  asNeck: (wood, tang, studs, depth) =>
    `Wie bei diesem Hals: ${wood}; Bunddraht mit ${tang} Bundfuß und ${studs} über die Noppen; Schlitze ${depth} tief.`,
  group: (number) => `Schlitzbreite ${number}`,
  blade: 'Sägeblatt',
  kerfMm: 'Schlitzbreite',
  kerfErrorMm: 'Fehler der Schlitzbreite, wie sie gemessen wurde',
  frets: 'Bünde',
  addGroup: 'Weitere Schlitzbreite',
  removeGroup: 'Weg damit',
  removeGroupName: (number) => `Schlitzbreite ${number} weglassen`,
  twoKerfs: 'Zwei Schlitzbreiten auf einem Streifen zeigen auch die Form Ihrer Noppen.',
  instrument: 'Gemessen mit',
  ruler: (error: string) => `einem Lineal, ±${error}`,
  feelers: (error: string) => `Fühlerlehren, ±${error}`,
  ownInstrument: 'eigenem Messzeug',
  needsSizes: 'Tragen Sie Länge, Breite und Dicke ein; dann sehen Sie, was der Streifen verraten wird.',
  aheadTitle: 'Was er verraten wird',
  aheadHump: (middle, low, high) => `Zu erwarten ist ein Buckel von ${middle} (zu 90 % sicher: ${low} bis ${high}).`,
  aheadTable: 'Breite der 90-%-Spanne dieses Halses',
  state: 'Stand',
  now: 'heute',
  after: 'mit dem Streifen',
  states: { fretted: 'bundiert', strung: 'besaitet', settled: 'gesetzt' },
  tooSmall: (hump, least) =>
    `Der Buckel wird nur ${hump}; gut ablesbar wären ${least}. Mehr Bünde, ein längerer oder dünnerer Streifen, oder Fühlerlehren.`,
  crushes: (group, stress, most) =>
    `Schlitzbreite ${group}: Das Holz unter den Schlitzen kann mit ${stress} gedrückt werden; bei ${most} wird es zerquetscht. Flachere Schlitze, breitere Schlitze oder ein dickerer Streifen.`,
  drawing: (frets, length) => `Zeichnung des Streifens: ${frets} Schlitze auf ${length}.`,
  cuttingList: 'Sägeliste',
  slot: 'Schlitz',
  fromEnd: (unit) => `vom linken Ende, ${unit}`,
  kerfColumn: (unit) => `Schlitzbreite, ${unit}`,
  keep: 'Diesen Streifen behalten',
  readings: 'Messungen',
  noReadings: 'Noch keine Messung.',
  days: 'Tage seit dem Bundieren',
  over: 'Überbrückt',
  overEnds: 'von Ende zu Ende',
  overGroup: (number) => `Schlitzbreite ${number}`,
  bow: 'Biegung',
  size: 'Größe',
  add: 'Messung eintragen',
  whichWay: 'Ist es ein Buckel oder eine Mulde?',
  noSize: 'Tragen Sie die Größe der Biegung ein.',
  errorMm: 'Sein Fehler, eine Standardabweichung',
  noError: 'Geben Sie den Fehler Ihres Messzeugs ein.',
  stiffness: 'Seine Steifigkeit',
  tests: { none: 'nicht gemessen', weight: 'mit einem Gewicht', tap: 'mit einem Klopfton' },
  measuredWhen: 'Gemessen',
  measuredStates: { plain: 'bevor er geschlitzt war', slotted: 'geschlitzt, ohne Bünde' },
  stiffnessHow: {
    weight:
      'Legen Sie ihn auf zwei Kanten, hängen Sie das Gewicht in die Mitte, und messen Sie, wie weit sie sich senkt.',
    tap: 'Wiegen Sie ihn, hängen Sie ihn bei 22 % von beiden Enden auf, klopfen Sie in die Mitte, und lesen Sie den tiefsten Ton.',
  },
  loadG: 'Gewicht',
  spanMm: 'Zwischen den Kanten',
  sagMm: 'Mitte senkt sich um',
  massG: 'Seine Masse',
  frequencyHz: 'Ton',
  addStiffnessTitle: 'Wie steif der Streifen ist – dann sagt er mehr',
  addStiffness: 'Steifigkeit behalten',
  stiffnessMissing: 'Geben Sie jede Zahl des Versuchs ein.',
  weighed: (load, span, sag, when) => `Steifigkeit: ${load} auf ${span} senken ihn um ${sag}, ${when}`,
  tapped: (mass, tone, when) => `Steifigkeit: ${mass} klingen mit ${tone}, ${when}`,
  farSofter: (times, wood, modulus, expected) =>
    `Damit wäre der Streifen ${times}-mal weicher als ${wood}: ${modulus} gegen ${expected}.`,
  farStiffer: (times, wood, modulus, expected) =>
    `Damit wäre der Streifen ${times}-mal steifer als ${wood}: ${modulus} gegen ${expected}.`,
  noDays: 'Tragen Sie die Tage seit dem Bundieren ein; 0 ist derselbe Tag.',
  remove: 'Löschen',
  removeReading: (bow) => `Die Messung ${bow} löschen`,
  askBite: (measured, band, times) =>
    `${measured} ist weit von dem, was zu erwarten war (${band}). Es hieße, dass Ihre Noppen ${times}-mal so fest greifen wie angenommen.`,
  askNoBite: (measured, band) =>
    `${measured} ist weit von dem, was zu erwarten war (${band}). Kein Griff der Noppen erklärt das.`,
  keepReading: 'Es stimmt, behalten',
  correct: 'Berichtigen',
  printCard: 'Werkstattkarte drucken',
  card: 'Werkstattkarte',
  cardSizes: (length, width, thickness, depth) =>
    `Reststück ${length} × ${width} × ${thickness}; Schlitze ${depth} tief, rechtwinklig zur Kante.`,
  cardCaution:
    'Vorsicht: Spannen Sie das Reststück ein, halten Sie die Finger aus der Linie von Säge und Presse, tragen Sie eine Schutzbrille, und halten Sie den Staub aus der Lunge. Es gelten die örtlichen Vorschriften.',
  cardWay: 'Buckel ☐ Mulde ☐',
  delete: 'Diesen Streifen löschen',
  says: (factor, low, high) =>
    `Ihre Noppen greifen ${factor}-mal so fest wie angenommen (zu 90 % sicher: ${low} bis ${high}).`,
  shape: (shape, low, high) =>
    `Form der Noppen ${shape} (${low} bis ${high}); 0 ist ein Klotz, 1 ein Grat, 2 eine Spitze.`,
  effect: 'Was das für diesen Hals heißt',
  without: 'ohne Streifen',
  with: 'mit diesen Streifen',
  glueNoEffect: 'Dieser Hals wird geleimt: Seine Bünde greifen nicht, und ein Streifen ändert nichts.',
  working: 'Die Spannen werden gerechnet.',
  countsFor: 'Streifen, die für diesen Hals zählen',
  doubts: {
    contradicting:
      'Die Messungen widersprechen einander: Kein Griff erklärt sie alle. Prüfen Sie Schlitzbreiten und Messungen.',
    far: (measured, expected) =>
      `Eine Messung von ${measured} liegt weit von den anderen; nach ihnen wären es ${expected}.`,
    farOnNeck: (reading, measured, expected) =>
      `${reading}: gemessen ${measured}, nach allem anderen wären es ${expected}. Prüfen Sie das, vor allem Buckel und Mulde.`,
    end: (input) => `Diese Messungen verlangen einen ungewöhnlichen Wert: ${input}. Prüfen Sie den zuerst.`,
    few: 'Die Messungen sind so scharf oder so unwahrscheinlich, dass das Ergebnis grob ist.',
    wire: (name, strip, neck) =>
      `Der Bunddraht des Streifens ist nicht der dieses Halses: ${name} ${strip} gegen ${neck}. Über den Draht sagt der Streifen hier nichts.`,
  },
  wireNumbers: {
    tangWidthMm: 'Bundfußbreite',
    studWidthMm: 'Breite über die Noppen',
    studAreaMm2: 'Noppenfläche',
    studPitchMm: 'Noppenabstand',
  },
  kept: (name) => `${name} liegt jetzt auf diesem Gerät.`,
  changed: (name) => `${name} ist geändert.`,
  deleted: (name) => `${name} ist gelöscht.`,
  save: 'In eine Datei sichern',
  bringIn: 'Aus einer Datei einlesen …',
  fileName: 'probestreifen',
  broughtIn: (fresh, known) =>
    `${fresh === 1 ? 'Ein Streifen' : `${fresh} Streifen`} eingelesen${known > 0 ? `; ${known} schon da` : ''}.`,
  notBroughtIn: (file, why) => `„${file}“ wurde nicht eingelesen. ${why}`,
  fileTroubles: {
    'not-json': 'Die Datei ist beschädigt oder keine mit Probestreifen.',
    'not-strips': 'Sie enthält keine Probestreifen.',
    'newer-version': 'Sie stammt aus einer neueren Fassung.',
  },
  problem: (at, value, limits) => `${at}: ${value}${limits}.`,
  limits: (low, high) =>
    low === '' ? `; höchstens ${high}` : high === '' ? `; mindestens ${low}` : `; möglich ist ${low} bis ${high}`,
  because: {
    'span-on-offcut': 'Die Auflager liegen weiter auseinander, als der Streifen lang ist',
    'wood-below-slots': 'Unter den Schlitzen bleibt kein Holz',
    'tang-in-slot': 'Der Bundfuß ist tiefer als der Schlitz',
    'wood-between-slots': 'Die Schlitze liegen zu nah beieinander oder am Ende',
    'ends-in-strip': 'Die Enden lassen keinen Platz für Schlitze',
    'frets-of-strip': 'Es sind zu viele Bünde',
    'studs-over-tang': 'Die Noppen sind schmaler als der Bundfuß',
    'group-of-reading': 'Diese Schlitzbreite hat der Streifen nicht',
  },
  wrong: 'Etwas daran gehört in keinen Probestreifen',
};
