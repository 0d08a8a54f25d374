/** Random builds and comparisons with everything in them that a link can carry. */
import fc from 'fast-check';
import type { Build } from '../../../src/neck/build.ts';
import { PARAMETERS } from '../../../src/neck/parameters.ts';
import { checkBuild } from '../../../src/neck/schema.ts';
import { stringsOf, STRING_SETS, TUNINGS } from '../../../src/neck/strings.ts';
import { WOODS } from '../../../src/neck/woods.ts';
import { EMPTY_PAGE, type PageText, type Shared } from '../../../src/state/share/shared.ts';
import { validBuild } from '../../fretwork/arbitrary-build.ts';

const text = (maxLength: number) => fc.string({ unit: 'grapheme', maxLength }).filter((t) => t.length <= maxLength);

const wood = fc.constantFrom(...WOODS.map(({ id }) => id), 'own');

/** One to four pieces whose shares sum to 1. */
const laminates = fc
  .array(fc.record({ wood, weight: fc.double({ min: 1, max: 8, noNaN: true }) }), { minLength: 1, maxLength: 4 })
  .map((pieces) => {
    const sum = pieces.reduce((total, piece) => total + piece.weight, 0);
    return pieces.map((piece) => ({ wood: piece.wood, share: piece.weight / sum }));
  });

const strings = fc
  .constantFrom(
    ...STRING_SETS.flatMap((set) =>
      TUNINGS.filter((tuning) => tuning.pitches.length === set.strings.length).map((tuning) => [set, tuning] as const),
    ),
  )
  .map(([set, tuning]) => stringsOf(set.id, tuning.id));

const relief = fc.double({ min: -1, max: 1.5, noNaN: true });

/** Values of parameters that no other value limits, over their whole range. */
const FREE = ['settleDays', 'restDays', 'biteFactor', 'friction', 'wedgeRelaxation', 'rodSettingPercent'] as const;
const free = fc.record(
  Object.fromEntries(
    FREE.map((id) => {
      const parameter = PARAMETERS.find((row) => row.id === id)!;
      if (parameter.kind !== 'number') throw new RangeError(`${id} is no number`);
      return [id, fc.double({ min: parameter.min, max: parameter.max, noNaN: true })];
    }),
  ),
  { requiredKeys: [] },
);

export const anyBuild: fc.Arbitrary<Build> = fc
  .record({
    build: validBuild,
    name: text(200),
    notes: text(400),
    laminates,
    strings,
    free,
    regions: fc.boolean(),
    reliefs: fc.option(fc.array(relief, { minLength: 36, maxLength: 36 }), { nil: undefined }),
  })
  .map(({ build, free: values, regions, reliefs, ...rest }) => ({
    ...build,
    ...(values as Partial<Build>),
    ...rest,
    regions: regions
      ? [
          {
            fromFret: 1,
            toFret: build.fretCount,
            kerfMm: build.kerfMm,
            tangWidthMm: build.tangWidthMm,
            studWidthMm: build.studWidthMm,
          },
        ]
      : [],
    startingReliefMm: reliefs?.slice(0, build.fretCount) ?? [],
  }))
  .filter((build) => checkBuild(build).ok);

const page = (builds: number): fc.Arbitrary<PageText> =>
  fc.oneof(
    fc.constant(EMPTY_PAGE),
    fc.record({
      from: text(200),
      to: text(100),
      note: text(1000),
      advised: fc.option(fc.nat({ max: builds - 1 })),
    }),
  );

export const anyShared: fc.Arbitrary<Shared> = fc
  .array(anyBuild, { minLength: 1, maxLength: 3 })
  .chain((builds) => fc.record({ builds: fc.constant(builds), page: page(builds.length) }));
