/**
 * Necks with slanted frets as solid finite elements: every file of the folder solid-fe-fan, read strictly, and what the library
 * makes of it. A case is added by dropping its file in.
 */
import * as z from 'zod/mini';
import { EMPTY, slantAt, UNCUT, type NeckDescription } from '../../src/mechanics/description.ts';
import { createTwist, solveTwist } from '../../src/mechanics/elements/twist.ts';
import {
  combineLine,
  combineOpening,
  createNeckModel,
  solveInfluence,
  stringCases,
  type Combination,
  type Influence,
} from '../../src/mechanics/influence.ts';
import type { Refinement } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { combineTilt, edgeRelief, edgeXMm, twistAtRad, type Side, type TiltedLine } from '../mechanics/sides.ts';
import { describeGeometry, failing, GEOMETRY, MATERIALS, readFolder, readStrictly, size, through, woodOf } from './solid-case.ts';

export const SOLID_FAN_FOLDER = new URL('solid-fe-fan/', import.meta.url);

const { scaleLengthMm: _scale, modelLengthMm: _length, ...SHARED } = GEOMETRY;

const results = z.object({
  bassEdgeMm: z.number(),
  middleMm: z.number(),
  trebleEdgeMm: z.number(),
  twistMrad: z.number(),
});

const caseSchema = z.object({
  id: z.string(),
  method: z.string(),
  geometry: z.object({
    ...SHARED,
    boardRadiusMm: z.null(),
    rule: z.string(),
    fretsBassXMm: z.array(z.number()),
    fretsTrebleXMm: z.array(z.number()),
  }),
  woods: z.object({ boardE: size, neckE: size }),
  materials: z.object({ ...MATERIALS, GxzOverEx: size, GyzOverEx: size }),
  wedgeN: size,
  loads: z.object({ oneFret: z.string() }),
  strings: z.object({ pullN: size, aboveCrownMm: size }),
  results: z.object({
    wedgeAll: results,
    oneFret: results,
    stringsSlotsEmpty: results,
    stringsNoSlots: results,
    slotOpeningAlongXUmPerKN: z.array(z.number()),
  }),
});

export type SolidFanCase = z.infer<typeof caseSchema> & {
  readonly file: string;
  /** Read out of the sentences that describe the neck and its loads. */
  readonly behindNutMm: number;
  readonly beyondLastMm: number;
  readonly fret: number;
};

/** @throws {Error} naming the file and the field that it cannot read. */
export function readSolidFanCase(file: string, content: string): SolidFanCase {
  const fail = failing('solid-fe-fan', file);
  const solid = readStrictly(caseSchema, content, fail);
  const find = (field: string, sentence: string, pattern: RegExp): number => {
    const value = Number(pattern.exec(sentence)?.[1]);
    return Number.isFinite(value) ? value : fail(field, `does not say ${pattern.source}: "${sentence}"`);
  };
  const { geometry } = solid;
  for (const field of ['fretsBassXMm', 'fretsTrebleXMm'] as const)
    if (geometry[field].length !== geometry.frets + 1)
      fail(`geometry.${field}`, `has ${geometry[field].length} numbers for nut and ${geometry.frets} frets`);
  return {
    ...solid,
    file,
    behindNutMm: find('geometry.rule', geometry.rule, /runs ([\d.]+) mm behind/),
    beyondLastMm: find('geometry.rule', geometry.rule, /and ([\d.]+) mm beyond/),
    fret: find('loads.oneFret', solid.loads.oneFret, /slot (\d+)/),
  };
}

/** Every case of the folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidFanCases(): SolidFanCase[] {
  return readFolder(SOLID_FAN_FOLDER, 'fanned solid cases', readSolidFanCase);
}

export type FannedNeck = NeckDescription & { readonly fan: NonNullable<NeckDescription['fan']> };

/** The model's x counts from the end behind the nut, where the strings pull. */
export function describeSolidFanCase(solid: SolidFanCase): FannedNeck {
  const { geometry: g, woods, materials, behindNutMm, beyondLastMm } = solid;
  const middle = g.fretsBassXMm.map((bass, n) => behindNutMm + (bass + g.fretsTrebleXMm[n]) / 2);
  const apart = g.fretsBassXMm.map((bass, n) => bass - g.fretsTrebleXMm[n]);
  const [nut, last] = [middle[0], middle[g.frets]];
  const widthMm = through(nut, g.widthNutMm, last, g.widthLastFretMm);
  const shears = { alongWidth: materials.GxzOverEx, depthWidth: materials.GyzOverEx };
  const lengthMm = last + beyondLastMm;
  return {
    ...describeGeometry(
      { ...g, scaleLengthMm: 1, modelLengthMm: lengthMm },
      {
        board: woodOf(woods.boardE, materials),
        neck: [{ toHalfWidthFraction: 1, wood: woodOf(woods.neckE, materials) }],
      },
    ),
    fretXMm: middle.slice(1),
    widthMm,
    totalThicknessMm: through(middle[1], g.totalThicknessFret1Mm, middle[12], g.totalThicknessFret12Mm),
    fan: { rise: through(nut, apart[0], last, apart[g.frets]), run: widthMm, boardShears: shears, neckShears: [shears] },
  };
}

export type SolidFanResults = { readonly [Key in keyof z.infer<typeof results>]: number };
export const LOAD_CASES = ['wedgeAll', 'oneFret', 'stringsSlotsEmpty', 'stringsNoSlots'] as const;
export type LoadCase = (typeof LOAD_CASES)[number];

/** Back-bow positive; twist of the middle of fret 1 against that of the last, as in the files. */
function read(neck: FannedNeck, stationXMm: Float64Array, line: TiltedLine): SolidFanResults {
  const [from, to] = [neck.fretXMm[0], neck.fretXMm.at(-1)!];
  const edge = (side: Side) => {
    const along = edgeRelief(neck, side, stationXMm, line, from, to);
    return -extremeRelief(along.edgeXMm, along.reliefMm, edgeXMm(neck, side, from), edgeXMm(neck, side, to)).extremeMm;
  };
  const middle = reliefFromDepth(stationXMm, line.depthMm, from, to);
  const twist = (x: number) => 1000 * twistAtRad(neck, stationXMm, line, x);
  return {
    bassEdgeMm: edge('bass'),
    middleMm: -extremeRelief(stationXMm, middle, from, to).extremeMm,
    trebleEdgeMm: edge('treble'),
    twistMrad: twist(from) - twist(to),
  };
}

/**
 * In the solids each wall of a slot is pressed square to itself. They stand half a kerf apart, where the slant of a fan is not
 * quite the same, so that the two pushes leave a force across the neck, which its clamped end takes. A tang has no such force:
 * it is a load of these solids alone, and is added to what the library makes of balanced wedges.
 */
function unbalancedTilt(model: ReturnType<typeof createNeckModel>, neck: FannedNeck, slots: readonly number[], wedgeN: number) {
  const twist = createTwist(model.assembly, neck.fan, EMPTY);
  const stations = model.assembly.mesh.columnXMm.length;
  const sine = (x: number) => Math.sin(Math.atan(slantAt(neck.fan, x)));
  const even = new Float64Array(2 * twist.grid.columns.length * twist.grid.rows.length);
  const tilts = solveTwist(
    twist,
    slots.map((slot) => {
      const [x, half] = [neck.fretXMm[slot], neck.slot.kerfMm / 2];
      const each = (-wedgeN * (sine(x + half) - sine(x - half))) / 2;
      return { even, sideways: { slot, nutSideN: each, bodySideN: each } };
    }),
  );
  return Float64Array.from({ length: stations }, (_, k) =>
    slots.reduce((sum, _slot, i) => sum + tilts[i * stations + k], 0),
  );
}

/** The library's results for a case, measured as the case is. */
export function solveSolidFanCase(
  solid: SolidFanCase,
  refinement: Refinement = 1,
): Readonly<Record<LoadCase, SolidFanResults>> & { readonly openingUmPerKN: readonly number[] } {
  const neck = describeSolidFanCase(solid);
  const model = createNeckModel(neck, refinement);
  const empty = solveInfluence(model, EMPTY);
  const uncut = solveInfluence(model, UNCUT, 'named');
  const line = (influence: Influence, combination: Combination, moreRad?: Float64Array) =>
    read(neck, influence.stationXMm, {
      depthMm: combineLine(influence, combination),
      tiltRad: combineTilt(influence, combination).map((tilt, k) => tilt + (moreRad?.[k] ?? 0)),
    });
  const wedged = (slots: readonly number[]) =>
    line(
      empty,
      { wedgeN: neck.fretXMm.map((_, slot) => (slots.includes(slot) ? solid.wedgeN : 0)) },
      unbalancedTilt(model, neck, slots, solid.wedgeN),
    );
  const strings = { cases: stringCases(solid.strings.pullN, solid.strings.aboveCrownMm, 0) };
  const all = neck.fretXMm.map((_, slot) => slot);
  const opening = combineOpening(empty, { wedgeN: all.map(() => solid.wedgeN) });
  return {
    wedgeAll: wedged(all),
    oneFret: wedged([solid.fret - 1]),
    stringsSlotsEmpty: line(empty, strings),
    stringsNoSlots: line(uncut, strings),
    // Square to the slot; along the neck it is 1/cos of that.
    openingUmPerKN: Array.from(opening, (mm, slot) => (1e6 * mm * Math.hypot(1, slantAt(neck.fan, neck.fretXMm[slot]))) / solid.wedgeN),
  };
}
