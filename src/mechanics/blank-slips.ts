/**
 * Is a measured blank believable beside its species, and if not, which slip of the hand would explain it?
 *
 *   ratio       r = E measured / E of the species
 *   far         r below 1/2 or above 2: with a coefficient of variation of 22 % (Wood Handbook, Table 5-6, from memory)
 *               that is more than three standard deviations of ln E: one blank in some seven hundred
 *   slip        a factor that the value of one number was off by: ten, an inch for a millimetre, kilograms for newtons or
 *               for grams, grams for newtons, the second mode heard for the first
 *   fits        with the number mended, r lies between 1/1.6 and 1.6, and the number in its range
 *
 * The second bending mode of a free bar rings 2.757 times higher than the first: (7.8532/4.7300)², the roots of
 * cosh x·cos x = 1 (any handbook of vibration). Weight: 9.80665 N/kg (ISO 80000-3). Which slips are likely: common
 * practice, no source.
 */
import { blankIds, blankOf, FAR_BLANK_RATIO, spanProblem, type BlankNumberId } from '../neck/blanks.ts';
import type { Build } from '../neck/build.ts';
import { parameterById, type BlankPart } from '../neck/parameters.ts';
import { MM_PER_INCH, N_PER_KG } from '../neck/units.ts';
import { blankModulusMPa, speciesModulusMPa } from './elements/materials.ts';

/** Measured over species, or the other way round, within which a mended blank is believed. */
const NEAR_RATIO = 1.6;

const SECOND_MODE = (7.8532 / 4.73) ** 2;

export type SlipCode = 'ten' | 'inches' | 'kilograms' | 'grams' | 'second-mode';

/** One number, and what it may have been meant to be. */
export interface Slip {
  readonly code: SlipCode;
  readonly parameter: BlankNumberId;
  readonly given: number;
  readonly meant: number;
}

export interface FarBlank {
  readonly modulusMPa: number;
  readonly speciesMPa: number;
  /** Measured over species. */
  readonly ratio: number;
  /** The likeliest first; empty where none explains it. */
  readonly slips: readonly Slip[];
  /** What the last typed number would be if the blank were as stiff as its species; undefined where the table has no room for it. */
  readonly fitting: number | undefined;
}

/** What a value has to be multiplied by to be mended, by the unit of the number; the likelier first. */
const FACTORS: Readonly<Record<string, readonly (readonly [SlipCode, number])[]>> = {
  mm: [
    ['ten', 10],
    ['ten', 1 / 10],
    ['inches', MM_PER_INCH],
    ['inches', 1 / MM_PER_INCH],
  ],
  N: [
    ['kilograms', N_PER_KG],
    ['grams', N_PER_KG / 1000],
    ['ten', 10],
    ['ten', 1 / 10],
  ],
  g: [
    ['kilograms', 1000],
    ['ten', 10],
    ['ten', 1 / 10],
  ],
  Hz: [
    ['second-mode', 1 / SECOND_MODE],
    ['ten', 10],
    ['ten', 1 / 10],
  ],
};

const isWithin = (ratio: number, most: number): boolean => ratio <= most && ratio >= 1 / most;

/** Six digits are more than anybody measures. */
const tidy = (value: number): number => Number(value.toPrecision(6));

function ratioOf(build: Build, part: BlankPart): number | undefined {
  const blank = blankOf(build, part);
  return blank.state === 'whole' ? blankModulusMPa(blank) / speciesModulusMPa(build, part) : undefined;
}

function slipsOf(build: Build, part: BlankPart, lastTyped: BlankNumberId | undefined): Slip[] {
  const test = build[`${part}BlankTest`];
  if (test === 'none') return [];
  const found = blankIds(part, test).flatMap((parameter) => {
    const row = parameterById(parameter);
    const given = build[parameter];
    if (row.kind !== 'number' || given === null) return [];
    return (FACTORS[row.unit] ?? []).flatMap(([code, factor], order) => {
      const meant = tidy(given * factor);
      if (meant < row.min || meant > row.max) return [];
      const mended = { ...build, [parameter]: meant };
      const ratio = ratioOf(mended, part);
      if (ratio === undefined || !isWithin(ratio, NEAR_RATIO) || spanProblem(mended, parameter)) return [];
      return [{ slip: { code, parameter, given, meant }, isLast: parameter === lastTyped, order }];
    });
  });
  return found
    .toSorted((one, other) => Number(other.isLast) - Number(one.isLast) || one.order - other.order)
    .map(({ slip }) => slip);
}

/** Found by halving: the modulus only rises, or only falls, with each of its numbers. */
function fittingValue(build: Build, part: BlankPart, id: BlankNumberId): number | undefined {
  const row = parameterById(id);
  if (row.kind !== 'number') return undefined;
  const at = (value: number) => Math.log(ratioOf({ ...build, [id]: value }, part) ?? Number.NaN);
  let [low, high] = [row.min, row.max];
  // Also where the number says nothing, as the length of a blank that is bent.
  if (!(at(low) * at(high) < 0)) return undefined;
  const rises = at(high) > 0;
  for (let step = 0; step < 60; step += 1) {
    const middle = Math.sqrt(low * high);
    if (at(middle) > 0 === rises) high = middle;
    else low = middle;
  }
  return Number(low.toPrecision(2));
}

/**
 * A measured blank that is far from its species.
 * @param lastTyped the number whose slip is looked for first
 * @returns undefined for a blank that is believable, or not wholly measured
 */
export function farBlank(build: Build, part: BlankPart, lastTyped?: BlankNumberId): FarBlank | undefined {
  const ratio = ratioOf(build, part);
  if (ratio === undefined || isWithin(ratio, FAR_BLANK_RATIO)) return undefined;
  const speciesMPa = speciesModulusMPa(build, part);
  const fitting = lastTyped && fittingValue(build, part, lastTyped);
  return { modulusMPa: ratio * speciesMPa, speciesMPa, ratio, slips: slipsOf(build, part, lastTyped), fitting };
}
