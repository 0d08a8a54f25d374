/** Try strips: what one will do, many samples of it, and what its readings, or those of the neck, leave of the grip. */
import { defaultBuild } from '../../src/neck/build.ts';
import { NO_EVIDENCE } from '../../src/mechanics/neck-readings/evidence.ts';
import { hear, hearingSteps, ownNeck } from '../../src/mechanics/neck-readings/heard.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { runAtOnce } from '../../src/mechanics/steps.ts';
import { gripPosterior } from '../../src/mechanics/try-strip/grip-posterior.ts';
import { deviatesAt } from '../../src/mechanics/try-strip/places.ts';
import { placesAlone, predictStrip } from '../../src/mechanics/try-strip/predicted.ts';
import { stripModel } from '../../src/mechanics/try-strip/strip-model.ts';
import { sampleStrip } from '../../src/mechanics/try-strip/strip-samples.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { normalDeviates } from '../../src/mechanics/uncertainty/normal.ts';
import { STRIP } from '../mechanics/try-strip/strips.ts';
import { PULL, QUARTERS, ROD } from '../mechanics/neck-readings/read-neck.ts';
import { modelOf } from '../mechanics/uncertainty/model-of.ts';
import { measure, type BenchRow } from './measure.ts';

const MANY = 20_000;

export default async function bench(): Promise<BenchRow[]> {
  const neck = defaultBuild();
  let depth = 0;
  /** Another strip each time, which nobody has solved before. */
  const another = () => {
    depth = (depth + 1) % 1000;
    return { ...STRIP, slotDepthMm: 3 + depth / 10_000 };
  };
  const model = stripModel(STRIP, neck, false);
  const places = placesAlone(model);
  const deviates = deviatesAt(places, normalDeviates(1, MANY, places.dimensions), MANY);
  const readings = STRIP.readings.map((reading) => ({ ...reading, instrument: 'feelers' as const, ownErrorMm: null }));
  const weight = { test: 'weight', state: 'slotted', loadN: 5, loadG: null, spanMm: 280, sagMm: 0.402 } as const;
  const strip = { ...STRIP, readings, offcut: { ...STRIP.offcut, stiffness: weight } };
  const read = { ...NO_EVIDENCE, own: [PULL, ROD, QUARTERS] };
  const predictor = createPredictor();
  const own = ownNeck(neck, read, modelOf(neck, predictor));
  const estimator = createEstimator(predictor);
  return [
    await measure('hump of a strip of twelve frets, as stated', () => stripModel(another(), neck, false).statedHumpMm, {
      aimMs: 100,
    }),
    await measure('its band, of a strip that was solved', () => predictStrip(model)),
    await measure('20 000 samples of a strip with three groups', () => sampleStrip(model, deviates), { aimMs: 100 }),
    await measure(
      'grip from a strip with three groups, solved and weighed',
      () => gripPosterior(neck, [{ strip, ownBoard: false }]),
      { aimMs: 300, budgetMs: 3000 },
    ),
    await measure('grip from pull, rod and quarters of the neck, which was solved', () => hear(neck, read, own), {
      aimMs: 300,
      budgetMs: 3000,
    }),
    await measure('the same with the neck solved first', () => runAtOnce(hearingSteps(estimator, neck, read)), {
      budgetMs: 3000,
    }),
  ];
}
