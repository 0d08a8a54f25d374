/** Die Lektionen: was um sie herum steht, und was sie sagen. Namen in geschweiften Klammern sind gerechnete Zahlen. */
import type * as texts from '../../en/pages/lesson-texts.ts';
import type * as english from '../../en/pages/lessons.ts';

export const LESSON_WORDS: typeof english.LESSON_WORDS = {
  title: 'Lektionen',
  intro:
    'Erst schätzen, dann sehen, was herauskommt. Jeder Schritt geht auch ohne Schätzung, nichts wird benotet, und alle Regler bleiben in Ihrer Hand. Ihr Hals wird beiseitegelegt und kommt zurück, wenn Sie die Lektion verlassen.',
  minutes: (count) => `etwa ${count} Minuten`,
  begin: 'Beginnen',
  beginName: (title) => `„${title}“ beginnen`,
  running: (title) => `Lektion: ${title}`,
  step: (index, count) => `Schritt ${index} von ${count}`,
  next: 'Weiter',
  back: 'Zurück',
  finish: 'Beenden',
  nextLesson: (title) => `Nächste Lektion: ${title}`,
  between: (low, high) => `gesucht: ${low} bis ${high}`,
  atLeast: (least) => `gesucht: mindestens ${least}`,
  atMost: (most) => `gesucht: höchstens ${most}`,
  met: 'erreicht',
  notMet: 'noch nicht erreicht',
  ended: 'durchgegangen',
  tasksDone: (done, of) => (of === 1 ? 'Aufgabe gelöst' : `${done} von ${of} Aufgaben gelöst`),
  improvement: (count, first, last) =>
    `Von Ihren ersten ${count} Schätzungen lag die mittlere ${first} der Skala neben dem, was herauskommt; von den letzten ${count} ${last}.`,
  forget: 'Meine Schätzungen und Gelöstes vergessen',
  forgotten: 'Von den Lektionen ist nichts mehr gespeichert.',
  bringBack: 'Zurückholen',
  achieved: 'Geschafft, und mit eigener Hand.',
  otherList: 'eine der Listen',
  otherwise: (names) => `Geändert wurde noch etwas anderes: ${names}. Die Aufgabe soll ohne das gelingen.`,
  setBack: 'Zurückstellen',
  leave: 'Die Lektion verlassen',
  left: 'Ihr Hals liegt wieder auf der Werkbank, wie Sie ihn verlassen haben.',
  take: 'Mit dem Hals der Lektion weitermachen',
  stepTake: 'Der Hals der Lektion',
  taken: 'Der Hals der Lektion liegt auf der Werkbank. Rückgängig bringt Ihren zurück.',
  reveal: 'Zeigen, was herauskommt',
  skip: 'Ohne Schätzung zeigen',
  covered: 'Solange Sie schätzen, sind die Zahlen und die Linie verdeckt.',
  computing: 'Es wird gerechnet.',
  yourGuess: 'Ihre Schätzung',
  computed: 'gerechnet',
  noGuess: 'keine Schätzung',
  band: (band) => `5 bis 95 von 100 solchen Hälsen: ${band}`,
  lineHint: 'Ziehen Sie die Linie, oder bewegen Sie ihre drei Griffe mit den Pfeiltasten.',
  lineHintTouch: 'Tippen Sie einen Griff an, dann ziehen Sie ihn nach oben oder unten.',
  lower: (fret) => `Linie nahe Bund ${fret} senken`,
  higher: (fret) => `Linie nahe Bund ${fret} heben`,
  handleNow: (fret, bow) => `nahe Bund ${fret}: ${bow}`,
  handle: (fret) => `Höhe der Linie nahe Bund ${fret}`,
  lineAnswer: (guessed, truth) => `Gezeichnet: ${guessed}; gerechnet: ${truth}.`,
  lineAnswerOnly: (truth) => `Gerechnet: ${truth}.`,
  valueLabel: 'Ihre Schätzung',
  valueAnswer: (guessed, truth) => `Geschätzt: ${guessed}; gerechnet: ${truth}.`,
  answerOnly: (truth) => `Gerechnet: ${truth}.`,
  whichAnswer: (guessed, truth) =>
    guessed === truth ? `Ihre Antwort: ${guessed}. So ist es.` : `Ihre Antwort: ${guessed}. Richtig ist: ${truth}.`,
  whichOnly: (truth) => `Richtig ist: ${truth}.`,
  changed:
    'Sie haben den Hals geändert; die Zahlen gehören zu Ihrem, und der Text spricht vielleicht von dem, mit dem die Lektion begann.',
};

export const LESSON_FIGURE_WORDS: typeof english.LESSON_FIGURE_WORDS = {
  sharp: 'scharfe Kanten',
  chamfered: (width) => `Fase, ${width} breit`,
  alsoSharp: (width) => `Fase, ${width} breit: so gut wie scharf`,
  chippedLabel: (caption) => `${caption}: die Kanten sind ausgebrochen (zur Veranschaulichung gezeichnet)`,
  pull: 'Beide Bünde ziehen',
  pulled: (share) => `zu ${share} heraus`,
  illustration: 'Schlitz, Bundfuß, Bundkopf und Fase: Maße dieses Halses. Ausbrüche: zur Veranschaulichung gezeichnet.',
};

export const LESSON_TEXTS: typeof texts.LESSON_TEXTS = {
  'one-and-all': {
    title: 'Ein Bund und vierundzwanzig',
    about: 'Ein eingepresster Bund biegt einen Hals so gut wie gar nicht. Bei zwei Dutzend sieht es anders aus.',
    steps: {
      bare: {
        title: 'Ein leeres Griffbrett',
        says: [
          'Die Schlitze sind gesägt, und noch steckt nichts darin. Ein Lineal liegt da, wo die Bundoberkanten sein werden, von Bund 1 bis zur Kante des Korpus.',
          'Die Biegung im Bild ist größer gezeichnet, als sie ist; um wie viel, steht im Bild.',
        ],
      },
      one: {
        title: 'Ein Bund',
        says: [
          'Bund 1 ist drin. Er sitzt unter dem Ende des Lineals, wo er nichts biegen kann, was man sähe. Jetzt wird Bund {fret} eingepresst.',
        ],
        question: 'Wie weit biegt dieser eine Bund den Hals?',
        after: ['{bow}. Ein Blatt Schreibpapier ist etwa 0,1 mm dick: Mit Lineal und Fühlerlehre findet das niemand.'],
      },
      all: {
        title: 'Und die übrigen',
        says: ['Die anderen folgen: erst jeder vierte Bund, dann die dazwischen.'],
        question: 'Wo liegen die Bundoberkanten, wenn alle drin sind? Ziehen Sie die Linie.',
        after: [
          'Ein Bund: {one}. Alle: {all}, das ist {times} mal so viel. Jeder Bund ist ein kleines Gelenk, das sich um einige hundertstel Millimeter öffnet; zwei Dutzend Gelenke hintereinander machen einen Bogen.',
          'Auch die Bünde jenseits der Korpuskante verkeilen ihre Schlitze, aber dort hält der Halsfuß das Griffbrett gerade.',
        ],
      },
      inside: {
        title: 'Im Schlitz',
        says: [
          'Über die Noppen ist der Bundfuß {studs} breit, der Schlitz {kerf}. Die Noppen greifen auf beiden Seiten ins Hirnholz und drücken die Wände auseinander, längs der Faser.',
        ],
        question: 'Mit wie viel Kraft drückt ein Bund, im Mittel aller Bünde?',
        after: [
          '{force}, um einiges mehr, als ein Mensch mit einem Daumen drücken kann. Im Bild ist ein Schlitz längs des Halses aufgeschnitten: Die Kraft greift etwa einen Millimeter unter der Spielfläche an, rund zehn Millimeter über der Mitte des Halses; dieser Abstand ist der Hebel, der ihn biegt.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: ['In einem breiteren Schlitz greifen die Noppen weniger: weniger Buckel, und weniger Halt.'],
        task: 'Bringen Sie den Buckel allein mit der Schlitzbreite auf ein Blatt Papier herunter, und kein Bund darf lose werden.',
        wanted: { hump: 'Biegung mit allen Bünden', holds: 'Die Noppen greifen überall genug' },
        done: [
          'Mit allen Bünden zeigt dieser Hals jetzt: {all}. Noch viel breiter, und die Bünde wären lose: Ganz wegsägen lässt sich der Buckel nicht. Das muss er auch nicht sein: Was die Saiten daraus machen, ist eine eigene Lektion.',
        ],
      },
    },
  },
  'three-ways': {
    title: 'Pressen, leimen, beides',
    about: 'Drei Arten, dieselben Bünde in denselben Hals zu setzen, und was jede davon kostet.',
    steps: {
      ways: {
        title: 'Drei Arten, einen Bund einzusetzen',
        says: [
          'Gepresst: Der Schlitz ist schmaler als der Bundfuß über die Noppen. Die Noppen greifen und halten, und neben dem Bundfuß bleibt Luft.',
          'Geleimt: Der Schlitz ist so breit gesägt, dass der Bundfuß hineinfällt, und mit Leim gefüllt.',
          'Gepresst und geleimt: erst eingepresst, dann der Schlitz gefüllt.',
          'Das Erste und das Letzte geht auch am bloßen Griffbrett, bevor es aufgeleimt ist. Flach aufgespannt, bis der Leim fest ist, gibt es nur einen Teil seines Buckels an den Hals weiter.',
        ],
      },
      glued: {
        title: 'Geleimte Bünde',
        says: ['Derselbe Hals, die Schlitze breit genug für die Bundfüße, mit Leim gefüllt. Alle Bünde kommen hinein.'],
        question: 'Wo wird die Linie der Bundoberkanten liegen? Ziehen Sie sie.',
        after: ['Das Ergebnis: {glue}. Ohne Keil biegt sich nichts. Dieselben Bünde eingepresst ergeben: {press}.'],
      },
      air: {
        title: 'Luft in den Schlitzen',
        says: [
          'Jeder Schlitz mit Luft neben dem Bundfuß ist ein Stück Balken, das fehlt. Wenn die Saiten ziehen, gibt ein solcher Hals mehr nach als derselbe Hals, bevor die Schlitze gesägt waren.',
        ],
        question: 'Um wie viel Prozent gibt er mehr nach?',
        after: [
          '{press}. Mit gefüllten Schlitzen sind es {glue}: Leim macht den Hals steifer, ob die Bünde gepresst wurden oder nicht.',
        ],
      },
      strung: {
        title: 'Saiten drauf',
        says: [
          'Die Saiten ziehen den Hals nach vorn. Was man dann sieht, hängt von zweierlei ab: wie groß der Buckel vorher war, und wie weit der Hals nachgibt.',
        ],
        question: 'Welcher Hals zeigt gleich nach dem Besaiten die größte Halskrümmung?',
        options: { press: 'gepresst', glue: 'geleimt', both: 'gepresst und geleimt' },
        after: [
          'Gepresst: {press}; geleimt: {glue}; gepresst und geleimt: {both}. Der geleimte Hals war zu Beginn gerade, darum finden die Saiten keinen Buckel, den sie herausziehen müssten, obwohl er steif ist. Der gepresste und geleimte hatte zu Beginn einen Buckel und ist auch noch steif: Ihm nehmen die Saiten am wenigsten.',
        ],
      },
      price: {
        title: 'Was jede davon kostet',
        says: [
          'Einen Bund wieder herauszuziehen braucht etwa {press}, wenn er gepresst wurde, {glue}, wenn er geleimt wurde, und {both}, wenn beides. Leim muss vorher erwärmt oder erweicht werden, und jedes Ziehen bringt die Kanten des Schlitzes in Gefahr.',
          'Pressen hinterlässt einen Buckel, den die Saiten herausziehen müssen und der sich noch wochenlang ändert. Leimen braucht Zwingen, Zeit und saubere Schlitze. Keine der drei ist für jeden Hals die richtige: Die Zahlen oben gelten für diesen.',
        ],
      },
      choose: {
        title: 'Jetzt Sie',
        says: [
          'Gewünscht ist dieser Hals so steif, wie er vor dem Sägen der Schlitze war, und nach drei Monaten mit etwa zwei Zehntelmillimetern Halskrümmung, ohne dass der Spannstab gedreht wird.',
        ],
        task: 'Wählen Sie die Art des Einsetzens und die Schlitzbreite dazu.',
        wanted: { give: 'Gibt unter den Saiten mehr nach um', relief: 'Halskrümmung nach drei Monaten' },
        done: [
          'Gefüllte Schlitze machen ihn steif, und das Greifen der Noppen macht den Buckel, den die Saiten herausziehen. Jedes tut das Seine; das zweite stellt die Schlitzbreite ein.',
        ],
      },
    },
  },
  strings: {
    title: 'Warum die Saiten ihn gerade machen',
    about: 'Ein Hals mit Buckel wird unter seinen Saiten gerade, und danach bewegt er sich weiter.',
    steps: {
      humped: {
        title: 'Ein Buckel, und das ist richtig so',
        says: ['Alle Bünde sind eingepresst, keine Saiten. Das Lineal kippelt auf einem Buckel: {bow}.'],
      },
      pull: {
        title: 'Der Zug der Saiten',
        says: ['Sechs Saiten werden auf Ton gestimmt. Jede zieht den Sattel zum Steg auf dem Korpus hin.'],
        question: 'Wie stark ziehen sie zusammen?',
        after: ['{pull}: so viel, als hingen {kg} kg an der Kopfplatte.'],
      },
      strung: {
        title: 'Gestimmt',
        says: ['Vorher: {before}.'],
        question: 'Wo liegt die Linie, wenn die Saiten drauf sind? Ziehen Sie sie.',
        after: [
          'Vorher: {before}; nachher: {after}. Die Saiten ziehen den Buckel heraus, und bei diesem Hals noch etwas mehr.',
        ],
      },
      lever: {
        title: 'Warum sie ihn überhaupt biegen',
        says: [
          'Ein Zug genau durch die Mitte würde einen Stab nur stauchen. Die Saiten aber laufen über dem Griffbrett, {nut} darüber am Sattel und {twelve} am Bund 12, und die Mitte des Holzes liegt rund zehn Millimeter darunter. Dieser Hebel biegt den Hals auf seiner ganzen Länge nach vorn.',
          'Die Pfeile zeigen den Zug der Saiten und die Keile, die andersherum drücken.',
        ],
      },
      weeks: {
        title: 'Und dann bewegt er sich weiter',
        says: ['Die Saiten bleiben drei Monate lang drauf.'],
        question: 'Wann ist die Halskrümmung größer?',
        options: { now: 'gleich nach dem Besaiten', later: 'drei Monate später' },
        after: [
          'Zuerst: {now}; nach drei Monaten: {later}. Unter ständiger Last kriecht Holz, und die Keile lassen einen Teil ihrer Kraft los, weil sich die angegriffenen Fasern setzen. Beides wirkt in die gleiche Richtung: nach vorn.',
          'Wer sorgfältig baut, gibt dem Hals darum Zeit, sich zu setzen, bevor der Spannstab zum letzten Mal eingestellt wird, und sagt das auch denen, die darauf spielen.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: [
          'Der Buckel, der wie ein Fehler aussah, ist das, wogegen die Saiten arbeiten. Für den richtigen Buckel gesägt, kommt der Hals von selbst zu seiner Halskrümmung.',
        ],
        task: 'Finden Sie die Schlitzbreite, mit der dieser Hals nach drei Monaten die gewünschte Halskrümmung hat, ohne dass der Spannstab gedreht wird.',
        wanted: { relief: 'Halskrümmung nach drei Monaten' },
        done: [
          'Vor den Saiten: {hump}; drei Monate danach: {later}. Die Schlitzbreite ist für das Ende der Arbeit gewählt und nicht für ihre Mitte.',
        ],
      },
    },
  },
  'three-blades': {
    title: 'Ein Bunddraht, drei Sägeblätter',
    about: 'Dieselben Bünde in Schlitzen von drei Breiten: wie groß der Buckel wird, und wie fest die Bünde sitzen.',
    steps: {
      wall: {
        title: 'Drei Sägeblätter an der Wand',
        says: [
          'Diese Werkstatt hat drei Sägeblätter. Sie sägen Schlitze von 0,51, 0,58 und 0,65 mm. Es zählt der Schlitz, den ein Blatt in diesem Holz lässt, an einem Abschnitt gemessen, nicht was auf dem Blatt steht.',
          'Der Bunddraht: Sein Bundfuß ist {tang} dick, über die Noppen {studs}. Der Schlitz im Bild ist {kerf} breit; um was die Noppen breiter sind, das muss ins Holz.',
        ],
      },
      thin: {
        title: 'Das dünne Sägeblatt',
        says: ['Alle Schlitze sind mit dem dünnen Blatt gesägt, und alle Bünde werden eingepresst.'],
        question: 'Wo wird die Linie der Bundoberkanten liegen? Ziehen Sie sie.',
        after: ['Das Ergebnis: {bow}. Jeder Bund brauchte etwa {seat}, bis er saß.'],
      },
      wide: {
        title: 'Das breite Sägeblatt',
        says: [
          'Derselbe Hals und derselbe Bunddraht, aber die Schlitze sind jetzt {kerf} breit. Die Noppen greifen noch, nur weniger tief.',
        ],
        question: 'Wie weit biegen ihn die Bünde jetzt?',
        after: ['Das Ergebnis: {bow}; das dünne Blatt ergab {thin}.'],
      },
      hold: {
        title: 'Was das kostet',
        says: ['Nicht nur der Buckel wird kleiner: Mit demselben Griff halten die Noppen den Bund.'],
        question: 'Wie viel Kraft braucht es jetzt im Mittel, einen Bund zu ziehen?',
        after: [
          'Es braucht {hold}; bei den dünnen Schlitzen waren es {thin}. Was den Hals biegt, ist dasselbe, was den Bund hält: Das eine gibt es nicht ohne das andere. Leim kann den Halt zurückgeben.',
        ],
      },
      months: {
        title: 'Drei Monate später',
        says: ['Mit Saiten, gesetzt, der Stab unberührt. Die Schlitze sind jetzt die des mittleren Blattes.'],
        question: 'Mit welchem Sägeblatt ist der Hals am Ende am hohlsten?',
        options: { thin: 'mit dem dünnen', middle: 'mit dem mittleren', wide: 'mit dem breiten' },
        after: [
          'Das dünne Blatt: {thin}; das mittlere: {middle}; das breite: {wide}. Die Saiten ziehen jeden dieser Hälse etwa gleich weit nach vorn. Je weniger Buckel sie herausnehmen müssen, desto hohler wird er.',
        ],
      },
      strip: {
        title: 'Bevor der Hals gesägt wird',
        says: [
          'Wie hart Noppen greifen, ist von Griffbrett zu Griffbrett verschieden, und von allem, was man vorher nicht weiß, wiegt es am schwersten. Also mit jedem der Blätter einen Abschnitt dieses Griffbretts sägen, einige Bünde einpressen und sehen, wie weit er sich biegt.',
          '„Probestreifen“ im Menü plant einen solchen Abschnitt und rechnet aus seinen Buckeln, wie hart dieser Bunddraht in diesem Holz greift. Die Spannen des Halses werden damit enger.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: [
          'Ein anderer Hals, mit einem Griffbrett aus Ebenholz, mit dem dünnen Blatt bisher nur auf dem Papier gesägt. Nach drei Monaten sind 0,15 mm Halskrümmung gewünscht, ohne eine Drehung am Stab, und die Bünde sollen halten.',
        ],
        task: 'Welches der drei Blätter würden Sie nehmen? Stellen Sie seine Schlitzbreite ein.',
        wanted: { relief: 'Halskrümmung nach drei Monaten', hold: 'Kraft, einen Bund zu ziehen' },
        done: ['Mit {kerf} hat er am Ende {relief}, und einen Bund zu ziehen braucht {hold}.'],
      },
    },
  },
  straightedge: {
    title: 'Ein Lineal lesen',
    about: 'Derselbe Hals zeigt unter einem anderen Lineal eine andere Zahl, und unter einem, das kippelt, auch.',
    steps: {
      light: {
        title: 'Licht unter dem Lineal',
        says: [
          'Ein Hals, der sich unter seinen Saiten gesetzt hat. Das Lineal liegt auf Bund 1 und auf Bund {last}, wo der Korpus beginnt, und dazwischen ist Licht.',
          'Das dickste Blatt einer Fühlerlehre, das hindurchgeht, ohne das Lineal zu heben, ist das Maß: {relief}.',
        ],
      },
      short: {
        title: 'Ein kürzeres',
        says: ['Jetzt ein kürzeres Lineal, von Bund 1 bis Bund 7: halb so lang.'],
        question: 'Wie viel Licht ist darunter?',
        after: [
          'Es sind {short}; das lange Lineal zeigt {relief}. Halb so lang zeigt ein Lineal etwa ein Viertel. Ein kurzes findet den Bund, der zu hoch ist; für die Halskrümmung muss es von Bund 1 bis zum Korpus reichen.',
        ],
      },
      hump: {
        title: 'Auf einem Buckel',
        says: [
          'Derselbe Hals vor den Saiten, mit allen Bünden. Das Lineal liegt in der Mitte auf und kippelt. Waagerecht gehalten, mit gleich viel Licht unter beiden Enden, zeigt es den Buckel: {hump}.',
        ],
      },
      rock: {
        title: 'An einem Ende niedergehalten',
        says: ['Ein Daumen hält das Lineal auf Bund 1 nieder, und das andere Ende hebt sich von Bund {last}.'],
        question: 'Wie viel Licht ist unter diesem Ende?',
        after: [
          'Es sind {rocked}, und der Buckel misst doch nur: {hump}. Ein Daumen an einem Ende macht aus einem kleinen Buckel einen großen. Das Lineal waagerecht halten, oder zwei gleich dicke Blättchen unter seine Enden legen und messen, wie viel weniger in der Mitte bleibt.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: [
          'Mit Saiten, gesetzt, der Stab auf die gewünschte Halskrümmung gestellt. Wer darauf spielt, hat nur das kurze Lineal, von Bund 1 bis Bund 7, und möchte darunter ein zwanzigstel Millimeter sehen.',
        ],
        task: 'Wählen Sie die gewünschte Halskrümmung so, dass das kurze Lineal so viel zeigt.',
        wanted: { short: 'Licht unter dem kurzen Lineal' },
        done: [
          'Unter dem kurzen Lineal {short}, unter dem langen {relief}. Ein solches Maß sagt wenig, wenn man nicht weiß, mit welchem Lineal es gemessen wurde.',
        ],
      },
    },
  },
  'why-relief': {
    title: 'Warum es überhaupt Halskrümmung gibt',
    about:
      'Eine angezupfte Saite braucht Platz, wo sie schwingt. Eine leichte Höhlung gibt ihn; zu viel nimmt ihn wieder.',
    steps: {
      swing: {
        title: 'Eine Saite schwingt',
        says: [
          'Ein gerader Hals, {action} Saitenlage am 12. Bund, gespielt wie üblich. Im Bild ist eine Saite am 1. Bund gegriffen; ihre tiefste Linie ist überhöht wie die Biegung. Am tiefsten schwingt sie fern von ihren Enden, und die Bünde gleich hinter dem Finger sind ihr am nächsten.',
          'Der engste Ton hat {room} Freiraum, über Bund {fret}; minus heißt, er schnarrt.',
        ],
      },
      which: {
        title: 'Gerade, hohl oder tief?',
        says: ['Die Saitenlage bleibt, wie sie ist; nur der Spannstab wird gedreht.'],
        question: 'Welche Halskrümmung lässt dem engsten Ton am meisten Freiraum?',
        options: { straight: 'keine, ein gerader Hals', hollow: 'eine leichte Höhlung', deep: 'eine tiefe Höhlung' },
        after: [
          'Gerade sind es {straight}, mit leichter Höhlung {hollow}, mit tiefer {deep}. Die leichte folgt der Schwingung: Die Bünde weichen dort, wo die Saite herunterkommt.',
        ],
      },
      deep: {
        title: 'Zu viel davon',
        says: [
          'In einer tiefen Höhlung steigt der Hals zum Korpus hin wieder an, und dort läuft die Saite auf: Der engste Ton hat {room} Freiraum, über Bund {fret}.',
        ],
      },
      lower: {
        title: 'Wozu sie gut ist',
        says: [
          'Mit der leichten Höhlung ist jeder Ton bis hinunter zu {lowest} am 12. Bund sauber; gerade brauchte es {straight}. Halskrümmung ist ein Mittel: Sie lässt die Saiten tiefer liegen.',
          'Wählen Sie nun einen anderen Ton in der Tafel, spielen Sie kräftiger, und suchen Sie die Saitenlage, die dieser Hals dann braucht.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: [
          'Der Hals ist wieder gerade, und die Saiten liegen hoch. Bei üblichem Anschlag sollen sie tief liegen und nicht schnarren.',
        ],
        task: 'Legen Sie die Saiten tiefer. Lassen Sie sich von der Halskrümmung helfen.',
        wanted: { room: 'Freiraum des engsten Tons', action: 'Saitenlage am 12. Bund' },
        done: [
          'So tief würde ein gerader Hals schnarren. Die Halskrümmung hat den Platz gegeben, und zu spüren ist die Saitenlage.',
        ],
      },
    },
  },
  'too-stiff': {
    title: 'Der Hals, der für seinen Spannstab zu steif ist',
    about:
      'Einen schlanken Hals bewegt der Spannstab weit, einen dicken kaum. Dann ist zu stramm sitzenden Bünden nicht mehr abzuhelfen.',
    steps: {
      slim: {
        title: 'Ein schlanker Hals',
        says: [
          'Ein schlanker Hals mit zweiseitigem Spannstab, gesetzt unter seinen Saiten. Der Spannstab wird von einem Ende seines Bereichs zum anderen gedreht.',
        ],
        question: 'Wie weit bewegt das die Halskrümmung, von einem Ende zum anderen?',
        after: ['Um {travel}. Am einen Ende: {least}; am anderen: {most}. Dieser Spannstab hat etwas zu sagen.'],
      },
      stiff: {
        title: 'Ein dicker Hals aus dichten Hölzern',
        says: [
          'Fünf Streifen Wenge und Amarant, {thickness} dick am Bund 1. Die Steifigkeit wächst mit der dritten Potenz der Dicke, und diese Hölzer sind von sich aus steif.',
        ],
        question: 'Wie weit bewegt sein Spannstab die Halskrümmung?',
        after: ['Um {travel}; beim schlanken Hals waren es {slim}.'],
      },
      tight: {
        title: 'Ein zu schmaler Schlitz',
        says: [
          'Die Schlitze dieses Halses wurden {kerf} breit gesägt, für einen Bundfuß, dessen Steg {tang} dick ist. Jetzt greifen nicht nur die Noppen: Der ganze Bundfuß ist ein Keil. Die Bünde werden eingepresst und geleimt.',
        ],
        question: 'Wo liegt die Linie nach drei Monaten unter den Saiten? Ziehen Sie sie.',
        after: [
          'Jeder Bund drückt mit etwa {force}. Aus einem so steifen Hals können die Saiten das nicht herausziehen. Nach drei Monaten: {settled}.',
        ],
      },
      reach: {
        title: 'Was der Spannstab kann',
        says: ['Gewünscht ist eine Halskrümmung von {wanted}.'],
        question: 'Was ist mehr: die gewünschte Halskrümmung oder die größte, auf die der Spannstab den Hals bringt?',
        options: { wanted: 'die gewünschte', reached: 'die größte, auf die der Spannstab ihn bringt' },
        after: [
          'Am einen Ende seines Bereichs bringt der Spannstab den Hals auf {least}, am anderen auf {most}. Gewünscht sind {wanted}.',
        ],
      },
      'one-way': {
        title: 'Mit einem einseitigen Spannstab',
        says: [
          'Ein einseitiger Spannstab hat nur seinen Zug, und in einem so dicken Hals geht der nahe an der Mitte des Holzes durch und biegt ihn kaum. Mit so einem liegt dieser Hals zwischen {least} (locker) und {most} (an der Grenze): ein Buckel in jeder Stellung. Keine Umdrehung der Mutter nimmt eine Rückbiegung weg; das tun nur die Zeit, die Saiten oder ein Bund, der aus seinem Schlitz kommt.',
        ],
      },
      'ways-out': {
        title: 'Bevor es zu spät ist',
        says: [
          'Derselbe Hals mit einer Schlitzbreite, durch die der Steg des Bundfußes gerade noch geht, gepresst ohne Leim. Gesetzt: {settled}; und der Spannstab bringt ihn auf {least}.',
          'Einige hundertstel Millimeter Schlitzbreite entscheiden darüber. Messen Sie den Bundfuß, den Sie gekauft haben, und den Schlitz, den Ihre Säge schneidet, bevor der erste Bund hineingeht, und prüfen Sie nach jedem Viertel der Bünde die Biegung mit dem Lineal.',
        ],
      },
      'within-reach': {
        title: 'Jetzt Sie',
        says: [
          'Noch einmal der stramme Hals, gepresst und geleimt, bevor seine Schlitze gesägt sind. Gewünscht ist eine Halskrümmung von {wanted}.',
        ],
        task: 'Wählen Sie eine Schlitzbreite, mit der der Spannstab die gewünschte Halskrümmung erreicht.',
        wanted: {
          reach: 'Größte Halskrümmung, auf die der Spannstab ihn bringt',
          holds: 'Die Noppen greifen überall genug',
        },
        done: [
          'Von hier an entscheidet der Spannstab und nicht die Schlitze. Viel bleibt ihm nicht übrig: Gepresst ohne Leim bliebe mehr.',
        ],
      },
      rescue: {
        title: 'Nach dem zweiten Viertel gerettet',
        says: [
          'Derselbe Hals, ohne Leim gepresst, vom Sattel an. Die Bünde 1 bis 12 sitzen in zu schmalen Schlitzen, und das Lineal zeigt: {half}. Die übrigen Schlitze sind noch nicht gesägt. Ginge es so weiter, käme der Spannstab auf {least}; gewünscht sind {wanted}.',
        ],
        task: 'Wählen Sie die Breite der Schlitze, die noch fehlen, so, dass der Spannstab das Gewünschte doch noch erreicht.',
        wanted: {
          reach: 'Größte Halskrümmung, auf die der Spannstab ihn bringt',
          holds: 'Die Noppen greifen überall genug',
        },
        done: [
          'Erreicht, mit {least}. Es reicht gerade so: Die Bünde nahe dem Korpus biegen einen Hals weniger als die in seiner Mitte, und der halbe Schaden war geschehen. Je früher gemessen wird, desto mehr ist zu retten.',
        ],
      },
    },
  },
  chamfer: {
    title: 'Die Fase und die nächste Neubundierung',
    about: 'Eine kleine Schräge an den Kanten der Schlitze, die niemand sieht, bis die Bünde herausmüssen.',
    steps: {
      edge: {
        title: 'Eine scharfe Kante',
        says: [
          'Ein Schlitz, {kerf} breit, mit scharfen Kanten, aufgeschnitten. Die Noppen des Bundes, {studs} über beide, gingen durch diese Kanten hinein und sitzen jetzt darunter im Holz.',
        ],
      },
      width: {
        title: 'Eine Schräge unter dem Bundkopf',
        says: [
          'Jetzt sind beide Kanten mit der Feile gebrochen: eine Fase, {now} breit. Der Bundkopf ist {crown} breit und deckt sie zu.',
        ],
        question: 'Wie breit dürfte die Fase werden, bevor sie neben dem Bundkopf zu sehen wäre?',
        after: ['{room} auf jeder Seite: die Hälfte von dem, was der Bundkopf breiter ist als der Schlitz.'],
      },
      pull: {
        title: 'Eines Tages kommen sie heraus',
        says: [
          'Bünde nutzen sich ab. Jemand, vielleicht nicht Sie, wird diesen erwärmen, mit einer Bundzange unter den Bundkopf greifen und ihn heben. So viel ist gerechnet: die Kraft, die das braucht.',
        ],
        question: 'Welcher Bund braucht mehr Kraft, um herauszukommen?',
        options: { press: 'ein gepresster', both: 'ein gepresster und geleimter' },
        after: ['Etwa {press}, wenn er gepresst wurde, und {both}, wenn er gepresst und geleimt wurde.'],
      },
      refrets: {
        title: 'Zwei Neubundierungen',
        says: [
          'Ziehen Sie beide Bünde: Links sind die Kanten scharf, rechts haben sie eine Fase, {now} breit. Die Noppen kommen durch dieselben Kanten heraus, durch die sie hineingingen.',
          'Was hier gerechnet ist: die Maße von Schlitz, Bundfuß und Fase, von diesem Hals, und die Kraft aus dem vorigen Schritt. Was zur Veranschaulichung gezeichnet ist: die Ausbrüche. Wann und wo Ebenholz ausbricht, hängt von dem Stück Holz ab, von der Wärme und von der Hand; keine Formel hier sagt es. Dass eine Fase hilft, ist Werkstattbrauch, und es ist einzusehen: Die Kante, die ausbrechen würde, ist nicht mehr da.',
        ],
      },
      record: {
        title: 'Sagen Sie es dem Nächsten',
        says: [
          'Auf dem Werkstattblatt stehen Draht, Bundfuß, Schlitzbreite, Art des Sitzes, Leim und Fase. Wer diese Bünde eines Tages zieht, arbeitet besser, wenn er es weiß.',
          'Die Fase steht unter „Die Schlitze“; eine Prüfung meldet sich, wenn sie fehlt oder breiter ist, als der Bundkopf zudeckt.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: ['Die Kanten sind wieder scharf.'],
        task: 'Brechen Sie sie so, dass die nächste Neubundierung geschont ist und niemand es sieht.',
        wanted: {
          covered: 'Fase, nicht breiter, als der Bundkopf zudeckt',
          sound: 'Keine Prüfung meldet sich zu den Kanten',
        },
        done: ['Wer diese Bünde eines Tages zieht, wird froh darum sein.'],
      },
    },
  },
  nipping: {
    title: 'Den Bundfuß über der Einfassung abzwicken',
    about:
      'Auf einem eingefassten Griffbrett muss der Bundfuß vor der Einfassung enden, die ganz bleibt, und der Bundkopf liegt darüber.',
    steps: {
      bound: {
        title: 'Ein eingefasstes Griffbrett',
        says: [
          'Dieses Griffbrett hat an jeder Kante {lines} Lagen Einfassung. Die Säge geht durch die inneren {sawn}; {whole} bleibt ganz und schließt den Schlitz nach außen ab.',
          'Der Bundkopf muss darüber bis an die Kante reichen; der Bundfuß darf es nicht.',
        ],
      },
      nip: {
        title: 'Wie viel abzuzwicken ist',
        says: [
          'Der Draht wird an jedem Ende {oversize} länger geschnitten als das Griffbrett. Unter jedem Ende wird der Bundfuß abgezwickt; der Bundkopf bleibt.',
        ],
        question: 'Wie lang ist das Stück Bundfuß, das an jedem Ende von Bund 12 abzuzwicken ist?',
        after: [
          '{nip}: die Lage, die ganz bleibt, {clearance} Luft und die {oversize}, die über die Kante stehen, längs des gebogenen Drahtes gemessen. Ist gefeilt, liegt der Bundkopf {shelf} weit auf der Einfassung.',
        ],
      },
      'all-sawn': {
        title: 'Alle Lagen durchgesägt',
        says: [
          'Jetzt geht die Säge durch jede Lage. Der Schlitz ist an der Kante offen, nichts wird abgezwickt ({nip}), und das Ende des Bundfußes ist von der Seite zu sehen; dort wird es bündig gefeilt oder der Schlitz gefüllt.',
        ],
      },
      'none-sawn': {
        title: 'Keine Lage durchgesägt',
        says: ['Andersherum: Der Schlitz endet im Holz, und alle Lagen bleiben ganz.'],
        question:
          'Was ist länger: die Auflage des Bundkopfs auf der Einfassung oder der Draht, der vor dem Feilen über die Kante steht?',
        options: { shelf: 'die Auflage auf der Einfassung', oversize: 'der Draht über der Kante' },
        after: [
          'Die Auflage ist {shelf} lang, der Überstand {oversize}; {nip} werden abgezwickt. Je mehr Bundkopf ohne Bundfuß auf der Einfassung liegt, desto mehr wollen seine Enden sich heben: Solche Enden werden geleimt und mit Vorsicht gepresst.',
        ],
      },
      yours: {
        title: 'Jetzt Sie',
        says: [
          'Dieses Ende hielte keinem prüfenden Blick stand: Die Säge ist durch jede Lage gegangen, sodass der Bundfuß von der Seite zu sehen ist, und der Draht wurde zu kurz geschnitten, um ihn noch zu feilen.',
        ],
        task: 'Machen Sie ein Ende, das man zeigen kann: zur Seite geschlossen, der Bundkopf nur auf der äußeren Lage aufliegend.',
        wanted: {
          closed: 'Lagen, die ganz bleiben',
          rests: 'Auflage des Bundkopfs auf der Einfassung',
          clean: 'Keine Prüfung meldet sich zu den Enden',
        },
        done: [
          '{nip} werden unter jedem Ende von Bund 12 abgezwickt. Im Plan steht es für jeden Bund in einer Tabelle.',
        ],
      },
    },
  },
};
