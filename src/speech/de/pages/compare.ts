/** Der Vergleich. */
import type * as english from '../../en/pages/compare.ts';

export const COMPARE_WORDS: typeof english.COMPARE_WORDS = {
  title: 'Vergleichen',
  open: 'Sie vergleichen',
  intro:
    'Zwei oder drei Hälse beim selben Stand der Arbeit, verglichen mit dem ersten. Dieser Hals und seine Arten des Sitzes folgen der Werkbank, bis Sie sie festhalten.',
  threeWays: 'Dieser Hals, auf jede Art bundiert',
  cannot: (label, why) => `„${label}“ geht bei diesem Hals nicht: ${why}`,
  onlyOneWay: 'Bei diesem Hals geht nur eine Art des Sitzes; es gibt nichts zu vergleichen.',
  necks: 'Hälse zum Vergleichen',
  places: ['Erster Hals', 'Zweiter Hals', 'Dritter Hals'],
  none: 'keiner',
  bench: (name) => `auf der Werkbank: ${name}`,
  way: (label) => `dieser Hals, ${label}`,
  groups: { bench: 'Dieser Hals', presets: 'Zum Beginnen', saved: 'Gesichert' },
  asOf: (label, when) => `${label}, Stand ${when}`,
  keep: 'So festhalten',
  keepName: (label) => `„${label}“ so festhalten`,
  onBench: 'auf der Werkbank',
  swap: 'Mit dem ersten tauschen',
  swapName: (label) => `„${label}“ mit dem ersten tauschen`,
  choose: 'Als Entwurf wählen',
  chooseName: (label) => `„${label}“ als Entwurf wählen`,
  stepChoose: (label) => `„${label}“ wählen`,
  chosen: (label) => `„${label}“ liegt jetzt auf der Werkbank. Rückgängig bringt zurück, was vorher da war.`,
  refused: 'Nicht getan; Ihr Entwurf ist unverändert.',
  failed: (reason) => `Der Vergleich ließ sich nicht rechnen: ${reason}.`,
  retry: 'Noch einmal rechnen',
  picture: 'Die Hälse in einem Bild',
  description: (necks, factor) => `${necks}; Biegung ×${factor} gezeichnet. Die gestrichelten Linien sind gerade.`,
  drawing: 'Das Bild wird vorbereitet.',
  noPicture: 'Das Bild lässt sich hier nicht zeichnen. Linie und Tabelle sagen dasselbe.',
  views: 'Ansicht',
  moment: 'Stand der Arbeit',
  chart: 'Die Linien der Bundoberkanten',
  chartLabel: (necks) => `Linien der Bundoberkanten gegen ein Lineal. ${necks}`,
  chartNote: 'Aufrechte Balken: wo die größte Biegung bei 90 von 100 solchen Hälsen liegt.',
  line: (label, bow) => `${label}: ${bow}.`,
  table: 'Was sich unterscheidet, und warum',
  waiting: 'Spanne …',
  same: 'Kein Unterschied.',
  steps: 'Die Arbeitsschritte der Reihe nach',
  onlyHere: 'nicht bei allen',
  copyTitle: 'Verschiedene Einstellungen',
  copyNone: 'Die Hälse haben die gleichen Einstellungen.',
  copyIntro: (label) =>
    `Kopieren gibt dem Hals auf der Werkbank („${label}“) die Einstellungen eines anderen; es ist ein Schritt, den Rückgängig zurücknimmt.`,
  copyNeedsBench:
    'Keiner von diesen liegt auf der Werkbank. Wählen Sie einen als Entwurf, dann lassen sich Einstellungen der anderen auf ihn kopieren.',
  copyFrom: (label) => `Von „${label}“ kopieren`,
  copyFromName: (group, label) => `„${group}“ von „${label}“ kopieren`,
  stepCopy: (group, label) => `„${group}“ von „${label}“ kopieren`,
  copied: (group, label) => `„${group}“ ist von „${label}“ kopiert. Rückgängig nimmt es zurück.`,
  setting: 'Einstellung',
  noneListed: 'keine',
  share: 'Diesen Vergleich teilen',
  forCustomer: 'Eine Seite für den Kunden',
  textsTooLong: 'Die Texte der Kundenseite sind zu lang; einen Link gibt es, sobald sie kürzer sind.',
  tooLong: 'Dieser Vergleich ist zu lang für einen Link. Kürzen Sie die Notizen der Hälse.',
};

export const ROW_WORDS: typeof english.ROW_WORDS = {
  now: (moment) => `Jetzt: ${moment}`,
  fretted: 'Biegung mit den Bünden',
  strung: 'Besaitet',
  settled: 'Gesetzt',
  settledAfter: (time) => `Gesetzt nach ${time}`,
  rod: 'Spannstab für die gewünschte Halskrümmung',
  action: 'Saitenlage am 12. Bund',
  room: 'Freiraum am engsten Ton, mittel gespielt',
  mostRoom: 'Halskrümmung mit dem meisten Freiraum, mittel gespielt',
  months: 'Derselbe, beim Besaiten eingestellt, und nach den ersten Monaten',
  flexibility: 'Schlitze, unter den Saiten',
  pullOut: 'Kraft, um einen Bund zu ziehen',
  seating: 'Kraft, um einen Bund einzusetzen',
  glue: 'Leim',
  steps: 'Arbeitsschritte',
  refret: 'Risiko bei der nächsten Neubundierung',
};

export const RISK_WORDS: typeof english.RISK_WORDS = { easy: 'gering', careful: 'mäßig', hard: 'hoch' };

export const ORDER_WORDS: typeof english.ORDER_WORDS = {
  spread: 'jeder vierte Bund zuerst',
  'nut-first': 'vom Sattel an',
  'body-first': 'vom letzten Bund an',
};

export const SLOT_WORDS: typeof english.SLOT_WORDS = {
  press: 'leere Schlitze',
  glue: 'mit Leim gefüllte Schlitze',
  both: 'verkeilte, mit Leim gefüllte Schlitze',
};

export const CELL_WORDS: typeof english.CELL_WORDS = {
  noRod: 'kein Spannstab',
  outOfReach: 'unerreichbar',
  asSet: (bow) => `${bow}, wie eingestellt`,
  plucks: (from, to) => `bei einem Anschlag von ${from} bis ${to}`,
  fromTo: (from, to) => `${from} → ${to}`,
  chance: (percent) => `bei ${percent} möglich`,
  perFret: 'Mittel der Bünde',
  flexible: (percent) => `${percent} nachgiebiger`,
  stiffer: (percent) => `${percent} steifer`,
  asUnsawn: 'so steif wie ungesägt',
  dry: 'keiner',
  steps: (count, wait) => `${count} Schritte; besaitet nach ${wait}`,
};

export const REASON_WORDS: typeof english.REASON_WORDS = {
  noWedge: (kerf) => `nichts keilt: die Noppen gleiten in Schlitze von ${kerf}`,
  wedgeOnlyHere: (force) => `jeder Bund verkeilt seinen Schlitz mit ${force}`,
  whereOther: (force) => `wo der erste jeden mit ${force} verkeilt`,
  wedge: (force, other, percent) => `jeder Bund keilt mit ${force} statt ${other} (${percent})`,
  bite: (bite, other) => `die Noppen greifen ${bite} in die Wände statt ${other}`,
  give: (percent) => `der Hals gibt unter dem gleichen Druck ${percent} nach`,
  boardFirst: (percent) =>
    `das Griffbrett wurde bundiert, bevor es aufgeleimt wurde, und behält einen Teil des Keils für sich: jedes Newton krümmt den Hals ${percent}`,
  neckFirst: (percent) =>
    `die Bünde kamen in den fertigen Hals, nicht in ein loses Griffbrett: jedes Newton krümmt ihn ${percent}`,
  frets: (count, other) => `${count} Bünde statt ${other}`,
  starting: (bow, other) => `zu Beginn ${bow} statt ${other}`,
  more: (percent) => `${percent} mehr`,
  less: (percent) => `${percent} weniger`,
  before: (difference) => `${difference} des Unterschieds waren schon mit den Bünden da`,
  stringsAdd: (bow, other) => `die Saiten bringen ${bow} statt ${other}`,
  flexible: (slots, flexible) => `${slots}: unter den Saiten ${flexible}`,
  flexibleAgainst: (slots, flexible) => `beim ersten ${slots}: ${flexible}`,
  pull: (force, other) => `die Saiten ziehen mit ${force} statt ${other}`,
  moved: (size, time, other, otherTime) =>
    time === otherTime
      ? `in ${time} bewegt er sich um ${size} statt ${other}`
      : `er bewegt sich um ${size} in ${time} statt ${other} in ${otherTime}`,
  wedgesKeep: (percent, force) => `die Keile behalten ${percent} ihres Drucks von ${force}`,
  stringsGrow: (percent) => `was die Saiten tun, wächst um ${percent}`,
  mustMove: (size, wanted, reach) =>
    `gesetzt liegt er ${size} neben dem Gewünschten (${wanted}), und der ganze Spannstab bewegt ihn um ${reach}`,
  noRod: 'kein Spannstab gleicht es aus',
  slotSize: (depth, board, kerf) => `${kerf} breit, ${depth} tief in einem Griffbrett von ${board}`,
  held: (friction, glue) => `die Reibung des Keils hält ${friction}, der Leim ${glue}`,
  heldDry: (friction) => `die Reibung des Keils allein hält ${friction}`,
  heldGlue: (glue) => `der Leim allein hält ${glue}`,
  slidesIn: 'keine Noppe greift: der Bund gleitet von Hand hinein',
  slotFilled: (kerf, percent) => `Schlitze von ${kerf}, zu ${percent} ihrer Tiefe gefüllt`,
  pressedDry: 'trocken eingepresst',
  extraSteps: (titles) => `dazu: ${titles}`,
  missingSteps: (titles) => `ohne: ${titles}`,
  waits: (time, other) => `besaitet nach ${time} statt nach ${other}`,
  chamfer: (chamfer) => `Schlitzkanten ${chamfer} gefast`,
  sharp: (chamfer) => `Schlitzkanten nur ${chamfer} gefast: das Griffbrett bricht aus`,
  noGlue: 'kein Leim: der Bund hebt sich aus seinem Schlitz',
  pulls: (force) => `${force} halten jeden Bund`,
};
