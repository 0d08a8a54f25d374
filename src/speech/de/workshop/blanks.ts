/** Gemessene Rohlinge: was noch fehlt, und ein Versehen, nach dem gefragt wird. */
import type * as english from '../../en/workshop/blanks.ts';

export const BLANK_WORDS: typeof english.BLANK_WORDS = {
  names: {
    LengthMm: 'Länge',
    WidthMm: 'Breite',
    ThicknessMm: 'Dicke',
    MassG: 'Masse',
    FrequencyHz: 'Frequenz',
    SpanMm: 'Stützweite',
    LoadN: 'Last',
    SagMm: 'Durchbiegung',
  },
  missing: (names, wood) => `Es fehlt noch: ${names}. Bis dahin gilt die Steifigkeit der Holzart (${wood}).`,
  measured: (modulus, wood, species) => `Gemessen: ${modulus}; die Holzart (${wood}) hat ${species}.`,
  woods: 'diese Hölzer zusammen',
  ownWood: 'Ihr eigenes Holz',
  softer: (typed, times, wood, modulus, species) =>
    `Mit ${typed} wäre dieser Rohling ${times}-mal weicher als ${wood}: ${modulus} gegen ${species}.`,
  stiffer: (typed, times, wood, modulus, species) =>
    `Mit ${typed} wäre dieser Rohling ${times}-mal steifer als ${wood}: ${modulus} gegen ${species}.`,
  usual: (value) => `Zum Holz passen würden etwa ${value}.`,
  meant: (value, why) => `Meinten Sie ${value} (${why})?`,
  meantOther: (name, value, why) => `Meinten Sie bei „${name}“ ${value} (${why})?`,
  why: {
    ten: 'das Komma',
    inches: 'Zoll und Millimeter verwechselt',
    kilograms: 'in Kilogramm angegeben',
    grams: 'in Gramm angegeben',
    'second-mode': 'der zweite Ton statt des ersten',
  },
  take: (value) => `${value} nehmen`,
  keep: (value) => `Bei ${value} bleiben`,
  leave: 'Noch einmal messen',
  hear: 'Hören …',
  tryStrip: 'Am Probestreifen messen …',
  hearMissing: 'Dieser Teil der Seite ist nicht angekommen. Laden Sie die Seite neu, oder tippen Sie die Frequenz ein.',
};
