import { describe, expect, it } from 'vitest';
import { METALS } from '../../src/neck/metals.ts';
import { bendFor } from '../../src/fretwork/bending.ts';
import { NICKEL_RELEASE_LIMIT } from '../../src/fretwork/checks/limits.ts';
import { compareMetals, METAL_FACTS, tightestRadiusMm } from '../../src/fretwork/plan/metal-comparison.ts';
import { BASIS_WORDS } from '../../src/speech/en/neck/sources.ts';
import { metalFactText } from '../../src/speech/metal-facts.ts';
import { BOUND_CONICAL, FLAT_CUT_TIGHT, UNBOUND_FLAT } from './boards.ts';
import { expectNear, ROUNDING } from './near.ts';

describe('wire metals side by side', () => {
  const rows = compareMetals({ ...FLAT_CUT_TIGHT, wireMetal: 'nickel-silver-18' });

  it('compares every metal of the table with the chosen one', () => {
    expect(rows.map((row) => row.metal)).toEqual(METALS);
    expect(rows.filter((row) => row.chosen).map((row) => row.metal.id)).toEqual(['nickel-silver-18']);
    expect(rows.find((row) => row.chosen)!.wearLifeRatio).toBe(1);
  });

  it('wear life goes with hardness (Archard 1953): stainless over nickel silver 300/190', () => {
    const stainless = rows.find((row) => row.metal.id === 'stainless')!;
    expectNear(stainless.wearLifeRatio, 300 / 190, ROUNDING, 'ratio of the tabulated hardnesses');
  });

  it('gives each its own bend over the tightest radius', () => {
    expect(tightestRadiusMm(BOUND_CONICAL)).toBe(254);
    expect(tightestRadiusMm(UNBOUND_FLAT)).toBe(Infinity);
    for (const row of rows) expect(row.bendToRadiusMm).toBe(bendFor(FLAT_CUT_TIGHT, 184, row.metal.id).bendToRadiusMm);
    // What decides is Y/E: mild steel 305/200 springs back least, nickel silver C77000 590/120 most.
    const byStays = [...rows].sort((a, b) => a.bendStays - b.bendStays).map((row) => row.metal.id);
    expect([byStays[0], byStays.at(-1)]).toEqual(['nickel-silver-770', 'mild-steel']);
  });
});

describe('facts', () => {
  it('each has a source and a mark', () => {
    for (const fact of METAL_FACTS) {
      const source = BASIS_WORDS[fact.source];
      expect(source).not.toBe('');
      expect(source.includes('no source')).toBe(fact.mark === 'practice');
      expect(source.includes('from memory')).toBe(fact.mark === 'mem');
    }
    expect(new Set(METAL_FACTS.map((fact) => fact.id)).size).toBe(METAL_FACTS.length);
  });

  it('the limit is that of REACH Annex XVII entry 27', () => {
    expect(NICKEL_RELEASE_LIMIT).toBe(0.5);
    expect(metalFactText({ id: 'nickel-limit' })).toMatch(/0\.5 µg .*\(0\.2 .*EN 1811/);
  });
});
