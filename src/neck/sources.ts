/** Where a fact was read, so that nothing looks surer than it is. */

/**
 * src = read in a copy of the named source; mem = quoted from memory of the named source; calc = computed here;
 * practice = common practice, no source.
 */
export type Mark = 'src' | 'mem' | 'calc' | 'practice';

export interface Source {
  /** The publication as it is cited, the same in every language; empty for common practice. */
  readonly text: string;
  readonly mark: Mark;
}

/** The publications behind what is said of woods, glues and metals beside their numbers. */
export const FACT_SOURCES = {
  'toxic-woods': { text: 'HSE, Woodworking Sheet No 30, Toxic woods', mark: 'mem' },
  'toxicity-chart': {
    text: 'Chart of wood toxicity (1990) after Woods & Calnan, Toxic Woods, British Journal of Dermatology 95 (1976)',
    mark: 'src',
  },
  cites: { text: 'CITES Appendices as amended by CoP19 (2022), in force in full since November 2024', mark: 'mem' },
  bonding: { text: 'Wood Handbook FPL-GTR-190, ch. 10, ease of bonding', mark: 'mem' },
  'nickel-release': {
    text: 'Euro Inox, Stainless Steel – The Safe Choice; release of nickel into artificial sweat',
    mark: 'src',
  },
  'nickel-coins': { text: 'Lidén & Carter, Nickel release from coins, Contact Dermatitis 44 (2001) 160', mark: 'src' },
  'string-sweat': {
    text: 'Režić, Ćurković & Ujević, Metal ion release from electric guitar strings in artificial sweat, Corrosion Science 51 (2009) 1985 (abstract)',
    mark: 'src',
  },
  'alloy-standard': { text: 'composition in the standard that names the alloy', mark: 'mem' },
  practice: { text: '', mark: 'practice' },
} as const satisfies Readonly<Record<string, Source>>;

export type FactSource = keyof typeof FACT_SOURCES;

/** A fact of a row with where it is from. */
export interface Sourced<Value> {
  readonly is: Value;
  readonly source: FactSource;
}

export function sourced<const Value>(is: Value, source: FactSource): Sourced<Value> {
  return { is, source };
}
