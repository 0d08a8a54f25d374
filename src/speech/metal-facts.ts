/** What is known of wire metals, in words. */
import { NICKEL_RELEASE_LIMIT } from '../fretwork/checks/limits.ts';
import type { MetalFact } from '../fretwork/plan/metal-comparison.ts';
import { formatNumber } from './quantity.ts';
import { MARK_WORDS, BASIS_WORDS } from './en/neck/sources.ts';
import { METAL_FACT_TEXTS } from './en/fretwork/wire.ts';

/** For posts in pierced skin, µg per cm² per week: REACH, Annex XVII, entry 27. */
const PIERCED_LIMIT = 0.2;
/** Release of stainless steel 304 in a week, µg per cm²: Euro Inox, and a study in artificial sweat (abstract). */
const STEEL_RELEASE = [0.05, 0.08] as const;

export function metalFactText({ id }: Pick<MetalFact, 'id'>): string {
  switch (id) {
    case 'nickel-limit':
      return METAL_FACT_TEXTS[id](formatNumber(NICKEL_RELEASE_LIMIT, 1), formatNumber(PIERCED_LIMIT, 1));
    case 'nickel-stainless':
      return METAL_FACT_TEXTS[id](formatNumber(STEEL_RELEASE[0], 2), formatNumber(STEEL_RELEASE[1], 2));
    default:
      return METAL_FACT_TEXTS[id];
  }
}

/** Where a fact comes from, and how well that is known. */
export function metalFactSource({ source, mark }: Pick<MetalFact, 'source' | 'mark'>): string {
  return mark === 'practice' ? MARK_WORDS.practice : `${BASIS_WORDS[source]} (${MARK_WORDS[mark]})`;
}
