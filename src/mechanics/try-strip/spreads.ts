/**
 * The uncertain inputs of a strip. Those of the neck's band that it shares keep their spreads and their deviates
 * (uncertainty/inputs.ts); the rest are its own.
 *
 *   shared always       bite, the studs' area, shape and width, what a wall gives to studs and body, relaxation, creep
 *   shared with the neck whose board it was cut from, else its own
 *                       E, stiffness across the grain, density, crushing strength of the wood
 *   its own             the depth of its slots ±0.05 mm: they are open at the edge, where callipers reach (assumption);
 *                       the kerf of each group, as its document says
 */
import type { InputDescription, UncertainInput } from '../uncertainty/inputs.ts';
import { INPUTS } from '../uncertainty/inputs.ts';

/** What any strip of the workshop's wire tells of a neck. */
export const GRIP_INPUTS = [
  'bite',
  'studArea',
  'studShape',
  'studWidthMm',
  'studSoftness',
  'wallStiffness',
  'relaxation',
  'creep',
] as const satisfies readonly UncertainInput[];

/** What one cut from the neck's own board tells beside. */
export const WOOD_INPUTS = [
  'boardModulus',
  'acrossGrain',
  'density',
  'crushing',
] as const satisfies readonly UncertainInput[];

export type StripInput = (typeof GRIP_INPUTS)[number] | (typeof WOOD_INPUTS)[number];
export const STRIP_INPUTS: readonly StripInput[] = [...GRIP_INPUTS, ...WOOD_INPUTS];

/** One standard deviation of the depth of a strip's slots, mm. */
export const STRIP_SLOT_DEPTH_ERROR_MM = 0.05;
/**
 * What strip and frets may differ by from the model of them, as a share of the bow; once for each span: 3 % that solids hold
 * the mechanics to, and 4 % of the grip for its law (assumption), in squares. With the 3 % alone bands cover less of the
 * workshops whose studs have another shape than assumed (VALIDATION.md).
 */
export const STRIP_MODEL_ERROR = 0.05;

const BY_ID = new Map(INPUTS.map((input) => [input.id, input]));

export function inputById(id: UncertainInput): InputDescription {
  return BY_ID.get(id)!;
}
