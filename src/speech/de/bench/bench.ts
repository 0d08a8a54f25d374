/** An der Werkbank: Schritt für Schritt, Messen beim Einsetzen der Bünde, und was daraus folgt. */
import type * as english from '../../en/bench/bench.ts';

const bunde = (count: number): string => (count === 1 ? 'einem Bund' : `${count} Bünden`);

export const BENCH_WORDS: typeof english.BENCH_WORDS = {
  title: 'An der Werkbank',
  documentTitle: (name) => `${name} – an der Werkbank – Backbow`,
  back: 'Hals',
  jobs: 'Alle Arbeiten',
  unnamed: 'Hals ohne Namen',
  reading: 'Die Arbeiten werden gelesen …',
  unreadable: (count) =>
    count === 1
      ? 'Eine Arbeit hat eine Form, die diese Fassung nicht lesen kann. Sie bleibt, wo sie ist.'
      : `${count} Arbeiten haben eine Form, die diese Fassung nicht lesen kann. Sie bleiben, wo sie sind.`,
  troubles: {
    full: 'Auf diesem Gerät ist kein Platz mehr: Was Sie jetzt eintragen, ist fort, wenn die Seite geschlossen wird. Schreiben Sie es auch auf.',
    refused:
      'Dieser Browser behält für diese Seite nichts (ein privates Fenster, oder der Speicher ist gesperrt): Was Sie eintragen, ist fort, wenn die Seite geschlossen wird. Schreiben Sie es auch auf.',
    silent:
      'Der Speicher des Browsers antwortet nicht: Was Sie jetzt eintragen, ist vielleicht fort, wenn die Seite geschlossen wird. Schreiben Sie es auch auf.',
    newer:
      'Die Arbeiten auf diesem Gerät sind von einer neueren Fassung geschrieben und bleiben, wie sie sind. Was Sie hier eintragen, ist fort, wenn die Seite geschlossen wird.',
  },
  startTitle: 'Eine Arbeit beginnen',
  startIntro: (name, method, relief) => `${name}, ${method}. Gewünschte Halskrümmung, besaitet und gesetzt: ${relief}.`,
  frozen: 'Was jetzt vorhergesagt ist, bleibt bei der Arbeit, was immer Sie messen.',
  isTry: 'Übungsstück eines Lehrlings: wird getrennt geführt und kommt nicht ins Messprotokoll',
  start: 'Mit diesem Hals beginnen',
  computing: 'Der Hals wird gerechnet. Sobald seine Spanne feststeht, können Sie beginnen.',
  openTitle: 'Arbeiten auf der Werkbank',
  finishedTitle: 'Fertige Arbeiten',
  none: 'Auf diesem Gerät ist noch keine Arbeit begonnen.',
  goOnWith: 'Weiter',
  lookAt: 'Öffnen',
  jobLine: (started, readings) =>
    `begonnen ${started}, ${readings === 0 ? 'noch nichts gemessen' : readings === 1 ? 'eine Messung' : `${readings} Messungen`}`,
  tryMark: 'Übungsstück',
  removeJob: 'Löschen',
  removeJobName: (name) => `Die Arbeit ${name} löschen`,
  removed: (name) => `Die Arbeit ${name} ist gelöscht.`,
  undo: 'Rückgängig',
  undone: 'Das ist rückgängig gemacht.',
  gone: 'Diese Arbeit ist nicht auf diesem Gerät: Sie wurde hier gelöscht, oder sie ist auf einem anderen.',
  awake: 'Der Bildschirm bleibt an.',
  notAwake:
    'Dieser Browser kann den Bildschirm nicht anlassen. Stellen Sie am Gerät eine längere Zeit bis zum Abschalten ein.',
  place: (at, of) => `${at} von ${of}`,
  steps: 'Schritt',
  previous: 'Zurück',
  next: 'Weiter',
  takeBack: {
    reading: 'Rückgängig: die letzte Messung',
    'removed-reading': 'Rückgängig: die entfernte Messung',
    change: 'Rückgängig: die Änderung für den Rest',
    finished: 'Rückgängig: Arbeit fertig',
    logged: 'Rückgängig: ins Messprotokoll übernommen',
  },
  tookBack: {
    reading: 'Die letzte Messung ist wieder heraus.',
    'removed-reading': 'Die Messung ist wieder da.',
    change: 'Der Rest wird eingesetzt wie bisher.',
    finished: 'Die Arbeit ist wieder offen.',
    logged: 'Der Eintrag ist wieder aus dem Messprotokoll heraus.',
  },
  seatTitle: (title, quarter) => `${title}: Viertel ${quarter}`,
  readTitle: (frets) => `Richtlineal auflegen, ${frets === 1 ? 'ein Bund ist' : `${frets} Bünde sind`} drin`,
  doneTitle: 'Was gemessen wurde',
  seatThese: 'Diese kommen jetzt hinein, in dieser Reihenfolge:',
  seatDrawing: (inNow, already) => `Das Griffbrett von oben: ${already} Bünde sind drin, ${inNow} kommen jetzt hinein.`,
  openFirst: (frets, kerf) => `Diese Schlitze zuerst auf ${kerf} öffnen: ${frets}.`,
  otherWire: (frets, tang, studs) =>
    `Den Bunddraht mit ${tang} Bundfuß und ${studs} über die Noppen nehmen für: ${frets}.`,
  glueThese: (frets, kerf) =>
    `Diese Schlitze auf ${kerf} öffnen und die Bünde einleimen: ${frets}. Sie müssen sich von Hand einschieben lassen.`,
  glueCaution: 'Mit dem Leim umgehen, wie sein Hersteller es sagt: Handschuhe, frische Luft, nichts Heißes daneben.',
};

export const BENCH_FILE_WORDS: typeof english.BENCH_FILE_WORDS = {
  title: 'Von einem anderen Gerät',
  intro:
    'Eine Arbeit geht als Datei vom Schreibtisch zur Werkbank und zurück, samt allen Messungen. Ein Netz ist dazu nicht nötig.',
  open: 'Arbeit aus einer Datei öffnen',
  save: 'Als Datei speichern',
  saveName: (name) => `Die Arbeit ${name} als Datei für ein anderes Gerät speichern`,
  saved: (file) =>
    `Gespeichert als ${file}. Schicken Sie die Datei an das andere Gerät und öffnen Sie sie dort unter „An der Werkbank“.`,
  arrived: {
    new: (name) => `Die Arbeit ${name} ist jetzt auf diesem Gerät.`,
    same: (name) => `Die Arbeit ${name} ist schon hier, genau wie in der Datei.`,
    further: (name) => `Die Arbeit ${name} ist jetzt so weit wie auf dem anderen Gerät.`,
    behind: (name) => `Die Arbeit ${name} ist auf diesem Gerät weiter als in der Datei. Es wurde nichts geändert.`,
    apart: (name) =>
      `Für ${name} wurde auf beiden Geräten etwas eingetragen. Was in der Datei steht, ist hier jetzt eine eigene Arbeit.`,
  },
  notOpened: (file) => `„${file}“ wurde nicht geöffnet.`,
  troubles: {
    unreadable: 'Die Datei konnte nicht gelesen werden.',
    'too-large': 'Die Datei ist größer als 20 MB: So groß ist keine Arbeit.',
    'not-a-job': 'Das ist keine von Backbow gespeicherte Arbeit.',
    newer:
      'Sie wurde von einer neueren Fassung gespeichert. Laden Sie diese Seite neu, solange es ein Netz gibt, und öffnen Sie die Datei dann noch einmal.',
    damaged: 'Sie ist beschädigt oder unvollständig. Speichern Sie sie auf dem anderen Gerät noch einmal.',
  },
};

export const BENCH_READING_WORDS: typeof english.BENCH_READING_WORDS = {
  title: 'Eintragen, was Sie sehen',
  lay: 'Legen Sie das Richtlineal vom 1. Bund bis zum Bund am Halsansatz auf.',
  slack: 'Der Spannstab bleibt, wie er beim unbundierten Griffbrett war.',
  fretsIn: 'Bünde drin',
  fretsInOf: (count, of) => `${count} von ${of}`,
  fewer: 'Ein Bund weniger',
  more: 'Ein Bund mehr',
  bow: 'Biegung',
  leaves: 'Welches Blatt geht gerade noch darunter?',
  noLeaf: 'keines: gerade',
  leafName: (size) => `Blatt ${size}`,
  size: 'Oder das Maß eintippen',
  details: 'Messmittel und Notiz',
  instrument: 'Gemessen mit',
  feelers: (error) => `Fühlerlehre, ±${error}`,
  dial: (error) => `Messuhr, ±${error}`,
  own: 'eigenem Messmittel',
  ownError: 'Sein Fehler',
  names: { feelers: 'Fühlerlehre', dial: 'Messuhr', own: 'eigenes Messmittel' },
  note: 'Notiz',
  enter: 'Messung eintragen',
  missing: {
    size: 'Tippen Sie ein Blatt an oder geben Sie das Maß ein.',
    way: 'Wählen Sie Buckel oder Mulde.',
    error: 'Geben Sie den Fehler Ihres Messmittels ein.',
    note: 'Die Notiz ist zu lang.',
  },
  entered: (bow, frets) => `Eingetragen: ${bow} mit ${bunde(frets)}.`,
  list: 'Messungen',
  line: (bow, frets, when) => `${bow} mit ${bunde(frets)}, ${when}`,
  replaced: 'frühere; es zählt die spätere',
  remove: 'Entfernen',
  removeName: (bow, frets) => `Die Messung ${bow} mit ${bunde(frets)} entfernen`,
  asking: 'Es wird nachgesehen, ob das sein kann …',
  askBite: (measured, band, times) =>
    `${measured}? Zu erwarten war ${band}. Dann griffen die Noppen ${times}-mal so fest wie erwartet.`,
  askNoBite: (measured, band) =>
    `${measured}? Zu erwarten war ${band}. Dahin führt kein Griff der Noppen: Sehen Sie nach, ob das Richtlineal auf einem Grat aufliegt oder Buckel und Mulde vertauscht sind.`,
  correct: 'Berichtigen',
  keep: 'Es stimmt, behalten',
  notAsked: 'Es ließ sich nicht mit der Vorhersage vergleichen. Behalten Sie es, wenn Sie sicher sind.',
  nothing: 'Eingeleimte Bünde biegen den Hals nicht: Beim Einsetzen ist nichts zu messen.',
  board: 'Diese Bünde kommen in ein loses Griffbrett: Zu messen ist erst etwas, wenn es auf dem Hals ist.',
};

export const BENCH_ADVICE_WORDS: typeof english.BENCH_ADVICE_WORDS = {
  working: 'Es wird gerechnet, was das für den Rest bedeutet …',
  predicted: (bow, low) => `Hier vorhergesagt: ${bow} (zu 90 % sicher: ${low})`,
  goOn: 'Weiter so.',
  letRod: 'Weiter so; den Rest macht der Spannstab.',
  noBetter: 'Weiter: Keine Änderung am Rest bringt es näher heran.',
  stop: (what) => `Halt: ${what}.`,
  what: {
    kerf: (kerf) => `die übrigen Schlitze auf ${kerf} öffnen`,
    wire: (wire) => `die übrigen Bünde aus ${wire}`,
    glue: 'die übrigen Bünde einleimen',
  },
  choice: {
    'go-on': 'Weiter wie bisher',
    kerf: (kerf) => `Die übrigen Schlitze auf ${kerf} öffnen`,
    wire: (wire) => `Die übrigen Bünde aus ${wire}`,
    glue: 'Die übrigen Bünde einleimen',
  },
  wire: (name, tang, studs) => `${name === '' ? 'dem Bunddraht' : name} (Bundfuß ${tang}, Noppen ${studs})`,
  blade: (kerf, name) => `${kerf} (${name})`,
  advised: 'empfohlen',
  choices: 'Wohin jedes führt',
  settled: (bow, band) => `Besaitet und gesetzt: ${bow} (zu 90 % sicher: ${band})`,
  fretted: (bow) => `Alle Bünde drin, ohne Saiten: ${bow}`,
  rod: {
    third: 'Der Spannstab erreicht die gewünschte Halskrümmung mit einem Drittel seines Bereichs.',
    all: 'Der Spannstab erreicht die gewünschte Halskrümmung nur mit dem größten Teil seines Bereichs.',
    none: 'Der Spannstab erreicht die gewünschte Halskrümmung nicht.',
    'no-rod': 'Ein Spannstab fehlt: Wohin der Hals sich setzt, da bleibt er.',
  },
  sure: (how, count, near, wanted) =>
    `${how}: Von 100 solchen Hälsen kommen ${count} auf ${near} an ${wanted} heran und lassen dem Spannstab zwei Drittel seines Bereichs.`,
  sureNoRod: (how, count, near, wanted) =>
    `${how}: Von 100 solchen Hälsen kommen ${count} auf ${near} an ${wanted} heran.`,
  how: ['Fast nie', 'Unwahrscheinlich', 'Halb und halb', 'Wahrscheinlich', 'Sehr wahrscheinlich', 'So gut wie sicher'],
  take: 'So machen',
  takeName: (choice) => `So machen: ${choice}`,
  taken: (choice) => `Entschieden: ${choice}.`,
  stopped: 'Nicht angeboten, weil die Prüfungen es untersagen',
  bite: (low, middle, high) =>
    `Ihre Noppen greifen ${middle}-mal so fest, wie die Tabelle sagt (zu 90 % sicher: ${low} bis ${high}).`,
  chart: 'Die Linie des Halses',
  chartLabel: (now) => `Die Linie über den Bünden: ${now}.`,
  keys: {
    predicted: 'bei der Übergabe vorhergesagt',
    now: 'wie gemessen',
    end: 'alle Bünde drin, wenn es so weitergeht',
  },
  fixed: (at, program, stamp) => `Vorhergesagt ${at}, Backbow ${program}, Kennung ${stamp}`,
};

export const BENCH_DONE_WORDS: typeof english.BENCH_DONE_WORDS = {
  caption: 'Bei der Übergabe vorhergesagt und gemessen',
  state: 'Mit',
  predicted: 'Vorhergesagt',
  range: 'zu 90 % sicher',
  read: 'Gemessen',
  fretsIn: (count) => bunde(count),
  strung: 'Saiten',
  settled: 'Saiten, gesetzt',
  notRead: 'nicht gemessen',
  toLog: 'Messungen ins Messprotokoll',
  inLog: 'Die Messungen sind im Messprotokoll.',
  inLogElsewhere: 'Die Messungen stehen im Messprotokoll eines anderen Geräts.',
  logNote:
    'Das Messprotokoll nimmt die Messungen nach vollen Vierteln, bis zur ersten Änderung für den Rest. Die anderen bleiben bei dieser Arbeit.',
  tryNote: 'Ein Übungsstück kommt nicht ins Messprotokoll.',
  nothingForLog: 'Es ist nichts gemessen, was das Messprotokoll nehmen könnte.',
  notLogged: (why) => `Das Messprotokoll hat es nicht genommen. ${why}`,
  finish: 'Arbeit abschließen',
  isFinished: (when) => `Fertig seit ${when}.`,
  changes: (change, frets) => `Entschieden nach ${bunde(frets)}: ${change}.`,
};
