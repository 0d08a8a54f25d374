/** Random valid builds for the property tests of the fretwork. */
import fc from 'fast-check';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { parameterById } from '../../src/neck/parameters.ts';

/** Number parameters that the fretwork reads. */
const NUMBERS = [
  'scaleLengthMm',
  'fretCount',
  'widthNutMm',
  'widthLastFretMm',
  'boardThicknessMm',
  'radiusNutMm',
  'radiusLastFretMm',
  'crownWidthMm',
  'crownHeightMm',
  'tangWidthMm',
  'studWidthMm',
  'tangDepthMm',
  'studAreaMm2',
  'studPitchMm',
  'kerfMm',
  'slotDepthMm',
  'slotClearanceMm',
  'chamferMm',
  'glueReachPercent',
  'bindingLineCount',
  'linesSawnThrough',
  'nipClearanceMm',
  'endBevelDegrees',
  'endInsetMm',
  'oversizeMm',
  'stickLengthMm',
  'coilRadiusMm',
  'cutLossMm',
  'wireSparePercent',
  'wireRadiusPercent',
] as const;

const CHOICES = ['boardShape', 'slotBottom', 'method', 'wireForm', 'wireMetal', 'seatingOrder', 'glueKind'] as const;

function arbitraryOf(id: string): fc.Arbitrary<unknown> {
  const parameter = parameterById(id);
  if (parameter.kind === 'number') {
    return parameter.integer
      ? fc.integer({ min: parameter.min, max: parameter.max })
      : fc.double({ min: parameter.min, max: parameter.max, noNaN: true });
  }
  return parameter.kind === 'flag' ? fc.boolean() : fc.constantFrom(...parameter.options);
}

/** Builds over the whole range of every parameter that the fretwork reads, kept when the schema accepts them. */
export const validBuild: fc.Arbitrary<Build> = fc
  .record({
    ...Object.fromEntries([...NUMBERS, ...CHOICES].map((id) => [id, arbitraryOf(id)])),
    binding: fc.array(
      fc.double({ min: 0.2, max: 4, noNaN: true }).map((thicknessMm) => ({ thicknessMm, colour: '#f2ead7' })),
      { minLength: 5, maxLength: 5 },
    ),
  })
  .map((values) => {
    const build = { ...defaultBuild(), bodyJointFret: 10, rodEndMm: 200, stringHeightFret12Mm: 3, ...values } as Build;
    // Values that only make sense together are drawn from what the others leave, so that few builds are thrown away.
    return {
      ...build,
      linesSawnThrough: Math.min(build.linesSawnThrough, build.bindingLineCount),
      studWidthMm: Math.max(build.studWidthMm, build.tangWidthMm),
    };
  })
  .filter((build) => checkBuild(build).ok);
