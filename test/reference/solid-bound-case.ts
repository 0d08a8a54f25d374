/**
 * Bound necks as solid finite elements: every file of the folder solid-fe-bound, read strictly, and what the library makes
 * of it. A case is added by dropping its file in. Slots may stop before the edge with a binding or without one.
 */
import { readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod/mini';
import { fretPositionsMm } from '../../src/neck/neck-shape.ts';
import { EMPTY, UNCUT, type Linear, type NeckDescription, type NeckWood } from '../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence, stringCases, type Influence } from '../../src/mechanics/influence.ts';
import type { Refinement } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';

export const SOLID_BOUND_FOLDER = new URL('solid-fe-bound/', import.meta.url);

const size = z.number().check(z.positive());
const room = z.number().check(z.minimum(0));

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
  materials: z.object({
    EyOverEx: size,
    EzOverEx: size,
    GxyOverEx: size,
    GxzOverEx: size,
    GyzOverEx: size,
    nuXy: size,
    nuXz: size,
    nuYz: size,
  }),
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
  const fail = (field: string, why: string): never => {
    throw new Error(`solid-fe-bound/${file}: ${field} ${why}`);
  };
  let data: unknown;
  try {
    data = JSON.parse(content);
  } catch (error) {
    return fail('the file', `is not JSON (${(error as Error).message})`);
  }
  const parsed = z.safeParse(caseSchema, data);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return fail(issue.path.map(String).join('.') || 'the file', `cannot be read: ${issue.message}`);
  }
  const { binding } = parsed.data.geometry;
  if (typeof binding?.E === 'number' && typeof binding.nu !== 'number') fail('geometry.binding.nu', 'is missing');
  if (Object.values(parsed.data.results).every((value) => value === null)) fail('results', 'has no number');
  return { ...parsed.data, file };
}

/** Every case of the folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidBoundCases(): SolidBoundCase[] {
  const files = readdirSync(SOLID_BOUND_FOLDER).toSorted();
  if (files.length === 0) throw new Error('the folder of bound solid cases is empty');
  return files.map((file) => readSolidBoundCase(file, readFileSync(new URL(file, SOLID_BOUND_FOLDER), 'utf8')));
}

function through(x1: number, value1: number, x2: number, value2: number): Linear {
  const slope = (value2 - value1) / (x2 - x1);
  return { atNut: value1 - slope * x1, slope };
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
  const { geometry: g, woods, materials: m } = solid;
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
    ...endsOf(solid),
    slot: { ...g.slot, bottom: 'radiused' },
    rod: null,
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
