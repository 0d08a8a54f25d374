/**
 * Solid finite-element cases of try strips: every file of the folder solid-fe-strips, read strictly, and what the library
 * makes of it. A case is added by dropping its file in.
 */
import { stripLine } from '../mechanics/strip/strip-line.ts';
import { readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod/mini';
import { humpMm, stripInfluence, type StripDescription } from '../../src/mechanics/strip/strip.ts';
import type { StripRefinement } from '../../src/mechanics/strip/strip-mesh.ts';
import { failing, MATERIALS, readStrictly, size } from './solid-case.ts';

export const SOLID_STRIPS_FOLDER = new URL('solid-fe-strips/', import.meta.url);

const caseSchema = z.object({
  id: z.string(),
  geometry: z.object({
    lengthMm: size,
    widthMm: size,
    thicknessMm: size,
    slots: z.int().check(z.minimum(1)),
    pitchMm: size,
    firstSlotMm: size,
    slot: z.object({ kerfMm: size, depthMm: size, contactDepthMm: size }),
  }),
  woods: z.object({ boardE: size }),
  loads: z.object({ wedge: z.string(), oneFret: z.string() }),
  results: z.object({
    wedgeAllOverLengthMm: z.number(),
    wedgeAllBetweenEndSlotsMm: z.number(),
    oneFretOverLengthMm: z.number(),
    oneFretBetweenEndSlotsMm: z.number(),
    slotOpeningUmPerKN: z.array(z.number()),
  }),
  materials: z.object(MATERIALS),
  wedgeN: size,
});

export type SolidStripCase = z.infer<typeof caseSchema> & { readonly file: string; readonly slot: number };
export type SolidStripResults = SolidStripCase['results'];

/** @throws {Error} naming the file and what it cannot read. */
export function readSolidStripCase(file: string, content: string): SolidStripCase {
  const fail = failing('solid-fe-strips', file);
  const solid = readStrictly(caseSchema, content, fail);
  const slot = Number(/slot (\d+)/.exec(solid.loads.oneFret)?.[1]);
  if (!(slot >= 1 && slot <= solid.geometry.slots)) fail('loads.oneFret', 'names no slot of the strip');
  return { ...solid, file, slot };
}

/** Every case of a folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidStripCases(folder: URL = SOLID_STRIPS_FOLDER): SolidStripCase[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json')).toSorted();
  if (files.length === 0) throw new Error('the folder of solid strips is empty');
  return files.map((file) => readSolidStripCase(file, readFileSync(new URL(file, folder), 'utf8')));
}

export function describeSolidStrip({ geometry: g, woods, materials: m }: SolidStripCase): StripDescription {
  return {
    lengthMm: g.lengthMm,
    widthMm: g.widthMm,
    thicknessMm: g.thicknessMm,
    slotXMm: Array.from({ length: g.slots }, (_, i) => g.firstSlotMm + i * g.pitchMm),
    kerfMm: g.slot.kerfMm,
    slotDepthMm: g.slot.depthMm,
    contactDepthMm: g.slot.contactDepthMm,
    wood: {
      modulusMPa: woods.boardE,
      depthRatio: m.EyOverEx,
      widthRatio: m.EzOverEx,
      shearRatio: m.GxyOverEx,
      poisson: m.nuXy,
      poissonWidth: m.nuXz,
      poissonDepthWidth: m.nuYz,
    },
  };
}

/** The library's results for a case, measured as the case is. */
export function solveSolidStrip(solid: SolidStripCase, refinement: StripRefinement = 1): SolidStripResults {
  const strip = describeSolidStrip(solid);
  const influence = stripInfluence(strip, refinement);
  const slots = strip.slotXMm.length;
  const all = new Float64Array(slots).fill(solid.wedgeN);
  const one = Float64Array.from({ length: slots }, (_, i) => (i + 1 === solid.slot ? solid.wedgeN : 0));
  const hump = (force: Float64Array, from: number, to: number) =>
    humpMm(influence.stationXMm, stripLine(influence, force), from, to);
  const [first, last] = [strip.slotXMm[0], strip.slotXMm.at(-1)!];
  return {
    wedgeAllOverLengthMm: hump(all, 0, strip.lengthMm),
    wedgeAllBetweenEndSlotsMm: hump(all, first, last),
    oneFretOverLengthMm: hump(one, 0, strip.lengthMm),
    oneFretBetweenEndSlotsMm: hump(one, first, last),
    slotOpeningUmPerKN: strip.slotXMm.map(
      (_, i) => 1e6 * Array.from({ length: slots }, (__, j) => influence.openingMm[j * slots + i]).reduce((a, b) => a + b),
    ),
  };
}
