/** Checks of where the strings lie. What they pull and whether they hold is in checks-from-forces.ts. */
import type { Build } from '../../neck/build.ts';
import { coursesOf, type StringSpec } from '../../neck/strings.ts';
import { atLeast, below, check, GEOMETRY, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import { LEAST_STRING_SPACING_MM } from './limits.ts';

/** From the middle of a course to the middle of the next at the nut, evenly spread, mm; undefined for a single one. */
function spacingAtNutMm({ strings, widthNutMm, stringEdgeMm }: Build): number | undefined {
  const courses = coursesOf(strings);
  const breadth = (course: readonly StringSpec[]) =>
    course.slice(1).reduce((sum, { besidePreviousMm = 0 }) => sum + besidePreviousMm, 0);
  const ends = (breadth(courses[0]) + breadth(courses[courses.length - 1])) / 2;
  return courses.length < 2 ? undefined : (widthNutMm - 2 * stringEdgeMm - ends) / (courses.length - 1);
}

export function stringPlaceChecks(build: Build): Check[] {
  const spacing = spacingAtNutMm(build);
  const { stringHeightNutMm, crownHeightMm } = build;
  return [
    ...(!build.zeroFret && below(stringHeightNutMm, crownHeightMm)
      ? [
          check(
            'strings-below-frets',
            'stop',
            'stringHeightNutMm',
            atLeast('stringHeightNutMm', crownHeightMm, stringHeightNutMm),
            GEOMETRY,
          ),
        ]
      : []),
    ...(spacing !== undefined && below(spacing, LEAST_STRING_SPACING_MM)
      ? [
          check(
            'strings-too-close',
            'warn',
            'strings',
            atLeast('stringSpacingMm', LEAST_STRING_SPACING_MM, spacing),
            PRACTICE,
          ),
        ]
      : []),
  ];
}
