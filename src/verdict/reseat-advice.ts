/**
 * A fret that was pulled and is seated again: every way with the checks that it would raise, and the one that is advised.
 *
 * Advised is the first that keeps most of what the fret had: dry in its own place, dry half a stud pitch beside it, a wire
 * with wider studs, and glue where none of them does. Share and order: common practice, no source; the plainest comes first.
 */
import type { Check } from '../fretwork/checks/check-types.ts';
import type { Predictor } from '../mechanics/predict.ts';
import {
  answerReseat,
  type ReseatAnswer,
  type ReseatOption,
  type ReseatWay,
  type ReseatWish,
} from '../mechanics/seating/reseat.ts';
import type { Build } from '../neck/build.ts';
import { isOffered, raisedByChange } from './raised-by.ts';

/** Share of its first force that a fret must keep to be seated dry. */
export const ENOUGH_SHARE = 0.75;

export interface AdvisedReseat extends ReseatAnswer {
  readonly options: readonly (ReseatOption & { readonly raised: readonly Check[] })[];
  readonly advised: ReseatWay;
}

/** @throws {RangeError} for a wish that cannot be meant */
export function advisedReseat(predictor: Pick<Predictor, 'predict'>, build: Build, wish: ReseatWish): AdvisedReseat {
  const answer = answerReseat(predictor, build, wish);
  const now = { build, prediction: predictor.predict(build) };
  const options = answer.options.map((option) => ({
    ...option,
    raised: option.regions ? raisedByChange(predictor, now, { regions: option.regions }) : [],
  }));
  const dry = options.find(({ way, share, raised }) => way !== 'glue' && share >= ENOUGH_SHARE && isOffered(raised));
  return { ...answer, options, advised: dry?.way ?? 'glue' };
}
