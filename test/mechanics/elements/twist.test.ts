/** Torsion and twist by themselves: against Saint-Venant's series, and what must hold of any fan. */
import { describe, expect, it } from 'vitest';
import { EMPTY, UNCUT, type NeckDescription } from '../../../src/mechanics/description.ts';
import { blockIndex, createBlock, solveBlock } from '../../../src/mechanics/elements/banded.ts';
import { NODE_FREEDOMS } from '../../../src/mechanics/elements/twist-element.ts';
import { createTwist } from '../../../src/mechanics/elements/twist.ts';
import { combineLine, createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { sampleLine } from '../../../src/mechanics/relief.ts';
import { combineTilt, twistAtRad } from '../sides.ts';
import { expectNear } from '../../expect-near.ts';
import { describeSolidFanCase, readSolidFanCases } from '../../reference/solid-fan-case.ts';
import { rectangularNeck } from './rectangular.ts';

const WOOD = { depthRatio: 0.065, widthRatio: 0.132, poisson: 0.45, poissonWidth: 0.42, poissonDepthWidth: 0.2955 };
const MODULUS_MPA = 10_000;

function bar(widthMm: number, depthMm: number, gxz: number, gxy: number) {
  const wood = { modulusMPa: MODULUS_MPA, shearRatio: gxy, ...WOOD };
  const shears = { alongWidth: gxz, depthWidth: 0.03 };
  const fan = {
    rise: { atNut: 0, slope: 0 },
    run: { atNut: widthMm, slope: 0 },
    boardShears: shears,
    neckShears: [shears],
  };
  const neck: NeckDescription = {
    ...rectangularNeck({
      lengthMm: 600,
      widthMm,
      boardThicknessMm: 6,
      neckThicknessMm: depthMm - 6,
      board: wood,
      neck: wood,
      fretXMm: [100, 200, 300, 400, 500],
    }),
    fan,
  };
  return { neck, fan };
}

/** Turn per length under a torque of 1 N·mm, in the middle half of the bar, 1/(N·mm²). */
function twistPerTorque(widthMm: number, depthMm: number, gxz: number, gxy: number): number {
  const { neck, fan } = bar(widthMm, depthMm, gxz, gxy);
  const { assembly } = createNeckModel(neck);
  const { grid, factor, held } = createTwist(assembly, fan, UNCUT);
  const glue = grid.rows.indexOf(assembly.mesh.boardRows);
  const freedom = (column: number) => NODE_FREEDOMS * (column * grid.rows.length + glue) + 1;
  const block = createBlock(factor.order);
  block[blockIndex(freedom(0), 0)] = 1;
  for (const dof of held) block[blockIndex(dof, 0)] = 0;
  solveBlock(factor, block);
  const xs = grid.columns.map((column) => assembly.mesh.columnXMm[column]);
  const turns = grid.columns.map((_, column) => block[blockIndex(freedom(column), 0)]);
  return (sampleLine(xs, turns, 150) - sampleLine(xs, turns, 450)) / 300;
}

/**
 * Saint-Venant's series for a rectangle of two shear moduli, 2a wide and 2b deep: Lekhnitskii, Theory of Elasticity of an
 * Anisotropic Body, § torsion of a rod of rectangular section; for one modulus Timoshenko & Goodier, Theory of Elasticity,
 * § 109 (both from memory).
 */
function torsionalStiffness(widthMm: number, depthMm: number, gxz: number, gxy: number): number {
  const across = (widthMm * Math.sqrt(gxy / gxz)) / depthMm;
  let sum = 0;
  for (let n = 1; n < 100; n += 2) sum += Math.tanh((n * Math.PI * across) / 2) / n ** 5;
  return (MODULUS_MPA * gxz * widthMm * depthMm ** 3 * (1 - (192 * sum) / (Math.PI ** 5 * across))) / 3;
}

describe('torsion of a bar', () => {
  it('the series gives the values printed for a square and for 2 : 1', () => {
    // 0.1406 and 0.229 of b·t³: Timoshenko & Goodier, table of § 109 (from memory).
    expectNear(torsionalStiffness(20, 20, 0.1, 0.1) / (1000 * 20 ** 4), 0.1406, 0.001, 'four digits printed');
    expectNear(torsionalStiffness(40, 20, 0.1, 0.1) / (1000 * 40 * 20 ** 3), 0.229, 0.002, 'three digits printed');
  });

  it.each([
    [50, 21, 0.111, 0.063],
    [50, 21, 0.077, 0.077],
    [21, 21, 0.1, 0.1],
    [62, 24, 0.063, 0.111],
  ])('%d by %d mm, G_xz %f, G_xy %f', (widthMm, depthMm, gxz, gxy) => {
    const ours = 1 / twistPerTorque(widthMm, depthMm, gxz, gxy);
    expectNear(ours, torsionalStiffness(widthMm, depthMm, gxz, gxy), 0.03, 'two functions across the width, four rows');
  });
});

describe('any fan', () => {
  const strong = readSolidFanCases().find(({ id }) => id.startsWith('K'))!;
  const neck = describeSolidFanCase(strong);
  const times = (factor: number): NeckDescription & Pick<typeof neck, 'fan'> => ({
    ...neck,
    fan: { ...neck.fan, rise: { atNut: factor * neck.fan.rise.atNut, slope: factor * neck.fan.rise.slope } },
  });
  const wedgeN = neck.fretXMm.map((_, slot) => 500 + 20 * slot);
  const frets = [0, 4, 11, 17, 23].map((slot) => neck.fretXMm[slot]);
  const twists = (factor: number) => {
    const fanned = times(factor);
    const influence = solveInfluence(createNeckModel(fanned), EMPTY);
    const line = { depthMm: combineLine(influence, { wedgeN }), tiltRad: combineTilt(influence, { wedgeN }) };
    return frets.map((x) => twistAtRad(fanned, influence.stationXMm, line, x));
  };
  const against = (values: readonly number[]) => values.slice(1).map((value) => value - values[0]);

  it('the other way round twists the other way, as much', () => {
    const [one, other] = [against(twists(1)), against(twists(-1))];
    // What the places of the edges between stations round off.
    one.forEach((value, k) => expectNear(value, -other[k], 1e-9, 'mirror image'));
  });

  it('half as slanted twists half as much, but for the cosines', () => {
    const [little, less] = [against(twists(0.02)), against(twists(0.01))];
    little.forEach((value, k) => expectNear(value, 2 * less[k], 2e-3, 'the cosines of a slant of a hundredth'));
  });

  it('without slots strings do not twist a neck', () => {
    const influence = solveInfluence(createNeckModel(neck), UNCUT, 'named');
    const cases = { couple: -5000 };
    const line = { depthMm: combineLine(influence, { cases }), tiltRad: combineTilt(influence, { cases }) };
    const turned = against(frets.map((x) => twistAtRad(neck, influence.stationXMm, line, x)));
    const slope = (line.depthMm[0] - line.depthMm.at(-1)!) / influence.stationXMm.at(-1)!;
    for (const value of turned) expect(Math.abs(value)).toBeLessThan(0.01 * Math.abs(slope));
  });
});
