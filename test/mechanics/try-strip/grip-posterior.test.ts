/** What strips and the bench log say together: of the grip, of every band of a neck, and what makes it doubtful. */
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { bitePosterior } from '../../../src/mechanics/bench-log/posterior.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import type { StripReading, TryStrip } from '../../../src/mechanics/try-strip/document.ts';
import { gripPosterior, type GripPosterior } from '../../../src/mechanics/try-strip/grip-posterior.ts';
import { placesOf } from '../../../src/mechanics/try-strip/places.ts';
import { stripModel } from '../../../src/mechanics/try-strip/strip-model.ts';
import { createEstimator, type EstimateOptions } from '../../../src/mechanics/uncertainty/estimate.ts';
import { spreadsOf } from '../../../src/mechanics/uncertainty/inputs.ts';
import { expectNear } from '../../expect-near.ts';
import { ENTRY } from '../bench-log/entries.ts';
import { STRIP } from './strips.ts';
import { runAtOnce } from '../../../src/mechanics/steps.ts';

const NECK = defaultBuild();
const STATED = stripModel(STRIP, NECK, false).statedHumpMm;

const reading = (sizeMm: number, more: Partial<StripReading> = {}): StripReading => {
  return { days: 0, bow: 'hump', sizeMm, over: 'ends', instrument: 'feelers', ownErrorMm: null, ...more };
};
const having = (readings: readonly StripReading[], change: Partial<TryStrip> = {}): TryStrip => {
  return { ...STRIP, readings, ...change };
};
const of = (strip: TryStrip, neck: Build = NECK, ownBoard = false) => gripPosterior(neck, [{ strip, ownBoard }]);
const widthOf = ({ p05, p95 }: { p05: number; p95: number }) => p95 - p05;

/** The strip sagged under 5 N as its wood as stated lets it. */
const weighed = (sagMm: number): TryStrip['offcut'] => {
  const stiffness = { test: 'weight', state: 'slotted', loadN: 5, loadG: null, spanMm: 280, sagMm } as const;
  return { ...STRIP.offcut, stiffness };
};
const GROUPS = having([1, 2, 3].map((at) => reading(STATED[at], { over: at - 1 })));

const estimator = createEstimator(createPredictor());
function bandsOf(build: Build, options: EstimateOptions) {
  return runAtOnce(estimator.steps(build, options)).methods.press;
}

describe('one strip', () => {
  const strips: readonly (readonly [string, GripPosterior])[] = [
    ['a ruler', of(having([reading(STATED[0], { instrument: 'ruler' })]))],
    ['feelers', of(having([reading(STATED[0])]))],
    ['feelers and a weight', of(having([reading(STATED[0])], { offcut: weighed(0.402) }))],
    ['feelers in three kerfs, and a weight', of(having(GROUPS.readings, { offcut: weighed(0.402) }))],
  ];

  it.each(strips)(
    'read as stated by %s leaves bite and shape where they were',
    (_what, { bite, studShape, doubts }) => {
      expect(Math.abs(Math.log(bite.p50))).toBeLessThan(0.2);
      expect(Math.abs(studShape.p50 - 1)).toBeLessThan(0.2);
      expect(doubts).toEqual([]);
    },
  );

  it('leaves every band of the neck the narrower the better it is measured, and some of it in any case', () => {
    const all = [bandsOf(NECK, {}), ...strips.map(([, { deviates }]) => bandsOf(NECK, { grip: deviates }))];
    for (const key of ['fretted', 'strung', 'settled', 'wedgeForceN'] as const) {
      const widths = all.map((bands) => widthOf(bands[key]));
      const [, ruler, feelers, weight, kerfs] = widths.map((width) => width / widths[0]);
      expect(ruler).toBeLessThan(0.8);
      expect(feelers).toBeLessThan(ruler + 0.02);
      expect(weight).toBeLessThan(feelers);
      expect(Math.min(weight, kerfs)).toBeGreaterThan(0.15);
      expect(kerfs).toBeLessThan(feelers);
    }
  });

  it('that bows more says that studs bite harder, and that all bow more', () => {
    const [soft, hard] = [0.5, 1.9].map((times) => of(having([reading(times * STATED[0])])));
    expect(soft.bite.p50).toBeLessThan(0.8);
    expect(hard.bite.p50).toBeGreaterThan(1.3);
    const [less, more] = [soft, hard].map((posterior) => bandsOf(NECK, { grip: posterior.deviates }).fretted.p50);
    expect(more).toBeLessThan(1.8 * less);
    expect(less).toBeLessThan(0);
  });

  it('whose wide kerf bows as much as its narrow one has blunter studs, and the other way round', () => {
    const groups = (ratio: number) => [
      reading(STATED[1], { over: 0 }),
      reading(STATED[2] * Math.sqrt(ratio), { over: 1 }),
      reading(STATED[3] * ratio, { over: 2 }),
    ];
    const [blunt, pointed] = [1.35, 0.6].map((ratio) => of(having(groups(ratio), { offcut: weighed(0.402) })));
    expect(blunt.studShape.p50).toBeLessThan(0.85);
    expect(pointed.studShape.p50).toBeGreaterThan(1.15);
    expect(blunt.correlation).toBeGreaterThan(0.2);
  });

  it('that was only weighed says nothing of the grip', () => {
    const { bite, measured } = of(having([], { offcut: weighed(0.402) }));
    const spreads = spreadsOf(NECK);
    expect(measured).toBe(1);
    const prior = 2 * 1.645 * Math.hypot(spreads.bite, spreads.studArea);
    expectNear(Math.log(bite.p95 / bite.p05), prior, 0.06, 'samples');
  });

  it('read again after a month says more of relaxation and creep', () => {
    const once = of(having([reading(STATED[0])]));
    const later = of(
      having([reading(STATED[0]), reading(0.8 * STATED[0], { days: 30 }), reading(0.72 * STATED[0], { days: 90 })]),
    );
    const scatter = ({ deviates }: GripPosterior) => {
      const row = deviates.relaxation!;
      const mean = row.reduce((sum, z) => sum + z / row.length, 0);
      return Math.sqrt(row.reduce((sum, z) => sum + (z - mean) ** 2 / row.length, 0));
    };
    expectNear(scatter(once), 1, 0.06, 'samples');
    expect(scatter(later)).toBeLessThan(0.75);
  });

  it('says the same whatever the order of its readings, and for the same seed exactly', () => {
    const turned = of({ ...GROUPS, readings: GROUPS.readings.toReversed() });
    const straight = of(GROUPS);
    expectNear(turned.bite.p50, straight.bite.p50, 1e-9, 'sums in another order');
    expect(of(GROUPS)).toEqual(straight);
    expect(gripPosterior(NECK, [{ strip: GROUPS, ownBoard: false }], [], { seed: 2 }).bite).not.toEqual(straight.bite);
  });
});

describe('in terms of the neck', () => {
  it('bite and shape are what was found, whatever the build states', () => {
    const strip = having([reading(1.5 * STATED[0])]);
    const spreads = spreadsOf(NECK);
    const physical = (build: Build) => {
      const { deviates } = of(strip, build);
      return {
        bite: deviates.bite!.map((z) => build.biteFactor * Math.exp(spreads.bite * z)),
        shape: deviates.studShape!.map((z) => build.studShape + spreads.studShape * z),
      };
    };
    const plain = physical(NECK);
    const taken = physical({ ...NECK, biteFactor: 1.4, studShape: 0.7 });
    plain.bite.forEach((bite, i) => expectNear(taken.bite[i], bite, 1e-9, 'a shift'));
    plain.shape.forEach((shape, i) => expectNear(taken.shape[i], shape, 1e-9, 'a shift'));
  });

  it('the wood speaks when it is the neck’s own board', () => {
    const strip = having([reading(STATED[0])], { offcut: weighed(0.8 * 0.402) });
    expect(of(strip).deviates.boardModulus).toBeUndefined();
    const { boardModulus } = of(strip, NECK, true).deviates;
    const mean = boardModulus!.reduce((sum, z) => sum + z / boardModulus!.length, 0);
    // 25 % stiffer than stated, in standard deviations of 22 %.
    expect(Math.abs(mean - Math.log(1.25) / spreadsOf(NECK).boardModulus)).toBeLessThan(0.25);
  });

  it('a strip of another wire leaves the studs’ own numbers unmeasured, and says so', () => {
    const other = { ...NECK, studWidthMm: 0.8 };
    const { deviates, doubts } = of(having([reading(STATED[0])]), other);
    expect(Object.keys(deviates).toSorted()).toEqual(['bite', 'creep', 'relaxation', 'studSoftness', 'wallStiffness']);
    expect(doubts).toEqual([{ code: 'other-wire', strip: 0, number: 'studWidthMm', ofStrip: 0.76, ofNeck: 0.8 }]);
  });

  it('strips share what they have in common, and nothing else', () => {
    const named = (cutFrom: string): TryStrip => ({ ...STRIP, offcut: { ...STRIP.offcut, cutFrom } });
    const dimensions = (strips: readonly TryStrip[], ownBoard = false) =>
      placesOf(
        NECK,
        strips.map((strip) => ({ strip, ownBoard })),
        { withNecks: false },
      ).dimensions;
    const one = dimensions([STRIP]);
    expect(one).toBe(16);
    // Slots and kerfs of the second, and its wood, wire.
    expect(dimensions([STRIP, STRIP])).toBe(one + 4 + 4);
    expect(dimensions([named('No. 12'), named('No. 12')])).toBe(one + 4);
    expect(dimensions([STRIP, STRIP], true)).toBe(one + 4);
    expect(dimensions([STRIP, { ...STRIP, wire: { ...STRIP.wire, studWidthMm: 0.8 } }], true)).toBe(one + 4 + 3);
  });
});

describe('strips and the bench log', () => {
  it('the log alone says of the bite what it says by itself', () => {
    const entries = [ENTRY, { ...ENTRY, id: 'zxwvtsrqpnmlkj', measuredFrettedMm: -0.28, measuredStrungMm: 0.02 }];
    const alone = bitePosterior(entries, NECK);
    const { bite, measured } = gripPosterior(NECK, [], entries);
    expect(measured).toBe(2);
    // The shape and the walls are shared here, where the log takes them anew for each neck: more of it is left to them.
    expectNear(bite.p50, alone.median, 0.12, 'two models of the same scatter');
    const spread = Math.log(bite.p95 / bite.p05) / (2 * 1.645);
    expect(spread).toBeGreaterThan(0.9 * alone.logSpread);
    expect(spread).toBeLessThan(1.5 * alone.logSpread);
  });

  it('multiply: together they leave less than either', () => {
    const strip = having([reading(STATED[0], { instrument: 'ruler' })]);
    const width = ({ deviates }: GripPosterior) => widthOf(bandsOf(NECK, { grip: deviates }).fretted);
    const both = width(gripPosterior(NECK, [{ strip, ownBoard: false }], [ENTRY]));
    expect(both).toBeLessThan(width(of(strip)));
    expect(both).toBeLessThan(width(gripPosterior(NECK, [], [ENTRY])));
  });

  it('need something that speaks', () => {
    const silent = { ...ENTRY, rod: 'snug' as const };
    expect(() => gripPosterior(NECK, [], [silent])).toThrow('no strip and no entry of the bench log speaks');
  });
});

describe('doubts', () => {
  it('readings of one bow that differ by more than their gauge allows contradict each other', () => {
    const { doubts } = of(having([reading(STATED[0]), reading(0.45 * STATED[0])]));
    expect(doubts.map(({ code }) => code)).toEqual(expect.arrayContaining(['contradicting', 'far-reading']));
    const far = doubts.filter((doubt) => doubt.code === 'far-reading');
    expect(far.length).toBeGreaterThan(0);
    far.forEach(({ measuredMm, expectedMm }) => expect(Math.abs(measuredMm - expectedMm)).toBeGreaterThan(0.2));
  });

  it('a hump that takes a bite beyond what was thought possible says so', () => {
    const { doubts } = of(having([reading(9 * STATED[0])], { offcut: weighed(0.402) }));
    expect(doubts).toContainEqual(expect.objectContaining({ code: 'end-of-range', side: 'high' }));
  });

  it('of two strips that agree there are none', () => {
    const strips = [STRIP, { ...STRIP, id: 'zxwvtsrqpnmlkj' }].map((strip) => {
      return { strip: { ...strip, readings: [reading(STATED[0])] }, ownBoard: false };
    });
    const two = gripPosterior(NECK, strips);
    expect(two.doubts).toEqual([]);
    const widths = (posterior: GripPosterior) => bandsOf(NECK, { grip: posterior.deviates });
    const [one, both] = [widths(of(strips[0].strip)), widths(two)];
    expect(widthOf(both.fretted)).toBeLessThan(widthOf(one.fretted));
  });
});

it('deviates of another number of samples are refused', () => {
  const { deviates } = gripPosterior(NECK, [{ strip: GROUPS, ownBoard: false }], [], { samples: 500 });
  expect(() => bandsOf(NECK, { grip: deviates })).toThrow('500 deviates of studWidthMm; there must be 2000');
  expect(() => bandsOf(NECK, { grip: deviates, samples: 500 })).not.toThrow();
});
