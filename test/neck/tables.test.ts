/** The tables of woods and metals beside the published values they were taken from (test/reference/*.csv). */
import { describe, expect, it } from 'vitest';
import { glueById, GLUES } from '../../src/neck/glues.ts';
import { METALS, metalById, type Metal } from '../../src/neck/metals.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { coursesOf, STRING_SETS, type StringSpec } from '../../src/neck/strings.ts';
import {
  airDryDensityKgM3,
  elasticRatios,
  longitudinalModulusMPa,
  woodById,
  WOODS,
  type RatiosId,
} from '../../src/neck/woods.ts';
import { expectNear } from '../expect-near.ts';
import { parseCsv, readCsv } from '../reference/csv.ts';
import { PRESET_WORDS } from '../../src/speech/en/neck/necks.ts';
import { glueWords, pitchName, presetBuild, woodName } from '../../src/speech/names.ts';

describe('woods', () => {
  const printed = readCsv('woods.csv');

  it('there are as many as in the table, each once', () => {
    expect(WOODS).toHaveLength(printed.length);
    expect(new Set(WOODS.map(({ id }) => id)).size).toBe(WOODS.length);
  });

  it.each(printed.map((row) => [row['wood'], row] as const))('%s as printed', (label, row) => {
    const wood = WOODS.find(({ id }) => woodName(id) === label)!;
    expect(wood).toBeDefined();
    expect(wood.botanical).toBe(row['botanical']);
    expect(wood.moeMPa).toBe(Number(row['moe_mpa']));
    expect(wood.specificGravity).toBe(Number(row['sg']));
    expect(wood.gravityBasis).toBe(row['sg_basis']);
    expect(wood.crushingMPa).toBe(Number(row['crushing_parallel_mpa']));
    expect(wood.ratiosOf).toBe(row['ratios_of']);
    expect(wood.ratiosAssumed).toBe(row['ratios_mark'] === 'assume');
    expect(wood.source).toBe(row['source']);
    expect(String(wood.airDensityKgM3 ?? '')).toBe(row['air_density_kg_m3']);
  });

  it.each(
    readCsv('elastic-ratios.csv')
      .filter((row) => WOODS.some((wood) => wood.ratiosOf === row['wood']))
      .map((row) => [row['wood'], row] as const),
  )('elastic ratios of %s as printed', (label, row) => {
    const ratios = elasticRatios(label as RatiosId);
    expect(ratios.tangential).toBe(Number(row['ET_EL']));
    expect(ratios.radial).toBe(Number(row['ER_EL']));
    expect(ratios.shearLR).toBe(Number(row['GLR_EL']));
    // Where the table gives no G_LT, red oak's stands in: woods.ts says so.
    expect(ratios.shearLT).toBe(row['GLT_EL'] === '' ? 0.081 : Number(row['GLT_EL']));
  });

  it.each(WOODS.map((wood) => [wood.id, wood] as const))('%s: modulus and density are those of a wood', (id, wood) => {
    expect(woodById(id)).toBe(wood);
    const hasShear = ['GTR-190', 'GTR-282', 'AH607', 'POLYMERS-2022'].includes(wood.source);
    expectNear(longitudinalModulusMPa(wood), (hasShear ? 1.1 : 1) * wood.moeMPa, 1e-12, 'a product');
    expectNear(longitudinalModulusMPa(wood, 'earlier'), 1.1 * wood.moeMPa, 1e-12, 'a product');
    const density = airDryDensityKgM3(wood);
    // Heavier than its oven-dry mass over its green volume; no wood is denser than its own cell wall, 1500 kg/m³.
    expect(density).toBeGreaterThan(1000 * wood.specificGravity * (wood.gravityBasis === 'air' ? 0.95 : 1));
    expect(density).toBeLessThan(1500);
    expect(wood.colour).toMatch(/^#[0-9a-f]{6}$/);
  });

  it('density from specific gravity, worked by hand', () => {
    // Sugar maple, 0.63 on the 12 % basis: 0.63·1.12 = 0.7056. Mahogany, 0.45 green: 0.45/(1 − 0.265·0.6·0.45)·1.12 = 0.542844
    expectNear(airDryDensityKgM3(woodById('sugar-maple')), 705.6, 1e-9, 'worked by hand');
    expectNear(airDryDensityKgM3(woodById('mahogany')), 542.84, 1e-5, 'worked by hand to five digits');
    expect(() => woodById('cheese')).toThrow(/wood "cheese" is not in the table/);
  });
});

describe('metals', () => {
  const names: Record<string, string> = {
    'nickel silver CuNi18Zn20 (C75200) hard': 'nickel-silver-18',
    'nickel silver C77000 H04': 'nickel-silver-770',
    'phosphor bronze C51000 H04': 'phosphor-bronze',
    'copper-tin-iron alloy (nickel-free fret alloys of the CuSn15 type)': 'copper-tin-iron',
    'brass C26000 H04': 'brass',
    'stainless steel 304 half hard': 'stainless',
    'mild steel 1010 cold drawn': 'mild-steel',
  };
  const printed = readCsv('metals.csv');

  it.each(printed.map((row) => [row['metal'], row] as const))('%s as printed', (name, row) => {
    const metal: Metal = metalById(names[name]);
    expect(metal.nickel.is === 'none').toBe(row['nickel_free'] === 'yes');
    expect(metal.modulusGPa).toBe(Number(row['E_GPa']));
    expect(metal.hardnessHV).toBe(Number(row['hardness_hv']));
    expect(metal.densityGCm3).toBe(Number(row['density_g_cm3']));
    expect(metal.mark).toBe(row['mark']);
    // Not published for the copper–tin–iron alloys: phosphor bronze's stands in, and the source says so.
    expect(metal.yieldMPa).toBe(row['yield_MPa'] === '' ? 515 : Number(row['yield_MPa']));
    expect(row['yield_MPa'] !== '' || metal.yieldOf === 'phosphor-bronze').toBe(true);
  });

  it('are all there, each once', () => {
    expect(METALS).toHaveLength(printed.length);
    expect(() => metalById('gold')).toThrow(/wire metal "gold" is not in the table/);
  });
});

describe('glues and strings', () => {
  it('glues have times that follow each other', () => {
    for (const glue of GLUES) {
      expect(glueById(glue.id)).toBe(glue);
      expect(glue.openMinutes[0]).toBeLessThan(glue.openMinutes[1]);
      expect(glue.clampMinutes).toBeLessThan(60 * glue.fullHours);
      expect(glueWords(glue.id).caution.length).toBeGreaterThan(20);
    }
    expect(() => glueById('jam')).toThrow(/glue "jam" is not in the table/);
  });

  it('gauges grow from string to string within plain and wound', () => {
    // In courses of octaves and where a low place has a high string they do not.
    const rising = STRING_SETS.filter(
      ({ strings, id }) => coursesOf(strings as StringSpec[]).length === strings.length && id !== 'four-nylon-22-35',
    );
    expect(rising.length).toBeGreaterThan(10);
    for (const { strings } of rising) {
      const groups = [
        strings.filter((s) => s.construction.endsWith('plain')),
        strings.filter((s) => s.construction.endsWith('wound')),
      ];
      for (const group of groups)
        group.slice(1).forEach((string, i) => expect(string.diameterMm).toBeGreaterThan(group[i].diameterMm));
    }
  });

  it.each([
    [69, 'A4'],
    [64, 'E4'],
    [40, 'E2'],
    [28, 'E1'],
    [60, 'C4'],
    [63, 'E♭4'],
  ])('pitch %d is %s', (pitch, name) => {
    expect(pitchName(pitch)).toBe(name);
  });
});

describe('presets', () => {
  it('are six or more, valid, told apart, and of different kinds', () => {
    expect(PRESETS.length).toBeGreaterThanOrEqual(6);
    expect(new Set(PRESETS.map(({ id }) => id)).size).toBe(PRESETS.length);
    expect(new Set(PRESETS.map(({ id }) => PRESET_WORDS[id].label)).size).toBe(PRESETS.length);
    for (const preset of PRESETS) {
      const { build } = preset;
      const { label, description } = PRESET_WORDS[preset.id];
      expect(checkBuild(build)).toEqual({ ok: true, build });
      expect(presetBuild(preset)).toEqual({ ...build, name: label });
      expect(description.length).toBeGreaterThan(30);
    }
    const kinds = (pick: (preset: (typeof PRESETS)[number]) => unknown) => new Set(PRESETS.map(pick)).size;
    expect(kinds(({ build }) => build.method)).toBe(3);
    expect(kinds(({ build }) => build.boardShape)).toBe(3);
    expect(kinds(({ build }) => build.rodKind)).toBe(3);
    expect(kinds(({ build }) => build.boardWood)).toBeGreaterThan(2);
    expect(kinds(({ build }) => build.strings.length)).toBeGreaterThan(1);
    expect(PRESETS.some(({ build }) => build.laminates.length > 2)).toBe(true);
    expect(PRESETS.some(({ build }) => build.bindingLineCount > 0)).toBe(true);
    // Kerfs over the body of the tang and under it.
    expect(kinds(({ build }) => build.kerfMm < build.tangWidthMm)).toBe(2);
  });
});

describe('reading tables', () => {
  it('refuses lines that do not fit the header', () => {
    expect(parseCsv('# note\na,b\n1,2\n', 'x.csv')).toEqual([{ a: '1', b: '2' }]);
    expect(() => parseCsv('a,b\n1\n', 'x.csv')).toThrow(/x\.csv:2 has 1 cells; the header has 2/);
    expect(() => parseCsv('# nothing\n', 'x.csv')).toThrow(/x\.csv has no header/);
  });
});
