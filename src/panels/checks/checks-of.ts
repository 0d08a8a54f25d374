/** The checks of a build with the numbers of its prediction. */
import type { Check } from '../../fretwork/check-types.ts';
import { checkFretwork } from '../../fretwork/checks.ts';
import { lineAt } from '../../mechanics/states.ts';
import type { Solution } from '../../state/solution-slice.ts';

/** Worst first, as the library orders them. */
export function checksOf({ build, prediction }: Solution): Check[] {
  const settled = (rodPercent: number) =>
    lineAt(prediction, build.method, { strung: true, days: build.settleDays, rodPercent }).extremeMm;
  const { leastPercent, mostPercent } = prediction.rod;
  const [atLeast, atMost] = [settled(leastPercent), settled(mostPercent)];
  return checkFretwork(build, {
    stringStressRatios: prediction.strings.map((string) => string.stressRatio),
    rod: {
      slackReliefMm: settled(0),
      leastReliefMm: Math.min(atLeast, atMost),
      mostReliefMm: Math.max(atLeast, atMost),
    },
  });
}
