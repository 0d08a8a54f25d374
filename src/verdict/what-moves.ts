/**
 * What moves the bow of this neck, and how far: each lever by the step that a maker really has, ranked by what it does to the
 * settled relief, with the band of the difference and the checks that it would raise.
 *
 * What is uncertain is mostly common to the neck as it is and as it would be: both are sampled with the same deviates, and
 * the band is that of the differences, sample by sample.
 */
import type { Check } from '../fretwork/checks/check-types.ts';
import type { Predictor } from '../mechanics/predict.ts';
import { METHODS } from '../mechanics/prediction-types.ts';
import { lineAt } from '../mechanics/states.ts';
import { sampleExtremes } from '../mechanics/uncertainty/band-at.ts';
import { bandOf, type Band } from '../mechanics/uncertainty/band.ts';
import type { EstimateOptions, Estimator } from '../mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';
import type { Build } from '../neck/build.ts';
import { checkBuild } from '../neck/schema.ts';
import { STRING_SETS, suits, tuned, type StringSetId } from '../neck/strings.ts';
import { raisedBy } from './raised-by.ts';
import type { Reckoned } from './reckoned.ts';

/** Blades: a few hundredths apart (common practice, no source). */
const KERF_STEP_MM = 0.02;
/** Wires of one crown differ by some hundredths over their studs (common practice, no source). */
const STUD_STEP_MM = 0.05;
const DEPTH_STEP_MM = 0.2;
const THICKNESS_STEP_MM = 1;
/** As close as a hand sets the nut. */
const NUT_STEP_TURNS = 1 / 8;

/** Parameters that are moved by a step. */
export type Stepped = 'kerfMm' | 'studWidthMm' | 'slotDepthMm';

/** One thing that can be done otherwise. Values are of `parameter`; the rod is told in turns of the nut, strings by their set. */
export type Lever =
  | { readonly kind: 'value'; readonly parameter: Stepped; readonly from: number; readonly to: number }
  | { readonly kind: 'method'; readonly method: Build['method'] }
  | { readonly kind: 'thickness'; readonly byMm: number }
  | { readonly kind: 'strings'; readonly set: StringSetId }
  | { readonly kind: 'nut'; readonly turns: number; readonly tighten: boolean };

interface Change {
  readonly lever: Lever;
  readonly change: Partial<Build>;
}

export interface Move {
  readonly lever: Lever;
  readonly change: Partial<Build>;
  /** By how much the relief changes, mm; hollower is positive. With the frets in: null where the lever comes later. */
  readonly frettedMm: number | null;
  readonly settledMm: number;
  /** Of the settled change. */
  readonly bandMm: Band;
  /** Checks that it would raise, worst first. */
  readonly raised: readonly Check[];
}

export interface WhatMoves {
  /** The relief that the changes are counted from, settled with the rod slack, mm. */
  readonly settledMm: number;
  /** The greatest change first. */
  readonly moves: readonly Move[];
}

function byValue(build: Build, parameter: Stepped, step: number): Change {
  const from = build[parameter];
  const to = Number((from + step).toFixed(4));
  const stretches = build.regions.map((region) =>
    parameter === 'slotDepthMm' ? region : { ...region, [parameter]: Number((region[parameter] + step).toFixed(4)) },
  );
  return { lever: { kind: 'value', parameter, from, to }, change: { [parameter]: to, regions: stretches } };
}

function byThickness(build: Build, byMm: number): Change {
  return {
    lever: { kind: 'thickness', byMm },
    change: {
      thicknessFret1Mm: Number((build.thicknessFret1Mm + byMm).toFixed(4)),
      thicknessFret12Mm: Number((build.thicknessFret12Mm + byMm).toFixed(4)),
    },
  };
}

/** The sets of as many strings of the same kind next below and above, by the mass of a metre. */
function byStrings({ strings }: Build): Change[] {
  const metal = (list: readonly { readonly construction: string }[]) =>
    list.every(({ construction }) => construction.startsWith('nylon')) ? 'nylon' : 'steel';
  const size = (list: readonly { readonly diameterMm: number }[]) =>
    list.reduce((sum, { diameterMm }) => sum + diameterMm ** 2, 0);
  const own = size(strings);
  const others = STRING_SETS.filter((set) => suits(set, strings) && metal(set.strings) === metal(strings))
    .map((set) => ({ set, ratio: size(set.strings) / own }))
    .toSorted((a, b) => a.ratio - b.ratio);
  const lighter = others.findLast(({ ratio }) => ratio < 0.99);
  const heavier = others.find(({ ratio }) => ratio > 1.01);
  return [lighter, heavier].flatMap((found) =>
    found
      ? [
          {
            lever: { kind: 'strings', set: found.set.id } as const,
            change: { strings: found.set.strings.map((string, i) => tuned(string, strings[i].pitch)) },
          },
        ]
      : [],
  );
}

function byNut({ build, prediction }: Reckoned): Change[] {
  const { rodTurnsAtLimit } = prediction.methods[build.method];
  const { leastPercent, mostPercent } = prediction.rod;
  if (build.rodKind === 'none' || !(rodTurnsAtLimit > 0)) return [];
  const percent = (100 * NUT_STEP_TURNS) / rodTurnsAtLimit;
  return [percent, -percent]
    .filter((setting) => setting >= leastPercent && setting <= mostPercent)
    .map((rodSettingPercent) => ({
      lever: { kind: 'nut', turns: NUT_STEP_TURNS, tighten: rodSettingPercent > 0 },
      change: { rodSettingPercent },
    }));
}

/** What a maker could do otherwise with this neck, as far as such a neck can exist. */
export function leversOf(now: Reckoned): readonly Change[] {
  const { build } = now;
  const wedges = build.method !== 'glue';
  const levers: Change[] = [
    ...(wedges ? [-KERF_STEP_MM, KERF_STEP_MM].map((step) => byValue(build, 'kerfMm', step)) : []),
    ...(wedges ? [-STUD_STEP_MM, STUD_STEP_MM].map((step) => byValue(build, 'studWidthMm', step)) : []),
    ...[-DEPTH_STEP_MM, DEPTH_STEP_MM].map((step) => byValue(build, 'slotDepthMm', step)),
    ...METHODS.filter((method) => method !== build.method).map((method): Change => ({
      lever: { kind: 'method', method },
      change: { method },
    })),
    ...[-THICKNESS_STEP_MM, THICKNESS_STEP_MM].map((step) => byThickness(build, step)),
    ...byStrings(build),
    ...byNut(now),
  ];
  return levers.filter(({ change }) => checkBuild({ ...build, ...change }).ok);
}

/** Does the lever act before the strings go on? */
const isBeforeStrings = ({ kind }: Lever): boolean => kind !== 'strings' && kind !== 'nut';

/** The rod is slack, so that levers are told apart from what it would take back; its own lever apart. */
const settledMoment = (build: Build, { kind }: Lever | { kind: 'none' }) => ({
  strung: true,
  days: build.settleDays,
  rodPercent: kind === 'nut' ? build.rodSettingPercent : 0,
});
const FRETTED = { strung: false, days: 0, rodPercent: 0 } as const;

/**
 * @param shouldStop asked between steps; when it says so the result is null
 * @param told the share that is done, 0 to 1
 */
export async function whatMoves(
  predictor: Pick<Predictor, 'predict'>,
  estimator: Estimator,
  build: Build,
  options: EstimateOptions = {},
  shouldStop: () => boolean = () => false,
  told: (share: number) => void = () => undefined,
): Promise<WhatMoves | null> {
  const now: Reckoned = { build, prediction: predictor.predict(build) };
  const levers = leversOf(now);
  const reliefs = ({ build: other, prediction }: Reckoned, lever: Lever | { kind: 'none' }) => ({
    frettedMm: lineAt(prediction, other.method, FRETTED).extremeMm,
    settledMm: lineAt(prediction, other.method, settledMoment(other, lever)).extremeMm,
  });
  const samples = (uncertainty: Uncertainty, other: Build, lever: Lever | { kind: 'none' }) =>
    sampleExtremes(uncertainty, other.method, settledMoment(other, lever));
  const asItIs = reliefs(now, { kind: 'none' });
  const uncertaintyNow = await estimator.estimate(build, options, shouldStop);
  if (!uncertaintyNow) return null;
  const before = samples(uncertaintyNow, build, { kind: 'none' });
  const moves: Move[] = [];
  for (const [index, { lever, change }] of levers.entries()) {
    told((index + 1) / (levers.length + 1));
    const other = { ...build, ...change };
    const changed: Reckoned = { build: other, prediction: predictor.predict(other) };
    const isSame = lever.kind === 'nut' || lever.kind === 'method';
    const uncertainty = isSame ? uncertaintyNow : await estimator.estimate(other, options, shouldStop);
    if (!uncertainty) return null;
    const after = samples(uncertainty, other, lever);
    const { frettedMm, settledMm } = reliefs(changed, lever);
    moves.push({
      lever,
      change,
      frettedMm: isBeforeStrings(lever) ? frettedMm - asItIs.frettedMm : null,
      settledMm: settledMm - asItIs.settledMm,
      bandMm: bandOf(after.map((relief, i) => relief - before[i])),
      raised: raisedBy(now, changed),
    });
  }
  return {
    settledMm: asItIs.settledMm,
    moves: moves.toSorted((a, b) => Math.abs(b.settledMm) - Math.abs(a.settledMm)),
  };
}
