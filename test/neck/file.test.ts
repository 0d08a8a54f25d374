/** Project files: round trips, refusals, and a fuzz that nothing gets through changed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PROJECT_FORMAT, PROJECT_VERSION, readProject, writeProject } from '../../src/neck/file.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { anyBuild } from '../arbitrary/any-build.ts';
import { problemText, problemTexts } from '../../src/speech/problems.ts';
import { BITE_REFERENCE } from './bite-reference.ts';

const BUILD_KEYS = Object.keys(defaultBuild());

const file = (change: Record<string, unknown>) =>
  JSON.stringify({ format: PROJECT_FORMAT, version: PROJECT_VERSION, build: defaultBuild(), ...change });

describe('round trips', () => {
  it.each(PRESETS.map(({ id, build }) => [id, build] as const))('%s', (_id, build) => {
    expect(readProject(writeProject(build))).toEqual({ ok: true, build });
  });

  it('any valid build comes back as it was (seed 1602)', () => {
    fc.assert(
      fc.property(anyBuild, fc.string({ maxLength: 200 }), (build, name) => {
        const named: Build = { ...build, name };
        expect(readProject(writeProject(named))).toEqual({ ok: true, build: named });
      }),
      { seed: 1602, numRuns: 100 },
    );
  });

  it('a file says what it is, and ends with a line', () => {
    const text = writeProject(defaultBuild());
    expect(JSON.parse(text)).toMatchObject({ format: 'backbow project', version: PROJECT_VERSION });
    expect(text.endsWith('}\n')).toBe(true);
    expect(BUILD_KEYS).toContain('kerfMm');
    expect(new Set(BUILD_KEYS)).toEqual(new Set(Object.keys((JSON.parse(text) as { build: object }).build)));
  });
});

describe('measurements that the build refers to', () => {
  const reference = BITE_REFERENCE;
  const referring: Build = { ...defaultBuild(), biteFactor: 1.18, biteReference: reference };
  const data = JSON.parse(writeProject(referring)) as { build: object; measurements: { bite: object } };

  it('come back, and stand beside the build, which a reader that does not know them opens all the same', () => {
    expect(readProject(writeProject(referring))).toEqual({ ok: true, build: referring });
    expect(data.measurements).toEqual({ bite: reference });
    const { biteReference: _none, ...build } = referring;
    expect(data.build).toEqual(build);
    expect(readProject(JSON.stringify({ ...data, measurements: undefined }))).toEqual({ ok: true, build });
  });

  it('of a kind that this release does not know are passed over', () => {
    const more = { ...data, measurements: { ...data.measurements, strip: { anything: 1 } } };
    expect(readProject(JSON.stringify(more))).toEqual({ ok: true, build: referring });
  });

  it.each([
    ['a hash that is none', { hash: 'abc' }],
    ['no hash', { hash: undefined }],
    ['a factor that no build can have', { factor: 99 }],
    ['a spread that is none', { logSpread: -1 }],
    ['no necks', { necks: 0 }],
    ['too many ids', { measurements: Array.from({ length: 2001 }, () => 'bcdfghjklmnpqr') }],
    ['something more', { more: 1 }],
  ])('are refused with their place: %s', (_what, change) => {
    const harmed = { ...data, measurements: { bite: { ...reference, ...change } } };
    const read = readProject(JSON.stringify(harmed));
    expect(read.ok ? [] : read.problems.map(({ parameter }) => parameter)).toEqual([
      `biteReference.${Object.keys(change)[0]}`,
    ]);
    expect(read.ok ? '' : problemTexts(read.problems, 'metric').join(' ')).toMatch(
      /^Measurements behind the bite|“?biteReference\.more/,
    );
  });
});

describe('refusals', () => {
  it.each([
    ['nothing', '', 'not-json', /not a project file: it is not JSON/],
    ['text', 'a neck', 'not-json', /it is not JSON/],
    ['half a file', writeProject(defaultBuild()).slice(0, 400), 'not-json', /it is not JSON/],
    ['another file', '{"type":"FeatureCollection"}', 'not-a-project', /has no "format": "backbow project"/],
    ['a number', '7', 'not-a-project', /has no "format"/],
    ['null', 'null', 'not-a-project', /has no "format"/],
    ['a list', '[]', 'not-a-project', /has no "format"/],
    [
      'no version',
      file({ version: undefined }),
      'not-a-project',
      /version is nothing; it must be a whole number from 1 to/,
    ],
    ['a version in words', file({ version: 'one' }), 'not-a-project', /version is "one"/],
    ['version 0', file({ version: 0 }), 'not-a-project', /version is 0/],
    ['version 1.5', file({ version: 1.5 }), 'not-a-project', /version is 1\.5/],
    ['a newer version', file({ version: PROJECT_VERSION + 1 }), 'newer-version', /Open it with a newer release/],
    ['no build', file({ build: undefined }), 'wrong-type', /The build is nothing; it must be an object/],
    ['a build that is a list', file({ build: [] }), 'wrong-type', /it must be an object/],
    [
      'a value out of range',
      file({ build: { ...defaultBuild(), kerfMm: 2 } }),
      'out-of-range',
      /Kerf \(kerfMm\) is 2\smm; it takes 0\.3 to 1\.2\smm/,
    ],
    [
      'a value too many',
      file({ build: { ...defaultBuild(), glitter: true } }),
      'unknown',
      /"glitter" is not something a build has/,
    ],
    [
      'an impossible build',
      file({ build: { ...defaultBuild(), slotDepthMm: 5.9 } }),
      'impossible',
      /Slot depth is 5\.9\smm/,
    ],
    [
      'a number beyond numbers',
      file({}).replace('"kerfMm":0.58', '"kerfMm":1e999'),
      'wrong-type',
      /Kerf \(kerfMm\) is Infinity/,
    ],
  ])('%s', (_what, text, code, words) => {
    const read = readProject(text);
    const problems = read.ok ? [] : read.problems;
    expect(problems.map((problem) => problem.code)).toContain(code);
    expect(problemTexts(problems, 'metric').join('\n')).toMatch(words);
  });

  it('a value left out is missed by name', () => {
    const { kerfMm: _kerf, ...rest } = defaultBuild();
    expect(readProject(file({ build: rest }))).toMatchObject({
      ok: false,
      problems: [
        {
          code: 'missing',
          parameter: 'kerfMm',
          min: 0.3,
          max: 1.2,
          unit: 'mm',
        },
      ],
    });
  });

  it('a prototype is no value', () => {
    const text = file({}).replace('"build":{', '"build":{"__proto__":{"kerfMm":0.5},');
    expect(readProject(text)).toMatchObject({ ok: false, problems: [{ code: 'unknown' }] });
    expect(({} as Record<string, unknown>)['kerfMm']).toBeUndefined();
  });
});

describe('fuzz (seed 1603)', () => {
  const leaf = fc.oneof(
    fc.constant(null),
    fc.boolean(),
    fc.integer(),
    fc.double(),
    fc.string(),
    fc.constant([]),
    fc.constant({}),
    fc.jsonValue({ maxDepth: 2 }),
  );
  const key = fc.constantFrom(...BUILD_KEYS);

  it('never throws on any text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.jsonValue().map((value) => file({ build: value })),
        ),
        (text) => {
          const read = readProject(text);
          expect(read.ok || read.problems.length > 0).toBe(true);
        },
      ),
      { seed: 1603, numRuns: 500 },
    );
  });

  it('never changes a value: what is accepted is what was written', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(key, leaf), { minLength: 1, maxLength: 3 }), (changes) => {
        const build = { ...defaultBuild(), ...Object.fromEntries(changes) };
        const read = readProject(file({ build }));
        const written = (JSON.parse(file({ build })) as { build: unknown }).build;
        expect(read.ok ? read.build : written).toEqual(written);
        for (const problem of read.ok ? [] : read.problems) {
          expect(problemText(problem, 'metric').length).toBeGreaterThan(10);
          expect(problemText(problem, 'metric')).not.toMatch(/\[object Object\]/);
        }
      }),
      { seed: 1603, numRuns: 500 },
    );
  });

  it('never accepts a file with characters knocked out of it unless it still says a valid build', () => {
    const text = writeProject(defaultBuild());
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length - 1 }), fc.integer({ min: 1, max: 8 }), (at, count) => {
        const read = readProject(text.slice(0, at) + text.slice(at + count));
        expect(read.ok ? checkBuild(read.build).ok : read.problems.length > 0).toBe(true);
      }),
      { seed: 1603, numRuns: 500 },
    );
  });
});
