import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { fretsInAfterQuarters } from '../../src/fretwork/plan/seating-order.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { lineAt } from '../../src/mechanics/states.ts';

describe('the bow while seating, with the mechanics', () => {
  const predictor = createPredictor();

  it.each(
    PRESETS.filter((preset) => preset.build.method !== 'glue').map((preset) => [preset.id, preset.build] as const),
  )('%s: spread out, each quarter of the frets makes about a quarter of the bow', (_, build) => {
    const prediction = predictor.predict(build);
    const bows = fretsInAfterQuarters({ ...build, seatingOrder: 'spread' }).map(
      (fretsIn) => lineAt(prediction, build.method, { strung: false, days: 0, rodPercent: 0, fretsIn }).extremeMm,
    );
    const full = bows[3];
    // A quarter that holds one fret of 22 more or less than its share is off by a fifth: 6 frets against 5.
    for (const [index, bow] of bows.entries()) {
      expect(Math.abs(bow / full - (index + 1) / 4)).toBeLessThan(0.07);
    }
  });

  it('seated in a row, the first quarter says more than its share at the nut and next to nothing at the body', () => {
    const build = PRESETS[0].build;
    const prediction = predictor.predict(build);
    const share = (seatingOrder: 'nut-first' | 'body-first') => {
      const quarters = fretsInAfterQuarters({ ...build, seatingOrder });
      const [first, , , last] = quarters.map(
        (fretsIn) => lineAt(prediction, 'press', { strung: false, days: 0, rodPercent: 0, fretsIn }).extremeMm,
      );
      return first / last;
    };
    // The last quarter of the frets stands over the body and the heel, where a wedge hardly bends anything.
    expect(share('nut-first')).toBeGreaterThan(0.35);
    expect(share('body-first')).toBeLessThan(0.1);
  });
});
