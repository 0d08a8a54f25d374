/**
 * The shape that a build describes, as functions of x (mm from the nut) and z (mm across, 0 at the centre line).
 *
 *   position of fret n       x_n = L·(1 − 2^(−n/12))                         twelve-tone equal temperament, ISO 16 for A4
 *   width                    w(x) linear from the nut to the last fret
 *   radius                   R(x) constant (cylinder) or linear in x (cone)
 *   sagitta                  s(z) = R − √(R² − z²)                            drop of the board's surface below its crown
 *   total thickness          T(x) linear through its values at frets 1 and 12
 *   back                     d(z) = s₀ + (D − s₀)·(1 − |2z/w|^p)^(1/p),  D = T − t_b, below the board's underside
 *   heel                     adds its thickness over its length before the joint, and backs the board beyond it
 */
import type { Build } from './build.ts';

/** Distance of fret n from the nut in mm; n = 0 is the nut. */
export function fretPositionMm(scaleLengthMm: number, fret: number): number {
  return scaleLengthMm * (1 - 2 ** (-fret / 12));
}

/** Distances of frets 1…count from the nut in mm. */
export function fretPositionsMm(scaleLengthMm: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => fretPositionMm(scaleLengthMm, index + 1));
}

type ShapeOf<Keys extends keyof Build> = Pick<Build, Keys>;

/** x of the last fret in mm. */
export function lastFretMm(build: ShapeOf<'scaleLengthMm' | 'fretCount'>): number {
  return fretPositionMm(build.scaleLengthMm, build.fretCount);
}

/** x of the end of the board in mm. */
export function boardEndMm(build: ShapeOf<'scaleLengthMm' | 'fretCount' | 'boardBeyondLastFretMm'>): number {
  return lastFretMm(build) + build.boardBeyondLastFretMm;
}

/** x of the body joint in mm: the fret over the edge of the body. */
export function bodyJointMm(build: ShapeOf<'scaleLengthMm' | 'bodyJointFret'>): number {
  return fretPositionMm(build.scaleLengthMm, build.bodyJointFret);
}

/** Board width at x in mm. */
export function boardWidthMm(
  build: ShapeOf<'scaleLengthMm' | 'fretCount' | 'widthNutMm' | 'widthLastFretMm'>,
  xMm: number,
): number {
  return build.widthNutMm + ((build.widthLastFretMm - build.widthNutMm) * xMm) / lastFretMm(build);
}

/** Height of the strings over the crown line of the board where they begin: on the nut, or on the crown of a zero fret, mm. */
export function stringHeightAtNutMm({
  zeroFret,
  zeroFretHigherMm,
  crownHeightMm,
  stringHeightNutMm,
}: ShapeOf<'zeroFret' | 'zeroFretHigherMm' | 'crownHeightMm' | 'stringHeightNutMm'>): number {
  return zeroFret ? crownHeightMm + zeroFretHigherMm : stringHeightNutMm;
}

/** Bow of a neck before its frets go in, as one number, mm: as it was measured, or as it rested after heat and pressing. */
export const bowBeforeFrettingMm = ({
  heatPressed,
  heatRestMm,
  startingBowMm,
}: ShapeOf<'heatPressed' | 'heatRestMm' | 'startingBowMm'>): number => (heatPressed ? heatRestMm : startingBowMm);

/** Board radius at x in mm; Infinity on a flat board. */
export function boardRadiusMm(
  build: ShapeOf<'scaleLengthMm' | 'fretCount' | 'boardShape' | 'radiusNutMm' | 'radiusLastFretMm'>,
  xMm: number,
): number {
  if (build.boardShape === 'flat') return Infinity;
  if (build.boardShape === 'cylinder') return build.radiusNutMm;
  return build.radiusNutMm + ((build.radiusLastFretMm - build.radiusNutMm) * xMm) / lastFretMm(build);
}

/** Drop of an arc of radius R below its crown at distance z from its middle, mm; 0 for R = Infinity. */
export function sagittaMm(radiusMm: number, zMm: number): number {
  if (radiusMm === Infinity) return 0;
  // z²/(R + √(R² − z²)) is R − √(R² − z²) without the cancellation.
  return (zMm * zMm) / (radiusMm + Math.sqrt(radiusMm * radiusMm - zMm * zMm));
}

/** Mean drop of an arc below its crown over the width w, mm: the flat top of equal area lies this much lower. */
export function meanSagittaMm(radiusMm: number, widthMm: number): number {
  if (radiusMm === Infinity) return 0;
  const half = widthMm / 2;
  const chord = Math.sqrt(radiusMm * radiusMm - half * half);
  const meanHeight = (half * chord + radiusMm * radiusMm * Math.asin(half / radiusMm)) / (2 * half);
  return radiusMm - meanHeight;
}

/** Thickness of board and neck together at the centre line, without the heel, mm. */
export function totalThicknessMm(
  build: ShapeOf<'scaleLengthMm' | 'thicknessFret1Mm' | 'thicknessFret12Mm'>,
  xMm: number,
): number {
  const x1 = fretPositionMm(build.scaleLengthMm, 1);
  const x12 = fretPositionMm(build.scaleLengthMm, 12);
  return build.thicknessFret1Mm + ((build.thicknessFret12Mm - build.thicknessFret1Mm) * (xMm - x1)) / (x12 - x1);
}

/** The rod channel takes no more than this share of the wood below the board. */
export const MOST_CHANNEL_SHARE = 0.55;

/** Depth below the underside of the board that the rod channel has at x at most, without the heel, mm. */
export function mostChannelMm(
  build: ShapeOf<'scaleLengthMm' | 'thicknessFret1Mm' | 'thicknessFret12Mm' | 'boardThicknessMm'>,
  xMm: number,
): number {
  return MOST_CHANNEL_SHARE * (totalThicknessMm(build, xMm) - build.boardThicknessMm);
}

/** Depth of the rod's channel below the underside of the board at x, where there is one, mm. */
export function channelDepthMm(build: ChannelOf, xMm: number): number {
  if (build.channelCut === 'tapered') return Math.min(build.channelDepthMm, mostChannelMm(build, xMm));
  if (build.rodKind !== 'one-way' || !build.channelFollowsRod) return build.channelDepthMm;
  const [from, to] = [build.rodStartMm, build.rodEndMm];
  return Math.max(0, build.channelDepthMm - build.rodCurveMm * ((2 * xMm - from - to) / (to - from)) ** 2);
}

type ChannelOf = ShapeOf<
  | 'scaleLengthMm'
  | 'thicknessFret1Mm'
  | 'thicknessFret12Mm'
  | 'boardThicknessMm'
  | 'channelCut'
  | 'channelDepthMm'
  | 'channelFollowsRod'
  | 'rodKind'
  | 'rodStartMm'
  | 'rodEndMm'
  | 'rodCurveMm'
>;

/** Width of each channel at x, mm: one that tapers has the build's in the middle of the board. */
export function channelWidthMm(build: Build, xMm: number): number {
  if (build.channelCut === 'straight') return build.channelWidthMm;
  return (build.channelWidthMm * boardWidthMm(build, xMm)) / boardWidthMm(build, boardEndMm(build) / 2);
}

/** Middles of the rods across the neck, mm from the centre line. */
export function rodPlacesMm({
  rodKind,
  rodCount,
  rodsApartMm,
}: ShapeOf<'rodKind' | 'rodCount' | 'rodsApartMm'>): number[] {
  if (rodKind === 'none') return [];
  return rodCount === 1 ? [0] : [-rodsApartMm / 2, rodsApartMm / 2];
}

/** From the centre line to the outer side of the outermost channel, mm, as wide as it is in the middle of the board. */
export function channelsReachMm(build: ShapeOf<'rodKind' | 'rodCount' | 'rodsApartMm' | 'channelWidthMm'>): number {
  const outermost = rodPlacesMm(build).at(-1);
  return outermost === undefined ? 0 : outermost + build.channelWidthMm / 2;
}

/** Are the inner laminates of one width all along, and the outermost what is left? */
export const areLaminatesConstant = ({ laminates }: ShapeOf<'laminates'>): boolean =>
  laminates.some(({ widthMm }) => widthMm !== undefined);

/** Where pieces end, from the centre line outwards but for the outermost: in mm of constant laminates, or as shares of the half width. */
export function laminateJoints(build: ShapeOf<'laminates'>): number[] {
  const isConstant = areLaminatesConstant(build);
  let reached = 0;
  return build.laminates.slice(0, -1).map(({ share, widthMm }) => (reached += isConstant ? (widthMm ?? 0) / 2 : share));
}

/** The share of the neck's width that each piece takes: of constant laminates in the middle of the board. */
export function laminateShares(build: Build): number[] {
  if (!areLaminatesConstant(build)) return build.laminates.map(({ share }) => share);
  const half = boardWidthMm(build, boardEndMm(build) / 2) / 2;
  const ends = [...laminateJoints(build).map((joint) => joint / half), 1];
  return ends.map((end, index) => end - (ends[index - 1] ?? 0));
}

/** What the heel adds to the depth at x, mm: a ramp before the joint, constant beyond. */
export function heelDepthMm(
  build: ShapeOf<'scaleLengthMm' | 'bodyJointFret' | 'heelThicknessMm' | 'heelLengthMm'>,
  xMm: number,
): number {
  const along = (xMm - (bodyJointMm(build) - build.heelLengthMm)) / build.heelLengthMm;
  return build.heelThicknessMm * Math.min(1, Math.max(0, along));
}

/**
 * Depth of the back below the board's underside at lateral z, mm.
 * @param depthMm D, the depth at the centre line; @param widthMm w, the width there.
 */
export function backDepthMm(
  zMm: number,
  depthMm: number,
  widthMm: number,
  shoulderMm: number,
  exponent: number,
): number {
  const across = Math.min(1, Math.abs((2 * zMm) / widthMm));
  return shoulderMm + (depthMm - shoulderMm) * (1 - across ** exponent) ** (1 / exponent);
}

/** Width of the back at a depth below the board's underside, mm: the inverse of `backDepthMm`; 0 below the back. */
export function backChordMm(
  belowMm: number,
  depthMm: number,
  widthMm: number,
  shoulderMm: number,
  exponent: number,
): number {
  if (belowMm <= shoulderMm) return widthMm;
  if (belowMm >= depthMm) return 0;
  const down = (belowMm - shoulderMm) / (depthMm - shoulderMm);
  return widthMm * (1 - down ** exponent) ** (1 / exponent);
}

type EndsOf = ShapeOf<
  'binding' | 'bindingLineCount' | 'linesSawnThrough' | 'bridgeMm' | 'undercutTangs' | 'nipClearanceMm'
>;

/** How far from either edge of the board the slots stop, mm: the binding lines that the saw leaves whole, or the bridge. */
export function slotShortMm(build: EndsOf): number {
  const whole = build.binding.slice(0, build.bindingLineCount).slice(build.linesSawnThrough);
  return Math.max(
    build.bridgeMm,
    whole.reduce((sum, line) => sum + line.thicknessMm, 0),
  );
}

/** Are the tangs nipped short? In slots that stop before the edge, and where that is wanted in open ones. */
export const areNippedShort = (build: EndsOf): boolean => slotShortMm(build) > 0 || build.undercutTangs;

/** How far from either edge the tangs end, mm: the nip clearance before the slot does, where they are nipped short. */
export function tangShortMm(build: EndsOf): number {
  return areNippedShort(build) ? slotShortMm(build) + build.nipClearanceMm : 0;
}

/** Length of tang that stands in its slot at x, mm. */
export function tangLengthMm(build: Build, xMm: number): number {
  return boardWidthMm(build, xMm) - 2 * tangShortMm(build);
}

/** On which side of the centre line the bass strings lie: 1 for z > 0, as in every right-handed neck; else −1. */
export const bassSide = ({ leftHanded }: Pick<Build, 'leftHanded'>): 1 | -1 => (leftHanded ? -1 : 1);

/**
 * Lateral place of each string's middle at x, counted from the centre line towards the bass side, from the treble string
 * on, mm: the outer strings at their distance from the edge, those of a course as far apart as they are said to be, and
 * equal gaps between the sides of the courses.
 */
export function stringPlacesMm(build: Build, xMm: number): number[] {
  const { strings } = build;
  const span = boardWidthMm(build, xMm) - 2 * build.stringEdgeMm;
  const others = strings.slice(1);
  const gaps = others.filter(({ besidePreviousMm }) => besidePreviousMm === undefined).length;
  /** Middle to middle of each string and the one before it, with a gap between their sides. */
  const steps = (gap: number) =>
    others.map(
      ({ diameterMm, besidePreviousMm }, index) =>
        besidePreviousMm ?? (strings[index].diameterMm + diameterMm) / 2 + gap,
    );
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
  const gap = gaps > 0 ? (span - sum(steps(0))) / gaps : 0;
  const places = [-(gaps > 0 ? span : sum(steps(0))) / 2];
  for (const step of steps(gap)) places.push(places[places.length - 1] + step);
  return places;
}

/**
 * Fall-away: the last frets filed lower than the line of the others, so that a swinging string clears them.
 *
 *   f(x) = 0 up to fret n, d·(x − x_n)/(x_last − x_n) beyond          d its depth at the last fret, mm; on to the end of the board
 */
export interface FallAway {
  /** The last fret that stays on the line. */
  readonly fromFret: number;
  readonly atLastFretMm: number;
}

export const NO_FALL_AWAY: FallAway = { fromFret: 0, atLastFretMm: 0 };

function fallenMm(xMm: number, fromMm: number, lastMm: number, atLastFretMm: number): number {
  if (atLastFretMm === 0 || xMm <= fromMm || lastMm <= fromMm) return 0;
  return (atLastFretMm * (xMm - fromMm)) / (lastMm - fromMm);
}

/** How far each fret is filed lower, mm. */
export function fallAwayMm(fretXMm: readonly number[], { fromFret, atLastFretMm }: FallAway): number[] {
  const from = fretXMm[fromFret - 1] ?? Infinity;
  return fretXMm.map((x) => fallenMm(x, from, fretXMm[fretXMm.length - 1], atLastFretMm));
}

type Falling = Pick<Build, 'scaleLengthMm' | 'fretCount' | 'fallAwayMm' | 'fallAwayFromFret'>;

export const fallAwayOf = ({ fallAwayMm: atLastFretMm, fallAwayFromFret }: Falling): FallAway => ({
  fromFret: fallAwayFromFret,
  atLastFretMm,
});

/** How far the line of the fret tops of a build is filed lower at a place, mm. */
export function fallAwayAtMm(build: Falling, xMm: number): number {
  const from = fretPositionMm(build.scaleLengthMm, build.fallAwayFromFret);
  return fallenMm(xMm, from, lastFretMm(build), build.fallAwayMm);
}
