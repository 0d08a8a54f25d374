/** Strings in courses: where they lie, and what cannot be. */
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { boardWidthMm, stringPlacesMm } from '../../src/neck/neck-shape.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { areInCourses, coursesOf, stringsOf } from '../../src/neck/strings.ts';
import { stringPlaceChecks } from '../../src/fretwork/checks/checks-of-strings.ts';
import { withPairs } from '../../src/pages/workshop/lists/string-choices.ts';
import { expectNear } from '../expect-near.ts';

const twelve = (): Build => ({
  ...defaultBuild(),
  widthNutMm: 47,
  strings: stringsOf('twelve-10-47', 'twelve-standard'),
});

describe('where strings in courses lie', () => {
  it.each([0, 150, 480])(
    '%s mm from the nut: outer ones at their distance from the edge, pairs as far apart as they are said to be',
    (x) => {
      const build = twelve();
      const places = stringPlacesMm(build, x);
      const half = boardWidthMm(build, x) / 2;
      expectNear(places[0], -half + build.stringEdgeMm, 1e-12, 'treble side');
      expectNear(places[11], half - build.stringEdgeMm, 1e-12, 'bass side');
      for (let pair = 0; pair < 6; pair += 1) {
        expectNear(places[2 * pair + 1] - places[2 * pair], 2.3, 1e-12, `pair ${pair + 1}`);
      }
      const gaps = [1, 3, 5, 7, 9].map(
        (at) => places[at + 1] - places[at] - (build.strings[at].diameterMm + build.strings[at + 1].diameterMm) / 2,
      );
      for (const gap of gaps) expectNear(gap, gaps[0], 1e-12, 'equal gaps between the courses');
    },
  );

  it('by themselves they lie as ever: equal gaps between their sides (worked by hand)', () => {
    const [a, b] = [
      { construction: 'steel-plain', diameterMm: 0.4, coreMm: 0.4, pitch: 64 },
      { construction: 'steel-plain', diameterMm: 0.8, coreMm: 0.8, pitch: 52 },
    ] as const;
    const build = { ...defaultBuild(), widthNutMm: 43, stringEdgeMm: 3.5, strings: [a, b, a] };
    // 36 mm between the outer middles; sides: 36 − 0.2 − 0.8 − 0.2 = 34.8, so 17.4 each, 18 from middle to middle.
    expect(stringPlacesMm(build, 0).map((z) => Number(z.toFixed(9)))).toEqual([-18, 0, 18]);
  });

  it('a single course lies in the middle', () => {
    const strings = stringsOf('twelve-10-47', 'twelve-standard').slice(0, 2);
    const places = stringPlacesMm({ ...defaultBuild(), strings }, 0);
    expectNear(places[1], 1.15, 1e-12, 'half of their distance');
    expectNear(places[0], -1.15, 1e-12, 'half of their distance');
  });

  it('are taken for close by their courses: six on a nut of 47 mm are not, on one of 28 mm with wide edges they are', () => {
    const codes = (change: Partial<Build>) => stringPlaceChecks({ ...twelve(), ...change }).map(({ code }) => code);
    expect(codes({ widthNutMm: 47 })).toEqual([]);
    expect(codes({ widthNutMm: 28, stringEdgeMm: 6 })).toEqual(['strings-too-close']);
  });
});

describe('putting strings in pairs and back', () => {
  it('changes nothing else, and what comes out can be', () => {
    const strings = stringsOf('six-10-46', 'six-standard');
    const paired = withPairs(strings, true);
    expect(areInCourses(paired)).toBe(true);
    expect(coursesOf(paired).map(({ length }) => length)).toEqual([2, 2, 2]);
    expect(withPairs(paired, false)).toEqual(strings);
    expect(checkBuild({ ...defaultBuild(), strings: paired }).ok).toBe(true);
  });

  it('keeps thick ones from touching', () => {
    const strings = withPairs(stringsOf('four-45-105', 'four-low'), true);
    // 2.159 and 2.667 mm touch at 2.413.
    expectNear(strings[3].besidePreviousMm!, 2.71, 1e-9, 'touching and 0.3 mm of air');
    expect(checkBuild({ ...defaultBuild(), strings }).ok).toBe(true);
  });
});

describe('what cannot be is refused', () => {
  const refused = (change: Partial<Build>) => {
    const found = checkBuild({ ...twelve(), ...change });
    return found.ok ? [] : found.problems.map((problem) => ('reason' in problem ? problem.reason : problem.code));
  };
  it.each([
    [
      'a first string beside none',
      (b: Build) => ({ strings: [{ ...b.strings[0], besidePreviousMm: 2 }, ...b.strings.slice(1)] }),
      'course-of-first',
    ],
    [
      'a pair that touches',
      (b: Build) => ({
        strings: b.strings.map((s, i) =>
          i === 11 ? { ...s, besidePreviousMm: 1 } : { ...s, diameterMm: Math.max(s.diameterMm, 1.3) },
        ),
      }),
      'strings-of-course',
    ],
    ['more than the nut holds', () => ({ widthNutMm: 28, stringEdgeMm: 7 }), 'courses-at-nut'],
    [
      'a pair out of range',
      (b: Build) => ({ strings: b.strings.map((s, i) => (i === 1 ? { ...s, besidePreviousMm: 9 } : s)) }),
      'out-of-range',
    ],
  ] as const)('%s', (_name, change, reason) => {
    expect(refused(change(twelve()))).toContain(reason);
  });
});
