/**
 * Checks of a tang whose body is wider than the kerf, so that it wedges as well as the studs. That alone is how many press
 * frets: it is judged by what comes of it.
 */
import type { Build } from '../../neck/build.ts';
import { seatGroups } from '../../neck/kerf.ts';
import { basedOn } from '../facts.ts';
import { above, atLeast, atMost, below, check, NO_MEASURE, PRACTICE, worst } from './check-making.ts';
import type { Check, CheckVariants, Measure, Severity } from './check-types.ts';
import type { CheckNumbers } from './checks-from-forces.ts';
import * as limits from './limits.ts';

const PREDICTION = basedOn('prediction');

function found(
  variant: CheckVariants['body-wedges'],
  severity: Severity,
  measure: Measure,
  basis: typeof PRACTICE,
  frets: readonly number[],
): Check {
  return check('body-wedges', severity, 'kerfMm', measure, basis, { variant, frets });
}

/** The worst of some frets, where it is over a limit. */
function over(perFret: readonly number[], frets: readonly number[], limit: number) {
  const rows = frets.map((fret) => ({ fret, value: perFret[fret - 1] }));
  return worst(
    rows,
    ({ value }) => above(value, limit),
    ({ value }) => value,
    'greatest',
  );
}

function splitting({ wallShearPercent }: NonNullable<CheckNumbers['body']>, frets: readonly number[]): Check[] {
  const { safe, all } = limits.MOST_WALL_SHEAR_PERCENT;
  const bad = over(wallShearPercent, frets, safe);
  if (!bad) return [];
  const measure = atMost('wallShearPercent', safe, bad.value);
  return [found('split', above(bad.value, all) ? 'stop' : 'warn', measure, basedOn('shear-strength'), bad.frets)];
}

function seating(
  { seatingTool }: Build,
  { seatingForceN }: NonNullable<CheckNumbers['body']>,
  frets: readonly number[],
): Check[] {
  const limit = limits.MOST_SEATING_N[seatingTool];
  const bad = over(seatingForceN, frets, limit);
  return bad ? [found('force', 'warn', atMost('seatingForceN', limit, bad.value), PRACTICE, bad.frets)] : [];
}

/** A back-bow that neither the rod nor, where there is none, the kerf as it is brings to the relief wanted. */
function bow({ rodKind, targetReliefMm }: Build, rod: CheckNumbers['rod'], frets: readonly number[]): Check[] {
  if (!rod) return [];
  const mostMm =
    rodKind === 'none' ? rod.slackReliefMm : Math.max(rod.leastReliefMm, rod.mostReliefMm, rod.slackReliefMm);
  if (!below(mostMm, targetReliefMm - limits.RELIEF_TOLERANCE_MM)) return [];
  const quantity = rodKind === 'none' ? 'settledReliefMm' : 'rodReachReliefMm';
  return [found('bow', 'warn', atLeast(quantity, targetReliefMm, mostMm), PREDICTION, frets)];
}

/** It bears, and that is all: told beside what the bow would be without it. */
function bears(numbers: CheckNumbers['body'], frets: readonly number[]): Check {
  const isTold = numbers !== undefined && below(numbers.frettedReliefMm, numbers.withoutBodyReliefMm);
  const measure = isTold
    ? atLeast('frettedReliefMm', numbers.withoutBodyReliefMm, numbers.frettedReliefMm)
    : NO_MEASURE;
  return found('bears', 'note', measure, PREDICTION, frets);
}

export function bodyChecks(build: Build, { body, rod }: CheckNumbers): Check[] {
  if (build.method === 'glue') return [];
  const frets = seatGroups(build)
    .filter(({ seat }) => above(seat.tangWidthMm, seat.kerfMm))
    .flatMap((group) => group.frets)
    .toSorted((a, b) => a - b);
  if (frets.length === 0) return [];
  const named = frets.length === build.fretCount ? [] : frets;
  const harm = [
    ...(body ? [...splitting(body, frets), ...seating(build, body, frets)] : []),
    ...bow(build, rod, named),
  ];
  return harm.length > 0 ? harm : [bears(body, named)];
}
