/** A strip before it is sawn: what it promises beside what posteriors leave, and what it warns of. */
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import {
  designSteps,
  NECK_OUTCOMES,
  type PlannedReading,
  type StripPlan,
} from '../../../src/mechanics/try-strip/design.ts';
import { evenEndMm } from '../../../src/mechanics/try-strip/layout.ts';
import { bandsWith, KINDS, widthsAfter } from '../../study/workshops.ts';
import { draw } from '../../draw.ts';
import { expectNear } from '../../expect-near.ts';
import { modelOf } from '../uncertainty/model-of.ts';
import { STRIP } from './strips.ts';
import { runAtOnce } from '../../../src/mechanics/steps.ts';

const NECK = defaultBuild();
const NECK_MODEL = modelOf(NECK);

const reading = (instrument: 'ruler' | 'feelers', over: PlannedReading['over'] = 'ends'): PlannedReading => {
  return { days: 0, over, instrument, ownErrorMm: null };
};
const SLOTTED = { test: 'weight', state: 'slotted' } as const;

function design(plan: Partial<StripPlan>, neck = NECK) {
  const steps = designSteps(neck, NECK_MODEL, {
    strip: { ...STRIP, ...frettedWith(12, 3) },
    ownBoard: true,
    readings: [reading('feelers')],
    stiffness: null,
    ...plan,
  });
  return runAtOnce(steps);
}

/** So many frets in one kerf, evenly along the strip. */
const frettedWith = (frets: number, slotDepthMm: number) => ({
  slotDepthMm,
  groups: [{ ...BLADE, frets }],
  endMm: evenEndMm(STRIP.offcut.lengthMm, frets),
});

const BLADE = { blade: 'usual', kerfMm: 0.58, kerfErrorMm: 0.01 };

describe('what a strip will leave of the bands', () => {
  const MEASURED = [
    ['weighed', { stiffness: SLOTTED }],
    ['ruler', { readings: [reading('ruler')] }],
    ['feelers', {}],
  ] as const;
  it.each(MEASURED.slice(0, draw(MEASURED.length, 1)))(
    'is what posteriors of drawn workshops leave: %s (seeds from 70)',
    (id, plan) => {
      const kind = KINDS.find((one) => one.id === id)!;
      const promised = design(plan).widthAfter;
      const drawn = Array.from({ length: 24 }, (_, i) => widthsAfter(kind, 70 + i));
      for (const [outcome, name] of [
        ['fretted', 'fretted'],
        ['settled', 'settled'],
        ['wedgeForceN', 'force'],
      ] as const) {
        const widths = drawn.map((width) => width[name]).toSorted((a, b) => a - b);
        const median = (widths[11] + widths[12]) / 2;
        expectNear(promised[outcome].p50, median, 0.25, 'twenty-four workshops beside thirty-two');
      }
    },
  );

  it('is less the better it is measured, and begins with the band of an unmeasured neck', () => {
    const plans = [
      design({ readings: [reading('ruler')] }),
      design({}),
      design({ stiffness: SLOTTED }),
      design({ stiffness: { test: 'tap', state: 'plain' } }),
    ];
    const [ruler, feelers, slotted, tapped] = plans.map(({ widthAfter }) => widthAfter.fretted.p50);
    expect(feelers).toBeLessThan(ruler);
    expect(slotted).toBeLessThan(1.02 * feelers);
    expect(tapped).toBeLessThan(1.02 * feelers);
    const { before, widthAfter } = plans[1];
    const unmeasured = bandsWith();
    expectNear(
      before.fretted.p95 - before.fretted.p05,
      unmeasured.fretted.p95 - unmeasured.fretted.p05,
      0.05,
      'samples',
    );
    for (const outcome of NECK_OUTCOMES) {
      expect(widthAfter[outcome].p50).toBeLessThan(before[outcome].p95 - before[outcome].p05);
      expect(widthAfter[outcome].p05).toBeLessThanOrEqual(widthAfter[outcome].p50);
    }
    expect(design({})).toEqual(plans[1]);
  });

  it('is less for a strip of the neck’s own board and of its own wire', () => {
    const own = design({ stiffness: SLOTTED }).widthAfter.settled.p50;
    const other = design({ stiffness: SLOTTED, ownBoard: false }).widthAfter.settled.p50;
    expect(other).toBeGreaterThan(1.05 * own);
    const steps = designSteps(
      NECK,
      NECK_MODEL,
      { strip: STRIP, ownBoard: true, readings: [reading('feelers')], stiffness: null },
      'press',
      false,
    );
    expect(runAtOnce(steps).widthAfter.settled.p50).toBeGreaterThan(own);
  });
});

describe('warnings', () => {
  const few = frettedWith(3, 3);

  it('a hump that the instrument cannot tell is named with its size and the least', () => {
    const { warnings } = design({ strip: { ...STRIP, ...few }, readings: [reading('ruler'), reading('feelers')] });
    expect(warnings).toMatchObject([{ code: 'hump-too-small', reading: 0, over: 'ends', leastMm: 2.5 }]);
    expect(design({}).warnings).toEqual([]);
  });

  it('wood that would crush below the slots is named with its stress and its strength', () => {
    const strip = { ...STRIP, ...frettedWith(12, 5) };
    const { warnings, prediction } = design({ strip, readings: [reading('feelers')] });
    const [warning] = warnings.filter(({ code }) => code === 'wood-crushes');
    expect(warning).toMatchObject({ group: 0 });
    // 1 mm of wood below, the force 4.5 mm above its middle.
    const force = prediction.forceN[0].p95;
    expectNear((warning as { stressMPa: number }).stressMPa, force / 60 + (6 * force * 4.5) / 60, 1e-9, 'a beam');
  });
});
