/** Die Regler und Listen des Entwurfs. */
import type * as english from '../../en/workshop/controls.ts';

export const CONTROL_WORDS: typeof english.CONTROL_WORDS = {
  title: 'Der Entwurf',
  usual: (range) => `Üblich: ${range}.`,
  standard: (value) => `Vorgabe: ${value}.`,
  from: (source) => `Woher: ${source}.`,
  reset: 'zurück',
  resetName: (label, value) => `„${label}“ auf ${value} zurücksetzen`,
  less: (label, by) => `${label}: ${by} weniger`,
  more: (label, by) => `${label}: ${by} mehr`,
  typed: (label) => `${label}, als Zahl`,
  notANumber: (text, label, range) => `„${text}“ ist keine Zahl. „${label}“: möglich ist ${range}.`,
  outOfRange: (value, label, range) => `„${label}“ kann nicht ${value} sein: möglich ist ${range}.`,
  notWhole: (value, label, range) => `„${label}“ kann nicht ${value} sein: möglich ist eine ganze Zahl, ${range}.`,
  tooLong: (label, length, most) => `${label}: ${length} Zeichen; möglich sind höchstens ${most} Zeichen.`,
  kept: (value) => `Es bleibt bei ${value}.`,
  staysEmpty: 'Das Feld bleibt leer.',
  notMeasured: 'noch nicht gemessen',
  emptyName: (label) => `„${label}“ leeren`,
  range: (min, max) => `${min} bis ${max}`,
  yes: 'ja',
  no: 'nein',
  hintTitle: 'Was es ändert',
  hintEmpty:
    'Zeigen Sie auf einen Regler, oder gehen Sie mit den Tasten hin, um zu lesen, was er ändert, was üblich ist und woher das kommt.',
  keys: 'Pfeiltasten gehen einen Schritt; mit der Umschalttaste feiner; Bildtasten gröber; Pos1 und Ende an die Grenzen.',
};

export const KERF_WORDS: typeof english.KERF_WORDS = {
  asWideAsStuds: (press) =>
    `Geleimt: so breit gesägt wie der Bundfuß über die Noppen. Zum Einpressen bleibt es bei ${press}. Ist das Griffbrett schon geschlitzt, die Schlitze auf dieses Maß aufweiten.`,
  openOld: (cut) =>
    `Die alten Schlitze sind ${cut} breit: zum Leimen auf dieses Maß aufweiten, die Breite über die Noppen.`,
};

export const LIST_WORDS: typeof english.LIST_WORDS = {
  strings: {
    title: 'Saiten',
    set: 'Satz, nach Stärken in tausendstel Zoll',
    tuning: 'Stimmung',
    own: 'wie in der Tabelle unten',
    string: 'Saite',
    construction: 'Machart',
    diameter: 'Durchmesser',
    core: 'Kern',
    pitch: 'Ton',
    add: 'Eine tiefere Saite dazu',
    remove: 'Die letzte Saite weg',
    caption: 'Saiten, von der Diskantseite zur Bassseite',
    pull: 'Zug',
    paired: 'In Paaren, zwei Saiten je Chor',
    beside: 'Von der darüber',
    changed: (what) => `Saite ${what}`,
  },
  laminates: {
    title: 'Hölzer des Halses',
    make: 'Aufbau des Halses',
    pieces: ['einteilig', 'dreistreifig', 'fünfstreifig', 'siebenstreifig'],
    wood: (place) => `Holz, ${place}`,
    share: (place) => `Anteil an der Breite, ${place}`,
    places: {
      one: 'ganzer Hals',
      centre: 'Mittelstreifen',
      next: 'Streifen daneben',
      outer: 'Außenstreifen',
    },
    shareHint: 'Beide Hälften des Streifens zusammen. Die Außenstreifen nehmen, was von der Breite übrig ist.',
    rest: (percent) => `nimmt den Rest: ${percent}`,
    widths: 'Breiten der Streifen',
    widthsBy: { share: 'Anteile an der Breite', mm: 'gleichbleibend, in mm' },
    width: (place) => `Breite, ${place}`,
  },
  ownWoods: {
    title: 'Eigene Hölzer',
    name: (wood) => `Name, ${wood}`,
    modulusGPa: 'E-Modul längs der Faser, GPa',
    densityKgM3: 'Rohdichte, kg/m³',
    strength: 'Druckfestigkeit längs der Faser',
    strengths: {
      density: (value) => `nach der Rohdichte: ${value}`,
      own: () => 'hier eingegeben',
    },
    crushingMPa: 'Druckfestigkeit, MPa',
    like: 'Quer zur Faser wie',
    hint: 'Aus einem Datenblatt oder eigener Prüfung: für Griffbretter aus Papier und Harz, Furnieren oder anderen Hölzern. Die Rohdichte ist die in Ihrer Werkstatt; sie bestimmt, wie fest die Noppen greifen.',
  },
  regions: {
    title: 'Bünde mit anderem Schlitz oder Bundfuß',
    none: 'Alle Bünde haben den gleichen Schlitz und den gleichen Bundfuß.',
    add: 'Eine Strecke von Bünden dazu',
    remove: (index) => `Strecke ${index} entfernen`,
    removeShort: 'entfernen',
    region: (index) => `Strecke ${index}`,
    caption: 'Strecken von Bünden mit eigenem Schlitz oder Bundfuß; eine spätere geht einer früheren vor',
    columns: {
      fromFret: 'ab Bund',
      toFret: 'bis Bund',
      kerfMm: 'Schlitz',
      tangWidthMm: 'Fuß',
      studWidthMm: 'über Noppen',
    },
  },
  reliefs: {
    title: 'Gemessene Halskrümmung an jedem Bund',
    perFret: 'Eine Halskrümmung je Bund statt einer einzigen Zahl',
    caption: 'Halskrümmung des leeren Griffbretts an jedem Bund, ohne Saiten; minus ist ein Buckel',
    fret: (fret) => `Halskrümmung am Bund ${fret}`,
  },
  binding: {
    title: 'Lagen der Einfassung, vom Holz nach außen',
    line: (index) => `Lage ${index}`,
    thickness: (index) => `Dicke der Lage ${index}`,
    colour: (index) => `Farbe der Lage ${index}`,
    material: (index) => `Material der Lage ${index}`,
    none: 'Das Griffbrett hat keine Einfassung.',
    sawn: 'durchgesägt',
    whole: 'bleibt ganz',
  },
};

export const SUMMARY_WORDS: typeof english.SUMMARY_WORDS = {
  frets: (count) => `${count} Bünde`,
  slots: (kerf, depth) => `${kerf} breit, ${depth} tief`,
  binding: (lines) =>
    lines === 0 ? 'ohne Einfassung' : lines === 1 ? '1 Lage Einfassung' : `${lines} Lagen Einfassung`,
  strings: (count) => (count === 1 ? '1 eigene Saite' : `${count} eigene Saiten`),
  settled: (time) => `gesetzt nach ${time}`,
  climate: 'Klimawechsel',
  newNeck: 'ein neuer Hals',
  refret: 'eine Neubundierung',
  bite: (factor) => `Greiffaktor ${factor}`,
};
