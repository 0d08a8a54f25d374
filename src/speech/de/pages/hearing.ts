/** Einen angeklopften Rohling hören. */
import type * as english from '../../en/pages/hearing.ts';

export const HEARING_WORDS: typeof english.HEARING_WORDS = {
  title: { neck: 'Den Halsrohling hören', board: 'Den Griffbrettrohling hören' },
  hang: (distance) =>
    distance === ''
      ? 'Legen Sie den Rohling auf zwei weiche Schnüre, jede um 22,4 % seiner Länge von einem Ende entfernt.'
      : `Legen Sie den Rohling auf zwei weiche Schnüre, jede ${distance} von einem Ende entfernt.`,
  place: 'Halten Sie das Mikrofon eine Handbreit über ein Ende, ohne etwas zu berühren.',
  tap: 'Klopfen Sie mit dem Fingerknöchel fünfmal auf die Mitte seiner Fläche. Lassen Sie jeden Schlag ausklingen.',
  kept: 'Der Ton bleibt auf diesem Gerät und wird nicht aufbewahrt.',
  listen: 'Zuhören',
  again: 'Noch einmal zuhören',
  stop: 'Anhalten',
  openFile: 'Tondatei öffnen …',
  opening: 'Das Mikrofon wird angefragt …',
  reading: 'Der Ton wird gelesen …',
  level: 'Lautstärke',
  levelText: (decibels) => `${decibels} unter Vollaussteuerung`.replace('−', ''),
  tapsHeard: (taps) => (taps === 1 ? '1 Schlag gehört' : `${taps} Schläge gehört`),
  troubles: {
    insecure:
      'Ein Mikrofon geben Browser nur Seiten über https oder auf dem Rechner, von dem sie kommen. Öffnen Sie eine Tondatei, oder tippen Sie die Frequenz ein.',
    none: 'Dieses Gerät bietet kein Mikrofon an. Öffnen Sie eine Tondatei, oder tippen Sie die Frequenz ein.',
    denied:
      'Der Browser gibt dieser Seite das Mikrofon nicht frei. Sie können es in seinen Einstellungen für diese Seite erlauben, eine Tondatei öffnen oder die Frequenz eintippen.',
    'in-use':
      'Das Mikrofon startet nicht; vielleicht benutzt es ein anderes Programm. Öffnen Sie eine Tondatei, oder tippen Sie die Frequenz ein.',
    unreadable: 'Diese Tondatei kann der Browser nicht lesen. Eine .wav-Datei geht immer.',
    'too-long': 'Diese Aufnahme ist länger als zwei Minuten. Fünf Schläge dauern zehn Sekunden.',
    broken: 'Die Suche nach den Tönen brach ab. Hören Sie noch einmal zu, oder tippen Sie die Frequenz ein.',
  },
  found: (frequency) => `${frequency}, der erste Biegeton`,
  spread: (taps, low, high, share) => `Aus ${taps} Schlägen, ${low} bis ${high}: ${share} auseinander.`,
  byHand: (frequency) => `${frequency}, von Hand gewählt`,
  byHandSpread: 'Ob das der erste Biegeton ist, entscheiden Sie.',
  take: (frequency) => `${frequency} übernehmen`,
  tones: 'Gehörte Töne',
  picture: (expected) => `Spektrum der Schläge.${expected === '' ? '' : ` ${expected}`}`,
  expected: (low, high) => `Nach Maßen und Holz zu erwarten: ${low} bis ${high}.`,
  expectedShort: 'zu erwarten',
  sizesMissing:
    'Tragen Sie zuerst Länge, Breite und Dicke ein: Dann lässt sich der erste Ton sicherer von den anderen unterscheiden.',
  line: 'Gewählter Ton',
  axis: 'Frequenz, Hz',
  tooFew: (taps, needed) =>
    taps === 0
      ? `Noch kein Schlag gehört; es braucht ${needed}.`
      : taps === 1
        ? `1 von ${needed} Schlägen gehört.`
        : `${taps} von ${needed} Schlägen gehört.`,
  tooQuiet: (peak, least) =>
    `Zu leise: Der lauteste Schlag erreicht ${peak}, nötig sind ${least} (Vollaussteuerung ist 0 dB). Gehen Sie mit dem Mikrofon näher heran, oder klopfen Sie kräftiger.`,
  clipped: (clipped, taps) =>
    `Zu laut: ${clipped} von ${taps} Schlägen sind übersteuert. Gehen Sie mit dem Mikrofon weiter weg, oder klopfen Sie sanfter.`,
  tooNoisy: (above, least) =>
    above === ''
      ? `Zu viel Geräusch: Kein Ton klingt ${least} darüber. Sorgen Sie für Ruhe, gehen Sie mit dem Mikrofon näher heran, lassen Sie den Rohling frei schwingen.`
      : `Zu viel Geräusch: Der klarste Ton liegt ${above} darüber; drei Schläge brauchen ${least}. Sorgen Sie für Ruhe, gehen Sie mit dem Mikrofon näher heran, lassen Sie den Rohling frei schwingen.`,
  hum: (frequency, mains) =>
    mains === ''
      ? `Ein Dauerton bei ${frequency} überdeckt die Schläge: ein Lüfter oder ein Motor? Schalten Sie ihn ab und hören Sie noch einmal zu.`
      : `Ein Brummen bei ${frequency} überdeckt die Schläge (Netz, ${mains}). Gehen Sie von Lampen, Ladegeräten und Motoren weg und hören Sie noch einmal zu.`,
  disagree: (low, high) =>
    `Die Schläge sind uneins: ${low} bis ${high}; drei müssen auf 1 % übereinstimmen. Klopfen Sie immer auf dieselbe Stelle, und lassen Sie den Rohling frei schwingen.`,
  otherMode: (frequency, mode) =>
    mode === ''
      ? `Was klingt, liegt bei ${frequency}; nach diesen Maßen und diesem Holz ist das nicht zu erwarten. Prüfen Sie die Maße, oder wählen Sie von Hand.`
      : `Was klingt, liegt bei ${frequency}, wohl der ${mode} Biegeton; der erste ist nicht zu hören. Klopfen Sie auf die Mitte, und legen Sie die Schnüre an die richtigen Stellen.`,
  modes: { 2: 'zweite', 3: 'dritte', 4: 'vierte', 5: 'fünfte' },
  twoTones: (one, other) =>
    `Zwei Töne könnten der erste sein: ${one} und ${other}. Klopfen Sie genau auf die Mittellinie: Der falsche wird schwächer. Oder wählen Sie von Hand.`,
  notToldApart: (frequency) =>
    `Der lauteste Ton liegt bei ${frequency}; welcher Ton des Rohlings das ist, lässt sich nicht sagen. Tragen Sie zuerst die Maße ein, oder wählen Sie von Hand.`,
};
