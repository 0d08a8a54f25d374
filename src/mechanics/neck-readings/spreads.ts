/**
 * What readings on a neck may differ by from the model of it, beside what the inputs of section 13 scatter and the instrument
 * does not know: standard deviations, as shares or of a logarithm.
 */
import type { ReadingKind } from './readings.ts';

/** Of a bow, and of what the strings do: as solids hold the mechanics to. */
const NECK_MODEL_ERROR = 0.03;
/** Of the strings' pull beside that: their tension at pitch (assumption). */
const STRING_TENSION_ERROR = 0.04;
/**
 * Of what a turn of the nut does: bar thinner or thicker than its thread says, play, how the anchors give (assumption). It is
 * the rod's own and common to all its turns, so that a reading tells of the neck's stiffness no better than this.
 */
const ROD_ERROR = 0.15;
/** ln of the grip of a quarter of the frets over that of the neck: other slots, another hand (assumption). */
export const QUARTER_LOG_SPREAD = 0.1;
/** One standard deviation of a dial over a beam, mm (assumption). */
export const USUAL_DIAL_ERROR_MM = 0.01;

/** One standard deviation of what the model says of a reading, as a share of it. */
export function modelErrorOf(kind: ReadingKind): number {
  if (kind === 'pull') return Math.hypot(NECK_MODEL_ERROR, STRING_TENSION_ERROR);
  return kind === 'rod' ? Math.hypot(NECK_MODEL_ERROR, ROD_ERROR) : NECK_MODEL_ERROR;
}
