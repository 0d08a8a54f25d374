/** Words of blanks that are measured: what is still missing, and a slip that is asked about. */
import type { BlankNumberName } from '../../../neck/blanks.ts';
import type { SlipCode } from '../../../mechanics/blank-slips.ts';
import { words } from '../../language.ts';

export const BLANK_WORDS = words('BLANK_WORDS', {
  names: {
    LengthMm: 'length',
    WidthMm: 'width',
    ThicknessMm: 'thickness',
    MassG: 'mass',
    FrequencyHz: 'frequency',
    SpanMm: 'span',
    LoadN: 'load',
    SagMm: 'deflection',
  } satisfies Record<BlankNumberName, string>,
  missing: (names: string, wood: string) =>
    `Still missing: ${names}. Until then the stiffness of the species counts (${wood}).`,
  measured: (modulus: string, wood: string, species: string) => `Measured: ${modulus}, beside ${species} of ${wood}.`,
  /** Of a neck of several woods. */
  woods: 'these woods together',
  ownWood: 'your own wood',
  softer: (typed: string, times: string, wood: string, modulus: string, species: string) =>
    `${typed} makes this blank ${times} times softer than ${wood}: ${modulus} against ${species}.`,
  stiffer: (typed: string, times: string, wood: string, modulus: string, species: string) =>
    `${typed} makes this blank ${times} times stiffer than ${wood}: ${modulus} against ${species}.`,
  usual: (value: string) => `About ${value} would fit the wood.`,
  meant: (value: string, why: string) => `Did you mean ${value} (${why})?`,
  meantOther: (name: string, value: string, why: string) => `Did you mean ${value} for ${name} (${why})?`,
  why: {
    ten: 'the decimal point',
    inches: 'inches and millimetres mixed up',
    kilograms: 'given in kilograms',
    grams: 'given in grams',
    'second-mode': 'the second tone instead of the first',
  } satisfies Record<SlipCode, string>,
  take: (value: string) => `Take ${value}`,
  keep: (value: string) => `Keep ${value}`,
  leave: 'Measure again',
  hear: 'Hear it …',
  tryStrip: 'Measure it on a try strip …',
  hearMissing: 'This part of the page did not come. Load the page again, or type the frequency.',
});
