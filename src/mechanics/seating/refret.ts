/**
 * Refret: which tang in which stretch of frets takes an old bow out of a neck.
 *
 * For each tang that is to hand, one prediction with that tang in every slot gives the line w_i that it makes in each
 * slot. Neighbouring slots close each other, by 2 % near the nut and by about 30 % near the body, so the line of a
 * combination is nearly, not quite, the sum of those. Every combination of tangs over the stretches is tried, and the best
 * few are predicted exactly. What is minimised is the largest distance of the relief at any fret up to the body joint from
 * the relief wanted (a parabola of that depth).
 */
import { Refused } from '../refusal.ts';
import { slotAndTang, type Build, type FretRegion } from '../../neck/build.ts';
import type { Predictor } from '../predict.ts';
import type { Method, Moment, Prediction } from '../prediction-types.ts';
import { sampleLine } from '../relief.ts';
import { lineAt } from '../states.ts';

/** A tang to choose from, mm. */
export interface TangChoice {
  readonly tangWidthMm: number;
  readonly studWidthMm: number;
}

/** A stretch of frets that takes one tang. */
export interface Stretch {
  readonly fromFret: number;
  readonly toFret: number;
}

export interface TangPlan {
  /** One tang for each stretch. */
  readonly tangs: readonly TangChoice[];
  /** The build's regions with these tangs; the kerfs of the slots stay as they are. */
  readonly regions: readonly FretRegion[];
  readonly prediction: Prediction;
  readonly reliefMm: number;
  /** Largest distance of the fret tops from the wanted line up to the body joint, mm. */
  readonly missMm: number;
}

const MOST_COMBINATIONS = 20_000;
const TRIED_EXACTLY = 4;

/** Splits the frets into stretches of nearly equal length, nut to body. @throws {RangeError} on more stretches than frets. */
export function equalStretches(fretCount: number, count: number): Stretch[] {
  if (!Number.isInteger(count) || count < 1 || count > fretCount) {
    throw new Refused({ code: 'stretches-beyond-range', stretches: count, most: fretCount });
  }
  return Array.from({ length: count }, (_, index) => ({
    fromFret: Math.round((index * fretCount) / count) + 1,
    toFret: Math.round(((index + 1) * fretCount) / count),
  }));
}

/** The build with these tangs in these stretches. Slots keep their kerfs, so neighbouring slots of one kerf share a region. */
export function withTangs(build: Build, stretches: readonly Stretch[], tangs: readonly TangChoice[]): Build {
  const regions: FretRegion[] = [];
  stretches.forEach((stretch, index) => {
    const { tangWidthMm, studWidthMm } = tangs[index];
    for (let fret = stretch.fromFret; fret <= stretch.toFret; fret += 1) {
      const { kerfMm } = slotAndTang(build, fret);
      const open = regions.at(-1);
      const goesOn =
        open?.toFret === fret - 1 &&
        open.kerfMm === kerfMm &&
        open.tangWidthMm === tangWidthMm &&
        open.studWidthMm === studWidthMm;
      if (goesOn) regions[regions.length - 1] = { ...open, toFret: fret };
      else regions.push({ fromFret: fret, toFret: fret, kerfMm, tangWidthMm, studWidthMm });
    }
  });
  return { ...build, regions };
}

/** Relief wanted at each fret up to the joint: a parabola between the ends of the straightedge, mm. */
function wantedAt(prediction: Prediction, targetMm: number, fret: number): number {
  const { fromFret, toFret } = prediction.straightedge;
  const from = prediction.fretXMm[fromFret - 1];
  const s = (prediction.fretXMm[fret - 1] - from) / (prediction.fretXMm[toFret - 1] - from);
  return 4 * targetMm * s * (1 - s);
}

/**
 * The best combinations of tangs, best first.
 * @param moment the state that is to come out right; all frets in.
 * @throws {RangeError} without tangs or stretches, or when there are too many combinations to try.
 */
export function chooseTangs(
  predictor: Predictor,
  build: Build,
  method: Exclude<Method, 'glue'>,
  moment: Omit<Moment, 'fretsIn'>,
  targetMm: number,
  stretches: readonly Stretch[],
  choices: readonly TangChoice[],
): TangPlan[] {
  const combinations = choices.length ** stretches.length;
  if (stretches.length === 0 || choices.length === 0) throw new Refused({ code: 'no-stretch-or-tang' });
  if (combinations > MOST_COMBINATIONS) {
    throw new Refused({
      code: 'too-many-combinations',
      tangs: choices.length,
      stretches: stretches.length,
      combinations,
      most: MOST_COMBINATIONS,
    });
  }
  const frets = Array.from({ length: build.bodyJointFret }, (_, index) => index + 1);

  // What each tang does at the frets, stretch by stretch: with all frets of a stretch in, less none.
  const reliefAtFrets = (prediction: Prediction, when: Moment): number[] => {
    const { reliefMm } = lineAt(prediction, method, when);
    return frets.map((fret) => sampleLine(prediction.stationXMm, reliefMm, prediction.fretXMm[fret - 1]));
  };
  const uniform = choices.map((choice) =>
    predictor.predict(
      withTangs(
        build,
        stretches,
        stretches.map(() => choice),
      ),
    ),
  );
  const without = uniform.map((prediction) => reliefAtFrets(prediction, { ...moment, fretsIn: [] }));
  const effects = uniform.map((prediction, c) =>
    stretches.map(({ fromFret, toFret }) => {
      const fretsIn = Array.from({ length: toFret - fromFret + 1 }, (_, index) => fromFret + index);
      return reliefAtFrets(prediction, { ...moment, fretsIn }).map((value, i) => value - without[c][i]);
    }),
  );
  const wanted = frets.map((fret) => wantedAt(uniform[0], targetMm, fret));
  const start = without[0];

  const tried: { readonly picks: number[]; readonly miss: number }[] = [];
  for (let code = 0; code < combinations; code += 1) {
    const picks: number[] = [];
    for (let rest = code; picks.length < stretches.length; rest = Math.floor(rest / choices.length)) {
      picks.push(rest % choices.length);
    }
    let miss = 0;
    for (let i = 0; i < frets.length; i += 1) {
      let relief = start[i];
      picks.forEach((pick, stretch) => (relief += effects[pick][stretch][i]));
      miss = Math.max(miss, Math.abs(relief - wanted[i]));
    }
    tried.push({ picks, miss });
  }
  tried.sort((a, b) => a.miss - b.miss);

  return tried
    .slice(0, TRIED_EXACTLY)
    .map(({ picks }): TangPlan => {
      const tangs = picks.map((pick) => choices[pick]);
      const changed = withTangs(build, stretches, tangs);
      const prediction = predictor.predict(changed);
      const reached = reliefAtFrets(prediction, moment);
      return {
        tangs,
        regions: changed.regions,
        prediction,
        reliefMm: lineAt(prediction, method, moment).extremeMm,
        missMm: Math.max(...reached.map((value, i) => Math.abs(value - wanted[i]))),
      };
    })
    .toSorted((a, b) => a.missMm - b.missMm);
}
