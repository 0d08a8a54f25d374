/** Checks of the wire: its studs, its bend, its length, and whether it suits the player. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { metalById } from '../../neck/metals.ts';
import { withDecimalSign } from '../../speech/quantity.ts';
import { atLeast, atMost, check, GEOMETRY, NO_MEASURE, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import * as limits from './limits.ts';

function studs(build: Build): Check[] {
  const wall = build.studPitchMm * build.tangDepthMm;
  if (build.studAreaMm2 <= wall) return [];
  return [
    check('studs-overlap', 'stop', 'studAreaMm2', atMost(wall, build.studAreaMm2, 'mm²'), GEOMETRY, {
      reason: say`Studs of this area at this pitch would cover more than the whole side of the tang.`,
      remedy: say`Measure stud and pitch on the wire again.`,
    }),
  ];
}

function bend(build: Build): Check[] {
  const percent = build.wireRadiusPercent;
  if (build.boardShape === 'flat') return [];
  if (percent > 100) {
    return [
      check('bend-too-flat', 'warn', 'wireRadiusPercent', atMost(100, percent, '%', 0), PRACTICE, {
        reason: say`The wire is flatter than the board: its ends stand up and spring up again after pressing.`,
        remedy: say`Bend it tighter than the board.`,
      }),
    ];
  }
  if (percent >= limits.TIGHTEST_BEND_PERCENT) return [];
  const measure = atLeast(limits.TIGHTEST_BEND_PERCENT, percent, '%', 0);
  return [
    check('bend-too-tight', 'warn', 'wireRadiusPercent', measure, PRACTICE, {
      reason: say`The wire is much tighter than the board: flattening its middle spreads the ends and kinks the crown.`,
      remedy: say`Bend it less.`,
    }),
  ];
}

function oversize(build: Build): Check[] {
  if (build.oversizeMm >= limits.LEAST_OVERSIZE_MM) return [];
  return [
    check('little-oversize', 'note', 'oversizeMm', atLeast(limits.LEAST_OVERSIZE_MM, build.oversizeMm), PRACTICE, {
      reason: say`There is next to no wire over the edges: a fret laid in a little to one side comes out short.`,
      remedy: say`Cut the pieces longer.`,
    }),
  ];
}

function endOfBoard(build: Build): Check[] {
  if (build.method === 'glue' || build.boardBeyondLastFretMm >= limits.LEAST_BEYOND_LAST_FRET_MM) return [];
  const measure = atLeast(limits.LEAST_BEYOND_LAST_FRET_MM, build.boardBeyondLastFretMm, 'mm', 1);
  const words = {
    reason: say`The wedge of the last fret can shear off the short grain at the end of the board.`,
    remedy: say`Leave the board longer until the frets are in, or glue the last fret.`,
  };
  return [check('short-grain-at-end', 'warn', 'boardBeyondLastFretMm', measure, PRACTICE, words, [build.fretCount])];
}

function nickel(build: Build): Check[] {
  if (!build.nickelSensitivePlayer || metalById(build.wireMetal).nickel.is === 'none') return [];
  const nickelLimit = withDecimalSign(String(limits.NICKEL_RELEASE_LIMIT));
  const basis = { source: say`REACH Annex XVII entry 27, EN 1811`, mark: 'src' } as const;
  return [
    check('nickel', 'warn', 'wireMetal', NO_MEASURE, basis, {
      reason: say`The player is sensitive to nickel and this wire contains it. The European limit of ${nickelLimit} µg per cm² and week is one of release, and keeping it is no promise to someone already sensitised.`,
      remedy: say`Take a nickel-free alloy, look at the strings too, and leave the judgement of the skin to a doctor.`,
    }),
  ];
}

export function wireChecks(build: Build): Check[] {
  return [...studs(build), ...bend(build), ...oversize(build), ...endOfBoard(build), ...nickel(build)];
}
