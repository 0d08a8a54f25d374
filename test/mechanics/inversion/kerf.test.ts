import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { checkBuild } from '../../../src/neck/schema.ts';
import { reliefAtGoal, type ReliefGoal } from '../../../src/mechanics/inversion/goal.ts';
import { kerfRange, solveKerf, solveRising } from '../../../src/mechanics/inversion/kerf.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { expectNear } from '../../expect-near.ts';
import { randomNecks } from './random-builds.ts';

const SETTLED = { when: 'settled', rodPercent: 0 } as const;
const EXACT = 'secant steps to 1e-9 mm, or a kerf to 1e-9 mm';

describe.each(PRESETS)('$id: there and back', ({ build }) => {
  const predictor = createPredictor();

  it.each(['press', 'both'] as const)('%s', (method) => {
    const range = kerfRange(build);
    const reliefOf = (kerfMm: number, goal: ReliefGoal) =>
      reliefAtGoal(predictor.predict({ ...build, kerfMm }), method, goal);
    // Relief that a kerf in the middle of the range gives, taken as the target: the kerf is to be found again.
    for (const when of ['strung', 'settled'] as const) {
      const kerfMm = 0.35 * range.leastMm + 0.65 * range.mostMm;
      const goal = { reliefMm: 0, when, rodPercent: build.rodKind === 'none' ? 0 : 10 };
      const target = reliefOf(kerfMm, goal);
      const answer = solveKerf(predictor, build, { ...goal, reliefMm: target }, method);
      expect(answer.status).toBe('found');
      expectNear(answer.kerfMm, kerfMm, 1e-6, EXACT);
      expectNear(reliefOf(answer.kerfMm, goal), target, 1e-6, EXACT);
      expectNear(answer.reliefMm, target, 1e-6, EXACT);
      expect(Math.abs(answer.missMm)).toBeLessThan(1e-8);
    }
  });
});

describe('random necks (seed 5302)', () => {
  it('predict(solve(target)) is the target, or the answer says how far it is', () => {
    const predictor = createPredictor();
    const statuses = new Set<string>();
    const targets = fc.integer({ min: -100, max: 300 }).map((micrometres) => micrometres / 1000);
    fc.assert(
      fc.property(randomNecks, targets, fc.constantFrom('press', 'both'), (build, reliefMm, method) => {
        const goal = { ...SETTLED, reliefMm };
        const answer = solveKerf(predictor, build, goal, method);
        statuses.add(answer.status);
        const changed = { ...build, kerfMm: answer.kerfMm };
        expect(checkBuild(changed).ok).toBe(true);
        expect(answer.kerfMm).toBeGreaterThanOrEqual(answer.range.leastMm);
        expect(answer.kerfMm).toBeLessThanOrEqual(answer.range.mostMm);
        const relief = reliefAtGoal(predictor.predict(changed), method, goal);
        expectNear(relief, answer.reliefMm, 1e-9, 'the same calculation');
        expectNear(answer.reliefMm - reliefMm, answer.missMm, 1e-9, 'a difference');
        const verdict = {
          found: Math.abs(answer.missMm) <= 1e-8,
          'too-hollow': answer.missMm > 0 && answer.kerfMm === answer.range.leastMm,
          'too-humped': answer.missMm < 0 && answer.kerfMm === answer.range.mostMm,
          'between-shapes': Math.abs(answer.missMm) > 1e-4,
          'no-effect': false,
        }[answer.status];
        expect(verdict, `${answer.status} with a miss of ${answer.missMm}`).toBe(true);
      }),
      { seed: 5302, numRuns: 24 },
    );
    // The draw is wide enough to meet both ends and the middle.
    expect([...statuses]).toEqual(expect.arrayContaining(['found', 'too-hollow', 'too-humped']));
  }, 120_000);
});

describe('the kerf', () => {
  const build = defaultBuild();
  const predictor = createPredictor();
  const solve = (reliefMm: number, change: Partial<typeof build> = {}, method: 'press' | 'glue' | 'both' = 'press') =>
    solveKerf(predictor, { ...build, ...change }, { ...SETTLED, reliefMm }, method);

  it('stays within what the wire allows', () => {
    expect(kerfRange(build)).toEqual({ leastMm: 0.475, mostMm: 0.76 });
    expect(kerfRange({ tangWidthMm: 0.31, studWidthMm: 1.3, crownWidthMm: 1.3 })).toEqual({
      leastMm: 0.3,
      mostMm: 1.1,
    });
    // A neck as hollow as can be, and one humped: the ends of the range, and how close they came.
    const tight = solve(-0.4);
    expect(tight).toMatchObject({ status: 'too-hollow', kerfMm: 0.475 });
    expectNear(tight.missMm, tight.reliefMm + 0.4, 1e-9, 'a difference');
    expectNear(tight.bodyInterferenceMm, 0.025, 1e-9, 'a thousandth of an inch');
    const loose = solve(0.8);
    expect(loose).toMatchObject({ status: 'too-humped', kerfMm: 0.76 });
    expect(loose.missMm).toBeLessThan(0);
  });

  it('does nothing for a glue fit, for slots that are cut, for crowns levelled under strings', () => {
    expect(solve(0.1, {}, 'glue')).toMatchObject({ status: 'no-effect', kerfMm: build.kerfMm });
    const regions = [{ fromFret: 1, toFret: 22, kerfMm: 0.6, tangWidthMm: 0.5, studWidthMm: 0.76 }];
    expect(solve(0.1, { job: 'refret', regions })).toMatchObject({ status: 'no-effect' });
    const strung = { when: 'strung', rodPercent: 0, reliefMm: 0.1 } as const;
    const levelled = solveKerf(predictor, { ...build, levelledIn: 'strung' }, strung);
    expect(levelled).toMatchObject({ status: 'no-effect' });
    expectNear(levelled.missMm, -0.1, 1e-9, 'dead flat on the day');
  });

  it('says when the line is humped as much as it is hollow before it gets there', () => {
    // Near zero the relief of greatest size of a press-and-glue neck jumps from hump to hollow.
    const answers = [-0.002, 0, 0.002].map((reliefMm) =>
      solveKerf(predictor, build, { when: 'strung', rodPercent: 0, reliefMm }, 'both'),
    );
    const jumped = answers.filter(({ status }) => status === 'between-shapes');
    expect(jumped.length).toBeGreaterThan(0);
    for (const { missMm } of jumped) expect(Math.abs(missMm)).toBeLessThan(0.03);
  });

  it('a wider kerf never humps the neck more', () => {
    const kerfs = [0.475, 0.49, 0.5, 0.55, 0.6, 0.65, 0.7, 0.76];
    for (const method of ['press', 'both'] as const) {
      const reliefs = kerfs.map((kerfMm) =>
        reliefAtGoal(predictor.predict({ ...build, kerfMm }), method, { ...SETTLED, reliefMm: 0 }),
      );
      expect(reliefs).toEqual(reliefs.toSorted((a, b) => a - b));
    }
  });

  it('refuses goals that cannot be meant, and wire that no kerf fits', () => {
    expect(() => solve(9)).toThrow('relief-beyond-range, reliefMm 9, leastMm -1, mostMm 3');
    expect(() => solveKerf(predictor, build, { when: 'strung', rodPercent: 150, reliefMm: 0 })).toThrow(
      'rod-beyond-range, rodPercent 150',
    );
    expect(() => solve(0.1, { tangWidthMm: 0.9, studWidthMm: 0.9, crownWidthMm: 1 })).toThrow(
      'no-kerf-fits, leastMm 0.875, mostMm 0.8, tangWidthMm 0.9',
    );
  });
});

describe('the search', () => {
  const run = (of: (x: number) => number, target: number) => {
    let count = 0;
    const counted = (x: number) => {
      count += 1;
      return of(x);
    };
    return { ...solveRising(counted, target, [0, of(0)], [1, of(1)]), count };
  };

  it('finds smooth and kinked crossings in a dozen steps', () => {
    const smooth = run((x) => Math.exp(3 * x), 2);
    expectNear(smooth.x, Math.log(2) / 3, 1e-9, EXACT);
    expect(smooth.count).toBeLessThan(14);
    const kinked = run((x) => (x < 0.3 ? x : 0.3 + 50 * (x - 0.3)), 5.3);
    expectNear(kinked.x, 0.4, 1e-9, EXACT);
  });

  it('ends at a jump, on the nearer side', () => {
    const jump = run((x) => (x < 1 / 3 ? -0.3 : 0.1), 0);
    expectNear(jump.x, 1 / 3, 1e-8, EXACT);
    expect(jump.value).toBe(0.1);
  });
});
