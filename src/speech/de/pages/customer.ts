/** Die Seite für den Kunden: für Leute, die von einem Bundfuß nie gehört haben. */
import type * as english from '../../en/pages/customer.ts';

export const CUSTOMER_WORDS: typeof english.CUSTOMER_WORDS = {
  titleOne: 'Der Hals Ihres Instruments',
  titleMany: 'Der Hals Ihres Instruments, und was Sie wählen können',
  forWhom: (name) => `Für ${name}`,
  noteTitle: 'Ein Wort aus der Werkstatt',
  intro:
    'Die Bünde aus Metall sitzen in schmalen Schlitzen quer im Griffbrett. Wie sie dort gehalten werden, biegt den Hals um Haaresbreite, die Saiten biegen ihn zurück, und das Holz braucht einige Wochen, bis es zur Ruhe kommt. All das ist winzig, und beim Spielen spüren Sie es doch.',
  choices: 'Die Möglichkeiten',
  methods: {
    press: 'Bünde eingepresst',
    glue: 'Bünde eingeleimt',
    both: 'Bünde eingepresst und geleimt',
  },
  advised: 'von der Werkstatt empfohlen',
  picture: (label) => `Bild des Halses: ${label}`,
  pictureOf: (label, moment) => `${label}, ${moment}`,
  pictureComing: 'Das Bild wird gezeichnet.',
  liesTitle: 'So liegt der Hals',
  factor: (factor) =>
    `Von der Seite gesehen, der Sattel links. Die Biegung ist ${factor}fach vergrößert gezeichnet; die dünne Linie ist gerade.`,
  moment: 'Wann',
  moments: { fretted: 'vor den Saiten', strung: 'besaitet', settled: 'zur Ruhe gekommen' },
  settledAfter: (time) => `nach ${time}`,
  months: (count) => (count === 1 ? 'einem Monat' : count === 3 ? 'drei Monaten' : `${count} Monaten`),
  lies: {
    'back-bow': (size, like) => `Die Mitte liegt ${size} höher als die Enden: ${like}.`,
    relief: (size, like) => `Die Mitte liegt ${size} tiefer als die Enden: ${like}.`,
    flat: 'Gerade.',
  },
  noPicture: 'Auf diesem Gerät lassen sich keine Bilder zeichnen; alles andere ist hier.',
  computing: 'Es wird für diesen Hals ausgerechnet.',
  failed: 'Es ließ sich auf diesem Gerät nicht ausrechnen.',
  retry: 'Noch einmal versuchen',

  holds: {
    press:
      'Jeder Bund wird in einen Schlitz gepresst, der ein wenig zu schmal für ihn ist, und das Holz hält ihn fest. Mehr braucht es nicht.',
    glue: 'Jeder Bund wird in einen Schlitz gelegt, der gerade so breit ist wie er, und von Leim gehalten, der auch den Schlitz füllt.',
    both: 'Jeder Bund wird in einen Schlitz gepresst, der ein wenig zu schmal für ihn ist, und der Schlitz dazu mit Leim gefüllt.',
  },
  paper: (sheets) => `etwa die Dicke von ${sheets} Papier`,
  sheets: (count) => (count <= 1 ? 'einem Blatt' : `${count} Blatt`),
  lessThanPaper: 'weniger als die Dicke von einem Blatt Papier',
  between: (low, high) =>
    `Jedes Stück Holz ist anders. Neun von zehn solchen Hälsen sind mit allen Bünden um ${low} bis ${high} gebogen.`,
  bentEitherWay: (back, forward) =>
    `Jedes Stück Holz ist anders. Bei neun von zehn solchen Hälsen liegt die Mitte mit allen Bünden zwischen ${back} höher und ${forward} tiefer als die Enden.`,

  price: 'Preis',
  time: 'Zeit',
  held: 'Wie die Bünde halten',
  sure: 'Wie sicher das ist',
  waitGlue: (days, hours) =>
    `Auf der Werkbank kommen Zwingen und Säubern dazu, und der Leim härtet ${hours}. Sind die Bünde drin, werden die Saiten ${days} aufgezogen.`,
  wait: (days) => `Nichts muss aushärten. Sind die Bünde drin, werden die Saiten ${days} aufgezogen.`,
  atOnce: 'noch am selben Tag',
  rodTasks: {
    none: 'In diesem Hals lässt sich nichts verstellen: Nur die Höhe der Saiten lässt sich einstellen.',
    easy: 'Was übrig bleibt, wird mit der Einstellschraube im Hals ausgeglichen, und das geht leicht.',
    within:
      'Was übrig bleibt, wird mit der Einstellschraube im Hals ausgeglichen, mit mehr als der Hälfte dessen, was sie kann.',
    doubtful: 'Die Einstellschraube im Hals reicht dafür vielleicht nicht aus.',
    beyond: 'Die Einstellschraube im Hals reicht dafür wahrscheinlich nicht aus. Sprechen Sie darüber.',
  },
  chance: (of100) => `Bei etwa ${of100} von 100 solchen Hälsen lässt es sich ausgleichen.`,
  chanceAll: 'Bei fast jedem solchen Hals lässt es sich ausgleichen.',

  care: 'Die ersten Monate',
  movements: {
    hardly: (size) =>
      `Nach dem Besaiten bewegt sich der Hals kaum noch (${size}). Zum Nachstellen werden Sie wohl nicht wiederkommen müssen.`,
    'a-little': (size) =>
      `Der Hals biegt sich noch ein wenig nach vorn (${size}). Bringen Sie das Instrument nach etwa drei Monaten einmal zum Nachstellen.`,
    clearly: (size) =>
      `Der Hals biegt sich weiter nach vorn (${size}), und Sie werden es spüren. Rechnen Sie im ersten halben Jahr mit ein- oder zweimal Nachstellen.`,
  },
  changes: {
    strings: {
      rise: (size) => `Wird nichts nachgestellt, liegen die Saiten danach ${size} höher.`,
      sink: (size) => `Wird nichts nachgestellt, liegen die Saiten danach ${size} tiefer.`,
      stay: 'Die Saiten bleiben so hoch, wie sie eingestellt wurden.',
    },
    clean: {
      same: 'Es spielt sich so sauber wie am ersten Tag.',
      more: 'Es spielt sich dann sauberer als am ersten Tag.',
      less: 'Töne, die am ersten Tag sauber waren, können dann schnarren, bis nachgestellt ist.',
    },
  },
  strings: 'Beim Spielen',
  action: (height) => `Wenn der Hals zur Ruhe gekommen ist, liegen die Saiten ${height} über dem zwölften Bund.`,
  cleans: {
    hard: 'Jeder Ton bleibt sauber, auch wenn Sie kräftig spielen.',
    medium: 'Jeder Ton bleibt sauber, wenn Sie spielen wie üblich; kräftig gespielt können manche schnarren.',
    soft: 'Jeder Ton bleibt sauber, wenn Sie leise spielen; kräftiger gespielt können manche schnarren.',
    none: 'Manche Töne können schon leise gespielt schnarren. Darüber sollten wir sprechen.',
  },
  handAssumed: 'Wie kräftig Sie spielen, ist angenommen: Zeigen Sie es der Werkstatt.',
  handMeasured: (force, low, high) =>
    `Die Werkstatt hat gemessen, wie kräftig sie selbst spielt: ${force} an der Saite; zu 90 % sicher sind ${low} bis ${high}.`,
  handSays: {
    clean: 'So gespielt bleibt jeder Ton sauber.',
    mostly: 'So gespielt bleibt jeder Ton sauber; am kräftigeren Ende können manche schnarren.',
    buzzes: 'So gespielt können manche Töne schnarren.',
  },
  skin: 'Haut',
  nickels: {
    none: (wire) => `Der Draht der Bünde: ${wire}, ohne Nickel.`,
    bound: (wire) =>
      `Der Draht der Bünde: ${wire}. Er enthält Nickel, gibt aber kaum etwas davon ab. Wenn Ihre Haut auf Nickel reagiert, fragen Sie erst in Ihrer Arztpraxis.`,
    contains: (wire) =>
      `Der Draht der Bünde: ${wire}. Er enthält Nickel. Wenn Ihre Haut auf Nickel reagiert, sagen Sie es jetzt: Es gibt auch Draht ohne.`,
  },
  nickelStrings: 'Die umsponnenen Saiten sind vernickelt: Auch da gibt es welche ohne.',
  wear: 'Abnutzung',
  wears: {
    softer: 'Der Draht ist weicher als üblicher Bunddraht und nutzt sich eher ab.',
    common: 'Der Draht nutzt sich ab wie üblicher Bunddraht.',
    harder: 'Der Draht ist härter als üblicher Bunddraht und hält länger.',
    muchHarder:
      'Der Draht ist viel härter als üblicher Bunddraht und hält weit länger; ihn zu bearbeiten kostet die Werkstatt mehr Zeit.',
  },
  refret: 'Neue Bünde, eines Tages',
  refrets: {
    easy: 'Mit Sorgfalt kommen diese Bünde wieder heraus und lassen das Griffbrett heil.',
    careful:
      'Diese Bünde müssen erwärmt werden, damit sie herauskommen, und die Kanten der Schlitze wollen eine behutsame Hand.',
    hard: 'Diese Bünde halten doppelt. Sie herauszuholen kostet Wärme und Zeit, und das Griffbrett bricht dabei leichter aus; wer das einmal macht, braucht die Aufzeichnungen der Werkstatt.',
  },
  forAll: 'Bei jeder Möglichkeit gleich',

  days: (count) => (count === '1' ? 'nach einem Tag' : `nach ${count.replace('.', ',')} Tagen`),
  hours: (count) => `${count} Stunden`,

  sureTitle: 'Wie sicher ist das?',
  allSure:
    'Alles hier ist für genau diesen Hals gerechnet: für seine Hölzer, seine Maße, seinen Draht. Zwei Stücke vom selben Holz unterscheiden sich trotzdem um ein Fünftel und mehr, und wie fest Holz einen Bund hält, weiß man nur ungefähr. Welche Möglichkeit den Hals stärker biegt, ist sicherer als die Frage, um wie viel. Das letzte Wort hat, was die Werkstatt am Hals selbst misst.',

  choose: 'Das nehme ich',
  chooseOne: 'Einverstanden',
  chooseName: (label) => `Das nehme ich: ${label}`,
  messageLabel: 'Ihre Nachricht an die Werkstatt',
  messageHint:
    'Von hier wird nichts verschickt. Schicken Sie die Nachricht, wie Sie mögen, und ändern Sie sie vorher nach Belieben.',
  message: (label, neck, date, mark) => `Ich wähle: ${label}\nHals: ${neck}\nDatum: ${date}\nKennzeichen: ${mark}`,
  subject: (neck) => `Meine Wahl: ${neck}`,
  copyMessage: 'Nachricht kopieren',
  messageCopied: 'Die Nachricht ist kopiert.',
  messageMarked:
    'Dieser Browser lässt keine Seite kopieren. Die Nachricht ist markiert: Kopieren Sie sie mit den Tasten oder über das Menü.',
  mail: 'Mail schreiben',
  text: 'SMS schreiben',
  engineering: 'Alles, mit allen Zahlen',
  print: 'Diese Seite drucken',
  made: (version, stamps) => `Mit Backbow ${version} gemacht, Stempel ${stamps}.`,
  notOpened: 'Diese Seite lässt sich nicht zeigen',
  workshop: 'Das Programm öffnen',
};
