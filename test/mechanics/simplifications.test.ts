/** What MODEL.md says that its simplifications cost: held to the numbers that stand there. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hold, withSlots } from '../../src/mechanics/elements/assembly.ts';
import { EMPTY, type NeckDescription } from '../../src/mechanics/description.ts';
import {
  combineLine,
  combineOpening,
  createNeckModel,
  solveInfluence,
  stringCases,
  type Combination,
} from '../../src/mechanics/influence.ts';
import { CASES } from '../../src/mechanics/elements/loads.ts';
import { modulusFromSagMPa, modulusFromTapMPa } from '../../src/mechanics/elements/materials.ts';
import { nodeAt } from '../../src/mechanics/elements/mesh.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { describeSolidFeCase, solidFeCase, solveSolidFeCase } from '../reference/solid-fe-case.ts';
import { expectNear } from '../expect-near.ts';
import { displacementsOf } from './load-cases.ts';
import { ALL_NECKS } from './necks.ts';

const MODEL = readFileSync(new URL('../../src/mechanics/MODEL.md', import.meta.url), 'utf8');
/** The cases that MODEL.md speaks of; others may be dropped in beside them. */
const NAMES: Readonly<Record<string, string>> = {
  'A-reference': 'A, reference',
  'C-thick-laminated': 'C, thick, laminated',
  'D-slim-light': 'D, slim, light',
  'E-radiused': 'E, radiused',
  'F-rod-channel': 'F, rod channel',
};
const SOLIDS = Object.keys(NAMES).map(solidFeCase);
const STRINGS: Combination = { cases: stringCases(460, 3, 0)! };

function bowMm(neck: NeckDescription, combination: Combination): number {
  const influence = solveInfluence(createNeckModel(neck), EMPTY);
  const [from, to] = [neck.fretXMm[0], neck.fretXMm.at(-1)!];
  return extremeRelief(
    influence.stationXMm,
    reliefFromDepth(influence.stationXMm, combineLine(influence, combination), from, to),
    from,
    to,
  ).extremeMm;
}

describe.each(SOLIDS.map((solid) => [solid.id, solid] as const))('the kerf of the mesh, on %s', (_id, solid) => {
  const neck = describeSolidFeCase(solid);
  const wedges: Combination = { wedgeN: neck.fretXMm.map(() => 1000) };
  const withKerf = (kerfMm: number): NeckDescription => ({ ...neck, slot: { ...neck.slot, kerfMm } });

  it.each([0.5, 0.7])('%d mm meshed exactly', (kerfMm) => {
    expectNear(bowMm(withKerf(kerfMm), wedges), bowMm(neck, wedges), 0.007, '0.5–0.7 %, says MODEL.md');
    expectNear(bowMm(withKerf(kerfMm), STRINGS), bowMm(neck, STRINGS), 0.0035, '0.3 %, says MODEL.md');
    const opening = (described: NeckDescription) =>
      combineOpening(solveInfluence(createNeckModel(described), EMPTY), {
        wedgeN: neck.fretXMm.map((_, i) => (i === 11 ? 1000 : 0)),
      })[11];
    expectNear(opening(withKerf(kerfMm)), opening(neck), 0.005, '0.4 %, says MODEL.md');
  });
});

describe.each(ALL_NECKS)('the glue line for the fret tops, on %s', (_name, neck) => {
  it('differs by under 0.5 µm beside every fret', () => {
    const { assembly, loads } = createNeckModel(neck);
    const { mesh } = assembly;
    const u = displacementsOf(assembly, loads, hold(assembly, withSlots(assembly, EMPTY)));
    const strings = STRINGS.cases as Record<string, number>;
    const amounts = [...neck.fretXMm.map(() => 500), ...CASES.map((name) => strings[name] ?? 0)];
    const depth = (column: number, row: number) =>
      amounts.reduce((sum, amount, c) => sum + amount * u[c][2 * nodeAt(mesh, column, row) + 1], 0);
    // Two columns clear of each wall, on both sides: the wall itself rises where it is pressed.
    const beside = (fret: number, row: number) =>
      (depth(mesh.slotLeftColumn[fret] - 2, row) + depth(mesh.slotLeftColumn[fret] + 3, row)) / 2;
    const joint = neck.fretXMm.findIndex((x) => x > neck.jointMm - 1e-6);
    const frets = neck.fretXMm.slice(0, joint + 1);
    const relief = (row: number) => {
      const v = frets.map((_, fret) => beside(fret, row));
      return v.map(
        (value, i) => value - (v[0] + ((v.at(-1)! - v[0]) * (frets[i] - frets[0])) / (frets.at(-1)! - frets[0])),
      );
    };
    const glue = relief(mesh.boardRows);
    relief(0).forEach((value, i) => expect(Math.abs(value - glue[i])).toBeLessThan(5e-4));
    expect(Math.max(...glue.map(Math.abs))).toBeGreaterThan(0.005);
  });
});

describe('the plane model, converged', () => {
  it.each(SOLIDS.map((solid) => [solid.id, solid] as const))(
    'bends a little more under wedges than the solid: %s',
    (_id, solid) => {
      const coarse = solveSolidFeCase(solid);
      const fine = solveSolidFeCase(solid, 2);
      const more = (mm: number) => mm / solid.results.wedgeAllMm! - 1;
      expect(more(fine.wedgeAllMm)).toBeGreaterThan(0.005);
      expect(more(fine.wedgeAllMm)).toBeLessThan(0.016);
      // The coarse mesh is stiffer: the two partly cancel.
      expect(more(coarse.wedgeAllMm)).toBeLessThan(more(fine.wedgeAllMm) - 0.01);
      expectNear(fine.stringsSlotsEmptyMm, solid.results.stringsSlotsEmptyMm!, 0.005, '0–0.5 %, says MODEL.md');
    },
  );
});

describe('the table of MODEL.md beside the solids', () => {
  it.each(SOLIDS.map((solid) => [solid.id, solid] as const))('is right of %s', (id, solid) => {
    const ours = solveSolidFeCase(solid);
    const keys = ['wedgeAllMm', 'oneFretMm', 'stringsSlotsEmptyMm', 'stringsNoSlotsMm'] as const;
    const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;
    const cells = keys.map((key) =>
      solid.results[key] === null ? '–' : signed(100 * (ours[key] / solid.results[key] - 1)),
    );
    const worst = Math.max(
      ...ours.slotOpeningUmPerKN.map((value, i) => Math.abs(value / solid.results.slotOpeningUmPerKN![i]! - 1)),
    );
    const row = MODEL.split('\n').find((line) => line.startsWith(`| ${NAMES[id]}`))!;
    expect(
      row
        .split('|')
        .slice(2, 7)
        .map((cell) => cell.trim()),
    ).toEqual([...cells, (100 * worst).toFixed(1)]);
  });
});

describe('a measured blank of wood', () => {
  // Sugar maple: E/G_LR = 1/0.111; shear adds 12.30·E/(k·G), rotation 49.48, each times I/(A·L²), to 1/f² of the first
  // free–free mode of Timoshenko's beam (Goens 1931, first-order form, from memory), k = 5/6.
  const overShear = 1 / (0.111 * (5 / 6));

  it.each([
    ['a neck blank', 750, 90, 25, 0.008, 0.02],
    ['a board', 560, 70, 9, 0.001, 0.004],
  ] as const)('tapped, %s comes out a little low', (_what, length, width, thickness, least, most) => {
    const slender = modulusFromTapMPa(1000, 100, length, width, thickness) / (1 + 6.585 * (thickness / length) ** 2);
    const true1 = slender * (1 + ((49.48 + 12.3 * overShear) / 12) * (thickness / length) ** 2);
    const low = 1 - modulusFromTapMPa(1000, 100, length, width, thickness) / true1;
    expect(low).toBeGreaterThan(least);
    expect(low).toBeLessThan(most);
  });

  it('bent by a weight, so does a neck blank', () => {
    // δ = F·L³/(48·E·I) + F·L/(4·k·G·A)
    const [force, span, width, height, modulus] = [50, 600, 90, 25, 12_000];
    const sag =
      (force * span ** 3) / (4 * width * height ** 3 * modulus) +
      (force * span * overShear) / (4 * modulus * width * height);
    const low = 1 - modulusFromSagMPa(force, span, width, height, sag) / modulus;
    expect(low).toBeGreaterThan(0.01);
    expect(low).toBeLessThan(0.025);
  });
});
