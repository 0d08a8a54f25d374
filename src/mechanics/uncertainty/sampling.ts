/** Draws the samples: the factors of every sample on the basis lines of a model. */
import { METHODS, type Method } from '../prediction-types.ts';
import { answersAt } from './answer.ts';
import { deviationAt, INPUTS, type UncertainInput } from './inputs.ts';
import type { ResponseModel } from './model.ts';
import { normalDeviates } from './normal.ts';
import { CONTACT_INPUTS, deviatedContact, seatOne, type ContactInput } from './one-slot.ts';
import type { Sampled, SampledLines } from './types.ts';

export interface Draws extends Sampled {
  /** Mean wedge force of the frets of every sample, N. */
  readonly meanForceN: Float64Array;
  /** Factor on the wedges of each kind as stated: 1, or less where the reference state bites and the stated one does not. */
  readonly statedWedges: readonly number[];
}

/** The factors of samples whose deviates are given, inputs × samples. */
export function factorsOf(model: ResponseModel, deviates: Float64Array, gaugeDeviates?: Float64Array): Draws {
  const samples = deviates.length / INPUTS.length;
  const { kinds } = model;
  const deviations = Object.fromEntries(
    INPUTS.map((input, row) => [
      input.id,
      deviates.subarray(row * samples, (row + 1) * samples).map((z) => deviationAt(model.spreads, input, z)),
    ]),
  ) as Record<UncertainInput, Float64Array>;
  const flexibility = answersAt(model.flexibility, deviates);
  const perForce = answersAt(model.wedgeLine, deviates);
  const meanForceN = new Float64Array(samples);
  const frets = kinds.reduce((sum, kind) => sum + kind.frets.length, 0);
  const here = {} as Record<ContactInput, number>;
  const wedgeFactors = kinds.map((kind) => {
    const factors = new Float64Array(samples);
    for (let i = 0; i < samples; i += 1) {
      for (const input of CONTACT_INPUTS) here[input] = deviations[input][i]!;
      const contact = deviatedContact(kind.contact, here);
      const force = seatOne(contact, kind.flexibilityMmN * flexibility[i]) / kind.referenceN;
      factors[i] = force * perForce[i];
      meanForceN[i] += force * kind.meanReferenceN * (kind.frets.length / frets);
    }
    return factors;
  });

  const kindOfFret = new Int32Array(frets);
  kinds.forEach((kind, g) => kind.frets.forEach((fret) => (kindOfFret[fret - 1] = g)));
  const sampledLines = (method: Method): SampledLines => {
    const { wedgeMm, stringsMm, rodMm, climateMm, strings, rod, climate } = model.methods[method];
    return {
      wedgeMm,
      stringsMm,
      rodMm,
      climateMm,
      wedgeFactors,
      stringsFactor: answersAt(strings, deviates),
      rodFactor: answersAt(rod, deviates),
      climateFactor: answersAt(climate, deviates),
    };
  };
  return {
    samples,
    xMm: model.xMm,
    spanFrom: model.spanFrom,
    spanTo: model.spanTo,
    time: model.time,
    levelledIn: model.levelledIn,
    startingMm: model.startingMm,
    fallMm: model.fallMm,
    gaugeMm: model.gaugeMm,
    gaugeDeviates: gaugeDeviates ?? new Float64Array(samples),
    kindOfFret,
    relaxation: deviations.relaxation,
    creep: deviations.creep,
    deviates: Float32Array.from(deviates),
    methods: Object.fromEntries(METHODS.map((method) => [method, sampledLines(method)])) as Sampled['methods'],
    meanForceN,
    statedWedges: kinds.map((kind) => seatOne(kind.contact, kind.flexibilityMmN) / kind.referenceN),
  };
}

let drawn: { readonly seed: number; readonly samples: number; readonly deviates: Float64Array } | undefined;

/** Deviates of inputs that were measured, one a sample: they take the place of the prior's. */
export type KnownDeviates = Readonly<Partial<Record<UncertainInput, Float64Array>>>;

/** The prior's deviates with the rows of what is known in them. @throws {RangeError} for rows of another number of samples */
function withKnown(deviates: Float64Array, samples: number, known: KnownDeviates): Float64Array {
  const out = Float64Array.from(deviates);
  INPUTS.forEach(({ id }, row) => {
    const given = known[id];
    if (!given) return;
    if (given.length !== samples)
      throw new RangeError(`${given.length} deviates of ${id}; there must be ${samples}, one a sample`);
    out.set(given, row * samples);
  });
  return out;
}

/**
 * `samples` samples of a model. The same seed gives the same samples; the deviates of the last seed are kept.
 * @param known deviates of inputs that were measured together
 */
export function drawSamples(model: ResponseModel, seed: number, samples: number, known?: KnownDeviates): Draws {
  if (drawn?.seed !== seed || drawn.samples !== samples) {
    drawn = { seed, samples, deviates: normalDeviates(seed, samples, INPUTS.length + 1) };
  }
  // The gauge's row comes last: the other rows are what they are without it.
  const inputs = INPUTS.length * samples;
  const prior = drawn.deviates.subarray(0, inputs);
  return factorsOf(model, known ? withKnown(prior, samples, known) : prior, drawn.deviates.subarray(inputs));
}
