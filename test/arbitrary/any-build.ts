/**
 * Random builds over every parameter of the table, kept when the validation accepts them. Values that only make sense
 * together are drawn from what the others leave, so that few are thrown away.
 */
import fc from 'fast-check';
import { BINDING_MATERIAL_IDS } from '../../src/neck/materials/binding.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { boardEndMm, totalThicknessMm } from '../../src/neck/neck-shape.ts';
import type { Parameter } from '../../src/neck/parameter-kinds.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { STRING_SETS, stringsOf, TUNINGS } from '../../src/neck/strings.ts';
import { modulusFromTapMPa } from '../../src/mechanics/elements/materials.ts';
import { OWN_WOOD_IDS } from '../../src/neck/materials/own-woods.ts';
import { WOOD_IDS, WOODS } from '../../src/neck/woods.ts';

function valueOf(parameter: Parameter): fc.Arbitrary<unknown> {
  switch (parameter.kind) {
    case 'number': {
      const { min, max, typical } = parameter;
      if (parameter.integer) return fc.integer({ min, max });
      const usual = fc.double({ min: typical[0], max: typical[1], noNaN: true });
      const any = fc.double({ min, max, noNaN: true });
      // JSON has no −0.
      return fc.oneof({ weight: 3, arbitrary: usual }, { weight: 2, arbitrary: any }).map((value) => value + 0);
    }
    case 'choice':
      return fc.constantFrom(...parameter.options);
    case 'flag':
      return fc.boolean();
  }
}

const values = fc.record(Object.fromEntries(PARAMETERS.map((parameter) => [parameter.id, valueOf(parameter)])));

const MEASURED = (PARAMETERS as readonly Parameter[])
  .filter((parameter) => parameter.kind === 'number' && parameter.measured)
  .map(({ id }) => id);

const wood = fc.constantFrom(...WOOD_IDS);

const laminates = fc
  .array(fc.tuple(wood, fc.integer({ min: 2, max: 20 })), { minLength: 1, maxLength: 4 })
  .map((pieces) => {
    const total = pieces.reduce((sum, [, weight]) => sum + weight, 0);
    return pieces.map(([id, weight]) => ({ wood: id, share: weight / total }));
  })
  .filter((pieces) => pieces.every((piece) => piece.share >= 0.02));

const ownWoods = fc.array(
  fc.record({
    name: fc.string({ maxLength: 20 }),
    modulusGPa: fc.double({ min: 6, max: 25, noNaN: true }),
    densityKgM3: fc.double({ min: 350, max: 1400, noNaN: true }),
    crushingMPa: fc.option(fc.double({ min: 25, max: 240, noNaN: true })),
    like: fc.constantFrom(...WOODS.map(({ id }) => id as string)),
  }),
  { minLength: OWN_WOOD_IDS.length, maxLength: OWN_WOOD_IDS.length },
);

const binding = fc.array(
  fc
    .tuple(fc.double({ min: 0.2, max: 2.2, noNaN: true }), fc.option(fc.constantFrom(...BINDING_MATERIAL_IDS)))
    .map(([thicknessMm, material]) => ({ thicknessMm, ...(material ? { material } : {}), colour: '#26211e' })),
  { minLength: 5, maxLength: 5 },
);

/** A set with a tuning of as many strings. */
const strings = fc
  .constantFrom(
    ...STRING_SETS.flatMap((set) =>
      TUNINGS.filter((tuning) => tuning.pitches.length === set.strings.length).map(
        (tuning) => [set.id, tuning.id] as const,
      ),
    ),
  )
  .map(([set, tuning]) => stringsOf(set, tuning));

/** A blank as it would be measured: its modulus drawn, its frequency or deflection following from it. */
function measured(build: Build, part: 'neck' | 'board', modulusMPa: number): Partial<Build> {
  const value = (name: string) => build[`${part}Blank${name}` as keyof Build] as number;
  const length = part === 'neck' ? 750 : 560;
  const [width, thickness] = [value('WidthMm'), Math.max(5, value('ThicknessMm'))];
  const massG = Math.min(5000, Math.max(20, length * width * thickness * 7e-4));
  const perFrequency = modulusFromTapMPa(massG, 1, length, width, thickness);
  const frequencyHz = Math.sqrt(modulusMPa / perFrequency);
  const spanMm = 0.8 * length;
  const sagMm = (value('LoadN') * spanMm ** 3) / (4 * width * thickness ** 3 * modulusMPa);
  const parts = {
    LengthMm: length,
    ThicknessMm: thickness,
    MassG: massG,
    FrequencyHz: frequencyHz,
    SpanMm: spanMm,
    SagMm: sagMm,
  };
  return Object.fromEntries(
    Object.entries(parts).map(([name, number]) => [`${part}Blank${name}`, number]),
  ) as Partial<Build>;
}

/** One in six has a number of a blank that nobody has measured yet. */
const unmeasured = fc
  .nat({ max: 99 })
  .map((at): Partial<Build> => (at < MEASURED.length ? { [MEASURED[at]]: null } : {}));

const between = (least: number, most: number, at: number) => least + Math.max(0, most - least) * at;

/** Rods, channels, bars and laminates that have room in the neck. */
function insideOf(sized: Build, places: Readonly<Record<'rod' | 'joint' | 'slot', number>>): Partial<Build> {
  const { widthNutMm, channelWidthMm, boardThicknessMm } = sized;
  const under = Math.min(totalThicknessMm(sized, 0), totalThicknessMm(sized, boardEndMm(sized))) - boardThicknessMm;
  const channelDepthMm =
    sized.channelCut === 'straight' ? Math.min(sized.channelDepthMm, under - 2) : sized.channelDepthMm;
  const [least, most] = [Math.max(7, channelWidthMm + 1.6), Math.min(40, 0.7 * widthNutMm - channelWidthMm)];
  const rodCount = least < most ? sized.rodCount : 1;
  const rodsApartMm = rodCount === 1 ? sized.rodsApartMm : between(least, most, places.joint);
  const rodReach = sized.rodKind === 'none' ? 0 : (rodCount === 1 ? 0 : rodsApartMm) + channelWidthMm;
  const room = (0.6 * widthNutMm - rodReach) / Math.max(1, sized.barCount) - 0.1;
  const barDepthMm = Math.min(sized.barDepthMm, 6);
  const barWidthMm = Math.min(sized.barWidthMm, 3);
  const isConstant = places.slot < 0.3 && sized.laminates.length > 1;
  const each = (widthNutMm - 3) / sized.laminates.length;
  return {
    rodEndMm: between(100, Math.min(700, boardEndMm(sized) - 6), places.rod),
    channelDepthMm,
    rodCurveMm: sized.channelFollowsRod
      ? Math.min(sized.rodCurveMm, Math.max(0, channelDepthMm - 1.1))
      : sized.rodCurveMm,
    rodCount,
    rodsApartMm,
    barCount: room < 1 ? 0 : sized.barCount,
    barDepthMm,
    barWidthMm: Math.min(barWidthMm, Math.max(1, room)),
    barWallMm: Math.max(0.5, Math.min(sized.barWallMm, Math.min(barWidthMm, barDepthMm, Math.max(1, room)) / 2 - 0.25)),
    laminates: isConstant
      ? sized.laminates.map((piece, index) =>
          index === sized.laminates.length - 1 ? piece : { ...piece, widthMm: between(0.5, each, places.joint) },
        )
      : sized.laminates,
  };
}

/** Where in what is left a dependent value lies. */
const place = fc.double({ min: 0, max: 1, noNaN: true });

export const anyBuild: fc.Arbitrary<Build> = fc
  .record({
    values,
    laminates,
    ownWoods,
    binding,
    strings,
    places: fc.record({
      joint: place,
      slot: place,
      stud: place,
      kerf: place,
      rod: place,
      height: place,
      region: place,
    }),
    refret: fc.boolean(),
    moduli: fc.tuple(
      fc.double({ min: 6000, max: 24_000, noNaN: true }),
      fc.double({ min: 6000, max: 24_000, noNaN: true }),
    ),
    unmeasured,
  })
  .map(
    ({
      values: drawn,
      laminates: pieces,
      ownWoods: own,
      binding: lines,
      strings: set,
      places,
      refret,
      moduli,
      unmeasured: left,
    }) => {
      const free = {
        ...defaultBuild(),
        ...drawn,
        laminates: pieces,
        ownWoods: own,
        binding: lines,
        strings: set,
      } as Build;
      const fretCount = Math.min(
        free.fretCount,
        Math.floor(12 * Math.log2(free.scaleLengthMm / (19 * (free.crownWidthMm + 1.2)))),
      );
      const bodyJointFret = Math.round(between(10, Math.min(24, fretCount), places.joint));
      const sized = { ...free, fretCount: Math.max(12, fretCount), bodyJointFret };
      const studWidthMm = Math.min(1.4, between(free.tangWidthMm, free.crownWidthMm, 0.5 * places.stud));
      const kerfMm = between(0.3, Math.min(1.2, free.crownWidthMm - 0.2), places.kerf);
      const tangWidthMm = free.tangWidthMm;
      const widest = Math.min(1.4, free.crownWidthMm);
      const regions =
        places.region < 0.6
          ? []
          : [
              {
                fromFret: 2,
                toFret: Math.round(between(2, sized.fretCount, places.joint)),
                kerfMm: Math.min(kerfMm, free.crownWidthMm - 0.2),
                tangWidthMm,
                studWidthMm: Math.min(widest, studWidthMm + 0.02),
              },
            ];
      const blanks = { ...measured(sized, 'neck', moduli[0]), ...measured(sized, 'board', moduli[1]) };
      return {
        ...sized,
        ...blanks,
        ...left,
        studWidthMm,
        kerfMm,
        slotDepthMm: between(1, free.boardThicknessMm - 2.3, places.slot),
        linesSawnThrough: Math.min(free.linesSawnThrough, free.bindingLineCount),
        // Most slots go as far as the binding lets them.
        bridgeMm: places.rod < 0.7 ? 0 : free.bridgeMm,
        stringEdgeMm: Math.min(free.stringEdgeMm, free.widthNutMm / 2 - 2),
        stringHeightFret12Mm: Math.max(free.stringHeightFret12Mm, free.crownHeightMm + 0.1),
        ...insideOf(sized, places),
        regions,
        startingReliefMm: refret ? Array.from({ length: sized.fretCount }, (_, i) => 0.02 * ((i * 7) % 5)) : [],
      };
    },
  )
  .filter((build) => checkBuild(build).ok);
