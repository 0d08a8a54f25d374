/** How many times larger than life the bow is drawn where no hand has set it: chosen from the bow of the neck. */
import type { Prediction } from '../mechanics/prediction-types.ts';
import type { Build } from '../neck/build.ts';

export const BOW_FACTOR = { min: 1, max: 200, standard: 40 } as const;

const LADDER = [5, 10, 20, 40, 80, 120, 200] as const;
/** So much of the drawn neck's length is seen as bent, and does not yet look broken (by eye). */
const DRAWN_SHARE = 0.02;
/** A factor is kept as long as the bow that it draws is no further from that than this: what changes is then the bow. */
const MOST_OFF = 2;
/** A neck as flat as this is flat at any factor, mm. */
const FLAT_MM = 0.005;

/** The greatest bow of all moments of the job, mm. */
function greatestBowMm({ method }: Pick<Build, 'method'>, { methods }: Pick<Prediction, 'methods'>): number {
  const { fretted, strung, settled, rodSet } = methods[method];
  return Math.max(...[fretted, strung, settled, rodSet].map(({ extremeMm }) => Math.abs(extremeMm)));
}

/** @param now the factor that is chosen already */
export function chosenBowFactor(
  now: number,
  build: Pick<Build, 'method'>,
  prediction: Pick<Prediction, 'methods' | 'fretXMm'>,
): number {
  const bowMm = greatestBowMm(build, prediction);
  if (bowMm < FLAT_MM) return now;
  const wanted = (DRAWN_SHARE * prediction.fretXMm.at(-1)!) / bowMm;
  const off = (factor: number) => Math.abs(Math.log(factor / wanted));
  if (off(now) <= Math.log(MOST_OFF)) return now;
  return LADDER.toSorted((a, b) => off(a) - off(b))[0];
}
