/** Shapes: building them after a change, and bowing all of them, which is one step of the rail. */
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PARAMETERS, type ParameterId } from '../../src/neck/parameters.ts';
import { createBender, createBowReader } from '../../src/geometry/bend.ts';
import { PART_IDS, PARTS, partChanged, type PartId } from '../../src/geometry/parts.ts';
import { counted, measure, type BenchRow } from './measure.ts';
import { parameterName } from '../../src/speech/names.ts';

/** A change in each group of the controls that shapes something. */
const CHANGES: readonly ParameterId[] = [
  'widthNutMm',
  'backExponent',
  'boardThicknessMm',
  'crownHeightMm',
  'kerfMm',
  'endBevelDegrees',
  'stringEdgeMm',
];

export default async function bench(): Promise<BenchRow[]> {
  const build: Build = { ...defaultBuild(), fretCount: 24, bindingLineCount: 3 };
  const shown = PART_IDS.filter((id) => id !== 'looseFrets');
  const rows: BenchRow[] = [];
  rows.push(
    await measure(
      'all shapes of a neck, 24 frets, three lines of binding',
      () => shown.map((id) => PARTS[id].make(build)),
      { aimMs: 40 },
    ),
  );
  for (const id of CHANGES) {
    const parameter = PARAMETERS.find((candidate) => candidate.id === id);
    if (parameter?.kind !== 'number') continue;
    const changed = { ...build, [id]: build[id as 'kerfMm'] + parameter.step } as Build;
    const touched = shown.filter((part) => partChanged(part, build, changed));
    rows.push(
      await measure(
        `shapes after a change of ${parameterName(id).toLowerCase()}`,
        () => touched.map((part) => PARTS[part].make(changed)),
        { budgetMs: 500 },
      ),
    );
  }
  rows.push(
    await measure('frets out of their slots, with studs', () => PARTS.looseFrets.make(build), { budgetMs: 500 }),
  );

  const benders = Object.fromEntries(PART_IDS.map((id) => [id, createBender(PARTS[id].make(build))])) as Record<
    PartId,
    ReturnType<typeof createBender>
  >;
  const reader = createBowReader();
  const xMm = Float64Array.from({ length: 260 }, (_, i) => i * 2);
  const reliefMm = xMm.map((x) => -0.3 * Math.sin(x / 150));
  const lift = new Float64Array(24);
  let factor = 0;
  const bow = (ids: readonly PartId[]): void => {
    factor = (factor + 1) % 200;
    reader.load({ xMm, reliefMm, factor });
    for (const id of ids) benders[id].bend(reader, lift);
  };
  rows.push(await measure('bowing the whole neck (one step of the rail)', () => bow(shown), { aimMs: 3 }));
  rows.push(await measure('bowing it with all frets out of their slots', () => bow(PART_IDS), { budgetMs: 500 }));
  const count = (ids: readonly PartId[], pick: (id: PartId) => number): number =>
    ids.reduce((sum, id) => sum + pick(id), 0);
  rows.push(
    counted(
      'triangles of the whole neck',
      count(shown, (id) => benders[id].mesh.indices.length / 3),
      '',
      80_000,
    ),
  );
  rows.push(
    counted(
      'vertices of the whole neck',
      count(shown, (id) => benders[id].mesh.anchorOf.length),
      '',
      60_000,
    ),
  );
  // One call a part, and the shadow on the bench.
  rows.push(counted('draw calls of the whole neck', shown.length + 1, '', 12));
  return rows;
}
