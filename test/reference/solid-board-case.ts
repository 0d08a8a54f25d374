/**
 * Boards fretted before they are glued on, as solid finite elements: every file of the folder solid-fe-board-first, read
 * strictly, and what the library makes of it. A case is added by dropping its file in.
 */
import * as z from 'zod/mini';
import { EMPTY } from '../../src/mechanics/description.ts';
import { boardFirst } from '../../src/mechanics/board-first.ts';
import { createNeckModel, solveInfluence } from '../../src/mechanics/influence.ts';
import type { Refinement } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { describeGeometry, failing, GEOMETRY, MATERIALS, readFolder, readStrictly, size, woodOf } from './solid-case.ts';

export const SOLID_BOARD_FOLDER = new URL('solid-fe-board-first/', import.meta.url);

const orNull = z.optional(z.nullable(z.number()));

const caseSchema = z.object({
  id: z.string(),
  method: z.string(),
  geometry: z.object(GEOMETRY),
  woods: z.object({ boardE: size, neckE: size }),
  materials: z.object(MATERIALS),
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
  const fail = failing('solid-fe-board-first', file);
  const solid = readStrictly(caseSchema, content, fail);
  const openings = solid.results.slotOpeningClampedFlatUmPerKN;
  if (openings && openings.length !== solid.geometry.frets)
    fail('results.slotOpeningClampedFlatUmPerKN', `has ${openings.length} numbers`);
  return { ...solid, file };
}

/** Every case of the folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidBoardCases(): SolidBoardCase[] {
  return readFolder(SOLID_BOARD_FOLDER, 'solid boards', readSolidBoardCase);
}

export interface SolidBoardResults {
  readonly boardAloneFreeMm: number;
  readonly gluedOnClampsOffMm: number;
  readonly pressedOnTheNeckMm: number;
  readonly slotOpeningClampedFlatUmPerKN: readonly number[];
}

/** The library's results for a case, back-bow positive as in the files. */
export function solveSolidBoardCase(solid: SolidBoardCase, refinement: Refinement = 1): SolidBoardResults {
  const { geometry, woods, materials } = solid;
  const description = describeGeometry(geometry, {
    board: woodOf(woods.boardE, materials),
    neck: [{ toHalfWidthFraction: 1, wood: woodOf(woods.neckE, materials) }],
  });
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
