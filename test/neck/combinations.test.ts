/** What can exist together. Each refusal names the parameter, its value, the limit and the unit, and its limit is itself allowed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { findImpossible } from '../../src/neck/combinations.ts';
import { parameterById, type ParameterId } from '../../src/neck/parameters.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { checkChange } from '../tools/check-change.ts';
import { anyBuild } from '../arbitrary/any-build.ts';
import { parameterName } from '../../src/speech/names.ts';
import { problemText } from '../../src/speech/problems.ts';

const problemsOf = (change: Partial<Build>) => findImpossible({ ...defaultBuild(), ...change });

const CASES: readonly (readonly [what: string, parameter: ParameterId, change: Partial<Build>, words: RegExp])[] = [
  [
    'a joint beyond the last fret',
    'bodyJointFret',
    { fretCount: 20, bodyJointFret: 22 },
    /Body joins at fret is 22; here it can be at most 20: the board has only 20 frets/,
  ],
  [
    'more frets than the board has room for',
    'fretCount',
    { scaleLengthMm: 450, fretCount: 36, bodyJointFret: 20 },
    /Frets is 36; here it can be at most \d+: .*less than 1\smm apart/,
  ],
  [
    'a slot deeper than the board',
    'slotDepthMm',
    { slotDepthMm: 5.9 },
    /Slot depth is 5\.9\smm; here it can be at most [\d.]+\smm: the board is [\d.]+\smm thick under the slot/,
  ],
  [
    'a flat cut that does not reach the edge',
    'slotDepthMm',
    { slotBottom: 'flat', radiusNutMm: 184, boardThicknessMm: 8, slotDepthMm: 1.5 },
    /Slot depth is 1\.5\smm; here it can be at least [\d.]+\smm: a flat cut must still be a slot at the edge/,
  ],
  [
    'a kerf wider than the crown',
    'kerfMm',
    { crownWidthMm: 1.25, studWidthMm: 0.76, kerfMm: 1.2 },
    /Kerf is 1\.2\smm; here it can be at most 1\.05\smm: the crown must cover the slot/,
  ],
  [
    'studs narrower than the tang',
    'studWidthMm',
    { studWidthMm: 0.4 },
    /Width over the studs is 0\.4\smm; here it can be at least 0\.5\smm/,
  ],
  [
    'studs wider than the crown',
    'studWidthMm',
    { crownWidthMm: 1.2, studWidthMm: 1.3 },
    /Width over the studs is 1\.3\smm; here it can be at most 1\.2\smm/,
  ],
  [
    'a neck too thin for board and shoulder',
    'thicknessFret1Mm',
    { thicknessFret1Mm: 15, boardThicknessMm: 9.5, backShoulderMm: 6 },
    /Thickness at fret 1 is 15\smm; here it can be at least [\d.]+\smm/,
  ],
  [
    'a neck that tapers to nothing',
    'thicknessFret12Mm',
    { thicknessFret1Mm: 25, thicknessFret12Mm: 15, boardThicknessMm: 9, backShoulderMm: 4 },
    /Thickness at fret 12 is 15\smm; here it can be at least [\d.]+\smm/,
  ],
  [
    'more lines sawn through than there are',
    'linesSawnThrough',
    { bindingLineCount: 1, linesSawnThrough: 2 },
    /Inner lines sawn through is 2; here it can be at most 1/,
  ],
  [
    'strings on the frets',
    'stringHeightFret12Mm',
    { crownHeightMm: 1.8, stringHeightFret12Mm: 1.7 },
    /String height at fret 12 is 1\.7\smm; here it can be at least 1\.9\smm: the strings must clear the frets/,
  ],
  [
    'a rod longer than the board',
    'rodEndMm',
    { rodEndMm: 600 },
    /Rod ends is 600\smm; here it can be at most [\d.]+\smm: the rod must end under the board/,
  ],
  [
    'a bar through the back',
    'barDepthMm',
    { barCount: 2, barDepthMm: 14 },
    /Bar depth is 14\smm; here it can be at most [\d.]+\smm: 2\smm of wood must stay/,
  ],
  [
    'bars wider than the neck',
    'barWidthMm',
    { barCount: 2, barWidthMm: 10, barDepthMm: 9 },
    /Bar width is 10\smm; here it can be at most [\d.]+\smm/,
  ],
  [
    'crowns narrower than the slots of a region',
    'crownWidthMm',
    { crownWidthMm: 1.2, regions: [{ fromFret: 1, toFret: 2, kerfMm: 1.1, tangWidthMm: 0.5, studWidthMm: 0.8 }] },
    /Crown width is 1\.2\smm; here it can be at least 1\.3\smm/,
  ],
  [
    'a cone that pinches to nothing',
    'radiusLastFretMm',
    {
      scaleLengthMm: 450,
      fretCount: 12,
      bodyJointFret: 10,
      boardShape: 'cone',
      radiusNutMm: 1000,
      radiusLastFretMm: 150,
      boardBeyondLastFretMm: 40,
      rodEndMm: 200,
    },
    /Radius at the last fret is 150\smm; here it can be at least [\d.]+\smm: the cone goes on narrowing/,
  ],
];

describe('impossible together', () => {
  it.each(CASES)('%s', (_what, id, change, words) => {
    const problem = problemsOf(change).find((candidate) => candidate.parameter === id)!;
    expect(problem).toBeDefined();
    expect(problem.code).toBe('impossible');
    expect(problemText(problem, 'metric')).toMatch(words);
    expect(problemText(problem, 'metric')).not.toMatch(/NaN|undefined|Infinity/);
    const parameter = parameterById(id);
    expect(problem.value).toBe(
      (change as Record<string, unknown>)[id] ?? (defaultBuild() as unknown as Record<string, unknown>)[id],
    );
    expect(problem.unit).toBe(parameter.kind === 'number' ? parameter.unit : '');
    expect(problemText(problem, 'metric')).toContain(parameterName(id));
    // The limit that is named is allowed.
    const limit = problem.min ?? problem.max!;
    expect(Number.isFinite(limit)).toBe(true);
    const printed = Number(/at (?:least|most) ([−\d.]+)/.exec(problemText(problem, 'metric'))![1].replace('−', '-'));
    for (const value of [limit, printed]) {
      expect(problemsOf({ ...change, [id]: value }).filter((other) => other.parameter === id)).toEqual([]);
    }
  });

  it.each([
    [
      'binding',
      { bindingLineCount: 5, binding: Array.from({ length: 5 }, () => ({ thicknessMm: 3, colour: '#000000' })) },
      /binding lines are 15\smm thick together; at this nut they can be at most 10\.75\smm per side/,
    ],
    [
      'regions.0',
      { regions: [{ fromFret: 9, toFret: 3, kerfMm: 0.6, tangWidthMm: 0.5, studWidthMm: 0.8 }] },
      /Region 1 runs from fret 9 to fret 3; on this neck it can run from a fret to the same or a later one, up to 22/,
    ],
    [
      'regions.0',
      { regions: [{ fromFret: 20, toFret: 30, kerfMm: 0.6, tangWidthMm: 0.5, studWidthMm: 0.8 }] },
      /up to 22/,
    ],
    [
      'regions.0.studWidthMm',
      { regions: [{ fromFret: 1, toFret: 3, kerfMm: 0.6, tangWidthMm: 0.6, studWidthMm: 0.5 }] },
      /Region 1 has studs 0\.5\smm wide on a tang of 0\.6\smm/,
    ],
    ['startingReliefMm', { startingReliefMm: [0.1, 0.2] }, /2 reliefs are listed for 22 frets/],
    [
      'laminates',
      {
        laminates: [
          { wood: 'wenge', share: 0.4 },
          { wood: 'sugar-maple', share: 0.4 },
        ],
      },
      /shares of the neck’s laminates sum to 0\.8; they must sum to 1/,
    ],
    [
      'strings.1.coreMm',
      {
        strings: [defaultBuild().strings[0], { construction: 'steel-wound', diameterMm: 0.6, coreMm: 0.58, pitch: 50 }],
      },
      /String 2 has a core of 0\.58\smm in a diameter of 0\.6\smm/,
    ],
  ] as const)('lists: %s', (parameter, change, words) => {
    const problem = problemsOf(change as Partial<Build>).find((candidate) => candidate.parameter === parameter)!;
    expect(problem.code).toBe('impossible');
    expect(problemText(problem, 'metric')).toMatch(words);
  });

  it('several at once are all said', () => {
    const parameters = problemsOf({ slotDepthMm: 5.9, studWidthMm: 0.4, rodEndMm: 600 }).map(
      (problem) => problem.parameter,
    );
    expect(parameters).toEqual(expect.arrayContaining(['slotDepthMm', 'studWidthMm', 'rodEndMm']));
  });

  it('what is not in use does not count', () => {
    expect(problemsOf({ rodKind: 'none', rodEndMm: 690 })).toEqual([]);
    expect(problemsOf({ barCount: 0, barDepthMm: 14, barWidthMm: 10 })).toEqual([]);
    expect(
      problemsOf({
        bindingLineCount: 0,
        binding: Array.from({ length: 5 }, () => ({ thicknessMm: 4, colour: '#000000' })),
      }),
    ).toEqual([]);
    expect(problemsOf({ boardShape: 'flat', radiusNutMm: 150 })).toEqual([]);
  });
});

describe('possible', () => {
  it('the defaults and every preset', () => {
    expect(findImpossible(defaultBuild())).toEqual([]);
    for (const { build } of PRESETS) expect(findImpossible(build)).toEqual([]);
  });

  it('a change of one parameter is judged in its build', () => {
    expect(checkChange(defaultBuild(), { kerfMm: 0.6 })).toEqual([]);
    expect(checkChange(defaultBuild(), { kerfMm: 2 })[0]).toMatchObject({
      code: 'out-of-range',
      parameter: 'kerfMm',
      value: 2,
      min: 0.3,
      max: 1.2,
      unit: 'mm',
    });
    expect(checkChange(defaultBuild(), { slotDepthMm: 5.9 })[0]).toMatchObject({
      code: 'impossible',
      parameter: 'slotDepthMm',
    });
  });
});

describe('any values in range (seed 1601)', () => {
  it('no message has a number that is none', () => {
    const numbers = [
      'scaleLengthMm',
      'fretCount',
      'bodyJointFret',
      'widthNutMm',
      'widthLastFretMm',
      'thicknessFret1Mm',
      'thicknessFret12Mm',
      'boardThicknessMm',
      'backShoulderMm',
      'radiusNutMm',
      'radiusLastFretMm',
      'boardBeyondLastFretMm',
      'crownWidthMm',
      'kerfMm',
      'tangWidthMm',
      'studWidthMm',
      'slotDepthMm',
      'barCount',
      'barWidthMm',
      'barDepthMm',
      'channelWidthMm',
      'rodEndMm',
      'stringEdgeMm',
      'stringHeightFret12Mm',
      'crownHeightMm',
      'bindingLineCount',
      'linesSawnThrough',
    ] as const;
    const drawn = fc.record(
      Object.fromEntries(
        numbers.map((id) => {
          const parameter = parameterById(id);
          const range = parameter.kind === 'number' ? { min: parameter.min, max: parameter.max } : { min: 0, max: 0 };
          return [id, 'integer' in parameter ? fc.integer(range) : fc.double({ ...range, noNaN: true })];
        }),
      ),
    );
    const shape = fc.constantFrom('flat', 'cylinder', 'cone');
    const bottom = fc.constantFrom('flat', 'radiused');
    fc.assert(
      fc.property(drawn, shape, bottom, (values, boardShape, slotBottom) => {
        const problems = problemsOf({ ...values, boardShape, slotBottom });
        for (const problem of problems) {
          expect(problemText(problem, 'metric')).not.toMatch(/NaN|undefined|Infinity/);
          expect([problem.min, problem.max].filter((limit) => limit !== undefined).every(Number.isFinite)).toBe(true);
        }
      }),
      { seed: 1601, numRuns: 1500 },
    );
  });

  it('a build that is accepted has no impossible combination, and is given back as it is', () => {
    fc.assert(
      fc.property(anyBuild, (build) => {
        expect(checkBuild(build)).toEqual({ ok: true, build });
        expect(findImpossible(build)).toEqual([]);
      }),
      { seed: 1601, numRuns: 100 },
    );
  });
});
