/** Advice while frets go in passes the checks, and chooses among what is in the drawer. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { fretsInAfterQuarters } from '../../src/fretwork/plan/seating-order.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { NO_EVIDENCE } from '../../src/mechanics/neck-readings/evidence.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { runAtOnce } from '../../src/mechanics/steps.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { frettingSteps, type FrettingAdvice, type StockForRest } from '../../src/verdict/fretting-advice.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const NECK: Build = { ...PRESETS[0].build, rodKind: 'none' };
const NO_STOCK: StockForRest = { bladesMm: [], wires: [] };

function adviceFor(bite: number, stock: StockForRest, quarters = 2): FrettingAdvice {
  const truth = predictor.predict(NECK, { ...AS_STATED, bite });
  const readings = fretsInAfterQuarters(NECK)
    .slice(0, quarters)
    .map((fretsIn) => {
      const { extremeMm } = lineAt(truth, NECK.method, { strung: false, days: 0, rodPercent: 0, fretsIn });
      return { seated: fretsIn.length, measuredMm: extremeMm, errorMm: 0.02 };
    });
  const wantedMm = predictor.predict(NECK).methods[NECK.method].settled.extremeMm;
  const job = { build: NECK, readings, evidence: NO_EVIDENCE, wantedMm };
  return runAtOnce(frettingSteps(predictor, estimator, job, stock, { samples: 400 }));
}

describe('advice while frets go in', () => {
  test('going on comes first and raises nothing; gluing the rest is always there', () => {
    const { outcomes, advised } = adviceFor(1, NO_STOCK);
    expect(outcomes[0]).toMatchObject({ change: { code: 'go-on' }, raised: [], isOffered: true });
    // Glued frets need no bite, so nothing stops it.
    expect(outcomes.at(-1)).toMatchObject({ change: { code: 'glue' }, isOffered: true });
    expect(advised).toBe(0);
  });

  test('slots are opened and never closed: blades as narrow as the slots, or as wide as the studs, are left in the drawer', () => {
    const { kerfMm, studWidthMm } = NECK;
    const bladesMm = [kerfMm - 0.03, kerfMm, kerfMm + 0.07, kerfMm + 0.02, kerfMm + 0.07, studWidthMm];
    const { outcomes } = adviceFor(1, { bladesMm, wires: [] }, 1);
    const kerfs = outcomes.flatMap(({ change }) => (change.code === 'kerf' ? [change.kerfMm] : []));
    expect(kerfs).toEqual([kerfMm + 0.02, kerfMm + 0.07]);
  });

  test('the wire in the slots is no other wire', () => {
    const { tangWidthMm, studWidthMm } = NECK;
    const fatter = { tangWidthMm, studWidthMm: studWidthMm + 0.05 };
    const { outcomes } = adviceFor(1, { bladesMm: [], wires: [{ tangWidthMm, studWidthMm }, fatter] }, 1);
    expect(outcomes.flatMap(({ change }) => (change.code === 'wire' ? [change] : []))).toEqual([
      { code: 'wire', ...fatter },
    ]);
  });

  test('what the checks stop is told and never advised', () => {
    // A tang as wide as this crushes the walls of slots that are sawn already.
    const crushing = { tangWidthMm: NECK.kerfMm + 0.25, studWidthMm: NECK.studWidthMm + 0.25 };
    const { outcomes, advised } = adviceFor(0.25, { bladesMm: [NECK.kerfMm + 0.03], wires: [crushing] });
    const other = outcomes.find(({ change }) => change.code === 'wire')!;
    expect(other.raised.some(({ severity }) => severity === 'stop')).toBe(true);
    expect(other.isOffered).toBe(false);
    expect(outcomes[advised].isOffered).toBe(true);
  });

  test('studs that bite far too hard: stop, with what is in the drawer', () => {
    const { outcomes, advised, bite } = adviceFor(2.2, { bladesMm: [0.62, 0.66, 0.7], wires: [] });
    expect(advised).toBeGreaterThan(0);
    expect(outcomes[advised].within).toBeGreaterThan(outcomes[0].within);
    expect(bite.p50).toBeGreaterThan(1.4);
  });
});
