/**
 * The solid finite-element cases: every file of the folder solid-fe, read strictly, and what the library makes of it.
 * A case is added by dropping its file in.
 */
import * as z from 'zod/mini';
import { EMPTY, UNCUT, type NeckDescription, type NeckWood } from '../../src/mechanics/description.ts';
import { combineLine, combineOpening, createNeckModel, solveInfluence, stringCases, type Influence } from '../../src/mechanics/influence.ts';
import type { Refinement } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { describeGeometry, failing, GEOMETRY, readFolder, readStrictly, size } from './solid-case.ts';

export const SOLID_FE_FOLDER = new URL('solid-fe/', import.meta.url);

const text = z.string();

const caseSchema = z.object({
  id: text,
  method: text,
  geometry: z.object({
    ...GEOMETRY,
    rodChannel: z.nullable(z.object({ widthAtMidNeckMm: size, depthBelowBoardMm: size, depthRule: text })),
  }),
  woods: z.object({
    boardE: size,
    neckE: z.nullable(size),
    neckLaminates: z.nullable(
      z.array(z.object({ toHalfWidthFraction: size, E: size })).check(z.minLength(1)),
    ),
  }),
  loads: z.object({ wedge: text, oneFret: text, strings: text }),
  results: z.object({
    wedgeAllMm: z.nullable(z.number()),
    oneFretMm: z.nullable(z.number()),
    stringsSlotsEmptyMm: z.nullable(z.number()),
    stringsNoSlotsMm: z.nullable(z.number()),
    slotOpeningUmPerKN: z.nullable(z.array(z.nullable(z.number()))),
  }),
});

export type SolidFeCase = z.infer<typeof caseSchema> & {
  readonly file: string;
  /** Read out of the sentences that describe method and loads. */
  readonly ratios: Omit<NeckWood, 'modulusMPa'>;
  readonly wedgeN: number;
  readonly fret: number;
  readonly pullN: number;
  readonly aboveCrownMm: number;
  readonly channelMostShare: number;
};

/** @throws {Error} naming the file and the field that it cannot read. */
export function readSolidFeCase(file: string, content: string): SolidFeCase {
  const fail = failing('solid-fe', file);
  const solid = readStrictly(caseSchema, content, fail);
  const find = (field: string, sentence: string, pattern: RegExp): number => {
    const value = Number(pattern.exec(sentence)?.[1]);
    return Number.isFinite(value) ? value : fail(field, `does not say ${pattern.source}: "${sentence}"`);
  };
  const { geometry, woods, results, loads, method } = solid;
  if ((woods.neckE === null) === (woods.neckLaminates === null)) fail('woods', 'must give neckE or neckLaminates');
  const openings = results.slotOpeningUmPerKN;
  if (openings && openings.length !== geometry.frets) {
    fail('results.slotOpeningUmPerKN', `has ${openings.length} numbers for ${geometry.frets} frets`);
  }
  const fret = find('loads.oneFret', loads.oneFret, /slot (\d+)/);
  if (fret < 1 || fret > geometry.frets) fail('loads.oneFret', `names slot ${fret} of ${geometry.frets}`);
  if (Object.values(results).every((value) => value === null)) fail('results', 'has no number');
  return {
    ...solid,
    file,
    ratios: {
      depthRatio: find('method', method, /E_y\/E_x=([\d.]+)/),
      shearRatio: find('method', method, /G_xy\/E_x=([\d.]+)/),
      poisson: find('method', method, /nu_xy=([\d.]+)/),
      widthRatio: find('method', method, /E_z\/E_x=([\d.]+)/),
      poissonWidth: find('method', method, /nu_xz=([\d.]+)/),
      // Files that leave it out were computed with the same woods as those that give it.
      poissonDepthWidth: Number(/nu_yz=([\d.]+)/.exec(method)?.[1] ?? 0.2955),
    },
    wedgeN: find('loads.wedge', loads.wedge, /([\d.]+) N\b/),
    fret,
    pullN: find('loads.strings', loads.strings, /([\d.]+) N\b/),
    aboveCrownMm: find('loads.strings', loads.strings, /([\d.]+) mm above the crown/),
    channelMostShare: geometry.rodChannel
      ? find('geometry.rodChannel.depthRule', geometry.rodChannel.depthRule, /at most ([\d.]+) of/)
      : 1,
  };
}

/** Every case of a folder, by file name. @throws {Error} when there is none, or one that cannot be read. */
export function readSolidFeCases(folder: URL = SOLID_FE_FOLDER): SolidFeCase[] {
  return readFolder(folder, 'solid finite-element cases', readSolidFeCase);
}

/** One of the cases that stand in the folder, by its id. @throws {Error} when it does not. */
export function solidFeCase(id: string): SolidFeCase {
  const solid = readSolidFeCases().find((candidate) => candidate.id === id);
  if (!solid) throw new Error(`there is no solid finite-element case "${id}"`);
  return solid;
}

export function describeSolidFeCase({ geometry: g, woods, ratios, channelMostShare }: SolidFeCase): NeckDescription {
  const wood = (modulusMPa: number): NeckWood => ({ modulusMPa, ...ratios });
  const laminates = woods.neckLaminates ?? [{ toHalfWidthFraction: 1, E: woods.neckE! }];
  return {
    ...describeGeometry(g, {
      board: wood(woods.boardE),
      neck: laminates.map((laminate) => ({ toHalfWidthFraction: laminate.toHalfWidthFraction, wood: wood(laminate.E) })),
    }),
    channel: g.rodChannel && {
      widthAtMidMm: g.rodChannel.widthAtMidNeckMm,
      depthMm: g.rodChannel.depthBelowBoardMm,
      mostShare: channelMostShare,
      fromMm: 0,
      toMm: g.modelLengthMm,
    },
  };
}

export interface SolidFeResults {
  /** Back-bow positive, as in the files. */
  readonly wedgeAllMm: number;
  readonly oneFretMm: number;
  readonly stringsSlotsEmptyMm: number;
  readonly stringsNoSlotsMm: number;
  readonly slotOpeningUmPerKN: readonly number[];
}

/** The library's results for a case, measured as the case is. */
export function solveSolidFeCase(solid: SolidFeCase, refinement: Refinement = 1): SolidFeResults {
  const description = describeSolidFeCase(solid);
  const model = createNeckModel(description, refinement);
  const empty = solveInfluence(model, EMPTY);
  const uncut = solveInfluence(model, UNCUT, 'named');
  const frets = description.fretXMm;
  const from = frets[0];
  const to = frets.at(-1)!;
  const backBow = (influence: Influence, combination: Parameters<typeof combineLine>[1]) => {
    const relief = reliefFromDepth(influence.stationXMm, combineLine(influence, combination), from, to);
    return -extremeRelief(influence.stationXMm, relief, from, to).extremeMm;
  };
  const wedges = (inSlot: (slot: number) => boolean) => ({
    wedgeN: frets.map((_, index) => (inSlot(index + 1) ? solid.wedgeN : 0)),
  });
  const all = wedges(() => true);
  const strings = { cases: stringCases(solid.pullN, solid.aboveCrownMm, 0) };
  return {
    wedgeAllMm: backBow(empty, all),
    oneFretMm: backBow(
      empty,
      wedges((slot) => slot === solid.fret),
    ),
    stringsSlotsEmptyMm: backBow(empty, strings),
    stringsNoSlotsMm: backBow(uncut, strings),
    slotOpeningUmPerKN: [...combineOpening(empty, all)].map((openingMm) => (openingMm * 1e6) / solid.wedgeN),
  };
}
