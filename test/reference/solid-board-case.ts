/**
 * Boards fretted before they are glued on, as solid finite elements: every file of the folder solid-fe-board-first, read
 * strictly, and what the library makes of it. A case is added by dropping its file in.
 */
import { readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod/mini';
import { fretPositionsMm } from '../../src/neck/neck-shape.ts';
import { EMPTY, type Linear, type NeckDescription, type NeckWood } from '../../src/mechanics/description.ts';
import { boardFirst } from '../../src/mechanics/board-first.ts';
import { createNeckModel, solveInfluence } from '../../src/mechanics/influence.ts';
import type { Refinement } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';

export const SOLID_BOARD_FOLDER = new URL('solid-fe-board-first/', import.meta.url);

const size = z.number().check(z.positive());
const orNull = z.optional(z.nullable(z.number()));

const caseSchema = z.object({
  id: z.string(),
  method: z.string(),
  geometry: z.object({
    scaleLengthMm: size,
    frets: z.int().check(z.minimum(12), z.maximum(36)),
    widthNutMm: size,
    widthLastFretMm: size,
    boardThicknessCentreMm: size,
    boardRadiusMm: z.nullable(size),
    totalThicknessFret1Mm: size,
    totalThicknessFret12Mm: size,
    backShoulderMm: size,
    backExponent: size,
    modelLengthMm: size,
    slot: z.object({ kerfMm: size, depthMm: size, contactDepthMm: size }),
  }),
  woods: z.object({ boardE: size, neckE: size }),
  materials: z.object({ EyOverEx: size, EzOverEx: size, GxyOverEx: size, nuXy: size, nuXz: size, nuYz: size }),
  wedgeN: size,
  results: z.object({
    boardAloneFreeMm: orNull,
    gluedOnClampsOffMm: z.number(),
    pressedOnTheNeckMm: orNull,
    slotOpeningClampedFlatUmPerKN: z.optional(z.nullable(z.array(z.nullable(z.number())))),
  }),
});

export type SolidBoardCase = z.infer<typeof caseSchema> & { readonly file: string };

/** @throws {Error} naming the file and the field that it cannot read. */
export function readSolidBoardCase(file: string, content: string): SolidBoardCase {
  const parsed = z.safeParse(caseSchema, JSON.parse(content));
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    throw new Error(`solid-fe-board-first/${file}: ${issue.path.map(String).join('.')} cannot be read: ${issue.message}`);
  }
  const openings = parsed.data.results.slotOpeningClampedFlatUmPerKN;
  if (openings && openings.length !== parsed.data.geometry.frets)
    throw new Error(`solid-fe-board-first/${file}: results.slotOpeningClampedFlatUmPerKN has ${openings.length} numbers`);
  return { ...parsed.data, file };
}

/** Every case of the folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidBoardCases(): SolidBoardCase[] {
  const files = readdirSync(SOLID_BOARD_FOLDER).toSorted();
  if (files.length === 0) throw new Error('the folder of solid boards is empty');
  return files.map((file) => readSolidBoardCase(file, readFileSync(new URL(file, SOLID_BOARD_FOLDER), 'utf8')));
}

function through(x1: number, value1: number, x2: number, value2: number): Linear {
  const slope = (value2 - value1) / (x2 - x1);
  return { atNut: value1 - slope * x1, slope };
}

function describeCase({ geometry: g, woods, materials: m }: SolidBoardCase): NeckDescription {
  const frets = fretPositionsMm(g.scaleLengthMm, g.frets);
  const wood = (modulusMPa: number): NeckWood => ({
    modulusMPa,
    depthRatio: m.EyOverEx,
    widthRatio: m.EzOverEx,
    shearRatio: m.GxyOverEx,
    poisson: m.nuXy,
    poissonWidth: m.nuXz,
    poissonDepthWidth: m.nuYz,
  });
  return {
    lengthMm: g.modelLengthMm,
    jointMm: g.modelLengthMm,
    support: 'plane',
    fretXMm: frets,
    widthMm: through(0, g.widthNutMm, frets.at(-1)!, g.widthLastFretMm),
    boardThicknessMm: g.boardThicknessCentreMm,
    boardRadiusMm: g.boardRadiusMm === null ? null : { atNut: g.boardRadiusMm, slope: 0 },
    totalThicknessMm: through(frets[0], g.totalThicknessFret1Mm, frets[11], g.totalThicknessFret12Mm),
    backShoulderMm: g.backShoulderMm,
    backExponent: g.backExponent,
    heel: null,
    channel: null,
    bars: null,
    board: wood(woods.boardE),
    neck: [{ toHalfWidthFraction: 1, wood: wood(woods.neckE) }],
    slot: { ...g.slot, bottom: 'radiused' },
    rod: null,
  };
}

export interface SolidBoardResults {
  readonly boardAloneFreeMm: number;
  readonly gluedOnClampsOffMm: number;
  readonly pressedOnTheNeckMm: number;
  readonly slotOpeningClampedFlatUmPerKN: readonly number[];
}

/** The library's results for a case, back-bow positive as in the files. */
export function solveSolidBoardCase(solid: SolidBoardCase, refinement: Refinement = 1): SolidBoardResults {
  const description = describeCase(solid);
  const model = createNeckModel(description, refinement);
  const board = boardFirst(model);
  const { stationXMm, lineMm } = solveInfluence(model, EMPTY);
  const frets = description.fretXMm;
  const [from, to] = [frets[0], frets.at(-1)!];
  const bow = (lines: Float64Array) => {
    const sum = stationXMm.map((_, k) =>
      frets.reduce((total, __, j) => total + solid.wedgeN * lines[j * stationXMm.length + k], 0),
    );
    return -extremeRelief(stationXMm, reliefFromDepth(stationXMm, sum, from, to), from, to).extremeMm;
  };
  return {
    boardAloneFreeMm: bow(board.freeLineMm),
    gluedOnClampsOffMm: bow(board.slideLineMm),
    pressedOnTheNeckMm: bow(lineMm),
    slotOpeningClampedFlatUmPerKN: frets.map(
      (_, i) => 1e6 * frets.reduce((total, __, j) => total + board.clampedSlideMm[j * frets.length + i], 0),
    ),
  };
}
