/** Was als Nächstes zu messen ist, wie genau und wie lange. */
import type * as english from '../../en/pages/measure.ts';

export const MEASURE_WORDS: typeof english.MEASURE_WORDS = {
  title: 'Was als Nächstes messen',
  intro: (width) =>
    `Besaitet und gesetzt liegen 90 von 100 solchen Hälsen höchstens ${width} auseinander. Jede Zeile sagt, um wie viel das schmaler wird, wenn eines gemessen ist. Oben steht, was je Minute am meisten bringt.`,
  working: 'Es wird gerechnet, was jede Messung sagen würde; das dauert einige Sekunden.',
  caption: 'Was sich noch messen lässt; oben, was je Minute am meisten bringt',
  what: 'Messen',
  minutes: 'Minuten',
  removed: 'Schmaler um',
  after: 'Es bleiben',
  actions: 'Was zu tun ist',
  names: {
    studs: 'Breite über die Noppen, mit dem Messschieber',
    kerf: 'Schlitzbreite, mit Fühlerlehren in einem Probeschlitz',
    lens: 'Form einer Noppe, mit der Lupe',
    'stud-area': 'Fläche und Abstand der Noppen, mit Lupe und Maßstab',
    'slot-depth': 'Schlitztiefe, mit dem Tiefenmaß',
    'board-blank': 'Griffbrettrohling, gewogen und abgeklopft',
    'neck-blank': 'Halsrohling, gewogen und abgeklopft',
    strip: 'Probestreifen: ein Abschnitt des Griffbretts mit einigen Bünden',
    fretted: 'Biegung dieses Halses mit eingesetzten Bünden, mit Fühlerlehren',
    quarters: 'Biegung nach jedem Viertel der Bünde, mit Fühlerlehren',
    pull: 'Saitenzug, mit der Messuhr über einem Bund',
    rod: 'Weg des Halsspannstabs je Umdrehung, mit der Messuhr',
  },
  error: (error) => `auf ±${error}`,
  minutesOf: (name) => `Minuten: ${name}`,
  enter: 'Eintragen',
  enterName: (name) => `Eintragen: ${name}`,
  done: 'Als erledigt zählen',
  doneName: (name) => `Als erledigt zählen: ${name}`,
  counted: 'Als erledigt gezählt, nur in dieser Liste:',
  takeBack: 'zurücknehmen',
  takeBackName: (name) => `Zurücknehmen: ${name}`,
  nothing: 'Was sich noch messen ließe, macht es nicht schmaler.',
  whose:
    'Die Minuten sind Werkstattbrauch, ohne Quelle. Tragen Sie die Ihrer Werkstatt ein; sie bleiben auf diesem Gerät.',
};
