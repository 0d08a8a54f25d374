/** The checks of a build with the numbers of its prediction. */
import type { Build } from '../neck/build.ts';
import { fallAwayMm, fallAwayOf } from '../neck/neck-shape.ts';
import type { BlankPart } from '../neck/parameters.ts';
import type { Check } from '../fretwork/checks/check-types.ts';
import { checkFretwork } from '../fretwork/checks/checks.ts';
import type { CheckNumbers } from '../fretwork/checks/checks-from-forces.ts';
import { frettedWithoutBodyMm, wallShearPercent } from '../mechanics/seating/body.ts';
import { measuredModulusMPa, speciesModulusMPa } from '../mechanics/elements/materials.ts';
import { sampleLine } from '../mechanics/relief.ts';
import { levellingMoment, lineAt } from '../mechanics/states.ts';
import { rodForTarget } from './job-figures.ts';
import { withKnownLimits } from './known-limits.ts';
import type { Reckoned } from './reckoned.ts';

/** The state in which the crowns are reckoned to be levelled: as the build says, else on the bench with the strings off. */
export function levellingState({ build }: Pick<Reckoned, 'build'>): 'bare' | 'strung' {
  return build.levelledIn === 'strung' ? 'strung' : 'bare';
}

/** What the checks ask of the mechanics. */
export function checkNumbersOf(reckoned: Reckoned): CheckNumbers {
  const { build, prediction } = reckoned;
  const settled = (rodPercent: number) =>
    lineAt(prediction, build.method, { strung: true, days: build.settleDays, rodPercent }).extremeMm;
  const { leastPercent, mostPercent } = prediction.rod;
  const [atLeast, atMost] = [settled(leastPercent), settled(mostPercent)];
  const filed = lineAt(prediction, build.method, levellingMoment(levellingState(reckoned)));
  return {
    blankModulusGPa: measuredModuli(build),
    stringStressRatios: prediction.strings.map((string) => string.stressRatio),
    rod: {
      slackReliefMm: settled(0),
      neededPercent: rodForTarget(reckoned).percent,
      leastReliefMm: Math.min(atLeast, atMost),
      mostReliefMm: Math.max(atLeast, atMost),
    },
    ...bodyNumbers(reckoned),
    ...(build.method === 'press' ? {} : { gluedGivePercent: 100 * prediction.methods[build.method].extraFlexibility }),
    ...(prediction.frettedBoard && build.method !== 'glue' ? { frettedBoard: prediction.frettedBoard } : {}),
    levelling: {
      reliefMm: prediction.fretXMm.map((x) => sampleLine(prediction.stationXMm, filed.reliefMm, x)),
      targetReliefMm: fallAwayMm(prediction.fretXMm, fallAwayOf(build)),
    },
  };
}

function bodyNumbers({ build, prediction }: Reckoned): Pick<CheckNumbers, 'body'> {
  const { fretted, seatingForceN, wallPressureShare } = prediction.methods[build.method];
  if (wallPressureShare.every((share) => share === 0)) return {};
  return {
    body: {
      frettedReliefMm: fretted.extremeMm,
      withoutBodyReliefMm: frettedWithoutBodyMm(build, prediction),
      seatingForceN,
      wallShearPercent: wallShearPercent(build, prediction),
    },
  };
}

function measuredModuli(build: Build): NonNullable<CheckNumbers['blankModulusGPa']> {
  const of = (part: BlankPart) => {
    const measured = measuredModulusMPa(build, part);
    return measured === undefined
      ? {}
      : { [part]: { measured: measured / 1000, species: speciesModulusMPa(build, part) / 1000 } };
  };
  return { ...of('neck'), ...of('board') };
}

/** Worst first, as the library orders them, with what the model is known to get wrong on such a neck. */
export function checksOf(reckoned: Reckoned): Check[] {
  return withKnownLimits(checkFretwork(reckoned.build, checkNumbersOf(reckoned)), reckoned);
}
