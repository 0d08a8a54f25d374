/** Seeded random necks of ordinary and less ordinary dimensions, kept when the schema accepts them. */
import fc from 'fast-check';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { checkBuild } from '../../../src/neck/schema.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const randomNecks: fc.Arbitrary<Build> = fc
  .record({
    scaleLengthMm: between(560, 870),
    fretCount: fc.integer({ min: 19, max: 24 }),
    bodyJointFret: fc.integer({ min: 12, max: 18 }),
    thicknessFret1Mm: between(18, 27),
    thicknessFret12Mm: between(20, 29),
    boardThicknessMm: between(4.5, 7.5),
    boardWood: fc.constantFrom('indian-rosewood', 'ebony-african', 'black-walnut', 'sugar-maple'),
    neckWood: fc.constantFrom('sugar-maple', 'mahogany', 'wenge'),
    studWidthMm: between(0.66, 0.95),
    tangWidthMm: between(0.45, 0.56),
    rodKind: fc.constantFrom('none', 'one-way', 'two-way'),
    rodEndMm: between(300, 420),
    settleDays: between(10, 400),
    slotDepthMm: between(2.4, 3.2),
  })
  .map(({ neckWood, ...values }) => ({
    ...defaultBuild(),
    ...(values as Partial<Build>),
    laminates: [{ wood: neckWood, share: 1 }],
  }))
  .filter((build) => checkBuild(build).ok);
