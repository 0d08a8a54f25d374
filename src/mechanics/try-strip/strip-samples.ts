/**
 * What a strip would do with the deviates of many samples: force of each group's frets, and hump over each span. The frets of
 * a group are seated as one slot (uncertainty/one-slot.ts).
 */
import { seatMany } from '../uncertainty/seat-many.ts';
import { wedgeLineLeftOf } from '../uncertainty/time-factors.ts';
import { deviationAt } from '../uncertainty/inputs.ts';
import { inputById, STRIP_INPUTS, type StripInput } from './spreads.ts';
import { greatest, type StripModel, type StripSpanModel } from './strip-model.ts';

/** Standard normal deviates of a strip, one for each sample. */
export interface StripDeviates {
  readonly inputs: Readonly<Record<StripInput, Float64Array>>;
  /** Of the depth of its slots, and of the kerf of each group. */
  readonly slotDepth: Float64Array;
  readonly kerfs: readonly Float64Array[];
}

export interface SampledStrip {
  readonly samples: number;
  /** One array for each group: the force of one of its frets, N. */
  readonly forceN: readonly Float64Array[];
  /** One array for each span of the model, on the day the frets go in, mm; hump positive. */
  readonly humpMm: readonly Float64Array[];
  /** ω, the hump over that of the first day. */
  left(days: number): Float64Array;
}

/** A line no higher than this share of the highest is straight. */
const STRAIGHT = 1e-4;

function deviationsOf({ spreads }: StripModel, { inputs }: StripDeviates): Record<StripInput, Float64Array> {
  return Object.fromEntries(
    STRIP_INPUTS.map((input) => {
      const description = inputById(input);
      return [input, inputs[input].map((z) => deviationAt(spreads, description, z))];
    }),
  ) as Record<StripInput, Float64Array>;
}

/** exp(a_a·z_a + a_d·z_d)/E of every sample. */
function softness(
  answer: StripModel['bow'],
  { inputs, slotDepth }: StripDeviates,
  modulus: Float64Array,
): Float64Array {
  const { acrossGrain } = inputs;
  return modulus.map((e, i) => Math.exp(answer.acrossGrain * acrossGrain[i] + answer.slotDepth * slotDepth[i]) / e);
}

/**
 * Humps of one span. The frets of one group leave the stretches of the others straight: a wedge balances itself within a
 * thickness or two of its slot.
 */
function humpsOf(
  { shapeMm, points }: StripSpanModel,
  forceN: readonly Float64Array[],
  bow: Float64Array,
): Float64Array {
  const lines = forceN.map((force, group) => ({
    force,
    shape: shapeMm.subarray(group * points, (group + 1) * points),
  }));
  const most = shapeMm.reduce((size, mm) => Math.max(size, Math.abs(mm)), 0);
  const bent = lines.filter(({ shape }) => shape.some((mm) => Math.abs(mm) > STRAIGHT * most));
  const out = new Float64Array(bow.length);
  if (bent.length === 1) {
    const [{ force, shape }] = bent as [(typeof bent)[number]];
    const perForce = greatest(shape, points, () => 1);
    for (let i = 0; i < out.length; i += 1) out[i] = bow[i] * perForce * force[i];
    return out;
  }
  const line = new Float64Array(points);
  for (let i = 0; i < out.length; i += 1) {
    line.fill(0);
    for (const { force, shape } of bent) {
      const here = force[i];
      for (let p = 0; p < points; p += 1) line[p] += here * shape[p];
    }
    let found = 0;
    for (let p = 0; p < points; p += 1) if (Math.abs(line[p]) > Math.abs(found)) found = line[p]!;
    out[i] = bow[i] * found;
  }
  return out;
}

export function sampleStrip(model: StripModel, deviates: StripDeviates): SampledStrip {
  const { groups, spans, strip, wedgeRelaxation } = model;
  const on = deviationsOf(model, deviates);
  const bow = softness(model.bow, deviates, on.boardModulus);
  const opening = softness(model.opening, deviates, on.boardModulus);
  const forceN = groups.map(({ contact, flexibilityMmN }, group) => {
    const { kerfErrorMm } = strip.groups[group];
    const kerfMm = deviates.kerfs[group].map((z) => kerfErrorMm * z);
    return seatMany(contact, flexibilityMmN, { ...on, kerfMm }, opening);
  });
  const humpMm = spans.map((span) => humpsOf(span, forceN, bow));
  const time = { restDays: 0, settleDays: 0, wedgeRelaxation, creepFactor: 1 };
  const { relaxation, creep } = on;
  const lefts = new Map<number, Float64Array>();
  const left = (days: number) => {
    const found = lefts.get(days) ?? wedgeLineLeftOf({ time, relaxation, creep }, days);
    lefts.set(days, found);
    return found;
  };
  return { samples: bow.length, forceN, humpMm, left };
}
