/** Das Messprotokoll. */
import type * as english from '../../en/pages/log.ts';

export const LOG_WORDS: typeof english.LOG_WORDS = {
  title: 'Messprotokoll',
  intro:
    'Was Sie an fertigen Hälsen gemessen haben, neben dem, was für sie vorhergesagt war. Es zeigt, wie fest Ihre Noppen wirklich greifen, und macht die Spannen des nächsten Halses enger. Das Messprotokoll liegt auf diesem Gerät, in diesem Browser.',
  troubles: {
    full: 'Auf diesem Gerät ist kein Platz mehr: Was Sie jetzt ändern, ist fort, wenn die Seite geschlossen wird. Sichern Sie das Messprotokoll als CSV-Datei.',
    refused:
      'Dieser Browser behält für diese Seite nichts (ein privates Fenster, oder der Speicher ist gesperrt): Das Messprotokoll ist fort, wenn die Seite geschlossen wird. Sichern Sie es als CSV-Datei.',
    silent:
      'Der Speicher des Browsers antwortet nicht: Was Sie jetzt ändern, ist vielleicht fort, wenn die Seite geschlossen wird. Schließen Sie andere Fenster dieses Programms, und sichern Sie das Messprotokoll als CSV-Datei.',
    newer:
      'Das Messprotokoll auf diesem Gerät ist von einer neueren Fassung geschrieben und bleibt, wie es ist. Was Sie hier eintragen, ist fort, wenn die Seite geschlossen wird; sichern Sie es als CSV-Datei.',
  },
  reading: 'Das Messprotokoll wird gelesen.',
  unreadable: (count) =>
    count === 1
      ? 'Ein Eintrag hat eine Form, die diese Fassung nicht lesen kann. Er bleibt, wo er ist.'
      : `${count} Einträge haben eine Form, die diese Fassung nicht lesen kann. Sie bleiben, wo sie sind.`,
  entries: 'Die gemessenen Hälse',
  empty: 'Noch ist kein Hals gemessen.',
  caption: 'Gemessene Hälse, der neueste zuerst',
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
    'Name, Sitz und Vorhersage kommen vom Entwurf auf der Werkbank. Legen Sie das Richtlineal von Bund 1 bis zum Korpusansatz, wählen Sie Buckel (Rückbiegung) oder Mulde und tragen Sie ein, wie viel. Lassen Sie leer, was Sie nicht gemessen haben.',
  editIntro: 'Die Vorhersage bleibt die des Tages, an dem sie eingetragen wurde.',
  measuredFretted: (unit) => `Gemessen mit Bünden, ohne Saiten, ${unit}`,
  measuredStrung: (unit) => `Gemessen besaitet, Spannstab neutral, ${unit}`,
  strungDays: 'Tage seit dem Besaiten',
  gaugeError: (unit) => `Fehler von Richtlineal und Fühlerlehre, ${unit}`,
  predicted: (bow) => `vorhergesagt: ${bow}`,
  noPrediction: 'Die Vorhersage wird noch gerechnet.',
  save: 'Eintragen',
  saveChange: 'Die Änderung behalten',
  cancel: 'Lassen',
  notNumber: (text, field, range) => `„${text}“ ist keine Zahl für ${field}: möglich ist ${range}.`,
  outOfRange: (text, field, range) => `${text} für ${field}: möglich ist ${range}.`,
  range: (low, high) => `${low} bis ${high}`,
  inField: (field, sentence) => `${field}: ${sentence}`,
  fields: {
    measuredFrettedMm: 'gemessen mit Bünden',
    measuredStrungMm: 'gemessen besaitet',
    gaugeErrorMm: 'Fehler von Richtlineal und Fühlerlehre',
    humidityPercent: 'Luftfeuchte',
    days: 'Tage seit dem Besaiten',
    measuredPullMm: 'von den Saiten bewegt',
    measuredRodMm: 'vom Halsspannstab bewegt',
    measuredQuarter1Mm: 'mit einem Viertel der Bünde',
    measuredQuarter2Mm: 'mit der Hälfte der Bünde',
    measuredQuarter3Mm: 'mit drei Vierteln der Bünde',
    dialFret: 'Bund unter der Messuhr',
    dialErrorMm: 'Fehler der Messuhr',
    rodTurns: 'Umdrehungen der Mutter',
  },
  dialTitle: 'Saitenzug und Halsspannstab, mit der Messuhr',
  dialIntro:
    'Legen Sie einen Messbalken mit Messuhr auf Bund 1 und auf den Bund am Korpusansatz, die Uhr über einem Bund dazwischen. Lesen Sie ab, bevor und nachdem die Saiten gestimmt sind, und vor und nach einer Drehung der Mutter, von da an, wo sie anliegt. Wählen Sie, wohin der Hals ging: zum Buckel oder zur Mulde.',
  dialFret: 'Messuhr über Bund',
  dialError: (unit) => `Fehler der Messuhr, ${unit}`,
  measuredPull: (unit) => `Saiten aufgezogen: bewegt um, ${unit}`,
  measuredRod: (unit) => `Mutter gedreht: bewegt um, ${unit}`,
  rodTurns: 'Umdrehungen der Mutter',
  rodWay: 'Mutter gedreht, vom Schlüssel gesehen',
  nutWays: { clockwise: 'im Uhrzeigersinn', anticlockwise: 'gegen den Uhrzeigersinn' },
  rodStrings: 'Saiten dabei',
  stringsStates: { on: 'aufgezogen', off: 'abgenommen' },
  noSuchFret: (fret, last) => `Messuhr über Bund ${fret}: Sie steht zwischen Bund 1 und Bund ${last}.`,
  quartersTitle: 'Biegung nach jedem Viertel der Bünde',
  quartersIntro:
    'Legen Sie das Richtlineal nach jedem Viertel auf, in der Reihenfolge, die für diesen Entwurf gewählt ist. Die Biegung nach dem letzten Viertel ist die mit allen Bünden, oben.',
  measuredQuarter: {
    1: (unit) => `Ein Viertel der Bünde sitzt, ${unit}`,
    2: (unit) => `Die Hälfte der Bünde sitzt, ${unit}`,
    3: (unit) => `Drei Viertel der Bünde sitzen, ${unit}`,
  },
  further: 'Außerdem gemessen',
  furtherRead: (reading, bow, predicted) => `${reading}: ${bow} (${predicted})`,
  askOtherWay: (bow, reading, predicted) =>
    `${bow}, ${reading}? Das geht andersherum als vorhergesagt: ${predicted}. Buckel und Mulde verwechselt?`,
  askTimes: (bow, reading, times, predicted) =>
    `${bow}, ${reading}? Das ist das ${times}-Fache der Vorhersage: ${predicted}.`,
  ownTitle: 'Was an diesem Hals selbst gemessen wurde',
  ownIntro:
    'Der Saitenzug sagt etwas über die Steifigkeit dieses Halses und seiner Schlitze, der Stab über Stab und Steifigkeit, die Biegung über den Griff, Viertel für Viertel.',
  ownCounts: 'An diesem Hals gemessen',
  ownName: (neck, date) => `${neck}, ${date}`,
  ownWorking: 'Die Messungen werden ausgewertet.',
  ownRead: 'Gemessen',
  ownBefore: 'noch nichts',
  ownKinds: {
    pull: 'Saitenzug',
    rod: 'Weg des Stabs',
    quarter: 'Biegung je Viertel',
    fretted: 'Biegung bundiert',
    strung: 'Biegung besaitet',
  },
  ownAll: 'alles zusammen',
  rodSays: (times) =>
    `Eine Umdrehung der Mutter bewegt diesen Hals ${times}-mal so weit wie vorhergesagt. Die Umdrehungen, die das Programm nennt, wissen davon nichts.`,
  quartersSay: (grips) => `Griff der vier Viertel in der Reihenfolge, in der sie eingesetzt wurden: ${grips}.`,
  needsNumber: (field, range) => `Leer: ${field}; möglich ist ${range}.`,
  added: (neck) => `${neck} steht im Messprotokoll.`,
  changed: (neck) => `Der Eintrag von ${neck} ist geändert.`,
  removed: (neck) => `Der Eintrag von ${neck} ist gelöscht.`,
  undo: 'Rückgängig',
  undone: 'Das Messprotokoll ist, wie es war.',
  circumstances: 'Werkzeug und Umstände',
  circumstance: {
    workshop: 'Werkstatt',
    wire: 'Bunddraht',
    blade: 'Sägeblatt',
    instrument: 'Richtlineal und Fühlerlehre',
    rod: 'Halsspannstab',
    straightedgeOn: 'Richtlineal auf',
    humidity: 'Luftfeuchte, %',
  },
  rodStates: { slack: 'lose', snug: 'angelegt' },
  straightedgeOn: { frets: 'den Bünden', board: 'dem Griffbrett' },
  snugSaysNothing:
    'Die Vorhersage gilt für einen losen Stab: Ein Hals, der mit angelegtem Stab gemessen wurde, wird aufgehoben, sagt aber nichts über den Griff.',
  askTitle: 'Weit von der Vorhersage',
  askHarder: (bow, reading, times, predicted) =>
    `${bow}, ${reading}? Das hieße, dass die Noppen ${times}-mal so fest greifen wie vorhergesagt; vorhergesagt: ${predicted}.`,
  askSofter: (bow, reading, times, predicted) =>
    `${bow}, ${reading}? Das hieße, dass die Noppen nur ${times}-mal so fest greifen wie vorhergesagt; vorhergesagt: ${predicted}.`,
  askNoBite: (bow, reading, predicted) =>
    `${bow}, ${reading}? Dahin führt kein Griff der Noppen; vorhergesagt: ${predicted}. Buckel und Mulde verwechselt?`,
  askWithoutBite: (bow, reading, predicted) => `${bow}, ${reading}? Das liegt weit von der Vorhersage: ${predicted}.`,
  askKeep: 'Es stimmt: eintragen',
  askCorrect: 'Berichtigen',
  importFile: 'Eine CSV-Datei einlesen …',
  exportFile: 'Als CSV sichern',
  fileName: 'messprotokoll.csv',
  imported: (count) =>
    count === 0
      ? 'Nichts kam dazu: Jeder Eintrag der Datei steht schon im Messprotokoll.'
      : count === 1
        ? 'Ein Eintrag kam dazu.'
        : `${count} Einträge kamen dazu.`,
  fileReading: 'Die Datei wird gelesen.',
  otherwise: (count) =>
    count === 1
      ? 'Ein Eintrag der Datei sagt etwas anderes als derselbe Eintrag des Protokolls; der ist, wie er war.'
      : `${count} Einträge der Datei sagen etwas anderes als dieselben Einträge des Protokolls; die sind, wie sie waren.`,
  takeTheirs: (count) => (count === 1 ? 'Den der Datei nehmen' : `Die ${count} der Datei nehmen`),
  tookTheirs: (count) =>
    count === 1 ? 'Ein Eintrag ist jetzt der der Datei.' : `${count} Einträge sind jetzt die der Datei.`,
  showMore: (count, all) => `${count} weitere von ${all} zeigen`,
  notImported: (file) => `„${file}“ wurde nicht eingelesen; das Messprotokoll ist, wie es war:`,
  biteTitle: 'Wie fest Ihre Noppen greifen',
  biteNone:
    'Noch sagt kein gemessener Hals etwas darüber. Vor jeder Messung können die Noppen halb oder doppelt so fest greifen wie angenommen.',
  biteSays: (necks, factor, low, high) =>
    `Nach ${necks === 1 ? 'einem Hals' : `${necks} Hälsen`}: ${factor} mal so fest wie angenommen; zu 90 % sicher: ${low} bis ${high}.`,
  saysNothing:
    'Ein Hals, der nur geleimt wurde, sagt nichts über den Griff, denn seine Bünde keilen nicht; auch keiner, der mit angelegtem Stab gemessen wurde.',
  posteriorWorking: 'Das Protokoll wird ausgewertet.',
  doubts: {
    tooSoft:
      'Das Protokoll gibt keine Antwort: Nach diesen Hälsen griffen die Noppen nicht einmal ein Zehntel so fest wie angenommen; so weit reicht die Rechnung nicht. Prüfen Sie die Einträge, vor allem Buckel und Mulde.',
    tooHard:
      'Das Protokoll gibt keine Antwort: Nach diesen Hälsen griffen die Noppen mehr als zehnmal so fest wie angenommen; so weit reicht die Rechnung nicht. Prüfen Sie die Einträge, vor allem Buckel und Mulde.',
    identical: (entries, necks) =>
      `Vorsicht: ${entries} von ${necks} Einträgen haben genau dieselben Zahlen. Ist ein Hals mehrmals eingetragen, dann ist die Spanne zu eng: Löschen Sie die doppelten.`,
    unexplained: (entries) =>
      `Vorsicht: ${entries === 1 ? 'Ein Eintrag lässt' : `${entries} Einträge lassen`} sich mit keinem Griff erklären. Prüfen Sie dort Buckel und Mulde.`,
    contradicting:
      'Vorsicht: Die Hälse widersprechen einander stärker, als ihre Streuung es erlaubt. Vielleicht sind es verschiedene Bunddrähte oder Sägeblätter, oder einer ist falsch abgelesen; die Spanne ist enger, als sie es hergeben.',
  },
  picture: (low, high) =>
    `Zwei Kurven über dem Greiffaktor: vor jeder Messung breit, von 0,52 bis 1,93; nach dem Messprotokoll von ${low} bis ${high}.`,
  before: 'vorher',
  after: 'nach Ihren Hälsen',
  axis: 'Greiffaktor',
  takeBite: (factor) => `${factor} in diesem Entwurf nehmen`,
  inUse: (factor) => `Dieser Entwurf nimmt ihn: Greiffaktor ${factor}, und die engeren Spannen, die dazugehören.`,
  tooManyToTake: (most) =>
    `Ein Entwurf bezieht sich auf höchstens ${most} gemessene Hälse. Löschen Sie die Einträge, die nicht mehr für Ihre Arbeit stehen.`,
  step: (factor) => `Greiffaktor ${factor}`,
  effect: 'Was er an diesem Entwurf ändert',
  effectCaption: 'Wo 90 von 100 solchen Hälsen liegen',
  state: 'Zustand',
  states: { fretted: 'bundiert', strung: 'besaitet', settled: 'gesetzt' },
  without: 'ohne das Messprotokoll',
  with: 'mit dem Messprotokoll',
  glueNoEffect: 'Dieser Entwurf ist geleimt: Der Griff spielt für ihn keine Rolle.',
};
