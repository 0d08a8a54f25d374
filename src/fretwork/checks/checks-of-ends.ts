/** Checks of the fret ends: shelf, nip, bevel beside the outer strings. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { atLeast, atMost, check, GEOMETRY, PRACTICE, worst } from './check-making.ts';
import type { Check } from './check-types.ts';
import type { FretEnd } from '../ends.ts';
import * as limits from './limits.ts';

function shelf(build: Build, stopped: readonly FretEnd[]): Check[] {
  const shows = stopped.filter((end) => end.slotUncoveredMm > 1e-9);
  const first = shows[0];
  if (first) {
    const words = {
      reason: say`The filed end stops short of the slot’s end: a hole shows beside every fret.`,
      remedy: say`File the ends less far in, leave more lines whole, or fill the slot ends.`,
    };
    const measure = atMost(first.wholeWidthMm, build.endInsetMm);
    const frets = shows.map((end) => end.fret);
    return [check('slot-shows', 'warn', 'endInsetMm', measure, GEOMETRY, words, frets)];
  }
  const short = worst(
    stopped,
    (end) => end.shelfMm < limits.LEAST_SHELF_MM,
    (end) => end.shelfMm,
    'least',
  );
  if (!short) return [];
  const words = {
    reason: say`The crown hardly rests on the binding left whole; its end can be pressed into the slot.`,
    remedy: say`File the ends less far in, or leave one more line whole.`,
  };
  const measure = atLeast(limits.LEAST_SHELF_MM, short.value);
  return [check('shelf-short', 'warn', 'endInsetMm', measure, PRACTICE, words, short.frets)];
}

function nip(build: Build, stopped: readonly FretEnd[]): Check[] {
  if (stopped.length === 0 || build.nipClearanceMm >= limits.LEAST_NIP_CLEARANCE_MM) return [];
  const measure = atLeast(limits.LEAST_NIP_CLEARANCE_MM, build.nipClearanceMm);
  return [
    check('tight-nip', 'warn', 'nipClearanceMm', measure, PRACTICE, {
      reason: say`The nipped tang has no room: when the board dries it pushes the binding off.`,
      remedy: say`Nip a little more off each end.`,
    }),
  ];
}

function outerString(build: Build, ends: readonly FretEnd[]): Check[] {
  const beside = (end: FretEnd) => build.stringEdgeMm - (end.boardHalfMm - end.crownTopHalfMm);
  const near = worst(ends, (end) => beside(end) < limits.LEAST_BESIDE_STRING_MM, beside, 'least');
  if (!near) return [];
  const words = {
    reason: say`Bevel and inset take so much of the crown that an outer string can slip off its end.`,
    remedy: say`Bevel more steeply (a smaller angle), file the ends less far in, or set the outer strings further in.`,
  };
  const measure = atLeast(limits.LEAST_BESIDE_STRING_MM, near.value);
  return [check('string-near-end', 'warn', 'endBevelDegrees', measure, PRACTICE, words, near.frets)];
}

export function endChecks(build: Build, ends: readonly FretEnd[]): Check[] {
  const stopped = ends.filter((end) => !end.slotOpen);
  return [...shelf(build, stopped), ...nip(build, stopped), ...outerString(build, ends)];
}
