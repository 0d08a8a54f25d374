/** The three moments in which a customer sees the necks, and how much larger than life their bend is drawn. */
import type { Build } from '../../neck/build.ts';
import type { Method, Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';

export const MOMENTS = ['fretted', 'strung', 'settled'] as const;
export type ShownMoment = (typeof MOMENTS)[number];

/** One choice with what is computed of it. */
export interface KnownChoice {
  readonly label: string;
  readonly build: Build;
  readonly prediction: Prediction;
}

export function lineOf({ build, prediction }: Omit<KnownChoice, 'label'>, moment: ShownMoment): ReliefLine {
  return prediction.methods[build.method][moment];
}

const LADDER = [5, 10, 20, 40, 80, 120, 200] as const;
const USUAL = 40;
/** So much of the drawn neck's length is plainly bent, and does not yet look broken (by eye). */
const DRAWN_SHARE = 0.03;
/** A neck as flat as this is flat at any factor, mm. */
const FLAT_MM = 0.005;

/** One for all choices and moments, so that they can be compared. */
export function factorFor(
  choices: readonly { readonly build: { readonly method: Method }; readonly prediction: Prediction }[],
): number {
  const bows = choices.flatMap(({ build, prediction }) =>
    MOMENTS.map((moment) => Math.abs(prediction.methods[build.method][moment].extremeMm)),
  );
  const greatest = Math.max(0, ...bows);
  if (greatest < FLAT_MM) return USUAL;
  const wanted = (DRAWN_SHARE * choices[0].prediction.fretXMm.at(-1)!) / greatest;
  const off = (factor: number) => Math.abs(Math.log(factor / wanted));
  return LADDER.toSorted((a, b) => off(a) - off(b))[0];
}

/** Days of a month as people count the first ones. */
const MONTH_DAYS = 30;

/** What the moment is called; the last one by its time where that is the same for all and a round one. */
export function momentName(moment: ShownMoment, builds: readonly Pick<Build, 'settleDays'>[]): string {
  const [{ settleDays: days }] = builds;
  const isShared = builds.every(({ settleDays }) => settleDays === days);
  const isRound = days >= MONTH_DAYS && days % MONTH_DAYS === 0;
  return moment === 'settled' && isShared && isRound
    ? CUSTOMER_WORDS.settledAfter(CUSTOMER_WORDS.months(days / MONTH_DAYS))
    : CUSTOMER_WORDS.moments[moment];
}
