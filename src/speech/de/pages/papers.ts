/** Die Papiere: Bundierplan und Werkstattblatt, Sägeschablone, Dateien. */
import type * as english from '../../en/pages/papers.ts';

export const PLAN_WORDS: typeof english.PLAN_WORDS = {
  title: 'Werkstattblatt',
  printHint:
    'Druckt auf A4 oder Letter, wie der Drucker eingestellt ist. Kopf- und Fußzeile des Browsers lassen sich abschalten; die Seiten haben ihre eigenen.',
  contents: 'Auf diesem Blatt',
  made: 'Gedruckt',
  deference:
    'Örtliche Vorschriften zu Staub, Lösemitteln und geschützten Hölzern und die Merkblätter der Hersteller gehen allem auf diesem Blatt vor. Die Zahlen sind eine Vorhersage, keine Messung: Das Lineal hat das letzte Wort.',
  notes: 'Notizen',
  code: 'Öffnet diesen Entwurf in Backbow',
  codeTooLong:
    'Dieser Entwurf enthält mehr, als ein Code von lesbarer Größe fasst; die Projektdatei und die Liste aller Werte unten enthalten ihn.',
  page: 'Seite',
  of: 'von',
  saveTable: (title) => `„${title}“ als CSV sichern`,
  saveTableShort: 'CSV',
  scrollable: (title) => `${title}, lässt sich seitlich schieben`,
  allFrets: 'An allen Bünden',
  alike: 'Für alle gleich',
  build: 'Der Entwurf',

  expected: {
    title: 'Was zu erwarten ist, und was gemessen wurde',
    caption: 'Erwartete und gemessene Biegung in jedem Zustand',
    note: (from, to) =>
      `Die Halskrümmung wird unter einem Lineal auf den Bünden ${from} und ${to} gemessen, wo sie am größten ist. Rückbiegung ist ein Buckel, Halskrümmung eine Mulde. Schreiben Sie auf, was die Fühlerlehre zeigt: Nach diesen Zahlen fragt das Messprotokoll.`,
    state: 'Zustand',
    predicted: 'Vorhergesagt',
    band: 'Spanne, 5 bis 95 %',
    measured: 'Gemessen',
    date: 'Datum',
    gauge: 'Lehre, ±',
    states: {
      bare: 'Leeres Griffbrett, vor dem Bundieren',
      fretted: 'Alle Bünde eingesetzt, keine Saiten',
      strung: 'Besaitet, erster Tag, Spannstab locker',
      settled: (time) => `Gesetzt, nach ${time} unter Saiten, Spannstab locker`,
      rodNow: (setting) => `Spannstab wie in diesem Entwurf: ${setting}`,
      rodNearest: (setting) => `Spannstab, näher kommt er nicht: ${setting}`,
      rodWanted: (setting) => `Spannstab für die gewünschte Halskrümmung: ${setting}`,
    },
    bandComing: 'Die Spannen werden gerechnet.',
    noBand:
      'Für diese Zahlen ließ sich keine Spanne rechnen. Rechnen Sie mit einem Drittel nach oben oder unten: Allein die Steifigkeit einer Holzart streut um 22 % (Variationskoeffizient, Holzhandbücher), und der Griff der Noppen ist geschätzt.',
    bandFrom: (drivers) =>
      `In neun von zehn Hälsen sollte die gemessene Zahl in ihrer Spanne liegen. Was die Spanne am meisten ausmacht: ${drivers}.`,
    fromLog: (necks) =>
      `Die Spannen sind durch das Messprotokoll dieser Werkstatt schmaler (${necks === 1 ? 'ein gemessener Hals' : `${necks} gemessene Hälse`}). Das Messprotokoll reist nicht mit dem Hals: Anderswo geöffnet, hat er breitere Spannen.`,
    fromGrip: (measured) =>
      `Die Spannen sind durch Probestreifen und Messungen dieser Werkstatt schmaler (${measured === 1 ? 'eine Messung' : `${measured} Messungen`}). Sie reisen nicht mit dem Hals: Anderswo geöffnet, hat er breitere Spannen.`,
    method: (label) => `Bünde ${label}.`,
    rod: {
      reached: (setting, more) => `Für die gewünschte Halskrümmung, ab angelegter Mutter: ${setting}. ${more}`,
      tightForward: 'Angezogen biegt der Spannstab diesen Hals nach vorn, weil er über der Mitte seines Holzes zieht.',
      'cannot-forward': (nearest) =>
        `Ein einseitiger Spannstab kann diesen Hals nicht nach vorn biegen: Mit loser Mutter kommt der Hals auf ${nearest}, und keine Umdrehung bringt ihn zur gewünschten Halskrümmung.`,
      'cannot-backward': (nearest) =>
        `Der einseitige Spannstab zieht über der Mitte des Holzes und kann diesen Hals nicht nach hinten biegen: Mit loser Mutter kommt der Hals auf ${nearest}, und keine Umdrehung bringt ihn zur gewünschten Halskrümmung.`,
      'too-weak': (nearest) =>
        `Der Spannstab bringt den Hals nicht zur gewünschten Halskrümmung; an seiner Grenze kommt er auf ${nearest}.`,
      'between-shapes': (nearest) =>
        `Der Spannstab bringt den Hals nicht genau zur gewünschten Halskrümmung, weil die Linie an einer Stelle einen Buckel und an einer anderen eine Mulde hat; am nächsten kommt ${nearest}.`,
      'no-nearer': (nearest) =>
        `Der Spannstab bringt den Hals nicht zur gewünschten Halskrümmung; am nächsten kommt ${nearest}, und weiter gedreht biegt er eine andere Stelle davon weg.`,
      flattest: (size) =>
        `Der Spannstab macht die Linie so gerade, wie sie werden kann: an einer Stelle ein Buckel, an einer anderen eine Mulde, beide ${size}.`,
      none: '',
    },
    targetLine: (relief) => `Gewünscht: ${relief}.`,
    lineTitle: 'Die Linie der Bundoberkanten',
    lineCaption: 'Bundoberkanten gegen das Lineal in jedem Zustand; die Höhen sind größer gezeichnet, als sie sind.',
    heights: (times) => `Höhen ×${times}`,
    fret: 'Bund',
  },

  checks: {
    title: 'Prüfungen, bevor Sie beginnen',
  },

  quarters: {
    title: 'Biegung beim Einsetzen',
    note: 'Nach jedem Viertel das Lineal auflegen. Minus ist ein Buckel (Rückbiegung), plus eine Mulde.',
    rodNeutral: 'Den Spannstab so lange locker lassen.',
    aheadTitle: 'Wenn sie vorauseilt',
    aheadCaption: 'Was zu tun ist, wenn die Biegung der Vorhersage vorauseilt',
    aheadNote:
      'Suchen Sie die Zeile für die Bünde, die drin sind, und die Biegung, die Sie messen. Bis zu einer Zeile mit „weiter“ geht es weiter; darüber hinaus halten Sie an und lesen quer. Erst einen Schlitz weiten, einen Bund setzen, wieder messen.',
    aheadRaises: (kerf) => `Ein Schlitz von ${kerf} für den Rest hat seinen Preis:`,
    in: 'Bünde ein',
    shows: 'Biegung gemessen',
    times: 'Mal die Vorhersage',
    end: 'Biegung am Ende, unverändert',
    kerf: 'Schlitzbreite für den Rest',
    advice: 'Was zu tun ist',
    none: 'Diese Bünde biegen den Hals zu wenig, als dass ein Lineal es beim Einsetzen zeigte. Eine Biegung, die sich trotzdem zeigt, heißt, dass etwas keilt: Staub oder Füllstoff in einem Schlitz, oder ein zu schmal geratener Schlitz. Anhalten und einen leeren Schlitz nachmessen.',
    lineTitle: 'Nach jedem Viertel',
    quarter: (n) => `nach Viertel ${n}`,
  },

  tables: {
    slots: {
      title: 'Schlitze',
      note: 'Gemessen ist von der Vorderkante des Sattels, längs der Mittellinie. Jeden Schlitz vom Sattel aus anreißen, nie vom vorigen.',
    },
    wire: { title: 'Bunddraht', note: 'Die Längen laufen im Bogen des Griffbretts.' },
    cutting: { title: 'Zuschnitt', note: '' },
    seating: { title: 'Einsetzen', note: '' },
    quarters: { title: 'Biegung beim Einsetzen', note: '' },
    levelling: { title: 'Vorrat zum Abrichten', note: '' },
    setUp: {
      title: 'Einstellung: Höhen',
      note: 'Besaitet und gesetzt, Spannstab eingestellt. Saite 1 ist die höchste. Über Bund 1 bei leerer Saite; an der Stegeinlage über einem Richtlineal, das längs der Saite auf Bund 1 und dem Bund am Übergang liegt.',
    },
    playing: {
      title: 'Einstellung: Schnarrt es?',
      note: 'Besaitet und gesetzt, Spannstab eingestellt. Der Freiraum ist der am engsten Ton; minus ist zu tief. Gegriffen am Bund 0 ist die leere Saite.',
    },
    metals: {
      title: 'Drahtlegierungen im Vergleich',
      note: 'Die Härten sind übliche Werte, nur zum Vergleichen. Die Keilkraft kommt von Bundfuß und Schlitz, nicht vom Metall.',
    },
    checks: { title: 'Prüfungen', note: '' },
  },

  turn: {
    lowers: (size) =>
      `Eine Umdrehung des Halsspannstabs, die den Hals zurückbiegt, senkt die Saitenlage am 12. Bund um ${size}.`,
    raises: (size) =>
      `Eine Umdrehung des Halsspannstabs, die den Hals zurückbiegt, hebt die Saitenlage am 12. Bund um ${size}.`,
  },

  playing: (action, place) =>
    `Saitenlage ${action} am 12. Bund. Angenommen: angezupft längs der Griffbrettfläche, ${place} vor der Stegeinlage, so kräftig wie in der Tabelle.`,
  ownPlaying: (strength) => `„Wie ich“ ist gemessen. ${strength}`,

  order: {
    title: 'Draht bestellen',
    inFrets: (length) => `${length} in den Bünden`,
    spare: (count) => (count === 0 ? 'kein Ersatz' : count === 1 ? '1 Bund Ersatz' : `${count} Bünde Ersatz`),
    total: (length) => `${length} im Ganzen, mit dem Verlust an den Schnitten`,
    sticks: (count, length) => (count === 1 ? `1 Stange von ${length}` : `${count} Stangen von ${length}`),
    fewest: 'Mit weniger Stangen geht es nicht.',
    perhapsFewer: (count) => `Kein Zuschnitt mit weniger wurde gefunden; mit weniger als ${count} geht es nicht.`,
    coil: (turns) => `${turns} Windungen der Rolle`,
    waste: (length) => `${length} bleiben übrig`,
  },

  bend: {
    title: 'Den Draht biegen',
    none: 'Der Draht geht hinein, wie er kommt: an jedem Stück entlangsehen und richten, was nicht gerade ist.',
    wanted: (radius) => `Der freie Draht soll einen Radius von ${radius} haben.`,
    wantedStraight: 'Der freie Draht soll gerade sein.',
    to: (radius, stays) => `Auf ${radius} biegen; ${stays} der Biegung bleiben.`,
    open: (radius, stays) =>
      `Die Rolle aufbiegen, über gerade hinaus, auf ${radius} andersherum; ${stays} der Biegung bleiben.`,
    openStraight: (stays) => `Die Rolle gerade aufbiegen; ${stays} der Biegung bleiben.`,
    tightest: 'Für den engsten Radius unter einem Bund; die Drahttabelle hat jeden einzeln.',
    wrongTitle: 'Mit falschem Radius',
    when: 'Wenn',
    happens: 'Was geschieht',
    remedy: 'Was zu tun ist',
  },

  glue: {
    title: 'Leim',
    total: (volume, ml) => `${volume} in allen Schlitzen zusammen, ${ml} mL.`,
    open: (from, to) =>
      `Offene Zeit ${from} bis ${to} Minuten: nur so viel auftragen, wie sich in der Zeit einsetzen lässt.`,
    clamp: (minutes, hours) => `${minutes} Minuten spannen, frühestens nach ${hours} Stunden besaiten.`,
    stiffness: (modulus) => `Gerechnet mit einem E-Modul von ${modulus}, ausgehärtet.`,
    cleanUp: 'Säubern',
    release: 'Um den Bund wieder herauszubekommen',
  },

  levelling: {
    bare: 'Für das Abrichten auf der Werkbank, Saiten ab, Spannstab locker. Mit dem Stand des Spannstabs abrichten, bei dem das Griffbrett gerade gerichtet wurde.',
    strung: 'Für das Abrichten unter nachgestelltem Saitenzug, Spannstab locker.',
    assumed: 'Der Entwurf sagt noch nicht, wo die Bünde abgerichtet werden; das steht unter Zeit und Klima.',
    none: 'Es ließ sich kein Vorrat rechnen.',
  },

  metalSources: 'Quellen der Werte',
  facts: {
    title: 'Nickel, Abnutzung, Biegen: was man weiß',
  },

  record: {
    title: 'Für den Nächsten, der diese Bünde zieht',
    note: 'Dieses Blatt beim Hals aufheben. Wer die Bünde eines Tages zieht, braucht es.',
    wire: 'Draht',
    crown: 'Bundkopf',
    tang: 'Bundfuß',
    kerf: 'Schlitzbreite',
    depth: 'Schlitztiefe',
    method: 'Sitz',
    glue: 'Leim',
    noGlue: 'keiner',
    release: 'Wie er herauskommt',
    releaseDry:
      'Trocken eingepresst: den Bund erwärmen, von einem Ende mit bündig geschliffener Zange längs des Schlitzes heben, nie quer hebeln.',
    chamfer: 'Fase',
    binding: 'Einfassung',
    board: 'Griffbrett',
    woods: 'Hals',
    tangOf: (body, studs, depth) => `${body} dick, ${studs} über die Noppen, ${depth} tief`,
    crownOf: (width, height) => `${width} breit, ${height} hoch wie gekauft`,
    kerfOf: (kerf) => `${kerf} in diesem Plan`,
    kerfVaries: (kerf) => `${kerf}, mit eigenen Strecken (siehe die Tabelle der Schlitze)`,
    depthOf: (depth, bottom) => `${depth} an der Mittellinie; ${bottom}`,
    chamferOf: (width) => `${width} an jeder Kante des Schlitzes`,
    noChamfer: 'keine',
    unbound: 'keine',
    lines: (lines, sawn, count) =>
      `${lines}, vom Holz nach außen; ${sawn === 0 ? 'keine' : sawn === count ? 'alle' : `die inneren ${sawn}`} durchgesägt`,
    blanks: 'Von Hand auszufüllen',
    blankLabels: [
      'Schlitzbreite, nachgemessen',
      'Bundkopf, kleinster Rest',
      'Bünde ein, Datum',
      'Besaitet, Datum',
      'Abgerichtet, Datum',
      'Spannstab auf',
      'Aufgezogene Saiten',
      'Gemacht von',
      'Für',
    ],
    remarks: 'Bemerkungen',
  },

  values: {
    title: 'Alle Werte dieses Entwurfs',
    note: 'Damit lässt sich der Entwurf von Hand wieder eingeben.',
    regions: 'Bünde mit anderem Schlitz oder Bundfuß',
    region: (from, to, kerf, tang, studs) =>
      `Bünde ${from} bis ${to}: Schlitz ${kerf}, Bundfuß ${tang}, über die Noppen ${studs}`,
    laminates: 'Hölzer von der Mittellinie nach außen',
    laminate: (wood, size) => `${wood} ${size}`,
    laminateRest: 'der Rest',
    binding: 'Lagen der Einfassung vom Holz nach außen',
    bindingLine: (thickness, colour) => `${thickness} ${colour}`,
    strings: 'Saiten von der höchsten an',
    string: (pitch, diameter, construction) => `${pitch} ${diameter} ${construction}`,
    stringOfCourse: (pitch, diameter, construction, beside) =>
      `${pitch} ${diameter} ${construction}, ${beside} neben der vorigen`,
    starting: 'Halskrümmung des leeren Griffbretts an den Bünden 1, 2 …',
  },
};

export const STAMP_WORDS: typeof english.STAMP_WORDS = {
  before: 'Stempel',
  stamp: (letters) => `Stempel ${letters}`,
  title: 'Ein vorliegendes Blatt prüfen',
  intro:
    'Geben Sie den Stempel des Blatts, der Datei oder des Bilds ein: 12 Buchstaben, groß oder klein. Dann zeigt sich, ob es für den Hals auf der Werkbank gerechnet wurde.',
  label: 'Stempel des Blatts',
  check: 'Prüfen',
  none: (most) => `Das ist kein Stempel: Ein Stempel hat 12 Buchstaben, etwa ${most}, ohne Vokale, Ziffern und Y.`,
  same: 'Gleich: Es wurde für den Hals auf der Werkbank gerechnet, so wie er jetzt ist.',
  different: 'Verschieden:',
  oneLetter: 'Nur ein Buchstabe ist anders als im Stempel dieses Halses: Sehen Sie noch einmal auf das Blatt.',
  program: (version) =>
    `Eine andere Version von Backbow hat es gerechnet; diese ist ${version}. Zahlen können abweichen.`,
  measured:
    'Seine Bandbreiten beruhen auf anderen Messungen als die dieses Halses, oder auf Messungen, die dieses Gerät nicht hat.',
  unmeasured: 'Keine Messung hat seine Bandbreiten verkleinert; bei diesem Hals tut es hier eine.',
  looking: 'Die Hälse auf diesem Gerät werden durchgesehen …',
  unknown: 'Es gehört zu anderen Einstellungen, und kein Hals auf diesem Gerät hat diesen Stempel.',
  known: (name, when) => `Es gehört zu „${name}“, Stand ${when}.`,
  knownPlain: (name) => `Es gehört zu einem früheren Stand von „${name}“.`,
  setting: 'Einstellung',
  then: 'Auf dem Blatt',
  now: 'Auf der Werkbank',
};

export const TEMPLATE_WORDS: typeof english.TEMPLATE_WORDS = {
  title: 'Sägeschablone',
  intro:
    'Schlitze, Verjüngung und Einfassung in voller Größe. Mit 100 % drucken, ohne „an Seite anpassen“, dann auf jedem Blatt beide Maßstäbe mit einem Stahllineal nachmessen, bevor die Säge herauskommt: Drucker skalieren, und Papier arbeitet mit der Feuchte. Wo Hundertstel zählen, nach der Tabelle der Schlitze anreißen.',
  paper: 'Papier',
  print: 'Die Blätter drucken',
  save: 'Als ein SVG sichern',
  pages: (count, paper) => (count === 1 ? `1 Blatt ${paper}, quer.` : `${count} Blätter ${paper}, quer.`),
  join: 'Die Kreuze eines Blattes an einem Fenster auf die des nächsten legen und die Blätter zusammenkleben.',
  page: (index, count) => `Blatt ${index} von ${count}`,
  heading: (name, version, date, stamp) => `${name}, ${version}, ${date}, ${stamp}`,
  sheet: (heading, index, count) => `${heading}, Blatt ${index} von ${count}`,
  advice: (heading) => `${heading} – mit 100 % drucken, dann beide Maßstäbe nachmessen`,
  nut: 'Sattel',
  joinHere: 'hier ansetzen: die Kreuze aufeinanderlegen',
};

export const FILES_WORDS: typeof english.FILES_WORDS = {
  title: 'Dateien zum Mitnehmen',
  intro: 'Alles entsteht hier, in Ihrem Browser; nichts wird irgendwohin geschickt.',
  save: 'Sichern',
  tables: 'Tabellen, als CSV',
  tablesSay:
    'Durch Kommas getrennte Werte für Tabellenprogramme und Skripte: Zahlen mit Dezimalpunkt, die Einheit im Namen jeder Spalte (Mm: Millimeter, N: Newton), in jeder Sprache gleich.',
  allTables: 'Alle Tabellen in einer ZIP-Datei',
  template: 'Sägeschablone, als SVG',
  templateSay: 'Eine Zeichnung in voller Größe, so lang wie das Griffbrett.',
  project: 'Projektdatei',
  projectSay: 'Der Entwurf selbst, um ihn in Backbow wieder zu öffnen.',
  model: '3D-Datei, als binäres glTF',
  modelSay: (factor, moment) =>
    `Der Hals, wie das Bild ihn zeigt: ${moment}, ${factor}. Längen in Metern, wie glTF es verlangt; Überhöhung und Stand der Arbeit stehen in der Datei.`,
  picture: 'Bild, als PNG',
  pictureSay: (view) => `Das Bild in seiner jetzigen Ansicht (${view}), mit Faktor, Maßstab und Fassung darin.`,
  pictureWide: '2400 × 1500 Bildpunkte',
  scaleNote: 'in der Mitte des Bildes',
  noPicture: 'Das Bild wird hier nicht gezeichnet, darum gibt es keines zu sichern.',
  failed: (what, reason) => `${what}: Das ließ sich nicht machen (${reason}).`,
  saved: (name) => `„${name}“ ist gesichert.`,
  parts: {
    neck: 'Hals',
    board: 'Griffbrett',
    binding: 'Einfassung',
    nut: 'Sattel',
    frets: 'Bünde',
    strings: 'Saiten',
    marks: 'Griffbretteinlagen',
  },
  caption: (name, version, stamp) => `${name}, ${version}, ${stamp}`,
  coordinates:
    'x längs des Halses vom Sattel, y nach oben vom Scheitel des Griffbretts, z quer zu den Basssaiten eines rechtshändigen Halses',
};
