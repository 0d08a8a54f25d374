/** Was neben dem Hals rechnet: über die Zeit, Neubundierung, andersherum, Nachweis, Lizenzen. */
import type * as course from '../../en/workshop/course.ts';
import type * as refret from '../../en/pages/refret.ts';
import type * as reseat from '../../en/pages/reseat.ts';
import type * as licences from '../../en/pages/licences.ts';
import type * as proof from '../../en/pages/proof.ts';
import type * as wanted from '../../en/pages/answers.ts';

export const COURSE_WORDS: typeof course.COURSE_WORDS = {
  rodNeutral: 'Spannstab neutral.',
  flat: 'gerade',
  wanted: 'gewünscht',
  now: 'der Stand auf der Schiene',
  time: 'besaitet seit',
  method: (method, start, settled, days, end) =>
    `${method}: ${start} am Tag des Besaitens, ${settled} nach ${days}, ${end} nach zehn Jahren.`,
  flatLater: (time, low, high) => `Gerade nach etwa ${time} (${low} bis ${high}).`,
  flatLaterNoBand: (time) => `Gerade nach etwa ${time}.`,
  never: 'Die Rückbiegung überdauert zehn Jahre.',
  neverSome: (chance) => `Die Rückbiegung überdauert zehn Jahre; in ${chance} solchen Hälsen vergeht sie früher.`,
  fromStart: 'Keine Rückbiegung unter den Saiten.',
  fromStartSome: (chance, time) =>
    `Keine Rückbiegung unter den Saiten; in ${chance} solchen Hälsen gibt es eine, und in 5 ist sie nach ${time} noch da.`,
  tenYears: 'zehn Jahre',
  ofHundred: (count) => `${count} von 100`,
  atOnce: 'sofort',
  beyond: 'mehr als zehn Jahre',
  hour: 'h',
  day: 'T',
  week: 'W',
  month: 'M',
  year: 'J',
  table: 'Halskrümmung unter den Saiten zu einigen Zeiten',
  caption: 'Halskrümmung unter den Saiten, Spannstab neutral: minus ist ein Buckel, plus eine Mulde',
  bandColumn: (method) => `${method}, 90 von 100 Hälsen`,
};

export const REFRET_WORDS: typeof refret.REFRET_WORDS = {
  title: 'Bundfüße für eine Neubundierung',
  intro:
    'Ein dickerer Bundfuß über eine Strecke von Bünden nimmt eine alte Krümmung nach vorn aus dem Hals; ein dünnerer lässt sie zurückkommen. Sagen Sie, welche Bundfüße Sie haben, und Sie bekommen die Kombinationen, die die Bundoberkanten der gewünschten Linie am nächsten bringen. Die Schlitze behalten ihre Breite.',
  isNew:
    'Dieser Entwurf ist ein neuer Hals. Machen Sie eine Neubundierung daraus, und sagen Sie unter „Ein Hals, den es schon gibt“, wie er vor dem Bundieren gekrümmt ist.',
  makeRefret: 'Eine Neubundierung daraus machen',
  stepRefret: 'Die Arbeit: eine Neubundierung',
  isGlue: 'Ein geleimter Bund keilt nicht: Kein Bundfuß bewegt den Hals. Die Kombinationen gelten für gepresste Bünde.',
  method: 'Sitz',
  stretches: 'Strecken, vom Sattel zum Korpus',
  tangs: 'Vorhandene Bundfüße',
  tangsCaption: 'Bundfüße zur Auswahl',
  body: 'Steg',
  studs: 'Über die Noppen',
  tang: (index) => `Bundfuß ${index}`,
  add: 'Noch ein Bundfuß',
  remove: 'Entfernen',
  removeName: (index) => `Bundfuß ${index} entfernen`,
  narrow: (index) => `Bundfuß ${index} ist im Steg breiter als über die Noppen.`,
  now: (bow) => `Mit den Bundfüßen, wie der Entwurf sie hat: ${bow}.`,
  plans: 'Die besten Kombinationen',
  plan: (index) => `Kombination ${index}`,
  reaches: (bow, miss) => `Sie ergibt ${bow}: ${miss}.`,
  fromLine: (size) => `Keine Bundoberkante liegt weiter als ${size} von der gewünschten Linie.`,
  frets: 'Bünde',
  fretRange: (from, to) => (from === to ? `${from}` : `${from} bis ${to}`),
  tangSize: 'Bundfuß, Steg / Noppen',
  force: 'Keilkraft je Bund',
  forceRange: (low, high) => (low === high ? high : `${low} bis ${high}`),
  pressure: 'Druck auf die Wände',
  ofCrushing: (percent) => `${percent} der Quetschfestigkeit`,
  studsOnly: 'nur Noppen',
  crushes: (frets) =>
    `Bünde ${frets}: Der Steg des Bundfußes drückt so stark auf die Wände, wie das Griffbrett trägt. Sie werden gequetscht, der Keil geht nicht weiter, und der nächste Bund sitzt dort lose.`,
  nearCrushing: (frets) =>
    `Bünde ${frets}: Der Steg des Bundfußes drückt mit mehr als drei Vierteln dessen auf die Wände, was das Griffbrett trägt.`,
  use: 'Diese Kombination nehmen',
  inUse: 'Der Entwurf hat diese Bundfüße.',
  step: (index) => `Bundfüße der Kombination ${index}`,
};

export const LICENCE_WORDS: typeof licences.LICENCE_WORDS = {
  title: 'Lizenzen',
  intro: (count) =>
    `In Backbow stecken ${count} Pakete und Schriften anderer. Sie stehen unter diesen Lizenzen; öffnen Sie eine, um ihren Text zu lesen.`,
  loading: 'Die Liste wird geholt.',
  missing: 'Die Liste ist nicht hier. Sie entsteht, wenn die Seite gebaut wird, und gehört zur gebauten Seite.',
  noText: 'Diesem Paket liegt kein Lizenztext bei.',
  by: (author) => `von ${author}`,
};

export const PROGRAM_WORDS: typeof licences.PROGRAM_WORDS = {
  title: 'Dieses Programm',
  version: (version) => `Backbow ${version}.`,
  open: 'Lizenzen …',
};

export const ORIGIN_WORDS: typeof proof.ORIGIN_WORDS = {
  title: 'Woher eine Zahl kommt',
  number: 'Zahl',
  equations: (section) => `Das Modell, ${section} (englisch)`,
  proof: 'Wie gut es mit Bekanntem übereinstimmt',
};

export const PAIRED_WORDS: typeof wanted.PAIRED_WORDS = {
  nearer: 'Näher als jetzt',
  inOfHundred: (count) => `in ${count} von 100`,
  nearerThanNow: (count) =>
    `In ${count} von 100 solchen Hälsen liegt er der gewünschten Halskrümmung näher als der Entwurf, wie er ist.`,
  beside: (band, count) => `gegenüber dem ersten ${band}; der gewünschten Halskrümmung näher in ${count} von 100`,
};

export const PROOF_WORDS: typeof proof.PROOF_WORDS = {
  title: 'Wie gut es rechnet',
  loading: 'Die Ergebnisse werden geholt.',
  missing:
    'Die Ergebnisse ließen sich nicht holen. Sie entstehen im Prüflauf und gehören zur Seite; einer kopierten Seite können sie fehlen.',
  unreadable: 'Die Ergebnisse haben eine Form, die diese Fassung nicht lesen kann.',
  again: 'Noch einmal',
  intro:
    'Vom Prüflauf gemacht, aus einer Tabelle mit veröffentlichten Werten, Handbüchern, dreidimensionalen Modellen und dem, was Gitarrenbauer sagen (auf Englisch). Nichts wurde angepasst, damit es stimmt.',
  kinds: {
    verification: 'Verifikation: Sind die Gleichungen richtig gelöst?',
    validation: 'Validierung: Beschreiben sie wirkliche Hälse?',
    practice: 'Praxis: Sieht es aus wie in der Werkstatt?',
  },
  sums: {
    verification: (good, all, rows) => `${good} von ${all} Vergleichen in ${rows} Zeilen stimmen.`,
    validation: (good, all, rows) => `${good} von ${all} Vergleichen an ${rows} Hälsen stimmen.`,
    practice: (good, all, rows) => `${good} von ${all} Aussagen in ${rows} Zeilen treffen zu.`,
  },
  noNecks:
    'Noch keine: Hinter den Zahlen steht kein gemessener Hals. Dass die Gleichungen richtig gelöst sind, sagt nicht, dass es die richtigen Gleichungen sind; Ihr Messprotokoll ist der Ort, wo sich das zeigt.',
  disagreements: 'Was nicht so herauskommt, wie die Quelle sagt',
  noDisagreements: 'Alles kommt innerhalb der Toleranzen so heraus, wie die Quellen sagen.',
  columns: {
    reference: 'Quelle',
    ours: 'hier',
    difference: 'Abweichung',
    tolerance: 'Toleranz',
    verdict: 'Urteil',
  },
  statementColumns: { says: 'Aussage', seen: 'was herauskommt', verdict: 'Urteil' },
  part: 'Teil',
  inputs: (inputs) => `Für: ${inputs}.`,
  source: (source, mark) => `Quelle: ${source} [${mark}].`,
  printed: (printed) => `Gedruckt: ${printed}.`,
  because: (reason) => `Weil: ${reason}.`,
  subjectSum: (good, all) => `${good} von ${all}`,
  marks: 'Die Zeichen hinter den Quellen',
  simplified: 'Was vereinfacht ist, und was das kostet',
  assumed: 'Was angenommen ist, und wie es sich ersetzen lässt',
  toSimplified: 'Was im Modell vereinfacht ist, und was das kostet',
  noModel: 'Die Beschreibung des Modells ließ sich nicht holen.',
};

export const WANTED_WORDS: typeof wanted.WANTED_WORDS = {
  title: 'Vom Ziel her rechnen',
  intro:
    'Sagen Sie, welche Halskrümmung der Hals haben soll, und Sie bekommen, was dahin führt: die Schlitzbreite, die Art des Sitzes, den Spannstab oder den Hobel. Jede Antwort ändert eines und lässt den Rest des Entwurfs, wie er ist.',
  goal: 'Die gewünschte Halskrümmung',
  relief: 'Gewünschte Halskrümmung',
  player: (force) => `Für den Spieler, mit einem Anschlag von ${force}`,
  aimFor: (bow) => `${bow} anstreben`,
  when: 'Wann',
  strung: 'am Tag des Besaitens',
  settled: (days) => `gesetzt, nach ${days}`,
  rod: 'Mit dem Spannstab auf',
  rodNone: 'Der Hals hat keinen Spannstab.',
  rodHint: '0 % = neutral; plus biegt nach hinten.',
  working: 'Die Antworten werden gesucht; das dauert einige Sekunden.',
  progress: 'Wie weit die Suche ist',
  giveUp: 'Abbrechen',
  givenUp: 'Abgebrochen.',
  askAgain: 'Noch einmal suchen',
  failed: (reason) => `Keine Antworten: ${reason}.`,
  asItIs: 'Wie der Entwurf ist',
  now: (bow, miss) => `${bow}: ${miss}.`,
  band: (band) => `90 von 100 solchen Hälsen: ${band}.`,
  exact: 'wie gewünscht',
  tooMuch: (size) => `${size} zu viel`,
  tooLittle: (size) => `${size} zu wenig`,
  kerf: 'Die Schlitzbreite',
  kerfFor: { press: 'Für gepresste Bünde', both: 'Für gepresst und geleimt' },
  kerfFound: (kerf) => `Eine Schlitzbreite von ${kerf} ergibt sie.`,
  kerfNarrowest: (kerf) =>
    `Keine Schlitzbreite ergibt sie. Am nächsten kommt ${kerf}, die schmalste, die dieser Draht zulässt.`,
  kerfWidest: (kerf) => `Keine Schlitzbreite ergibt sie. Am nächsten kommt ${kerf}, wo die Noppen nicht mehr greifen.`,
  kerfBetween: (kerf) =>
    `Keine Schlitzbreite ergibt sie genau: Auf dem Weg dahin wechselt die Linie von einem Buckel an der einen Stelle zu einer Mulde an der anderen. Am nächsten kommt ${kerf}.`,
  kerfFlattest: (kerf, size) =>
    `Mit einer Schlitzbreite von ${kerf} wird die Linie so gerade, wie sie werden kann: Sie hat dann an einer Stelle einen Buckel und an einer anderen eine Mulde, beide ${size}.`,
  kerfNoEffect:
    'Die Schlitzbreite bewegt hier nichts: Jeder Schlitz hat seine eigene, oder die Bünde werden unter Saitenzug abgerichtet.',
  kerfNone: (tang, least, most) =>
    `Keine Schlitzbreite passt zu diesem Draht: Sein Bundfuß von ${tang} verlangt mindestens ${least}, Noppen und Bundkopf höchstens ${most}.`,
  reaches: (bow, miss) => `Das ergibt ${bow}: ${miss}.`,
  bodyWedges: (size) =>
    `Der Steg des Bundfußes ist dann ${size} breiter als der Schlitz und keilt mit: Beachten Sie die Prüfungen.`,
  kerfClear: (kerf, bow, miss) =>
    `Der nächste Schlitz, der nichts davon auslöst, ist ${kerf} breit. Damit ergibt sich ${bow}: ${miss}.`,
  use: 'Das nehmen',
  takeKerf: (kerf, method) => `${kerf} nehmen, ${method}`,
  methods: 'Die Art des Sitzes',
  methodsCaption: 'Jede Art des Sitzes mit dem Entwurf, wie er ist, die nächstliegende zuerst',
  method: 'Sitz',
  reached: 'Halskrümmung',
  off: 'Daneben',
  spread: '90 von 100',
  rodWould: 'Spannstab dafür',
  chosen: 'gewählt',
  takeMethod: (method) => `${method} nehmen`,
  rodTitle: 'Der Spannstab',
  rodReached: (setting, way) => `Ab angelegter Mutter: ${setting} ergibt sie${way}.`,
  backwards: ' und biegt den Hals nach hinten',
  forwards: ' und biegt den Hals nach vorn',
  rodStatus: {
    reached: '',
    'no-rod': 'Der Hals hat keinen Spannstab.',
    'cannot-forward':
      'Keine Umdrehung der Mutter ergibt sie. Ein einseitiger Spannstab biegt diesen Hals nur nach hinten, und mit loser Mutter liegt er schon zu weit hinten.',
    'cannot-backward':
      'Keine Umdrehung der Mutter ergibt sie. In diesem Hals geht der Zug des einseitigen Spannstabs über der Mitte des Holzes durch und biegt ihn nach vorn, und mit loser Mutter liegt er schon zu weit vorn.',
    'too-weak': 'Der Spannstab schafft es nicht: Auch an seiner Grenze reicht es nicht.',
    'between-shapes':
      'Keine Stellung ergibt sie genau: Auf dem Weg dahin wechselt die Linie von einem Buckel an der einen Stelle zu einer Mulde an der anderen.',
    'no-nearer':
      'Keine Stellung ergibt sie: Bis zu einem Punkt bringt der Spannstab den Hals näher heran, weiter gedreht biegt er eine andere Stelle davon weg.',
  },
  rodFlattest: (setting, size) =>
    `Ab angelegter Mutter ${setting}: Damit wird die Linie so gerade, wie sie werden kann: Sie hat dann an einer Stelle einen Buckel und an einer anderen eine Mulde, beide ${size}.`,
  rodClosest: (setting) => `Am nächsten kommt, ab angelegter Mutter: ${setting}.`,
  rodBeyond: (percent) => `Es brauchte ${percent} seines Bereichs.`,
  takeRod: (setting) => `Spannstab stellen: ${setting}`,
  rodShort: (percent) => percent,
  rodNo: 'kann nicht',
  planing: 'Der Hobel',
  planingIntro: (most) =>
    `Hobeln Sie das Griffbrett vor dem Sägen der Schlitze nach dieser Tabelle, und setzen Sie die Bünde ein, wie der Entwurf sagt: So kommen die Oberkanten auf die gewünschte Linie. Abgenommen werden höchstens ${most}.`,
  planingCaption: 'Wie viel an jedem Bund vom Griffbrett zu hobeln ist',
  saveCsv: 'Die Tabelle als CSV sichern',
  thicknessNote: 'Die Dicken im Entwurf sind die nach dem Hobeln.',
  done: (what) => `${what}. Einmal Rückgängig bringt zurück, was vorher war.`,
  undo: 'Rückgängig',
  undone: 'Es ist, wie es war.',
  refused: 'Der Entwurf wurde nicht geändert.',
  stepKerf: (kerf) => `Schlitzbreite ${kerf}`,
  stepMethod: (method) => `Sitz: ${method}`,
  stepRod: (percent) => `Spannstab ${percent}`,
};

export const MOVES_WORDS: typeof wanted.MOVES_WORDS = {
  title: 'Was ihn bewegt, und wie weit',
  intro: (bow) =>
    `Jede Zeile ändert eine Sache um den Schritt, den man in der Werkstatt hat, und lässt alles andere, wie es ist: besaitet und gesetzt, der Spannstab locker, jetzt ${bow}. Plus heißt hohler.`,
  working: 'Eines nach dem anderen wird versucht; das dauert einige Sekunden.',
  caption: 'Was anders gemacht werden kann; zuerst, was die gesetzte Biegung am meisten bewegt',
  lever: 'Stattdessen',
  fretted: 'Bünde drin',
  settled: 'Gesetzt',
  band: '90 von 100',
  picture: 'Bild',
  none: '–',
  nothing: '0',
  instead: (name, to, from) => `${name} ${to} statt ${from}`,
  thicker: (size) => `Hals ${size} dicker`,
  thinner: (size) => `Hals ${size} dünner`,
  strings: (set) => `Saiten: ${set}`,
  rodBack: (turns) => `Spannstab ab handfest, ${turns}, biegt den Hals zurück`,
  rodForward: (turns) => `Spannstab ab handfest, ${turns}, biegt den Hals vor`,
  shared:
    'Die beiden Hälse einer Zeile haben Hölzer, Bunddraht und Fehler gemeinsam; darum ist der Unterschied sicherer als jede der beiden Biegungen für sich.',
};

export const RESEAT_WORDS: typeof reseat.RESEAT_WORDS = {
  title: 'Einen Bund wieder einsetzen',
  intro:
    'Ein Bund ist misslungen oder hat sich gehoben und ist herausgezogen. Den Schlitz mit der Fühlerlehre messen; hier steht, was ein Bund darin noch hält. Die Zahlen setzen voraus, dass nicht mehr ausgebrochen ist, als der breitere Schlitz zeigt: sonst zuerst die Splitter einleimen und aushärten lassen.',
  fret: 'Bund',
  kerf: 'Schlitz jetzt',
  days: 'Tage, die er drin war',
  was: (force, pullOut) => `Neu keilte er mit ${force}, und ihn zu ziehen brauchte ${pullOut}.`,
  force: 'Keilt mit',
  ofFirst: (percent) => `${percent} von dem, was er hatte`,
  pullOut: 'Zu ziehen mit',
  bow: 'Krümmung mit allen Bünden',
  studs: 'Über die Noppen',
  advised: 'Empfohlen',
  ways: {
    'same-place': 'Derselbe Bund oder ein gleicher, an derselben Stelle',
    beside: 'Derselbe Bunddraht, einen halben Noppenabstand versetzt',
    wider: 'Bunddraht mit breiteren Noppen',
    glue: 'An derselben Stelle, mit Leim',
  },
  hows: {
    'same-place': 'Die Noppen kommen in ihre eigenen Eindrücke. Sie halten, was die Zeit von ihrer Kraft gelassen hat.',
    beside:
      'Das Stück so ablängen, dass die Noppen zwischen den alten Eindrücken stehen: sie greifen in frisches Holz.',
    wider:
      'Um so viel breiter, wie der Schlitz gewachsen ist: jede Noppe steht so tief in ihrer Wand wie zuvor. Oder den Bundfuß auf diese Breite quetschen.',
    glue: 'Etwas Leim in den Schlitz geben, den Bund einsetzen und niederhalten, bis der Leim fest ist. Er hält den Bund fest; gekeilt wird nicht mehr als ohne. Handschuhe und frische Luft, wie es auf dem Leim steht.',
  },
  use: 'In den Entwurf eintragen',
  inUse: 'Der Entwurf hat es so.',
  step: (fret) => `Bund ${fret} wieder eingesetzt`,
  pressing: 'Eingeleimte Bünde keilen nicht. Die Kräfte sind die von gepressten in diesen Schlitzen.',
};
