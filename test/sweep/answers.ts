/** Bands and the other way round: their order, and that an answer gives what was asked for. */
import type { Check } from '../../src/fretwork/checks/check-types.ts';
import type { Build } from '../../src/neck/build.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { answerWanted, sawableKerfMm } from '../../src/mechanics/inversion/answers.ts';
import { reliefAtGoal } from '../../src/mechanics/inversion/goal.ts';
import { kerfRange } from '../../src/mechanics/inversion/kerf.ts';
import { solveRod } from '../../src/mechanics/inversion/rod.ts';
import { goalOf } from '../../src/mechanics/inversion/goal.ts';
import { solveTarget } from '../mechanics/inversion/every-way.ts';
import { METHODS, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { bandAt } from '../../src/mechanics/uncertainty/band-at.ts';
import type { Band } from '../../src/mechanics/uncertainty/band.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import type { ReadoutBand } from '../../src/mechanics/uncertainty/types.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { changeOf, leastChange } from '../../src/verdict/in-short/least-change.ts';
import { advised, raisedBy } from '../../src/verdict/raised-by.ts';
import { verdictOf } from '../../src/verdict/in-short/verdict.ts';
import { momentOf, railStops } from '../../src/verdict/rail.ts';
import type { Reckoned } from '../../src/verdict/reckoned.ts';
import { stringAim } from '../../src/verdict/string-aim.ts';
import { PLUCK_DIRECTIONS, STRENGTHS, stringRoom } from '../../src/verdict/string-room.ts';
import { sheetPlan } from '../../src/verdict/sheet-plan.ts';
import { hold, holdFinite, type Invariant } from './invariant.ts';

function holdOrder({ p05, p50, p95 }: Band, what: string): void {
  hold(p05 <= p50 && p50 <= p95, () => `${what}: ${p05}, ${p50}, ${p95}`);
}

function holdReadout(band: ReadoutBand | null, what: string): void {
  if (!band) return;
  holdFinite(band, what);
  holdOrder(band, what);
  hold(
    band.drivers.every(({ share }) => share >= -1e-9 && share <= 1 + 1e-9),
    () => `${what}: shares ${band.drivers.map(({ share }) => share).join(', ')}`,
  );
}

export const ANSWERS: readonly Invariant[] = [
  {
    name: 'bands are in order and finite, in every state',
    every: 100,
    check: async ({ build, prediction, predictor, seed }) => {
      const uncertainty = await createEstimator(predictor).estimate(build, { samples: 200, seed });
      if (!uncertainty) throw new Error('no band');
      for (const method of METHODS) {
        const of = uncertainty.methods[method];
        for (const id of ['fretted', 'strung', 'settled', 'rodSet', 'wedgeForceN', 'rodPercentForTarget'] as const)
          holdReadout(of[id], `${method} ${id}`);
        const { days, p05Mm, p50Mm, p95Mm } = of.timeCourse;
        days.forEach((_, i) => holdOrder({ p05: p05Mm[i], p50: p50Mm[i], p95: p95Mm[i] }, `${method} in time ${i}`));
      }
      for (const stop of railStops(build)) {
        const band = bandAt(uncertainty, build.method, momentOf({ build, prediction }, stop));
        holdFinite(band, JSON.stringify(stop));
        holdOrder(band.extreme, JSON.stringify(stop));
        band.xMm.forEach((x, i) =>
          holdOrder(
            { p05: band.p05Mm[i], p50: band.p50Mm[i], p95: band.p95Mm[i] },
            `${JSON.stringify(stop)} at ${x} mm`,
          ),
        );
      }
      hold(prediction.fretXMm.length === build.fretCount, () => 'frets are missing');
    },
  },
  {
    name: 'the band of an old neck holds its own number in every state, and is never a line without width',
    every: 60,
    check: async ({ build, predictor, seed }) => {
      const { fretCount } = build;
      const measured = Array.from({ length: fretCount }, (_, i) => (((seed + 7 * i) % 13) - 6) / 60);
      for (const startingReliefMm of [[], measured]) {
        const checked = checkBuild({ ...build, job: 'refret', levelledIn: 'none', startingReliefMm });
        if (!checked.ok) return;
        const prediction = predictor.predict(checked.build);
        const uncertainty = (await createEstimator(predictor).estimate(checked.build, { samples: 400, seed }))!;
        for (const method of METHODS)
          for (const state of ['fretted', 'strung', 'settled'] as const) {
            const { p05, p95 } = uncertainty.methods[method][state];
            const stated = prediction.methods[method][state].extremeMm;
            hold(p05 <= stated && stated <= p95, () => `${method} ${state}: ${stated} outside ${p05} … ${p95}`);
            hold(p95 - p05 > 1e-3, () => `${method} ${state}: ${p05} … ${p95}`);
          }
      }
    },
  },
  {
    name: 'what the other way round answers gives the relief that was asked for',
    every: 50,
    check: ({ build, prediction, predictor }) => {
      const range = kerfRange(build);
      // Wire whose tang is no thicker than its studs leaves no kerf to look for; the library says so by its error.
      if (range.leastMm > range.mostMm) return;
      const goal = goalOf(build);
      const answer = solveTarget(predictor, build, goal);
      holdFinite({ ...answer, rod: { ...answer.rod, wantedPercent: 0, turns: 0 } }, 'answer');
      if (answer.rod.status === 'reached') {
        const moment = { strung: true, days: build.settleDays, rodPercent: answer.rod.percent };
        const reached = lineAt(prediction, build.method, moment).extremeMm;
        // The library's own limit of what counts as reached, inversion/goal.ts.
        hold(Math.abs(reached - goal.reliefMm) <= 2e-4, () => `the rod gives ${reached} mm for ${goal.reliefMm} mm`);
      }
      for (const method of ['press', 'both'] as const) {
        const { status, kerfMm } = answer.kerf[method];
        if (status !== 'found') continue;
        const checked = checkBuild({ ...build, kerfMm });
        if (!checked.ok) continue;
        const reached = reliefAtGoal(predictor.predict(checked.build), method, goal);
        hold(
          Math.abs(reached - goal.reliefMm) <= 2e-4,
          () => `${method}: a kerf of ${kerfMm} mm gives ${reached} mm for ${goal.reliefMm} mm`,
        );
      }
    },
  },
  {
    name: 'the least change of the verdict helps, raises nothing to heed, and there is one only where one is wanted',
    every: 40,
    check: async ({ build, prediction, predictor }) => {
      const now = { build, prediction };
      if (verdictOf(now).obstacle === null) return;
      const { change } = (await leastChange(predictor, now))!;
      if (!change) return;
      const checked = checkBuild({ ...build, ...changeOf(change) });
      hold(checked.ok, () => `a neck that cannot be: ${JSON.stringify(change)}`);
      if (!checked.ok) return;
      const changed = { build: checked.build, prediction: predictor.predict(checked.build) };
      const bad = checksOf(changed).filter(({ severity }) => severity === 'stop');
      hold(bad.length === 0, () => `${JSON.stringify(change)}: ${bad.map(({ code }) => code).join(', ')}`);
      const raised = raisedBy(now, changed).filter(({ severity }) => severity !== 'note');
      hold(raised.length === 0, () => `${JSON.stringify(change)}: ${raised.map(({ code }) => code).join(', ')}`);
      const rod = solveRod(changed.prediction, checked.build.method, goalOf(checked.build));
      hold(
        rod.status !== 'too-weak' && !rod.status.startsWith('cannot'),
        () => `${JSON.stringify(change)}: ${rod.status}`,
      );
    },
  },
  {
    name: 'no advice raises a stop or a warning unsaid, and the kerf beside it raises none',
    every: 60,
    check: async ({ build, prediction, predictor, seed }) => {
      const seriousOf = (changed: Reckoned) =>
        checksOf(changed).flatMap(({ code, severity }) => (severity === 'note' ? [] : [code]));
      const now = seriousOf({ build, prediction });
      const options = { samples: 100, seed };
      const estimator = createEstimator(predictor);
      const answer = (await answerWanted(predictor, estimator, build, goalOf(build), options))!;
      const { advice, kerf, rod } = (await advised(predictor, estimator, build, answer, options))!;
      /** Takes the advice, and holds what it raises against what it said. */
      const holdSaid = (change: Partial<Build>, said: readonly Check[], what: string, comesOut?: Prediction) => {
        const checked = checkBuild({ ...build, ...change });
        if (!checked.ok) return;
        const raised = seriousOf({ build: checked.build, prediction: comesOut ?? predictor.predict(checked.build) });
        const unsaid = raised.filter((code) => !now.includes(code) && !said.some((check) => check.code === code));
        hold(unsaid.length === 0, () => `${what}: ${unsaid.join(', ')}`);
      };
      for (const method of METHODS) holdSaid({ method }, advice.methods[method], method);
      holdSaid({ rodSettingPercent: rod.percent }, advice.rod, `rod at ${rod.percent} %`);
      for (const method of ['press', 'both'] as const) {
        const offered = kerf?.[method];
        if (!offered || offered.status === 'no-effect') continue;
        const { raised, clear } = advice.kerf[method];
        const kerfMm = sawableKerfMm(offered.kerfMm);
        holdSaid({ method, kerfMm }, raised, `${method}, kerf ${kerfMm} mm`);
        if (clear) holdSaid({ method, kerfMm: clear.kerfMm }, [], `${method}, kerf ${clear.kerfMm} mm beside it`);
      }
      // Sawn where a neck bows more than predicted, so that it comes out as predicted after all: not the neck that the
      // prediction of this kerf in every slot is of, which bows as stated and so less.
      for (const { result, raised } of sheetPlan({ build, prediction }).ahead)
        if (result.kerfMm !== undefined)
          holdSaid({ kerfMm: result.kerfMm }, raised, `kerf ${result.kerfMm} mm for the rest`, prediction);
    },
  },
  {
    name: 'the relief with the most room leaves the room that was said, raises nothing serious unsaid, and the lowest action none',
    every: 10,
    check: ({ build, prediction, predictor, seed }) => {
      const hand = {
        strength: STRENGTHS[seed % STRENGTHS.length],
        direction: PLUCK_DIRECTIONS[Math.floor(seed / 3) % PLUCK_DIRECTIONS.length],
      };
      const reckoned = { build, prediction };
      const aim = stringAim(reckoned, hand);
      holdFinite(aim, 'aim');
      const now = stringRoom(reckoned, hand);
      const stringHeightFret12Mm = aim.lowestActionMm + build.crownHeightMm;
      const { least } = stringRoom({ build: { ...build, stringHeightFret12Mm }, prediction }, hand);
      hold(Math.abs(least.leastMm) < 1e-6, () => `the lowest action leaves ${least.leastMm} mm`);
      if (aim.relief.status !== 'better') return;
      const { roomMm, change, raised } = aim.relief;
      hold(roomMm > now.least.leastMm, () => `${roomMm} mm of room instead of ${now.least.leastMm} mm`);
      const checked = checkBuild({ ...build, ...change });
      if (!checked.ok) throw new Error(`what is advised cannot be: ${JSON.stringify(checked.problems)}`);
      const taken = { build: checked.build, prediction: predictor.predict(checked.build) };
      const after = stringRoom(taken, hand).least.leastMm;
      hold(Math.abs(after - roomMm) < 1e-5, () => `${roomMm} mm of room was said, and ${after} mm is there`);
      const codes = (of: Reckoned) => checksOf(of).flatMap(({ code, severity }) => (severity === 'note' ? [] : [code]));
      const before = codes(reckoned);
      const unsaid = codes(taken).filter((code) => !before.includes(code) && !raised.some((one) => one.code === code));
      hold(unsaid.length === 0, () => `unsaid: ${unsaid.join(', ')}`);
    },
  },
  {
    name: 'no setting of the rod comes nearer to the relief wanted than the one that is answered, and turns follow it',
    every: 3,
    check: ({ build, prediction, seed }) => {
      // Wishes on either side of flat, beside the build's own.
      const wishes = [build.targetReliefMm, ((seed % 17) - 8) / 20];
      for (const method of METHODS) {
        const of = prediction.methods[method];
        for (const reliefMm of wishes) {
          const answer = solveRod(prediction, method, { reliefMm, when: 'settled' });
          const missMm = Math.abs(answer.missMm);
          const { leastPercent, mostPercent } = prediction.rod;
          for (let step = 0; step <= 80; step += 1) {
            const rodPercent = leastPercent + (step / 80) * (mostPercent - leastPercent);
            const other = lineAt(prediction, method, { strung: true, days: build.settleDays, rodPercent }).extremeMm;
            hold(
              missMm <= Math.abs(other - reliefMm) + 1e-4,
              () =>
                `${method}, ${reliefMm} mm wanted: ${answer.percent} % gives ${answer.reliefMm} mm (${answer.status}), ${rodPercent} % ${other} mm`,
            );
          }
          hold(answer.status !== 'reached' || missMm <= 1e-4, () => `${method}: reached, and ${missMm} mm off`);
          const { turns, way } = answer.nut;
          const isTurned = answer.percent !== 0;
          hold(
            turns >= 0 && isTurned === (way !== 'none') && (!isTurned || turns > 0),
            () => `${method}: ${turns} turns ${way} for ${answer.percent} %`,
          );
        }
        const stated = solveRod(prediction, method, { reliefMm: build.targetReliefMm, when: 'settled' });
        const wanted = prediction.rod.kind === 'none' ? 0 : build.rodSettingPercent || stated.percent;
        hold(
          of.rodSetPercent === wanted,
          () => `${method}: the rod is set to ${of.rodSetPercent} %, answered ${wanted} %`,
        );
      }
    },
  },
];
