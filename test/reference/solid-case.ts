/** What every case of solid finite elements has: its neck, and how the file that holds it is read. */
import { readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod/mini';
import { fretPositionsMm } from '../../src/neck/neck-shape.ts';
import type { Linear, NeckDescription, NeckWood } from '../../src/mechanics/description.ts';

export const size = z.number().check(z.positive());

/** Of every neck; a folder adds what its own have. */
export const GEOMETRY = {
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
};

const geometry = z.object(GEOMETRY);
type Geometry = z.infer<typeof geometry>;

/** Ratios of a wood that the file gives as numbers. */
export const MATERIALS = {
  EyOverEx: size,
  EzOverEx: size,
  GxyOverEx: size,
  nuXy: size,
  nuXz: size,
  nuYz: size,
};

const materials = z.object(MATERIALS);

export function woodOf(modulusMPa: number, m: z.infer<typeof materials>): NeckWood {
  return {
    modulusMPa,
    depthRatio: m.EyOverEx,
    widthRatio: m.EzOverEx,
    shearRatio: m.GxyOverEx,
    poisson: m.nuXy,
    poissonWidth: m.nuXz,
    poissonDepthWidth: m.nuYz,
  };
}

export type Fail = (field: string, why: string) => never;

/** @returns what throws an error naming the file and the field that it cannot read */
export function failing(folder: string, file: string): Fail {
  return (field, why) => {
    throw new Error(`${folder}/${file}: ${field} ${why}`);
  };
}

/** A file by its schema. @throws {Error} naming the file and the field that it cannot read. */
export function readStrictly<Schema extends z.ZodMiniType>(schema: Schema, content: string, fail: Fail): z.infer<Schema> {
  let data: unknown;
  try {
    data = JSON.parse(content);
  } catch (error) {
    return fail('the file', `is not JSON (${(error as Error).message})`);
  }
  const parsed = z.safeParse(schema, data);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  return fail(issue.path.map(String).join('.') || 'the file', `cannot be read: ${issue.message}`);
}

/** Every case of a folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readFolder<Case>(folder: URL, what: string, read: (file: string, content: string) => Case): Case[] {
  const files = readdirSync(folder).toSorted();
  if (files.length === 0) throw new Error(`the folder of ${what} is empty`);
  return files.map((file) => read(file, readFileSync(new URL(file, folder), 'utf8')));
}

export function through(x1: number, value1: number, x2: number, value2: number): Linear {
  const slope = (value2 - value1) / (x2 - x1);
  return { atNut: value1 - slope * x1, slope };
}

/** The neck on which every case lies: clamped at its plane end, without heel, channel, bars or rod. */
export function describeGeometry(
  g: Geometry,
  woods: Pick<NeckDescription, 'board' | 'neck'>,
): NeckDescription {
  const frets = fretPositionsMm(g.scaleLengthMm, g.frets);
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
    ...woods,
    slot: { ...g.slot, bottom: 'radiused' },
    rod: null,
  };
}
