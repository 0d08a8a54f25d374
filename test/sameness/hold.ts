/** Notes what a surface says otherwise than the one formatter, with everything needed to see it again. */
import type { UnitSystem } from '../../src/neck/units.ts';
import type { House } from './house.ts';
import type { Truth } from './truth.ts';

export interface Difference {
  readonly surface: string;
  readonly key: string;
  readonly said: string;
  readonly wanted: string;
}

/** Counts what was compared, so that a surface which says nothing is noticed. */
export class Notes {
  readonly differences: Difference[] = [];
  readonly compared = new Map<string, number>();

  same(surface: string, key: string, said: unknown, wanted: unknown): void {
    this.compared.set(surface, (this.compared.get(surface) ?? 0) + 1);
    const [one, other] = [JSON.stringify(said) ?? 'nothing', JSON.stringify(wanted) ?? 'nothing'];
    if (one !== other) this.differences.push({ surface, key, said: one, wanted: other });
  }

  /** Each text stands in the sentence, and no other number with a unit does. */
  sentence(surface: string, key: string, sentence: string, texts: readonly string[], others: readonly string[] = []) {
    for (const text of texts) this.same(surface, key, plain(sentence).includes(plain(text)) ? text : sentence, text);
    const known = new Set([...texts, ...others].flatMap(measuresIn));
    for (const measure of measuresIn(sentence)) {
      this.same(surface, key, known.has(measure) ? measure : `${measure} in “${sentence}”`, measure);
    }
  }
}

/** Without the marks that set texts apart. */
const plain = (text: string): string => text.replace(/[\u2066-\u2069]/g, '');

const MEASURE = /[+−]?\d[\d.,]*\u00a0(?:mm³|in³|mm|in|N·m|N|lbf|µm|thou|MPa|GPa|%)(?![\p{L}\d])/gu;

/** Every number with a unit in a text; signs left out, which words stand for. */
export function measuresIn(text: string): string[] {
  return [...plain(text).matchAll(MEASURE)].map(([found]) => found.replace(/^[+−]/, ''));
}

/** A surface: what it says of a neck is compared with the truth. */
export type Surface = (truth: Truth, house: House, system: UnitSystem, notes: Notes) => void;
