/** The prediction as JSON: its shape, bands, rod, checks, when a back-bow has gone, levelling. */
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { COMPUTED_KEYS } from '../../src/neck/quantities.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS } from '../../src/mechanics/prediction-types.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { predictionReport } from '../../src/verdict/report.ts';
import { REPORT_SHAPE, reportSchema } from '../../src/verdict/report-shape.ts';
import { expectNear } from '../expect-near.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const FEW = { samples: 400 };
const reckon = (build: Build) => ({ build, prediction: predictor.predict(build) });
const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

describe.each(PRESETS)('$id', ({ build }) => {
  it('has bands that hold what is stated, and says what the rod can do', async () => {
    const report = predictionReport(reckon(build), (await estimator.estimate(build, FEW))!);
    expect(REPORT_SHAPE.safeParse(report).error?.message).toBeUndefined();
    expect(report.bands).toMatchObject({ seed: 1, samples: 400, bite: 'unmeasured' });
    for (const method of METHODS) {
      const { frettedReliefMm, strungReliefMm, settledReliefMm, meanWedgeForceN, rodForTarget, levellingReliefMm } =
        report.methods[method];
      for (const { value, p05, p95 } of [frettedReliefMm, strungReliefMm, settledReliefMm, meanWedgeForceN]) {
        expect(p05).toBeLessThanOrEqual(value);
        expect(p95).toBeGreaterThanOrEqual(value);
      }
      expect(rodForTarget.status === 'no-rod').toBe(build.rodKind === 'none');
      expect('p50' in rodForTarget.rodSettingPercent).toBe(build.rodKind !== 'none');
      // What is reached is reached to the last digit of the report, a tenth of a micrometre.
      expect(rodForTarget.status === 'reached').toBe(Math.abs(rodForTarget.missMm) <= 1e-4);
      expect(levellingReliefMm).toHaveLength(build.fretCount);
    }
    const numbers = numbersIn(report);
    expect(numbers.length).toBeGreaterThan(300);
    // Nothing that JSON cannot say: infinities and NaN would turn into null without a word; -0 into 0.
    expect(numbers.filter((value) => !Number.isFinite(value) || Object.is(value, -0))).toEqual([]);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  });

  it('holds every check beside the numbers, as data without a sentence', () => {
    const reckoned = reckon(build);
    const { checks } = predictionReport(reckoned);
    expect(checks.map(({ code, parameter, frets }) => ({ code, parameter, frets }))).toEqual(
      checksOf(reckoned).map(({ code, parameter, frets }) => ({ code, parameter, frets })),
    );
    const texts = checks.flatMap((check) => Object.values(check).filter((value) => typeof value === 'string'));
    expect(texts.filter((text) => /\s/.test(text))).toEqual([]);
  });
});

it('gives a check with its value, its limit, its unit and its frets', () => {
  const loose = { ...defaultBuild(), kerfMm: 0.75, studWidthMm: 0.76, method: 'press' as const };
  const found = predictionReport(reckon(loose)).checks.find(({ code }) => code === 'weak-bite');
  // Bite per wall: half of studs over kerf, 0.005 mm, by hand; the limit is that of fretwork/checks/limits.ts.
  expect(found).toMatchObject({ severity: 'warn', limitKind: 'least', limit: 0.03, unit: 'mm' });
  expectNear(found!.value!, 0.005, 1e-9, 'exact but for floating point');
});

it('gives the same bands on every run, and none when it is given none', async () => {
  const { build } = PRESETS[0];
  const report = async () => predictionReport(reckon(build), (await estimator.estimate(build, FEW))!);
  expect(await report()).toEqual(await report());
  const plain = predictionReport(reckon(build));
  expect(plain).not.toHaveProperty('bands');
  expect(plain.methods.press.settledReliefMm).not.toHaveProperty('p05');
  expect(REPORT_SHAPE.safeParse(plain).success).toBe(true);
});

it('gives the days after which a back-bow has gone, and null where there is none', () => {
  const light = { ...PRESETS[2].build, biteFactor: 2.2 };
  const report = predictionReport(reckon(light));
  expect(report.methods.press.strungReliefMm.value).toBeLessThan(0);
  expect(report.methods.press.flatAfterDays.value).toBeGreaterThan(0);
  expect(report.methods.glue.flatAfterDays.value).toBeNull();
});

it('says whether the state of levelling is the build’s or an assumption', () => {
  const { build } = PRESETS[0];
  const of = (levelledIn: 'none' | 'bare' | 'strung') => predictionReport(reckon({ ...build, levelledIn }));
  expect(of('none')).toMatchObject({ levelledIn: 'bare', levelledInIsAssumed: true });
  expect(of('strung')).toMatchObject({ levelledIn: 'strung', levelledInIsAssumed: false });
  expect(of('strung').methods.press.levellingReliefMm).not.toEqual(of('bare').methods.press.levellingReliefMm);
});

describe('the shape', () => {
  /** Keys of a report that are no quantities: how it is made, ends of bands, numbers of a check. */
  const OTHERS = new Set(
    'format version build stamp program method checks raisedChecks code variant severity parameter quantity value limit limitKind unit frets about straightedge fromFret toFret levelledIn levelledInIsAssumed strings rod kind limitN limitedBy leastPercent mostPercent torqueAtLimitNm nutWay bands seed samples bite benchLog measurements necks biteLogSpread methods press glue both p05 p50 p95 mostlyFrom input sharePercent withinReachPercent rodForTarget status fromStartPercent notInTenYearsPercent frettedBoard playing pluckDirection isAssumed strengths strength mostRoom rooms overMonths verdict comesOutAsWanted stoppedBy rodStatus leastChange slotsAreSawn least most decidesMost'.split(
      ' ',
    ),
  );
  const KNOWN = new Set<string>([...COMPUTED_KEYS, ...PARAMETERS.map(({ id }) => id)]);

  interface Node {
    readonly type?: string | readonly string[];
    readonly description?: string;
    readonly properties?: Readonly<Record<string, Node>>;
    readonly items?: Node;
  }
  function keysOf(node: Node): string[] {
    const own = Object.entries(node.properties ?? {}).flatMap(([key, child]) => [key, ...keysOf(child)]);
    return node.items ? [...own, ...keysOf(node.items)] : own;
  }

  it('has one key for each quantity, the same as everywhere', () => {
    const keys = keysOf(reportSchema());
    expect(keys.length).toBeGreaterThan(100);
    expect([...new Set(keys)].filter((key) => !KNOWN.has(key) && !OTHERS.has(key))).toEqual([]);
  });

  it('tells of a fretted board where one is glued on, and only there', () => {
    const plain = predictionReport(reckon(defaultBuild()));
    const board = predictionReport(reckon({ ...defaultBuild(), workOrder: 'board-first' }));
    expect(plain).not.toHaveProperty('frettedBoard');
    expect(REPORT_SHAPE.safeParse(board).success).toBe(true);
    expect(board.frettedBoard?.clampedForceN).toHaveLength(22);
    expect(board.frettedBoard?.freeBoardBowMm).toBeGreaterThan(1);
  });

  it('is a schema that says what everything is, and refuses what it does not know', () => {
    const schema = reportSchema();
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    const press = (schema as Node).properties!['methods'].properties!['press'].properties!;
    expect(press['wedgeForceN']?.description).toContain('in N');
    expect(Object.values(press).filter(({ description }) => description === undefined)).toEqual([]);
    const report = predictionReport(reckon(defaultBuild()));
    expect(REPORT_SHAPE.safeParse({ ...report, extra: 1 }).success).toBe(false);
    expect(REPORT_SHAPE.safeParse({ ...report, stringPullN: Number.NaN }).success).toBe(false);
    expect(z.safeParse(REPORT_SHAPE, { ...report, checks: [{ code: 'x' }] }).success).toBe(false);
  });
});
