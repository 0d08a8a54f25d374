/**
 * Bound necks as solid finite elements: every file of the folder solid-fe-bound, read strictly, and what the library makes
 * of it. A case is added by dropping its file in. Slots may stop before the edge with a binding or without one.
 */
import * as z from 'zod/mini';
import { EMPTY, UNCUT, type NeckDescription, type NeckWood } from '../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence, stringCases, type Influence } from '../../src/mechanics/influence.ts';
import type { Refinement } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { describeGeometry, failing, GEOMETRY, MATERIALS, readFolder, readStrictly, size, woodOf } from './solid-case.ts';

export const SOLID_BOUND_FOLDER = new URL('solid-fe-bound/', import.meta.url);

const room = z.number().check(z.minimum(0));

const caseSchema = z.object({
  id: z.string(),
  method: z.string(),
  geometry: z.object({
    ...GEOMETRY,
    binding: z.optional(
      z.nullable(
        z.object({
          widthPerSideMm: room,
          leftWholePerSideMm: room,
          nipClearanceMm: room,
          /** A number, or a sentence that says that it is the board's own wood. */
          E: z.optional(z.nullable(z.union([size, z.string().check(z.regex(/^as the board/))]))),
          nu: z.optional(z.nullable(size)),
        }),
      ),
    ),
  }),
  woods: z.object({ boardE: size, neckE: size }),
  materials: z.object({ ...MATERIALS, GxzOverEx: size, GyzOverEx: size }),
  wedgeN: size,
  strings: z.object({ pullN: size, aboveCrownMm: size }),
  results: z.object({
    wedgeAllMm: z.nullable(z.number()),
    stringsSlotsEmptyMm: z.nullable(z.number()),
    stringsNoSlotsMm: z.nullable(z.number()),
  }),
});

export type SolidBoundCase = z.infer<typeof caseSchema> & { readonly file: string };

/** @throws {Error} naming the file and the field that it cannot read. */
export function readSolidBoundCase(file: string, content: string): SolidBoundCase {
  const fail = failing('solid-fe-bound', file);
  const solid = readStrictly(caseSchema, content, fail);
  const { binding } = solid.geometry;
  if (typeof binding?.E === 'number' && typeof binding.nu !== 'number') fail('geometry.binding.nu', 'is missing');
  if (Object.values(solid.results).every((value) => value === null)) fail('results', 'has no number');
  return { ...solid, file };
}

/** Every case of the folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidBoundCases(): SolidBoundCase[] {
  return readFolder(SOLID_BOUND_FOLDER, 'bound solid cases', readSolidBoundCase);
}

function endsOf({ geometry: g, materials: m }: SolidBoundCase): Pick<NeckDescription, 'ends'> {
  const { binding } = g;
  if (!binding) return {};
  const lines =
    typeof binding.E === 'number' && binding.nu
      ? [
          {
            widthMm: binding.widthPerSideMm,
            wood: isotropic(binding.E, binding.nu),
            shears: { alongWidth: 1 / (2 + 2 * binding.nu), depthWidth: 1 / (2 + 2 * binding.nu) },
          },
        ]
      : [];
  const { leftWholePerSideMm: whole, nipClearanceMm } = binding;
  return {
    ends: {
      boardShears: { alongWidth: m.GxzOverEx, depthWidth: m.GyzOverEx },
      lines,
      slotShortMm: whole,
      tangShortMm: whole + nipClearanceMm,
    },
  };
}

function isotropic(modulusMPa: number, nu: number): NeckWood {
  const [widthRatio, depthRatio] = [1, 1];
  const poisson = { poisson: nu, poissonWidth: nu, poissonDepthWidth: nu };
  return { modulusMPa, depthRatio, widthRatio, shearRatio: 1 / (2 + 2 * nu), ...poisson };
}

export function describeSolidBoundCase(solid: SolidBoundCase): NeckDescription {
  const { geometry, woods, materials } = solid;
  return {
    ...describeGeometry(geometry, {
      board: woodOf(woods.boardE, materials),
      neck: [{ toHalfWidthFraction: 1, wood: woodOf(woods.neckE, materials) }],
    }),
    ...endsOf(solid),
  };
}

export type SolidBoundResults = { readonly [Key in keyof SolidBoundCase['results']]: number };

/** The library's results for a case, back-bow positive as in the files. */
export function solveSolidBoundCase(solid: SolidBoundCase, refinement: Refinement = 1): SolidBoundResults {
  const description = describeSolidBoundCase(solid);
  const model = createNeckModel(description, refinement);
  const empty = solveInfluence(model, EMPTY);
  const uncut = solveInfluence(model, UNCUT, 'named');
  const frets = description.fretXMm;
  const [from, to] = [frets[0], frets.at(-1)!];
  const backBow = (influence: Influence, combination: Parameters<typeof combineLine>[1]) => {
    const relief = reliefFromDepth(influence.stationXMm, combineLine(influence, combination), from, to);
    return -extremeRelief(influence.stationXMm, relief, from, to).extremeMm;
  };
  const strings = { cases: stringCases(solid.strings.pullN, solid.strings.aboveCrownMm, 0) };
  return {
    wedgeAllMm: backBow(empty, { wedgeN: frets.map(() => solid.wedgeN) }),
    stringsSlotsEmptyMm: backBow(empty, strings),
    stringsNoSlotsMm: backBow(uncut, strings),
  };
}
