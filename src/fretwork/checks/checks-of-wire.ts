/** Checks of the wire: its studs, its bend, its length, and whether it suits the player. */
import type { Build } from '../../neck/build.ts';
import { metalById } from '../../neck/metals.ts';
import { nickelConstructions } from '../../neck/strings.ts';
import { basedOn } from '../facts.ts';
import { above, atLeast, atMost, below, check, GEOMETRY, NO_MEASURE, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import * as limits from './limits.ts';

function studs(build: Build): Check[] {
  const wall = build.studPitchMm * build.tangDepthMm;
  if (!above(build.studAreaMm2, wall)) return [];
  const measure = atMost('studAreaMm2', wall, build.studAreaMm2);
  return [check('studs-overlap', 'stop', 'studAreaMm2', measure, GEOMETRY)];
}

function bend(build: Build): Check[] {
  const percent = build.wireRadiusPercent;
  if (build.boardShape === 'flat') return [];
  if (above(percent, 100)) {
    const most = atMost('wireRadiusPercent', 100, percent);
    return [check('bend-too-flat', 'warn', 'wireRadiusPercent', most, PRACTICE)];
  }
  if (!below(percent, limits.TIGHTEST_BEND_PERCENT)) return [];
  const least = atLeast('wireRadiusPercent', limits.TIGHTEST_BEND_PERCENT, percent);
  return [check('bend-too-tight', 'warn', 'wireRadiusPercent', least, PRACTICE)];
}

function oversize(build: Build): Check[] {
  if (!below(build.oversizeMm, limits.LEAST_OVERSIZE_MM)) return [];
  const measure = atLeast('oversizeMm', limits.LEAST_OVERSIZE_MM, build.oversizeMm);
  return [check('little-oversize', 'note', 'oversizeMm', measure, PRACTICE)];
}

function endOfBoard(build: Build): Check[] {
  const left = build.boardBeyondLastFretMm;
  if (build.method === 'glue' || !below(left, limits.LEAST_BEYOND_LAST_FRET_MM)) return [];
  const measure = atLeast('boardBeyondLastFretMm', limits.LEAST_BEYOND_LAST_FRET_MM, left);
  const frets = [build.fretCount];
  return [check('short-grain-at-end', 'warn', 'boardBeyondLastFretMm', measure, PRACTICE, { frets })];
}

/** Of frets and strings alike: the finger is on both. */
function nickel(build: Build): Check[] {
  if (!build.nickelSensitivePlayer) return [];
  const about = nickelConstructions(build.strings);
  return [
    ...(metalById(build.wireMetal).nickel.is === 'none'
      ? []
      : [check('nickel', 'warn', 'wireMetal', NO_MEASURE, basedOn('nickel-rule'))]),
    ...(about.length === 0
      ? []
      : [check('nickel-strings', 'warn', 'strings', NO_MEASURE, basedOn('nickel-strings'), { about })]),
  ];
}

export function wireChecks(build: Build): Check[] {
  return [...studs(build), ...bend(build), ...oversize(build), ...endOfBoard(build), ...nickel(build)];
}
