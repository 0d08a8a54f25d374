/**
 * What an entry of the bench log says beside the strips: its likelihood (bench-log/likelihood.ts) at the grip that the shared
 * deviates give its frets.
 *
 *   c      = F(z)/F(0)            force of a fret in the kerf of the entry, with the shared deviates and without
 *   ε_rest : mean m − E ln c₀,  variance s_f² − Var ln c₀      c₀: c with bite and area as stated; the scatter of an entry is
 *                                                              for all reasons but those two, and the deviates of shape, width
 *                                                              and walls now speak for their part of it
 *
 * The likelihood is tabled over ln c and taken straight between. Wire and kerf that an entry does not say are the neck's.
 */
import type { Build } from '../../neck/build.ts';
import type { LogEntry } from '../bench-log/entry.ts';
import { underLaw } from '../bench-log/law.ts';
import { likelihoodOf } from '../bench-log/likelihood.ts';
import { boardProperties } from '../elements/materials.ts';
import { embeddingStrengthMPa } from '../seating/contact.ts';
import { studDiameterMm, tangContact } from '../seating/wire-contact.ts';
import { deviationAt, spreadsOf } from '../uncertainty/inputs.ts';
import type { ContactInput } from '../uncertainty/one-slot.ts';
import { CONTACT_INPUTS } from '../uncertainty/one-slot.ts';
import { seatMany, type ManyDeviations } from '../uncertainty/seat-many.ts';
import type { Places } from './places.ts';
import { inputById, type StripInput } from './spreads.ts';

/** What a slot of a neck opens for each newton, and the length of tang in it: 17–23 µm per kN, as in MODEL.md. */
const FLEXIBILITY_MM_N = 2e-5;
const TANG_MM = 50;
/** Scatter that is left to an entry at least. */
const LEAST_SCATTER = 0.1;
const HALF_WIDTH = 4;
const STEP = 0.02;

export interface NeckLikelihood {
  /** Adds ln of the likelihood of every sample to `logs`. */
  add(deviates: Float64Array, samples: number, logs: Float64Array): void;
}

/** Frets of the neck's wire as an entry has them; the bite as the prior has it. */
function gripOf(neck: Build, entry: LogEntry, studShape: number) {
  const wood = boardProperties(neck);
  const contact = tangContact({
    lengthMm: TANG_MM,
    depthMm: Math.min(neck.tangDepthMm, neck.slotDepthMm),
    kerfMm: entry.kerfMm ?? neck.kerfMm,
    tangWidthMm: entry.tangWidthMm ?? neck.tangWidthMm,
    studWidthMm: entry.studWidthMm ?? neck.studWidthMm,
    studAreaMm2: neck.studAreaMm2,
    studPitchMm: neck.studPitchMm,
    studShape,
    embeddingStrengthMPa: embeddingStrengthMPa(studDiameterMm(neck.studAreaMm2), wood.densityKgM3),
    crushingMPa: wood.crushingMPa,
    studSoftnessMm: neck.studSoftnessMm,
    wallStiffnessNMm3: neck.wallStiffnessNMm3,
    biteFactor: 1,
  });
  const [stated] = seatMany(contact, FLEXIBILITY_MM_N, STATED, Float64Array.of(1));
  return (on: ManyDeviations) => {
    const softer = new Float64Array(on.bite.length).fill(1);
    return seatMany(contact, FLEXIBILITY_MM_N, on, softer).map((force) => force / stated);
  };
}

const STATED = Object.fromEntries(
  CONTACT_INPUTS.map((input) => [input, Float64Array.of(inputById(input).kind === 'factor' ? 1 : 0)]),
) as Record<ContactInput, Float64Array>;

/** The shared deviations of a neck's contact; what nobody shares is as stated. */
function sharedOf(neck: Build, places: Places, deviates: Float64Array, samples: number): ManyDeviations {
  const spreads = spreadsOf(neck);
  return Object.fromEntries(
    CONTACT_INPUTS.map((input) => {
      const description = inputById(input);
      const place = places.neck[input as StripInput];
      // Density and crushing strength are those of each neck's own board, and part of its scatter.
      const isShared = place !== undefined && input !== 'density' && input !== 'crushing';
      if (!isShared) return [input, new Float64Array(samples).fill(STATED[input][0])];
      const row = deviates.subarray(place * samples, (place + 1) * samples);
      return [input, row.map((z) => deviationAt(spreads, description, z))];
    }),
  ) as Record<ContactInput, Float64Array>;
}

const SMALLEST = 1e-9;

/**
 * @param studShape what the deviates of the shape are told from
 * @param prior deviates drawn from the prior, dimensions × samples, to tell what they scatter
 */
export function neckLikelihood(
  neck: Build,
  entry: LogEntry,
  studShape: number,
  places: Places,
  prior: Float64Array,
): NeckLikelihood {
  const grip = gripOf(neck, entry, studShape);
  const samples = prior.length / places.dimensions;
  const ones = new Float64Array(samples).fill(1);
  const others = grip({ ...sharedOf(neck, places, prior, samples), bite: ones, studArea: ones }).map((c) =>
    Math.log(Math.max(c, SMALLEST)),
  );
  const mean = others.reduce((sum, log) => sum + log, 0) / samples;
  const variance = others.reduce((sum, log) => sum + (log - mean) ** 2, 0) / samples;
  const likelihood = likelihoodOf({
    ...underLaw({ studShape, studSoftnessMm: neck.studSoftnessMm }, entry),
    fretShift: entry.fretShift - mean,
    fretScatter: Math.sqrt(Math.max(LEAST_SCATTER ** 2, entry.fretScatter ** 2 - variance)),
  });
  const table = Float64Array.from({ length: Math.round((2 * HALF_WIDTH) / STEP) + 1 }, (_, i) =>
    likelihood(Math.exp(-HALF_WIDTH + i * STEP)),
  );
  return {
    add: (deviates, count, logs) => {
      const factors = grip(sharedOf(neck, places, deviates, count));
      for (let i = 0; i < count; i += 1) {
        const at = (Math.log(Math.max(factors[i], SMALLEST)) + HALF_WIDTH) / STEP;
        const within = Math.min(table.length - 1.000001, Math.max(0, at));
        const k = Math.floor(within);
        logs[i] += table[k] + (within - k) * (table[k + 1] - table[k]);
      }
    },
  };
}
