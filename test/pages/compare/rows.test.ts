/** The table of differences says what the library says, and its reasons follow from the numbers. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../tools/presets.ts';
import { glueNeeded } from '../../../src/fretwork/glue.ts';
import { fretworkSteps } from '../../../src/fretwork/plan/steps.ts';
import { METHODS, type Method, type Moment } from '../../../src/mechanics/prediction-types.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { bandAt } from '../../../src/mechanics/uncertainty/band-at.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../../../src/mechanics/uncertainty/types.ts';
import { neckLabels } from '../../../src/pages/compare/labels.ts';
import { lineStyles } from '../../../src/pages/compare/line-styles.ts';
import { neckNumbers, type NeckNumbers } from '../../../src/verdict/compared-numbers.ts';
import { flexibleText } from '../../../src/pages/compare/reasons.ts';
import { differenceRows, isSame, type RowId } from '../../../src/pages/compare/rows.ts';
import { differingSettings, settingsBetween } from '../../../src/pages/compare/settings.ts';
import { bowBandText, bowText } from '../../../src/speech/bow.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const maple = PRESETS[0].build;
const STRUNG: Moment = { strung: true, days: 0, rodPercent: 0 };
const ORDER = 'sums of the same numbers in another order';

const numbersOf = (build: Build, uncertainty: Uncertainty | null = null, moment = STRUNG): NeckNumbers =>
  neckNumbers(build, moment, predictor.predict(build), uncertainty);

function rowOf(builds: readonly Build[], id: RowId, system: 'metric' | 'inch' = 'metric') {
  const row = differenceRows(
    builds.map((build) => numbersOf(build)),
    'just strung',
    system,
  ).find((each) => each.id === id);
  return row!;
}

const whyOf = (builds: readonly Build[], id: RowId, neck: number) =>
  rowOf(builds, id).why.find((each) => each.neck === neck)?.text ?? '';

const ways = METHODS.map((method): Build => ({ ...maple, method }));
const [press, glue, both] = ways as [Build, Build, Build];

describe('numbers', () => {
  let uncertainty: Uncertainty;
  beforeAll(async () => {
    uncertainty = (await estimator.estimate(maple, { samples: 300 }))!;
  });

  test.each(METHODS)('of %s are the library’s', (method: Method) => {
    const build = { ...maple, method };
    const prediction = predictor.predict(build);
    const of = prediction.methods[method];
    const numbers = numbersOf(build, uncertainty);
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(numbers.fretted).toEqual({ mm: of.fretted.extremeMm, band: uncertainty.methods[method].fretted });
    expect(numbers.strung).toEqual({ mm: of.strung.extremeMm, band: uncertainty.methods[method].strung });
    expect(numbers.settled).toEqual({ mm: of.settled.extremeMm, band: uncertainty.methods[method].settled });
    expect(numbers.now).toEqual({
      mm: lineAt(prediction, method, STRUNG).extremeMm,
      band: bandAt(uncertainty, method, STRUNG).extreme,
    });
    expect(numbers.rod!.setting).toBe(uncertainty.methods[method].rodPercentForTarget);
    expect(numbers.extraFlexibility).toBe(of.extraFlexibility);
    expect(numbers.pullOutN).toBe(mean(of.pullOutForceN));
    expect(numbers.seatingN).toBe(mean(of.seatingForceN));
    expect(numbers.glueMm3).toBe(glueNeeded(build).totalMm3);
    expect(numbers.steps.map(({ id }) => id)).toEqual(fretworkSteps(build).map(({ id }) => id));
  });

  test('the frets and what was there before make the bow with the frets in', () => {
    const numbers = numbersOf({ ...maple, job: 'new' });
    expectNear(numbers.wedgesMm, numbers.fretted.mm, ROUNDING, ORDER);
  });

  test('friction is all that holds a dry fret, and none of what holds a glued one', () => {
    const dry = numbersOf(press);
    expectNear(dry.frictionN, dry.pullOutN, ROUNDING, ORDER);
    expect(numbersOf(glue).frictionN).toBe(0);
    const wedged = numbersOf(both);
    expectNear(wedged.pullOutN - wedged.frictionN, numbersOf(glue).pullOutN, ROUNDING, ORDER);
  });
});

describe('the table', () => {
  test('prints bow and band as the rest of the page does, in both units', async () => {
    const uncertainty = (await estimator.estimate(maple, { samples: 300 }))!;
    for (const system of ['metric', 'inch'] as const) {
      const numbers = ways.map((build) => numbersOf(build, uncertainty));
      const rows = differenceRows(numbers, 'just strung', system);
      for (const [index, method] of METHODS.entries()) {
        const { fretted } = predictor.predict(maple).methods[method];
        const band = uncertainty.methods[method].fretted;
        const cell = rows.find(({ id }) => id === 'fretted')!.cells[index];
        expect(cell.value).toBe(bowText(fretted.extremeMm, system));
        expect(cell.band).toBe(bowBandText(band.p05, band.p95, system));
      }
    }
  });

  test('says “band …” only while it is computed, and never prints what is no number', () => {
    for (const preset of PRESETS) {
      const rows = differenceRows(
        [maple, preset.build].map((build) => numbersOf(build)),
        'just strung',
        'metric',
      );
      expect(JSON.stringify(rows)).not.toMatch(/NaN|Infinity|undefined/);
      expect(rows.find(({ id }) => id === 'settled')!.cells.every(({ band }) => band === undefined)).toBe(true);
    }
  });

  test('finds no difference between a neck and itself', () => {
    const rows = differenceRows(
      [press, press].map((build) => numbersOf(build)),
      'just strung',
      'metric',
    );
    expect(rows.filter(({ id }) => id !== 'now').every(isSame)).toBe(true);
  });
});

describe('reasons', () => {
  const percent = (share: number) => `${(100 * share).toFixed(0)}\u00a0%`;

  test('slots: as many per cent more flexible as the library says', () => {
    const share = predictor.predict(press).methods.press.extraFlexibility;
    expect(share).toBeGreaterThan(0.05);
    expect(whyOf(ways, 'flexibility', 0)).toMatch(
      new RegExp(`^Empty slots: ${percent(share)} more flexible under the strings;`),
    );
    expect(whyOf(ways, 'flexibility', 1)).toMatch(/^Slots filled with glue: .* under the strings;/);
    expect(whyOf([glue, press], 'strung', 1)).toContain(
      `empty slots: ${percent(share)} more flexible under the strings`,
    );
  });

  test('a filling that is stiffer than the wood is called so', () => {
    expect([0.342, 0.004, -0.004, -0.02].map(flexibleText)).toEqual([
      '34\u00a0% more flexible',
      'as stiff as unsawn',
      'as stiff as unsawn',
      '2\u00a0% stiffer',
    ]);
  });

  test('no wedge without bite, and the force of the other', () => {
    const force = numbersOf(press).wedgeForceN.toFixed(0);
    expect(whyOf(ways, 'fretted', 1)).toBe(
      `Nothing wedges: the studs slide into slots of ${numbersOf(glue).kerfMm.toFixed(3)}\u00a0mm; where the first wedges each with ${force}\u00a0N.`,
    );
    expect(whyOf([glue, press], 'fretted', 1)).toBe(`Each fret wedges its slot with ${force}\u00a0N.`);
  });

  test('a wider kerf: less force, by the ratio of the two, and less bite', () => {
    const wide: Build = { ...maple, name: 'Wide', kerfMm: maple.kerfMm + 0.02 };
    const [one, other] = [numbersOf(wide), numbersOf(maple)];
    const why = whyOf([maple, wide], 'fretted', 1);
    expect(why).toContain(
      `Each fret wedges with ${one.wedgeForceN.toFixed(0)}\u00a0N instead of ${other.wedgeForceN.toFixed(0)}\u00a0N`,
    );
    expect(why).toContain(`(${percent(1 - one.wedgeForceN / other.wedgeForceN)} less)`);
    expect(why).toContain('the studs bite');
    expect(whyOf([wide, maple], 'fretted', 1)).toContain(`(${percent(other.wedgeForceN / one.wedgeForceN - 1)} more)`);
  });

  test('steps: what glue adds, and what it lets out when it goes', () => {
    expect(whyOf(ways, 'steps', 1)).toMatch(/^More: .*glue.*clamp/);
    expect(whyOf([glue, press], 'steps', 1)).toMatch(/^Left out: .*glue.*clamp/);
  });

  test('rod: nothing is asked of one that is not there', () => {
    const without: Build = { ...maple, rodKind: 'none', rodSettingPercent: 0 };
    expect(rowOf([maple, without], 'rod').cells[1].value).toBe('no rod');
    expect(whyOf([maple, without], 'rod', 1)).toBe('There is no rod to make up for it.');
  });

  test('refret: sharp edges are told with their number', () => {
    const sharp: Build = { ...maple, chamferMm: 0.05 };
    expect(rowOf([maple, sharp], 'refret').cells[1].value).not.toBe(rowOf([maple, maple], 'refret').cells[1].value);
    expect(whyOf([maple, sharp], 'refret', 1)).toContain('chamfered only 0.05\u00a0mm');
  });
});

describe('names and lines', () => {
  test('go by the way of seating, by name, or by both; never two alike', () => {
    expect(neckLabels(ways)).toEqual(['press fit', 'glue fit', 'press and glue']);
    expect(neckLabels([PRESETS[0].build, PRESETS[1].build])).toEqual([PRESETS[0].label, PRESETS[1].label]);
    const kerf = { ...glue, kerfMm: 0.6 };
    expect(neckLabels([press, kerf])).toEqual([`${maple.name}, press fit`, `${maple.name}, glue fit`]);
    expect(new Set(neckLabels([press, press, kerf])).size).toBe(3);
  });

  test('are drawn as their way of seating, or else by place', () => {
    expect(lineStyles([both, press])).toEqual(['both', 'press']);
    expect(lineStyles([press, press, glue])).toEqual(['press', 'glue', 'both']);
  });
});

describe('settings that differ', () => {
  test('are those and no others, in the words of the controls, with lists as the sheet says them', () => {
    const other: Build = { ...maple, kerfMm: 0.61, laminates: [{ wood: 'mahogany', share: 1 }], name: 'Other' };
    const groups = differingSettings([maple, other], 'metric');
    expect(groups.map(({ id, settings }) => [id, settings.map((setting) => setting.id)])).toEqual([
      ['neck', ['laminates']],
      ['slots', ['kerfMm']],
    ]);
    expect(groups[1].settings[0].texts).toEqual(['0.580\u00a0mm', '0.610\u00a0mm']);
    expect(groups[0].settings[0].texts[1]).toContain('mahogany');
    expect(settingsBetween(groups[1], maple, other)).toEqual(['kerfMm']);
    expect(settingsBetween(groups[1], maple, maple)).toEqual([]);
    expect(differingSettings([maple, { ...maple, notes: 'x' }], 'metric')).toEqual([]);
  });
});
