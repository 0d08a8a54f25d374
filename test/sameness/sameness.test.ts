/**
 * One number wherever it stands: for every preset and for builds drawn at random, `predict` and the CSV files hold one
 * value under one key, and every other surface says the one formatter's text of it, in both unit systems and languages.
 *
 *     SAMENESS_BUILDS=10000 npx vitest run --project unit-page test/sameness
 */
import { expect, test } from 'vitest';
import { draw } from '../draw.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import type { Build } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { NO_EVIDENCE } from '../../src/mechanics/neck-readings/evidence.ts';
import { gripReferenceTo } from '../../src/mechanics/neck-readings/grip-reference.ts';
import { hear, narrowedBy } from '../../src/mechanics/neck-readings/heard.ts';
import { STRIP } from '../mechanics/try-strip/strips.ts';
import { waysOf } from '../../src/verdict/ways.ts';
import { buildOfSeed } from '../sweep/sweep.ts';
import { Notes, type Difference, type Surface } from './hold.ts';
import { loadBoth, type Known } from './house.ts';
import { fretCard, readouts, verdict } from './page.ts';
import { checks, expected, files, given, roomChart, setUp, steps, tables } from './sheet.ts';
import { comparison, customer } from './told.ts';
import { truthOf } from './truth.ts';

const BUILDS = Number(process.env['SAMENESS_BUILDS'] ?? draw(1000, 200));
const FIRST_SEED = 300_000;
/** So many of the first say all of it in both languages and both units, those after them in one of the four, in turn. */
const IN_ALL = 400;
/** Bands are dear: one build in so many has them, drawn from few samples; the presets all have them. */
const BANDED = 8;
const SAMPLES = 100;
/** Differences that are printed; all are counted. */
const SHOWN = 40;

const { english, german } = await loadBoth();
const houses = [english, german];
const predictor = createPredictor();
const estimator = createEstimator(predictor);

async function known(build: Build, banded: boolean): Promise<Known> {
  const prediction = predictor.predict(build);
  return { build, prediction, uncertainty: banded ? await estimator.estimate(build, { samples: SAMPLES }) : null };
}

const MANNERS = houses.flatMap((house) => (['metric', 'inch'] as const).map((system) => ({ house, system })));

/** Says every surface of a build in languages and units. */
async function sayAll(build: Build, banded: boolean, notes: Notes, manners = MANNERS): Promise<void> {
  await sayKnown(await known(build, banded), notes, manners);
}

async function sayKnown(of: Known, notes: Notes, manners = MANNERS): Promise<void> {
  const { build } = of;
  const truth = truthOf(of);
  const otherWay = waysOf(build).builds.find(({ method }) => method !== build.method);
  const surfaces: Surface[] = [
    readouts,
    verdict,
    fretCard,
    tables,
    files,
    setUp,
    roomChart,
    expected,
    steps,
    given,
    checks,
    customer,
  ];
  if (otherWay) surfaces.push(comparison(truth, truthOf(await known(otherWay, false))));
  for (const { house, system } of manners) for (const say of surfaces) say(truth, house, system, notes);
}

/** A neck that refers to a strip, and what the strip leaves of its bands. */
async function narrowed(build: Build): Promise<Known> {
  const evidence = {
    ...NO_EVIDENCE,
    strips: [{ strip: { ...STRIP, readings: STRIP.readings.slice(0, 1) }, ownBoard: true }],
  };
  const heard = hear(build, evidence, undefined, { samples: SAMPLES });
  const taken = { ...build, ...heard.taken, gripReference: gripReferenceTo(build, evidence, heard) };
  const options = narrowedBy(hear(taken, evidence, undefined, { samples: SAMPLES }));
  const uncertainty = await estimator.estimate(taken, { samples: SAMPLES, ...options });
  return { build: taken, prediction: predictor.predict(taken), uncertainty };
}

/** How many differ by surface and key, and the first of each. */
function summary({ differences }: Notes): string[] {
  const groups = new Map<string, Difference[]>();
  for (const found of differences) {
    const name = `${found.surface}: ${found.key}`;
    groups.set(name, [...(groups.get(name) ?? []), found]);
  }
  return [...groups]
    .map(([name, all]) => `${all.length} × ${name}: ${all[0].said} where it is ${all[0].wanted}`)
    .slice(0, SHOWN);
}

const SURFACES = [
  'page',
  'verdict',
  'card of a fret',
  'tables',
  'csv',
  'set-up',
  'room',
  'sheet',
  'steps',
  'comparison',
  'record',
  'checks',
  'customer',
];

test.each(PRESETS.map(({ id, build }) => [id, build] as const))(
  '%s: every surface says one number',
  async (_id, build) => {
    const notes = new Notes();
    await sayAll(build, true, notes);
    expect(summary(notes)).toEqual([]);
  },
);

test('a neck narrowed by a strip: every surface says one number, and it is the narrowed one', async () => {
  const { build } = PRESETS[0];
  const [wide, narrow] = [await known(build, true), await narrowed(build)];
  const width = ({ uncertainty }: Known) => {
    const { p05, p95 } = uncertainty!.methods[build.method].fretted;
    return p95 - p05;
  };
  expect(width(narrow)).toBeLessThan(0.75 * width(wide));
  const notes = new Notes();
  await sayKnown(narrow, notes);
  expect(summary(notes)).toEqual([]);
});

test(
  `${BUILDS} builds drawn at random, seeds ${FIRST_SEED} and up: every surface says one number`,
  async () => {
    const notes = new Notes();
    for (let n = 0; n < BUILDS; n += 1) {
      const manners = n < IN_ALL ? MANNERS : [MANNERS[n % MANNERS.length]];
      // In the same turn no manner would ever be said with a band, or always.
      const banded = Math.trunc(n / MANNERS.length) % BANDED === 0;
      await sayAll(buildOfSeed(FIRST_SEED + n), banded, notes, manners);
    }
    expect(summary(notes)).toEqual([]);
    // No surface has fallen silent.
    for (const surface of SURFACES)
      expect([surface, (notes.compared.get(surface) ?? 0) > BUILDS]).toEqual([surface, true]);
  },
  60_000 + 6000 * BUILDS,
);

test('a number that is said otherwise is noted', () => {
  const notes = new Notes();
  notes.same('page', 'kerfMm', '0.58\u00a0mm', '0.580\u00a0mm');
  notes.sentence('sheet', 'kerfMm', 'sawn to 0.58\u00a0mm, 3.00\u00a0mm deep', ['3.00\u00a0mm']);
  expect(notes.differences).toHaveLength(2);
});
