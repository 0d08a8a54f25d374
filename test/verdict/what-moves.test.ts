/** What moves the bow: levers, their sizes as the whole prediction gives them, and the band of a difference. */
import { describe, expect, it } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { raisedBy } from '../../src/verdict/raised-by.ts';
import { leversOf, whatMoves, type Lever, type WhatMoves } from '../../src/verdict/what-moves.ts';
import { expectNear } from '../expect-near.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const SAMPLES = { samples: 400 };
const build = defaultBuild();

async function movesOf(of: Build): Promise<WhatMoves> {
  return (await whatMoves(predictor, estimator, of, SAMPLES))!;
}
const found = await movesOf(build);
const moveOf = (is: (lever: Lever) => boolean) => found.moves.find(({ lever }) => is(lever))!;
const byValue = (parameter: string, to: number) =>
  moveOf((lever) => lever.kind === 'value' && lever.parameter === parameter && lever.to === to);
const settled = (change: Partial<Build>) => {
  const other = { ...build, ...change };
  return predictor.predict(other).methods[other.method].settled.extremeMm;
};

describe('each lever', () => {
  it('moves the relief by what the neck so changed is predicted to have', () => {
    const now = settled({});
    expect(found.settledMm).toBe(now);
    const others = found.moves.filter(({ lever }) => lever.kind !== 'nut');
    for (const { lever, change, settledMm } of others)
      expect([lever, settledMm]).toEqual([lever, settled(change) - now]);
  });

  it('is ranked by it', () => {
    const sizes = found.moves.map(({ settledMm }) => Math.abs(settledMm));
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    expect(found.moves.length).toBeGreaterThan(10);
  });

  it('goes the way that makers know: wider kerf, narrower studs, thinner neck and heavier strings are hollower', () => {
    expect(byValue('kerfMm', 0.6).settledMm).toBeGreaterThan(0.005);
    expect(byValue('kerfMm', 0.56).settledMm).toBeLessThan(-0.005);
    expect(byValue('studWidthMm', 0.71).settledMm).toBeGreaterThan(0.005);
    expect(moveOf((lever) => lever.kind === 'thickness' && lever.byMm < 0).settledMm).toBeGreaterThan(0.005);
    expect(moveOf((lever) => lever.kind === 'strings' && lever.set === 'six-11-49').settledMm).toBeGreaterThan(0.01);
    expect(moveOf((lever) => lever.kind === 'strings' && lever.set === 'six-9-42').settledMm).toBeLessThan(-0.01);
    expect(moveOf((lever) => lever.kind === 'nut' && lever.tighten).settledMm).toBeLessThan(-0.01);
    expect(moveOf((lever) => lever.kind === 'nut' && !lever.tighten).settledMm).toBeGreaterThan(0.01);
  });

  it('tells the bow with the frets in only where it comes before the strings', () => {
    for (const { lever, frettedMm } of found.moves)
      expect([lever, frettedMm === null]).toEqual([lever, lever.kind === 'strings' || lever.kind === 'nut']);
    expect(moveOf((lever) => lever.kind === 'method' && lever.method === 'glue').frettedMm).toBeGreaterThan(0.1);
  });

  it('raises what the checks say of the neck so changed', () => {
    const now = { build, prediction: predictor.predict(build) };
    for (const { lever, change, raised } of found.moves) {
      const other = { ...build, ...change };
      const codes = raisedBy(now, { build: other, prediction: predictor.predict(other) }).map(({ code }) => code);
      expect([lever, raised.map(({ code }) => code)]).toEqual([lever, codes]);
    }
  });
});

describe('the band of a difference', () => {
  it('holds the difference that is stated, and is much narrower than that of either relief', async () => {
    const all = (await estimator.estimate(build, SAMPLES))!.methods.press.settled;
    for (const { lever, settledMm, bandMm } of found.moves) {
      expect([lever, bandMm.p05 <= settledMm && settledMm <= bandMm.p95]).toEqual([lever, true]);
    }
    // Without wedges the neck shares their scatter with nothing.
    const alike = found.moves.filter(({ lever }) => lever.kind !== 'method' || lever.method !== 'glue');
    for (const { bandMm } of alike) expect(bandMm.p95 - bandMm.p05).toBeLessThan((all.p95 - all.p05) / 2);
  });

  it('is nothing for a neck that is changed in nothing that counts', async () => {
    const straight = { ...build, method: 'glue', glueReachPercent: 100 } as const;
    const { moves } = await movesOf(straight);
    expect(moves.some(({ lever }) => lever.kind === 'value' && lever.parameter !== 'slotDepthMm')).toBe(false);
    const light = moves.find(({ lever }) => lever.kind === 'strings' && lever.set === 'six-9-42')!;
    // Strings alone bend a glued neck: all of the difference is in proportion to their pull, so it has one sign for sure.
    expect(light.bandMm.p95).toBeLessThan(0);
  });
});

describe('levers', () => {
  it.each(PRESETS.map(({ id, build: of }) => [id, of] as const))('of %s are necks that can exist', (_id, of) => {
    const levers = leversOf({ build: of, prediction: predictor.predict(of) });
    expect(levers.length).toBeGreaterThan(4);
    for (const { change } of levers) expect(checkBuild({ ...of, ...change }).ok).toBe(true);
    const kinds = new Set(levers.map(({ lever }) => lever.kind));
    expect(kinds.has('nut')).toBe(of.rodKind !== 'none');
    // What is uneven stays uneven: each stretch of frets takes the step.
    const own = { fromFret: 3, toFret: 5, kerfMm: 0.6, tangWidthMm: 0.5, studWidthMm: 0.8 };
    const stretched = { ...build, regions: [own] };
    const wider = leversOf({ build: stretched, prediction: predictor.predict(stretched) }).find(
      ({ lever }) => lever.kind === 'value' && lever.parameter === 'kerfMm' && lever.to > lever.from,
    );
    expectNear(wider!.change.regions![0].kerfMm, 0.62, 1e-9, 'a sum');
  });

  it('given up in between there is no answer', async () => {
    let asked = 0;
    expect(await whatMoves(predictor, estimator, build, SAMPLES, () => (asked += 1) > 30)).toBeNull();
  });
});
