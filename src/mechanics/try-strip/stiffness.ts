/**
 * The stiffness of an offcut, plain or with its slots sawn and empty, as two readings of ln: how much it gives, and what it
 * weighs for its size.
 *
 *   weight    δ/F = s³/(4·E·b·h³) + s/(4·k·G·b·h) + κ·Σ m_j²         s span; k = 5/6; m_j = moment at slot j under 1 N at the
 *                                                                     middle, mm; κ what a slot turns for 1 N·mm, rad
 *   tap       E_a = E/(1 + κ·E·I·Σ M_j²/∫ M² dx)                      E_a of the slotted bar by the formula for a plain one with
 *                                                                     its own mass; M: moment of the first free–free mode
 *   κ         from the sag of a short strip of the same slots         strip/strip.ts
 *   density   m/(L·b·h − n·k·d·b)                                     of a tapped strip
 *
 * δ of a slotted strip is that of a beam with hinges, which the mesh of the whole confirms (to 1 %, in the tests). The second is
 * the complementary form of Rayleigh's quotient: the moments of the plain bar's mode, and exact as κ goes to nothing.
 * κ answers to the stiffness across the grain and to the depth of the slots as the bow does.
 *
 * Errors, one standard deviation: 5 % of a sag, 3 % of E by a tap (uncertainty/inputs.ts), 2 % of a density by scales and
 * callipers (assumption).
 */
import { FAR_BLANK_RATIO } from '../../neck/blanks.ts';
import { N_PER_KG } from '../../neck/units.ts';
import { modulusFromTapMPa } from '../elements/materials.ts';
import { stripSagMm, type StripDescription } from '../strip/strip.ts';
import { BENT_ERROR, TAPPED_ERROR } from '../uncertainty/inputs.ts';
import type { StripContent, StripStiffness } from './document.ts';
import { fretsOf, slotXMm } from './layout.ts';
import { STRIP_SLOT_DEPTH_ERROR_MM } from './spreads.ts';
import { shallower, shorterStrip, stripWood, type StripModel, type StripNeck, type WoodAnswer } from './strip-model.ts';

const DENSITY_ERROR = 0.02;
/** βL of the first mode of a free bar, and the ratio that its ends ask for (any handbook of vibration). */
const BETA = 4.730041;
const SIGMA = 0.982502;
const SHEAR_FACTOR = 5 / 6;
/** The weight of a plan, about a pound; the sag is in proportion. */
const PLAN_LOAD_N = 5;

/** What a plain bar and its slots give, mm/N or in parts of one: the whole is plain + slots. */
interface Give {
  readonly plain: number;
  readonly slots: number;
}

/** Sag of the plain bar over a span, mm/N. */
function plainSagMm({ description: { widthMm: b, thicknessMm: h, wood } }: StripModel, spanMm: number): number {
  const e = wood.modulusMPa;
  return spanMm ** 3 / (4 * e * b * h ** 3) + spanMm / (4 * SHEAR_FACTOR * wood.shearRatio * e * b * h);
}

/** Σ m_j² over the slots between supports, 1 N at the middle of the strip, mm². */
function momentSquares(slotX: readonly number[], lengthMm: number, spanMm: number): number {
  return slotX.reduce((sum, x) => {
    const fromMiddle = Math.abs(x - lengthMm / 2);
    return sum + Math.max(0, (spanMm / 2 - fromMiddle) / 2) ** 2;
  }, 0);
}

/** κ of strips that were solved, by how much shallower their slots are and how stiff they are across the grain. */
const hinges = new WeakMap<StripDescription, Map<string, number>>();

function hinge(model: StripModel, shallowerMm: number, acrossGrain: number): number {
  const ofStrip = hinges.get(model.description) ?? new Map<string, number>();
  hinges.set(model.description, ofStrip);
  const key = `${shallowerMm} ${acrossGrain}`;
  const kappa = ofStrip.get(key) ?? solvedHinge(model, shallowerMm, acrossGrain);
  ofStrip.set(key, kappa);
  return kappa;
}

/** κ, rad/(N·mm). */
function solvedHinge(model: StripModel, shallowerMm: number, acrossGrain: number): number {
  const short = shorterStrip(model.strip);
  const description = shallower(short, model.wood, shallowerMm, acrossGrain);
  const { lengthMm } = description;
  const plain = plainSagMm({ ...model, description }, lengthMm);
  return (stripSagMm(description) - plain) / momentSquares(description.slotXMm, lengthMm, lengthMm);
}

/** Moment of the first free–free mode at x, up to a factor. */
function modeMoment(x: number, lengthMm: number): number {
  const u = (BETA * x) / lengthMm;
  return Math.cosh(u) - Math.cos(u) - SIGMA * (Math.sinh(u) - Math.sin(u));
}

/** Σ M_j²/∫ M² dx, 1/mm. ∫ M² dx = L with this factor. */
function modeShare(slotX: readonly number[], lengthMm: number): number {
  return slotX.reduce((sum, x) => sum + modeMoment(x, lengthMm) ** 2, 0) / lengthMm;
}

/** A number that was measured, as its logarithm, and how it answers to the deviates of the strip's wood and slots. */
export interface StiffnessReading {
  readonly of: 'give' | 'density';
  readonly measuredLn: number;
  readonly errorLn: number;
  readonly stated: Give;
  readonly slotAnswer: WoodAnswer;
}

const volumeMm3 = ({ offcut, groups, slotDepthMm }: StripContent, isSlotted: boolean): number => {
  const { lengthMm, widthMm, thicknessMm } = offcut;
  const sawn = groups.reduce((sum, { kerfMm, frets }) => sum + frets * kerfMm * slotDepthMm * widthMm, 0);
  return lengthMm * widthMm * thicknessMm - (isSlotted ? sawn : 0);
};

export function loadN({ loadN: newtons, loadG }: Extract<StripStiffness, { test: 'weight' }>): number {
  return newtons ?? (loadG! / 1000) * N_PER_KG;
}

/** What was measured of an offcut's stiffness and density; nothing where it was not. */
export function stiffnessReadings(model: StripModel): StiffnessReading[] {
  const { strip, description, spreads, wood } = model;
  const { stiffness, lengthMm, widthMm, thicknessMm } = strip.offcut;
  if (stiffness.test === 'none') return [];
  const isSlotted = stiffness.state === 'slotted' && fretsOf(strip) > 0;
  const kappa = isSlotted ? hinge(model, 0, 1) : 0;
  const slotAnswer: WoodAnswer = isSlotted
    ? {
        acrossGrain: Math.log(hinge(model, 0, Math.exp(spreads.acrossGrain)) / kappa),
        slotDepth: -Math.log(hinge(model, STRIP_SLOT_DEPTH_ERROR_MM, 1) / kappa),
      }
    : { acrossGrain: 0, slotDepth: 0 };
  const slotX = slotXMm(strip);
  if (stiffness.test === 'weight') {
    const { spanMm, sagMm } = stiffness;
    const stated = {
      plain: plainSagMm(model, spanMm),
      slots: kappa * momentSquares(slotX, lengthMm, spanMm),
    };
    return [{ of: 'give', measuredLn: Math.log(sagMm / loadN(stiffness)), errorLn: BENT_ERROR, stated, slotAnswer }];
  }
  const { massG, frequencyHz } = stiffness;
  const e = description.wood.modulusMPa;
  const apparent = modulusFromTapMPa(massG, frequencyHz, lengthMm, widthMm, thicknessMm);
  const inertia = (widthMm * thicknessMm ** 3) / 12;
  const give = { plain: 1 / e, slots: kappa * inertia * modeShare(slotX, lengthMm) };
  const densityKgM3 = (massG * 1e6) / volumeMm3(strip, isSlotted);
  const none: WoodAnswer = { acrossGrain: 0, slotDepth: 0 };
  const density = { plain: wood.densityKgM3, slots: 0 };
  return [
    { of: 'give', measuredLn: -Math.log(apparent), errorLn: TAPPED_ERROR, stated: give, slotAnswer },
    { of: 'density', measuredLn: Math.log(densityKgM3), errorLn: DENSITY_ERROR, stated: density, slotAnswer: none },
  ];
}

/** A test that would read so: its give and its density as logarithms. @param test weight or tap, and in which state */
export function stiffnessThatReads(
  strip: StripContent,
  { test, state }: Pick<Exclude<StripStiffness, { test: 'none' }>, 'test' | 'state'>,
  lnGive: number,
  lnDensity: number,
): StripStiffness {
  const { lengthMm, widthMm, thicknessMm } = strip.offcut;
  if (test === 'weight')
    return { test, state, loadN: PLAN_LOAD_N, loadG: null, spanMm: lengthMm, sagMm: PLAN_LOAD_N * Math.exp(lnGive) };
  const massG = (volumeMm3(strip, state === 'slotted') * Math.exp(lnDensity)) / 1e6;
  const atOneHz = modulusFromTapMPa(massG, 1, lengthMm, widthMm, thicknessMm);
  return { test, state, massG, frequencyHz: Math.sqrt(Math.exp(-lnGive) / atOneHz) };
}

/** What the strip says it would be, ln, without the deviate of E or of the density. */
export function statedLn({ stated, slotAnswer }: StiffnessReading, acrossGrain: number, slotDepth: number): number {
  const slots = stated.slots * Math.exp(slotAnswer.acrossGrain * acrossGrain + slotAnswer.slotDepth * slotDepth);
  return Math.log(stated.plain + slots);
}

/** A strip far stiffer or softer than its wood: measured over expected, and both, MPa. */
export interface FarStiffness {
  readonly ratio: number;
  readonly modulusMPa: number;
  readonly expectedMPa: number;
}

/**
 * Is the measured E of a strip beyond half to twice that of its wood (neck/blanks.ts)? Slots are counted as if the bar were
 * plain, and may take up to half of its stiffness more. Null where it is believable, or nothing was measured.
 */
export function farStiffness(strip: StripContent, neck: StripNeck, ownBoard: boolean): FarStiffness | null {
  const { stiffness, lengthMm, widthMm, thicknessMm } = strip.offcut;
  if (stiffness.test === 'none') return null;
  const modulusMPa =
    stiffness.test === 'tap'
      ? modulusFromTapMPa(stiffness.massG, stiffness.frequencyHz, lengthMm, widthMm, thicknessMm)
      : (loadN(stiffness) * stiffness.spanMm ** 3) / (4 * widthMm * thicknessMm ** 3 * stiffness.sagMm);
  const expectedMPa = stripWood(strip, neck, ownBoard).modulusMPa;
  const ratio = modulusMPa / expectedMPa;
  const least = 1 / FAR_BLANK_RATIO / (stiffness.state === 'slotted' ? 2 : 1);
  return ratio < least || ratio > FAR_BLANK_RATIO ? { ratio, modulusMPa, expectedMPa } : null;
}
