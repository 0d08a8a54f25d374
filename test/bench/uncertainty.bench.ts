/** The Monte Carlo, the band of a moment, the bench log, and the way back from a wanted relief. */
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { bitePosterior } from '../../src/mechanics/bench-log/posterior.ts';
import { solveKerf } from '../../src/mechanics/inversion/kerf.ts';
import { planPlaning } from '../../src/mechanics/inversion/planing.ts';
import { solveRod } from '../../src/mechanics/inversion/rod.ts';
import { goalOf } from '../../src/mechanics/inversion/goal.ts';
import { solveTarget } from '../mechanics/inversion/every-way.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { runAtOnce } from '../../src/mechanics/steps.ts';
import { bandAt } from '../../src/mechanics/uncertainty/band-at.ts';
import { createEstimator, type Estimator } from '../../src/mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../../src/mechanics/uncertainty/types.ts';
import { ENTRY } from '../mechanics/bench-log/entries.ts';
import { measure, type BenchRow } from './measure.ts';

const run = (estimator: Estimator, build: Build): Uncertainty => runAtOnce(estimator.steps(build));

export default async function bench(): Promise<BenchRow[]> {
  const build: Build = { ...defaultBuild(), fretCount: 24 };
  const predictor = createPredictor();
  const estimator = createEstimator(predictor);
  const rows: BenchRow[] = [];

  let thickness = 0;
  rows.push(
    await measure(
      'band of 2 000 samples after a change of geometry (Monte Carlo)',
      () => {
        thickness = (thickness + 1) % 1000;
        const changed = { ...build, thicknessFret12Mm: 23 + thickness / 1000 };
        predictor.predict(changed);
        return run(estimator, changed);
      },
      { aimMs: 300, budgetMs: 2000 },
    ),
  );
  let kerf = 0;
  rows.push(
    await measure(
      'the same after a change of kerf',
      () => {
        kerf = (kerf + 1) % 100;
        return run(estimator, { ...build, kerfMm: 0.55 + kerf / 1000 });
      },
      { aimMs: 150, budgetMs: 2000 },
    ),
  );
  const uncertainty = run(estimator, build);
  let day = 0;
  rows.push(
    await measure(
      'band of one state of the rail',
      () => {
        day = (day + 1) % 100;
        return bandAt(uncertainty, 'press', { strung: true, days: day, rodPercent: 10 });
      },
      { aimMs: 3 },
    ),
  );
  rows.push(await measure('bite factor from 50 necks of the bench log', () => bitePosterior(Array(50).fill(ENTRY))));

  const prediction = predictor.predict(build);
  const goal = goalOf(build);
  rows.push(
    await measure('kerf for a wanted relief, press fit', () => solveKerf(predictor, build, goal, 'press'), {
      aimMs: 50,
    }),
  );
  let target = 0;
  rows.push(
    await measure(
      'kerf for a wanted relief, press and glue',
      () => {
        target = (target + 1) % 50;
        return solveKerf(predictor, build, { ...goal, reliefMm: 0.05 + target / 1000 }, 'both');
      },
      { aimMs: 200 },
    ),
  );
  rows.push(await measure('rod setting for a wanted relief', () => solveRod(prediction, 'press', goal), { aimMs: 3 }));
  rows.push(await measure('planing table', () => planPlaning(prediction, 'press', goal), { aimMs: 3 }));
  rows.push(
    await measure(
      'every way to a wanted relief at once',
      () => {
        target = (target + 1) % 50;
        return solveTarget(predictor, build, { ...goal, reliefMm: 0.05 + target / 1000 });
      },
      { aimMs: 300 },
    ),
  );
  return rows;
}
