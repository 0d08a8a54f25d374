/** Moments of the job as sums of a prediction's lines; and the bow that a refret starts from. */
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { fretPositionsMm } from '../../src/neck/neck-shape.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS, type Moment } from '../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../src/mechanics/relief.ts';
import { startingRelief } from '../../src/mechanics/starting.ts';
import { lineAt, momentShares, straightedgeOf } from '../../src/mechanics/states.ts';
import { stringLineGrowth, wedgeLineLeft } from '../../src/mechanics/time.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';

const predictor = createPredictor();
const predict = (change: Partial<Build> = {}) => predictor.predict({ ...defaultBuild(), ...change });
const BARE: Moment = { strung: false, days: 0, rodPercent: 0 };
const STRUNG: Moment = { strung: true, days: 0, rodPercent: 0 };

describe('a bare neck', () => {
  const prediction = predict();

  it('is flat before its frets go in', () => {
    expect(lineAt(prediction, 'press', { ...BARE, fretsIn: [] }).reliefMm.every((value) => value === 0)).toBe(true);
  });

  it('bows a little further with every fret: more frets, never less back-bow', () => {
    const orders = [prediction.fretXMm.map((_, i) => i + 1), prediction.fretXMm.map((_, i) => ((i * 7) % 22) + 1)];
    for (const order of orders) {
      let before = 0;
      for (let m = 1; m <= order.length; m += 1) {
        const bow = lineAt(prediction, 'press', { ...BARE, fretsIn: order.slice(0, m) }).extremeMm;
        // A fret under the end of the straightedge moves it by a micrometre or two.
        expect(bow).toBeLessThanOrEqual(before + 0.002);
        before = bow;
      }
      expectNear(before, prediction.methods.press.fretted.extremeMm, ROUNDING, 'all of them in, in any order');
    }
  });

  it('does not wait for strings: days count from when they go on', () => {
    expect(lineAt(prediction, 'press', { ...BARE, days: 400, rodPercent: 50 }).extremeMm).toBe(
      lineAt(prediction, 'press', BARE).extremeMm,
    );
  });
});

describe('a strung neck', () => {
  it('is its frets’, strings’ and rod’s lines, each grown by its time', () => {
    const prediction = predict({ restDays: 5 });
    const { basis } = prediction.methods.both;
    const line = lineAt(prediction, 'both', { strung: true, days: 30, rodPercent: 40 });
    const stations = prediction.stationXMm.length;
    line.reliefMm.forEach((value, i) => {
      const wedges = prediction.fretXMm.reduce((sum, _, fret) => sum + basis.wedgeMm[fret * stations + i], 0);
      const expected =
        wedgeLineLeft(35, 0.5) * wedges + stringLineGrowth(30) * basis.stringsMm[i] + 0.4 * basis.rodMm[i];
      expectNothing(value - expected, 0.3, 1e-12, 'one sum in two orders');
    });
    expectNear(
      momentShares(prediction, { strung: true, days: 30, rodPercent: 40 }).wedges,
      wedgeLineLeft(35, 0.5),
      ROUNDING,
      'rest and days',
    );
  });

  it.each(METHODS)('%s: the four states of the rail are moments', (method) => {
    const build = { ...defaultBuild(), settleDays: 120, rodSettingPercent: 35 };
    const prediction = predictor.predict(build);
    const states = prediction.methods[method];
    expect(states.fretted.extremeMm).toBe(lineAt(prediction, method, BARE).extremeMm);
    expect(states.strung.extremeMm).toBe(lineAt(prediction, method, STRUNG).extremeMm);
    expect(states.settled.extremeMm).toBe(lineAt(prediction, method, { ...STRUNG, days: 120 }).extremeMm);
    expect(states.rodSet.extremeMm).toBe(
      lineAt(prediction, method, { strung: true, days: 120, rodPercent: 35 }).extremeMm,
    );
  });

  it('is measured by a straightedge from fret 1 to the joint', () => {
    const prediction = predict();
    const line = lineAt(prediction, 'glue', STRUNG);
    const edge = straightedgeOf(defaultBuild());
    const at = (x: number) => sampleLine(prediction.stationXMm, line.reliefMm, x);
    expectNothing(at(edge.fromXMm), line.extremeMm, 1e-9, 'under the straightedge');
    expectNothing(at(edge.toXMm), line.extremeMm, 1e-9, 'under the straightedge');
    expectNear(line.atFret7Mm, at(prediction.fretXMm[6]), ROUNDING, 'at fret 7');
    expectNear(line.atFret8Mm, at(prediction.fretXMm[7]), ROUNDING, 'at fret 8');
    expect(Math.abs(line.extremeMm)).toBeGreaterThanOrEqual(Math.abs(line.atFret8Mm));
    expect(line.extremeXMm).toBeGreaterThan(edge.fromXMm);
    expect(line.extremeXMm).toBeLessThan(edge.toXMm);
  });

  it('uses the buffer of an earlier call again', () => {
    const prediction = predict();
    const first = lineAt(prediction, 'press', STRUNG);
    const kept = Float64Array.from(first.reliefMm);
    const second = lineAt(prediction, 'press', { ...STRUNG, days: 10 }, first);
    expect(second.reliefMm).toBe(first.reliefMm);
    expect(lineAt(prediction, 'press', STRUNG, second).reliefMm).toEqual(kept);
  });

  it('refuses moments that are none', () => {
    const prediction = predict();
    expect(() => lineAt(prediction, 'press', { ...STRUNG, days: -1 })).toThrow('days-negative, days -1');
    expect(() => lineAt(prediction, 'press', { ...STRUNG, days: Number.NaN })).toThrow(RangeError);
    expect(() => lineAt(prediction, 'press', { ...STRUNG, rodPercent: 101 })).toThrow(
      'rod-beyond-range, rodPercent 101, mostPercent 100',
    );
    expect(() => lineAt(prediction, 'press', { ...BARE, fretsIn: [23] })).toThrow('fret-not-there, fret 23, frets 22');
    expect(() => lineAt(prediction, 'press', { ...BARE, fretsIn: [0] })).toThrow(RangeError);
    expect(() => lineAt(prediction, 'press', { ...BARE, fretsIn: [1.5] })).toThrow(RangeError);
  });
});

describe('the last frets filed lower', () => {
  const FALLING: Partial<Build> = { fallAwayMm: 0.3, fallAwayFromFret: 17 };

  it.each(['none', 'bare', 'strung'] as const)(
    'lie lower under the strings by what was filed, levelled: %s',
    (levelledIn) => {
      const [falling, plain] = [predict({ ...FALLING, levelledIn }), predict({ levelledIn })];
      const last = plain.fretXMm.length - 1;
      const at = (fret: number) => (prediction: typeof plain) =>
        sampleLine(prediction.stationXMm, lineAt(prediction, 'press', STRUNG).reliefMm, prediction.fretXMm[fret]);
      const lower = (fret: number) => at(fret)(falling) - at(fret)(plain);
      const x = (fret: number) => plain.fretXMm[fret];
      expectNear(lower(last), 0.3, 1e-9, 'the joint at fret 16 stays on the straightedge');
      expectNear(lower(19), (0.3 * (x(19) - x(16))) / (x(last) - x(16)), 1e-9, 'a straight line from fret 17');
      for (const fret of [0, 6, 15]) expectNothing(lower(fret), 0.3, 1e-9, 'not filed');
      expectNothing(lower(16), 0.3, 0.005, 'stations stand at the walls of its slot and cut the corner between');
      expect(falling.methods.press.settled.extremeMm).toBe(plain.methods.press.settled.extremeMm);
    },
  );

  it('begin before the joint: the straightedge at the joint comes down and finds less hollow', () => {
    const [falling, plain] = [predict({ ...FALLING, fallAwayFromFret: 12 }), predict()];
    expect(falling.methods.press.settled.extremeMm).toBeLessThan(plain.methods.press.settled.extremeMm);
  });

  it('change nothing of the wood, nor before there are strings', () => {
    const [falling, plain] = [predict(FALLING), predict()];
    for (const moment of [BARE, { ...STRUNG, ofWood: true }])
      expect(lineAt(falling, 'press', moment).reliefMm).toEqual(lineAt(plain, 'press', moment).reliefMm);
  });
});

describe('levelled crowns', () => {
  it('filed under string pull, the fret tops lie flat on that day, whatever the wood does', () => {
    const prediction = predict({ levelledIn: 'strung' });
    const line = lineAt(prediction, 'press', STRUNG);
    line.reliefMm.forEach((value) => expectNothing(value, 0.1, 1e-12, 'filed away'));
    expect(Math.abs(lineAt(prediction, 'press', { ...STRUNG, ofWood: true }).extremeMm)).toBeGreaterThan(0.05);
    // What settles afterwards is what a neck that was not levelled moves from then on.
    const plain = predict();
    const moved = lineAt(plain, 'press', { ...STRUNG, days: 90 }).atFret7Mm - lineAt(plain, 'press', STRUNG).atFret7Mm;
    expectNear(lineAt(prediction, 'press', { ...STRUNG, days: 90 }).atFret7Mm, moved, 1e-9, 'superposition');
  });

  it('filed on the bench, the back-bow of the frets is gone from every later state', () => {
    const [bench, plain] = [predict({ levelledIn: 'bare' }), predict()];
    const expected = lineAt(plain, 'press', STRUNG).atFret7Mm - lineAt(plain, 'press', BARE).atFret7Mm;
    expectNear(lineAt(bench, 'press', STRUNG).atFret7Mm, expected, 1e-9, 'superposition');
  });
});

describe('a refret', () => {
  const stations = predict().stationXMm;
  const edge = straightedgeOf(defaultBuild());
  const at = (line: Float64Array, x: number) => sampleLine(stations, line, x);

  it('a new neck starts flat', () => {
    expect(startingRelief(defaultBuild(), stations).every((value) => value === 0)).toBe(true);
  });

  it('one number is a bow of constant curvature between fret 1 and the joint', () => {
    const line = startingRelief({ ...defaultBuild(), job: 'refret', startingBowMm: 0.4 }, stations);
    const middle = (edge.fromXMm + edge.toXMm) / 2;
    expectNear(at(line, middle), 0.4, 1e-3, 'read between stations');
    expectNear(
      at(line, edge.fromXMm + (edge.toXMm - edge.fromXMm) / 4),
      0.3,
      2e-3,
      'a parabola: three quarters at a quarter',
    );
    expectNothing(at(line, edge.fromXMm), 0.4, 2e-3, 'read between stations');
    // Beyond the joint it runs straight on, by the slope that the parabola has there: −4·0.4 over the length of the edge.
    const beyond = edge.toXMm + 30;
    expectNear(at(line, beyond), (-4 * 0.4 * 30) / (edge.toXMm - edge.fromXMm), 1e-6, 'a straight line');
  });

  it('one number for each fret is what was measured, against the same straightedge', () => {
    const measured = fretPositionsMm(648, 22).map((_, i) => (i < 15 ? (0.02 * i * (15 - i)) / 10 : 0));
    const line = startingRelief({ ...defaultBuild(), job: 'refret', startingReliefMm: measured }, stations);
    fretPositionsMm(648, 22)
      .slice(0, 16)
      .forEach((x, i) => expectNothing(at(line, x) - measured[i], 0.1, 0.02, 'read between stations'));
  });

  it('is there from the first moment on, strung or not', () => {
    const old = predict({ job: 'refret', startingBowMm: 0.3 });
    expectNear(lineAt(old, 'press', { ...BARE, fretsIn: [] }).extremeMm, 0.3, 1e-3, 'the bow as measured');
    const difference = lineAt(old, 'press', STRUNG).atFret7Mm - lineAt(predict(), 'press', STRUNG).atFret7Mm;
    expectNear(difference, lineAt(old, 'press', { ...BARE, fretsIn: [] }).atFret7Mm, 1e-9, 'superposition');
  });
});

describe('climate', () => {
  it('adds to a strung neck what the difference between board and neck makes of it', () => {
    const damp = predict({ climateOn: true, boardMoistureChange: 3, neckMoistureChange: 0 });
    const even = predict({ climateOn: true, boardMoistureChange: 3, neckMoistureChange: 3 });
    const off = predict({ climateOn: false, boardMoistureChange: 3, neckMoistureChange: 0 });
    // A board that swells more than its neck bends it backwards.
    expect(damp.methods.glue.strung.extremeMm).toBeLessThan(off.methods.glue.strung.extremeMm);
    expectNear(even.methods.glue.strung.extremeMm, off.methods.glue.strung.extremeMm, 1e-9, 'both swell alike: no bow');
    const dry = predict({ climateOn: true, boardMoistureChange: -3, neckMoistureChange: 0 });
    const change = (prediction: typeof damp) =>
      prediction.methods.glue.strung.atFret7Mm - off.methods.glue.strung.atFret7Mm;
    expectNear(change(dry), -change(damp), 1e-9, 'linear');
  });
});
