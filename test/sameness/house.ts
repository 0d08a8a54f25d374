/** What the surfaces are made of, loaded so that each language has its own. */
import type { Build } from '../../src/neck/build.ts';
import type { Prediction } from '../../src/mechanics/prediction-types.ts';
import type { Uncertainty } from '../../src/mechanics/uncertainty/types.ts';
import { inBothLanguages } from '../speech/house.ts';

async function loadHouse() {
  return {
    ...(await import('../../src/speech/quantity-text.ts')),
    ...(await import('../../src/speech/bow.ts')),
    ...(await import('../../src/speech/rod.ts')),
    ...(await import('../../src/speech/checks.ts')),
    ...(await import('../../src/speech/steps.ts')),
    ...(await import('../../src/speech/times.ts')),
    ...(await import('../../src/speech/tables.ts')),
    ...(await import('../../src/speech/shown-apart.ts')),
    ...(await import('../../src/speech/answers/verdict.ts')),
    ...(await import('../../src/pages/papers/sections/heading.tsx')),
    ...(await import('../../src/pages/workshop/readouts/figures.ts')),
    ...(await import('../../src/pages/papers/sections/expected.tsx')),
    ...(await import('../../src/pages/papers/sections/record.tsx')),
    ...(await import('../../src/pages/papers/sections/tables.tsx')),
    ...(await import('../../src/speech/playing/string-room.ts')),
    ...(await import('../../src/pages/papers/value-text.ts')),
    ...(await import('../../src/pages/workshop/controls/group-summary.ts')),
    ...(await import('../../src/pages/compare/rows.ts')),
    ...(await import('../../src/pages/compare/settings.ts')),
    ...(await import('../../src/pages/customer/sentences.ts')),
    ...(await import('../../src/scene/overlay/fret-card.ts')),
    ...(await import('../../src/speech/en/pages/customer.ts')),
    ...(await import('../../src/speech/en/pages/compare.ts')),
    ...(await import('../../src/speech/en/workshop/bow.ts')),
    ...(await import('../../src/speech/en/workshop/workshop.ts')),
  };
}

/** Everything that makes text, in one language. */
export type House = Awaited<ReturnType<typeof loadHouse>>;

export const loadBoth = () => inBothLanguages(loadHouse);

/** A build with all that is computed of it. */
export interface Known {
  readonly build: Build;
  readonly prediction: Prediction;
  /** Null where no band was asked for. */
  readonly uncertainty: Uncertainty | null;
}
