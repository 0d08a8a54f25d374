/** What is changed a little changes the numbers a little, and what means one thing means it everywhere. */
import type { Build } from '../../src/neck/build.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { glueNeeded } from '../../src/fretwork/glue.ts';
import { METHODS, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { hold, largest, type Invariant, type Subject } from './invariant.ts';

const ROUNDING = 1e-9;

/** Predictions of a build with one change after another; undefined when one of them cannot be. */
function along({ build, predictor }: Subject, changes: readonly Partial<Build>[]): Prediction[] | undefined {
  const predictions: Prediction[] = [];
  for (const change of changes) {
    const checked = checkBuild({ ...build, ...change });
    if (!checked.ok) return undefined;
    predictions.push(predictor.predict(checked.build));
  }
  return predictions;
}

/**
 * In even steps of an input no change of a line, where it is greatest, is more than half of all of them together. It is
 * the line that holds no jump: its extreme may change sides, from a hollow to a hump as deep.
 * @param nothing what counts as none
 */
export function holdSteps(lines: readonly ArrayLike<number>[], nothing: number, what: string): void {
  const steps = lines.slice(1).map((line, i) => largest(Float64Array.from(line, (mm, k) => mm - lines[i][k])));
  const all = steps.reduce((sum, step) => sum + step, 0);
  hold(Math.max(...steps) <= 0.5 * all + nothing, () => `${what}: steps of ${steps.join(', ')} mm`);
}

const range = (count: number, from: number, step: number): number[] =>
  Array.from({ length: count }, (_, i) => Number((from + i * step).toFixed(6)));

export const STEPS: readonly Invariant[] = [
  {
    name: 'a stiff bar acts down to where it ends, in no steps',
    every: 40,
    check: (subject) => {
      const barCount = Math.max(1, subject.build.barCount);
      const depths = range(7, Math.min(subject.build.barDepthMm, 13) - 0.3, 0.1);
      const predictions = along(
        subject,
        depths.map((barDepthMm) => ({ barCount, barDepthMm })),
      );
      if (!predictions) return;
      const lines = predictions.map((prediction) => prediction.methods.glue.basis.stringsMm);
      holdSteps(lines, 1e-3 * largest(lines[0]), `strings, bars ${depths[0]} mm deep and on`);
    },
  },
  {
    name: 'a tang comes down to the floor of its slot without a jump',
    every: 40,
    check: (subject) => {
      const { slotDepthMm } = subject.build;
      // The last step ends on the floor: none of them goes past it.
      const depths = range(7, slotDepthMm - 0.18, 0.03);
      const predictions = along(
        subject,
        depths.map((tangDepthMm) => ({ tangDepthMm, slotClearanceMm: 0 })),
      );
      if (!predictions) return;
      for (const value of ['strings', 'frets'] as const) {
        const lines = predictions.map(({ methods: { press } }) =>
          value === 'strings' ? press.basis.stringsMm : press.fretted.reliefMm,
        );
        // Rows that come to rest change how well the mesh does by a little.
        const most = Math.max(...lines.map(largest));
        holdSteps(lines, 1e-3 * most, `${value}, tang ${depths[0]} mm deep and on`);
      }
    },
  },
  {
    name: 'glue reaches from nothing on: none is a pressed fret, a trace of it nearly one, and more holds more',
    every: 40,
    check: (subject) => {
      const { build, predictor } = subject;
      const reaches = [0, 1e-4, 1, 5, 20, 50, 80, 100];
      const builds = reaches.map((glueReachPercent): Build => ({ ...build, method: 'both', glueReachPercent }));
      const predictions = builds.map((changed) => predictor.predict(changed));
      const [none, trace] = predictions as [Prediction, Prediction];
      for (const name of ['stringsMm', 'rodMm', 'climateMm'] as const)
        hold(
          none.methods.both.basis[name].every((mm, i) => mm === none.methods.press.basis[name][i]),
          () => `${name} without glue is not that of a press fit`,
        );
      for (const method of ['glue', 'both'] as const) {
        const bows = predictions.map((prediction) => largest(prediction.methods[method].basis.stringsMm));
        const gain = bows[0] - bows.at(-1)!;
        hold(Math.abs(bows[1] - bows[0]) <= 1e-2 * gain + ROUNDING, () => `${method}: strings, ${bows.join(', ')} mm`);
        hold(
          bows.every((bow, i) => i === 0 || bow <= bows[i - 1] * (1 + 1e-3)),
          () => `${method}: strings bow more as glue reaches further, ${bows.join(', ')} mm`,
        );
        const pulls = predictions.map((prediction) => prediction.methods[method].pullOutForceN[0]);
        hold(
          pulls.every((pull, i) => i === 0 || pull >= pulls[i - 1] - ROUNDING),
          () => `${method}: pull-out ${pulls.join(', ')} N`,
        );
        hold(
          Math.abs(pulls[1] - pulls[0]) <= 1e-5 * (pulls.at(-1)! + 1),
          () => `${method}: pull-out ${pulls.join(', ')} N`,
        );
      }
      const volumes = builds.map((changed) => glueNeeded(changed).totalMm3);
      hold(
        volumes[0] === 0 && volumes[1] <= 1e-4 * (volumes.at(-1)! + 1),
        () => `glue for the slots: ${volumes.join(', ')} mm³`,
      );
      hold(
        trace.methods.press.settled.extremeMm === none.methods.press.settled.extremeMm,
        () => 'a press fit has glue',
      );
    },
  },
  {
    name: 'glue grips the tang down to where it stands in the slot, and not a share of the tang',
    every: 20,
    check: ({ build, predictor }) => {
      if (build.slotBottom === 'flat') return;
      const whole = (100 * build.tangDepthMm) / build.slotDepthMm;
      const pullAt = (glueReachPercent: number) =>
        predictor.predict({ ...build, method: 'glue', glueReachPercent }).methods.glue.pullOutForceN[0];
      const [all, just, half] = [100, Math.min(100, whole), Math.min(100, whole) / 2].map(pullAt);
      hold(Math.abs(just / all - 1) <= 1e-9, () => `to the foot of the tang ${just} N, further down ${all} N`);
      hold(Math.abs((2 * half) / all - 1) <= 1e-9, () => `half way down it ${half} N, of ${all} N`);
    },
  },
  {
    name: 'studs plough as hard as they bite',
    every: 20,
    check: (subject) => {
      const { build } = subject;
      const harder = along(subject, [{ biteFactor: build.biteFactor * 1.2 }])?.[0];
      if (!harder) return;
      const perBite = (prediction: Prediction, method: 'press' | 'both', i: number) => {
        const { seatingForceN, wedgeForceN, biteMm } = prediction.methods[method];
        return biteMm[i] > 1e-6 ? (seatingForceN[i] - 2 * build.friction * wedgeForceN[i]) / biteMm[i] : 0;
      };
      for (const method of METHODS) {
        if (method === 'glue') continue;
        subject.prediction.fretXMm.forEach((_, i) => {
          const [one, other] = [subject.prediction, harder].map((of) => perBite(of, method, i));
          if (one > 0 && other > 0)
            hold(Math.abs(other / one / 1.2 - 1) < 1e-6, () => `fret ${i + 1}: ${one} and ${other} N/mm`);
        });
      }
    },
  },
];
