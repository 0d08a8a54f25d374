/** Try strips in words: their bows, what is asked about, what is doubtful, what is wrong. */
import type { Unit, UnitSystem } from '../../neck/units.ts';
import type { StripProblem } from '../../mechanics/try-strip/document-problems.ts';
import {
  INSTRUMENT_ERROR_MM,
  type Instrument,
  type StripStiffness,
  type TryStrip,
} from '../../mechanics/try-strip/document.ts';
import type { GripDoubt } from '../../mechanics/try-strip/grip-posterior.ts';
import type { StripQuestion } from '../../mechanics/try-strip/predicted.ts';
import type { FarStiffness } from '../../mechanics/try-strip/stiffness.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import { enteredBowText } from '../bow.ts';
import { LOG_WORDS } from '../en/pages/log.ts';
import { STRIP_WORDS } from '../en/pages/strips.ts';
import { UNCERTAIN_INPUT_WORDS } from '../en/workshop/uncertainty.ts';
import { woodName } from '../names.ts';
import { formatNumber, formatQuantity, formatShort } from '../quantity.ts';

export const stripName = ({ name, date }: Pick<TryStrip, 'name' | 'date'>): string =>
  STRIP_WORDS.nameOf(name === '' ? STRIP_WORDS.unnamed : name, date);

/** @param humpMm hump positive, as the mechanics of a strip have it */
export const stripBowText = (humpMm: number, system: UnitSystem): string => enteredBowText(-humpMm, system);

export const sizeText = (mm: number, system: UnitSystem): string =>
  formatQuantity(mm, 'mm', Math.abs(mm) < 1 ? 2 : 1, system);

export function humpBandText({ p05, p50, p95 }: Band, system: UnitSystem): string {
  const digits = Math.abs(p50) < 1 ? 2 : 1;
  const [middle, low, high] = [p50, p05, p95].map((mm) => formatQuantity(mm, 'mm', digits, system));
  return STRIP_WORDS.aheadHump(middle, low, high);
}

/** "feelers, ±0.05 mm". */
export function instrumentText(instrument: Instrument, system: UnitSystem): string {
  if (instrument === 'own') return STRIP_WORDS.ownInstrument;
  const digits = instrument === 'ruler' ? 1 : 2;
  return STRIP_WORDS[instrument](formatQuantity(INSTRUMENT_ERROR_MM[instrument], 'mm', digits, system));
}

export function stripQuestionText({ measuredMm, bandMm, biteTimes }: StripQuestion, system: UnitSystem): string {
  const measured = stripBowText(measuredMm, system);
  const band = humpBandText(bandMm, system).replace(/\.$/, '');
  return biteTimes === null
    ? STRIP_WORDS.askNoBite(measured, band)
    : STRIP_WORDS.askBite(measured, band, formatShort(biteTimes, biteTimes < 1 ? 2 : 1));
}

export function stripDoubtText(doubt: GripDoubt, system: UnitSystem): string {
  const { doubts, wireNumbers } = STRIP_WORDS;
  switch (doubt.code) {
    case 'contradicting':
      return doubts.contradicting;
    case 'far-reading':
      return doubts.far(stripBowText(doubt.measuredMm, system), stripBowText(doubt.expectedMm, system));
    case 'far-on-neck': {
      const [measured, expected] = [doubt.measuredMm, doubt.expectedMm].map((mm) => enteredBowText(mm, system));
      return doubts.farOnNeck(LOG_WORDS.ownKinds[doubt.kind], measured, expected);
    }
    case 'end-of-range':
      return doubts.end(UNCERTAIN_INPUT_WORDS[doubt.input]);
    case 'few-samples':
      return doubts.few;
    case 'other-wire': {
      const unit: Unit = doubt.number === 'studAreaMm2' ? 'mm²' : 'mm';
      const [strip, neck] = [doubt.ofStrip, doubt.ofNeck].map((value) => formatQuantity(value, unit, 2, system));
      return doubts.wire(wireNumbers[doubt.number], strip, neck);
    }
  }
}

const NAMED = [
  'lengthMm',
  'widthMm',
  'thicknessMm',
  'kerfMm',
  'kerfErrorMm',
  'frets',
  'days',
  'loadG',
  'spanMm',
  'sagMm',
  'massG',
  'frequencyHz',
];

function nameAt(at: string): string {
  const last = at.split('.').at(-1)!;
  return NAMED.includes(last) ? (STRIP_WORDS[last as keyof typeof STRIP_WORDS] as string) : STRIP_WORDS.wrong;
}

export function stripProblemText(problem: StripProblem, system: UnitSystem): string {
  if (problem.code === 'not-json' || problem.code === 'not-strips' || problem.code === 'newer-version')
    return STRIP_WORDS.fileTroubles[problem.code];
  const { value, min, max, unit } = problem;
  const digits = unit === '' ? 0 : 2;
  const text = (number: number | undefined) =>
    number === undefined ? '' : unit === undefined ? String(number) : formatQuantity(number, unit, digits, system);
  const name = problem.code === 'impossible' ? STRIP_WORDS.because[problem.because] : nameAt(problem.at);
  const given = typeof value === 'number' ? text(value) : typeof value === 'string' ? value : '–';
  const limits = min === undefined && max === undefined ? '' : STRIP_WORDS.limits(text(min), text(max));
  return STRIP_WORDS.problem(name, given, limits);
}

/** "Stiffness: 1000 g on 280 mm give 1.20 mm, with the slots sawn". */
export function stiffnessText(stiffness: Exclude<StripStiffness, { test: 'none' }>, system: UnitSystem): string {
  const when = STRIP_WORDS.measuredStates[stiffness.state];
  if (stiffness.test === 'tap')
    return STRIP_WORDS.tapped(
      formatQuantity(stiffness.massG, 'g', 1, system),
      formatQuantity(stiffness.frequencyHz, 'Hz', 1, system),
      when,
    );
  const { loadG, spanMm, sagMm } = stiffness;
  const load =
    loadG === null ? formatQuantity(stiffness.loadN!, 'N', 2, system) : formatQuantity(loadG, 'g', 0, system);
  return STRIP_WORDS.weighed(load, formatQuantity(spanMm, 'mm', 0, system), sizeText(sagMm, system), when);
}

/** "That makes the strip 9.6 times softer than Indian rosewood: …". */
export function farStiffnessText(far: FarStiffness, { offcut }: TryStrip, system: UnitSystem): string {
  const [modulus, expected] = [far.modulusMPa, far.expectedMPa].map((mpa) =>
    formatQuantity(mpa / 1000, 'GPa', 2, system),
  );
  const times = formatNumber(Math.max(far.ratio, 1 / far.ratio), 1);
  const say = far.ratio < 1 ? STRIP_WORDS.farSofter : STRIP_WORDS.farStiffer;
  return say(times, woodName(offcut.wood), modulus, expected);
}
