/** The finite-element solve and what follows from it. */
import { defaultBuild } from '../../src/neck/build.ts';
import { assemble, hold, withSlots } from '../../src/mechanics/elements/assembly.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import { EMPTY } from '../../src/mechanics/description.ts';
import { createNeckModel, influenceOf, solveInfluence } from '../../src/mechanics/influence.ts';
import { createLoads } from '../../src/mechanics/elements/loads.ts';
import { createMesh } from '../../src/mechanics/elements/mesh.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createSection } from '../../src/mechanics/elements/section.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { measure, type BenchRow, type Yardstick } from './measure.ts';

/** Multiplications and additions of the factor and of the substitutions that are not skipped. */
function solveFlop(frets: number): number {
  const { assembly, loads } = createNeckModel(describeNeck({ ...defaultBuild(), fretCount: frets }, AS_STATED));
  const { order, halfBandwidth: b } = assembly.shape;
  let flop = order * b * b;
  for (const { freedoms } of loads.cases) {
    const first = freedoms.reduce((least, dof) => Math.min(least, dof), order);
    flop += 2 * b * (order - first) + 2 * b * order;
  }
  return flop;
}

export default async function bench(yardstick: Yardstick): Promise<BenchRow[]> {
  const build = { ...defaultBuild(), fretCount: 24 };
  const description = describeNeck(build, AS_STATED);
  const model = createNeckModel(description);
  const { assembly, loads } = model;
  const rows: BenchRow[] = [];
  rows.push(await measure('mesh and assembly, 24 frets', () => assemble(createMesh(createSection(description)))));
  rows.push(await measure('load cases', () => createLoads(assembly)));
  const { order, halfBandwidth } = assembly.shape;
  rows.push(
    await measure('factor', () => hold(assembly, withSlots(assembly, EMPTY)), {
      flop: order * halfBandwidth ** 2,
      yardstick,
    }),
  );
  const factor = hold(assembly, withSlots(assembly, EMPTY));
  rows.push(
    await measure('all influence vectors from the factor', () => influenceOf(assembly, loads, factor), {
      flop: solveFlop(24) - order * halfBandwidth ** 2,
      yardstick,
    }),
  );
  const shears = { alongWidth: 0.11, depthWidth: 0.03 };
  const fan = {
    rise: { atNut: -20, slope: 40 / 500 },
    run: description.widthMm,
    boardShears: shears,
    neckShears: description.neck.map(() => shears),
  };
  rows.push(
    await measure(
      'full solve after a change of geometry, 24 slanted frets, with their twist',
      () => solveInfluence(createNeckModel({ ...description, fan }), EMPTY),
      { aimMs: 60 },
    ),
  );
  for (const frets of [12, 24, 36]) {
    const described = describeNeck({ ...build, fretCount: frets, scaleLengthMm: 900 }, AS_STATED);
    rows.push(
      await measure(
        `full solve after a change of geometry, ${frets} frets`,
        () => solveInfluence(createNeckModel(described), EMPTY),
        {
          flop: solveFlop(frets),
          yardstick,
          ...(frets === 24 ? { aimMs: 12 } : {}),
        },
      ),
    );
  }

  let thickness = 0;
  const predictor = createPredictor();
  rows.push(
    await measure('prediction of all three methods after a change of geometry', () => {
      thickness = (thickness + 1) % 1000;
      return predictor.predict({ ...build, thicknessFret12Mm: 23 + thickness / 1000 });
    }),
  );
  let kerf = 0;
  rows.push(
    await measure(
      'prediction after a change of kerf, press fit (cached mesh)',
      () => {
        kerf = (kerf + 1) % 5;
        return predictor.predict({ ...build, kerfMm: 0.55 + kerf / 100 });
      },
      { aimMs: 0.3 },
    ),
  );
  let fresh = 0;
  rows.push(
    await measure('prediction after a change to a new kerf (cached mesh, slots filled anew)', () => {
      fresh = (fresh + 1) % 1000;
      return predictor.predict({ ...build, kerfMm: 0.55 + fresh / 20_000 });
    }),
  );
  let flip = false;
  rows.push(
    await measure(
      'prediction after a change of method',
      () => {
        flip = !flip;
        return predictor.predict({ ...build, method: flip ? 'press' : 'both' });
      },
      { aimMs: 0.3 },
    ),
  );
  const prediction = predictor.predict(build);
  const line = lineAt(prediction, 'press', { strung: false, days: 0, rodPercent: 0 });
  let day = 0;
  rows.push(
    await measure('one state of the rail', () => {
      day = (day + 1) % 100;
      return lineAt(prediction, 'press', { strung: true, days: day, rodPercent: 10 }, line);
    }),
  );
  return rows;
}
