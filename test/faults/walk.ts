/**
 * A walk over every control: at each step one of the things that a person can do, drawn from a seed, done by the same
 * functions that the controls call. After each step the state must be sound, whatever was asked for.
 */
import { defaultBuild, MAX_REGIONS, type Build } from '../../src/neck/build.ts';
import { GROUPS, type NumberParameter, type Parameter } from '../../src/neck/parameter-kinds.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { CONSTRUCTION_IDS, STRING_SETS, TUNINGS } from '../../src/neck/strings.ts';
import { WOOD_IDS } from '../../src/neck/woods.ts';
import type { Predictor } from '../../src/mechanics/predict.ts';
import { describePicture } from '../../src/app/use-description.ts';
import { ACTIONS } from '../../src/pages/workshop/actions/table.ts';
import { checkNumbers, checkReason, checkRemedy } from '../../src/speech/checks.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { displayScale, parseTyped, quantityText, snapped, stepped } from '../../src/speech/scale.ts';
import { groupSummary } from '../../src/pages/workshop/controls/group-summary.ts';
import { outOfRange, refusalText } from '../../src/speech/refusal.ts';
import { withEntry } from '../../src/kit/edit-list.ts';
import { withPieces, withShare } from '../../src/pages/workshop/lists/laminate-shares.ts';
import { lowerString, withSet, withTuning } from '../../src/pages/workshop/lists/string-choices.ts';
import { figuresOf } from '../../src/pages/workshop/readouts/figures.ts';
import type { Outcome } from '../../src/state/build-slice.ts';
import { MAX_STEPS, sameBuild } from '../../src/state/history.ts';
import { linesOf } from '../../src/state/lines.ts';
import { railStops, stopIndex } from '../../src/verdict/rail.ts';
import type { BackbowStore } from '../../src/state/store.ts';
import { BOW_FACTOR } from '../../src/state/bow-factor.ts';
import { drawnBowFactor } from '../../src/state/view-slice.ts';
import { hold, holdFinite, holdText } from '../sweep/invariant.ts';
import { HOSTILE_TEXTS } from './hostile.ts';
import { parameterName } from '../../src/speech/names.ts';

/** A seeded stream of numbers. */
export interface Dice {
  /** 0 to 1, without 1. */
  readonly share: () => number;
  readonly whole: (least: number, most: number) => number;
  readonly of: <T>(list: readonly T[]) => T;
}

/** Mulberry32, a small generator of 32 bits; from memory. Good enough to choose by. */
export function dice(seed: number): Dice {
  let state = seed >>> 0;
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number) => least + Math.floor(share() * (most - least + 1));
  return { share, whole, of: (list) => list[whole(0, list.length - 1)] };
}

const NUMBERS = (PARAMETERS as readonly Parameter[]).filter(
  (parameter): parameter is NumberParameter => parameter.kind === 'number',
);
const OTHERS = (PARAMETERS as readonly Parameter[]).filter((parameter) => parameter.kind !== 'number');
const SYSTEMS = ['metric', 'inch'] as const;
/** Actions that ask the browser for files or its database have tests of their own. */
const RUNNABLE = ACTIONS.filter(({ id }) => !['open', 'save', 'keep'].includes(id));

type Step = readonly [name: string, run: () => void];

/** Asks for a change; a refused one must leave everything as it was and say why. */
function wish(store: BackbowStore, change: Partial<Build>, label: string): Outcome {
  const before = store.getState();
  const outcome = before.change(change, label);
  const after = store.getState();
  if (!outcome.ok) {
    hold(after.build === before.build && after.history === before.history, () => 'a refusal has changed the build');
    hold(outcome.problems.length > 0, () => 'refused without a reason');
    for (const system of SYSTEMS) {
      const text = refusalText(outcome.problems, 'what was there', system);
      hold(text.length > 20, () => `no sentence: “${text}”`);
    }
  } else {
    for (const [key, value] of Object.entries(change))
      hold(
        JSON.stringify(after.build[key as keyof Build]) === JSON.stringify(value),
        () =>
          `${key} was asked to be ${JSON.stringify(value)} and is ${JSON.stringify(after.build[key as keyof Build])}`,
      );
  }
  return outcome;
}

function numberSteps(store: BackbowStore, at: Dice): Step {
  const parameter = at.of(NUMBERS);
  const { build, unitSystem } = store.getState();
  const value = build[parameter.id as keyof Build] as number;
  const set = (wanted: number) => wish(store, { [parameter.id]: wanted }, parameterName(parameter.id));
  switch (at.whole(0, 3)) {
    case 0: {
      const steps = at.of([1, -1, 0.1, -0.1, 10, -10]);
      return [`${parameter.id} by ${steps} steps`, () => void set(stepped(parameter, value, steps, unitSystem))];
    }
    case 1: {
      const end = at.of([parameter.min, parameter.max, parameter.default]);
      return [`${parameter.id} to ${end}`, () => void set(end)];
    }
    case 2: {
      const [from, to] = at.share() < 0.7 ? parameter.typical : [parameter.min, parameter.max];
      const places = Array.from({ length: at.whole(1, 4) }, () => from + (to - from) * at.share());
      return [
        `${parameter.id} dragged over ${places.join(', ')}`,
        () => {
          const { beginGesture, endGesture } = store.getState();
          beginGesture(parameterName(parameter.id));
          const past = store.getState().history.past.length;
          for (const place of places) set(snapped(parameter, place, unitSystem));
          endGesture();
          hold(store.getState().history.past.length <= Math.min(MAX_STEPS, past + 1), () => 'a drag is several steps');
        },
      ];
    }
    default: {
      const wild = (parameter.min + (parameter.max - parameter.min) * (3 * at.share() - 1)).toFixed(at.whole(0, 4));
      const text = at.share() < 0.7 ? wild : at.of(HOSTILE_TEXTS);
      return [
        `“${text.slice(0, 30)}” typed for ${parameter.id}`,
        () => {
          const typed = parseTyped(text, parameter, unitSystem);
          if (
            typed === undefined ||
            outOfRange(typed, { ...parameter, label: parameterName(parameter.id) }, unitSystem) !== undefined
          )
            return;
          set(typed);
        },
      ];
    }
  }
}

function listStep(store: BackbowStore, at: Dice): Step {
  const { build } = store.getState();
  const number = (least: number, most: number) => Number((least + (most - least) * at.share()).toFixed(3));
  const string = at.whole(0, build.strings.length - 1);
  const piece = at.whole(0, build.laminates.length - 1);
  const line = at.whole(0, build.binding.length - 1);
  const changes: readonly (readonly [string, () => Partial<Build>])[] = [
    ['a set of strings', () => ({ strings: withSet(build.strings, at.of(STRING_SETS).id) })],
    [
      'a tuning',
      () => {
        const fitting = TUNINGS.filter(({ pitches }) => pitches.length === build.strings.length);
        return fitting.length === 0 ? {} : { strings: withTuning(build.strings, at.of(fitting).id) };
      },
    ],
    ['a string more', () => ({ strings: [...build.strings, lowerString(build.strings)] })],
    ['a string less', () => ({ strings: build.strings.slice(0, -1) })],
    ['a diameter', () => ({ strings: withEntry(build.strings, string, { diameterMm: number(0.1, 5) }) })],
    ['a core', () => ({ strings: withEntry(build.strings, string, { coreMm: number(0.05, 4.5) }) })],
    ['a pitch', () => ({ strings: withEntry(build.strings, string, { pitch: at.whole(5, 100) }) })],
    [
      'a construction',
      () => ({
        strings: withEntry(build.strings, string, {
          construction: at.of(CONSTRUCTION_IDS),
        }),
      }),
    ],
    ['pieces of the neck', () => ({ laminates: withPieces(build.laminates, at.whole(1, 4)) })],
    ['a share', () => ({ laminates: withShare(build.laminates, piece, number(0, 1.1)) })],
    ['a wood', () => ({ laminates: withEntry(build.laminates, piece, { wood: at.of(WOOD_IDS) }) })],
    ['a binding line', () => ({ binding: withEntry(build.binding, line, { thicknessMm: number(0.1, 4.5) }) })],
    [
      'a colour',
      () => ({ binding: withEntry(build.binding, line, { colour: at.of(['#ff0000', '#00FF7f', 'red', '']) }) }),
    ],
    ['a name', () => ({ name: at.of(HOSTILE_TEXTS) })],
    ['notes', () => ({ notes: at.of(HOSTILE_TEXTS) })],
    [
      'a region',
      () => ({
        regions: [
          ...build.regions.slice(0, MAX_REGIONS),
          {
            fromFret: at.whole(1, 30),
            toFret: at.whole(1, 36),
            kerfMm: number(0.3, 1.2),
            tangWidthMm: build.tangWidthMm,
            studWidthMm: build.studWidthMm,
          },
        ],
      }),
    ],
    ['no regions', () => ({ regions: [] })],
    ['reliefs', () => ({ startingReliefMm: Array.from({ length: build.fretCount }, () => number(-0.3, 0.6)) })],
    ['a relief too few', () => ({ startingReliefMm: Array.from({ length: build.fretCount - 1 }, () => 0) })],
    ['no reliefs', () => ({ startingReliefMm: [] })],
  ];
  const [name, change] = at.of(changes);
  return [name, () => void wish(store, change(), name)];
}

function otherStep(store: BackbowStore, at: Dice): Step {
  const state = store.getState();
  const steps: readonly Step[] = [
    ['undo', () => state.undo()],
    ['redo', () => state.redo()],
    ['a preset', () => void state.replaceBuild(at.of(PRESETS).build, 'preset')],
    ['the standard neck', () => void state.replaceBuild(defaultBuild(), 'new')],
    ['a stop of the rail', () => state.setRail(at.of(railStops(state.build)))],
    ['a fret', () => state.selectFret(at.whole(1, state.build.fretCount))],
    ['a gesture begun and left', () => state.beginGesture('left')],
    ['a gesture ended', () => state.endGesture()],
    ['a factor', () => state.setBowFactor(at.whole(BOW_FACTOR.min, BOW_FACTOR.max))],
    ['a comparison', () => state.setComparing(at.share() < 0.5)],
  ];
  return at.of(steps);
}

function actionStep(store: BackbowStore, at: Dice): Step {
  const action = at.of(RUNNABLE);
  return [
    `action ${action.id}`,
    () => {
      const state = store.getState();
      holdText(action.label(state), `label of ${action.id}`);
      if (action.enabled?.(state) ?? true) void action.run(store);
      const after = store.getState();
      if (!action.changesBuild) hold(after.build === state.build, () => `${action.id} changed the build`);
    },
  ];
}

function otherParameterStep(store: BackbowStore, at: Dice): Step {
  const parameter = at.of(OTHERS);
  const value = parameter.kind === 'choice' ? at.of(parameter.options) : at.share() < 0.5;
  return [
    `${parameter.id} to ${value}`,
    () => void wish(store, { [parameter.id]: value }, parameterName(parameter.id)),
  ];
}

export function nextStep(store: BackbowStore, at: Dice): Step {
  const roll = at.share();
  if (roll < 0.5) return numberSteps(store, at);
  if (roll < 0.65) return otherParameterStep(store, at);
  if (roll < 0.8) return listStep(store, at);
  if (roll < 0.9) return actionStep(store, at);
  return otherStep(store, at);
}

/** What must hold after every step. @throws {Error} that says what does not */
export function holdSound(store: BackbowStore): void {
  const state = store.getState();
  const { build, history, rail, unitSystem } = state;
  hold(checkBuild(build).ok, () => 'the build on the bench is none');
  hold(history.past.length <= MAX_STEPS, () => `${history.past.length} steps are kept`);
  hold(
    [...history.past, ...history.future].every(({ label }) => label !== ''),
    () => 'a step without a name',
  );
  const stops = railStops(build);
  const stop = stopIndex(stops, rail);
  hold(stop >= 0 && stop < stops.length, () => `stop ${stop} of ${stops.length}`);
  const factor = drawnBowFactor(state);
  hold(factor >= BOW_FACTOR.min && factor <= BOW_FACTOR.max, () => `factor ${factor}`);
  for (const id of GROUPS) holdText(groupSummary(id, build, unitSystem), id);
  for (const parameter of NUMBERS) {
    const value = build[parameter.id as keyof Build] as number;
    holdText(quantityText(value, displayScale(parameter, unitSystem), unitSystem), parameter.id);
  }
}

/** Undo takes back exactly the last step, and redo does it again. */
export function holdUndoable(store: BackbowStore): void {
  store.getState().endGesture();
  const { build, history, undo } = store.getState();
  const entry = history.past.at(-1);
  if (!entry) return;
  undo();
  hold(sameBuild(store.getState().build, entry.build), () => 'undo leads elsewhere');
  store.getState().redo();
  hold(sameBuild(store.getState().build, build), () => 'redo leads elsewhere');
}

/** The whole of it computed and put into words, as the page does. */
export function holdPredictable(store: BackbowStore, predictor: Predictor): void {
  const { build, setSolution } = store.getState();
  const prediction = predictor.predict(build);
  holdFinite(prediction, 'prediction');
  setSolution(build, prediction);
  const state = store.getState();
  holdFinite(linesOf(state), 'lines');
  // The name is the person's own: what stands in it is no fault of the page.
  const named = {
    ...state,
    build: { ...build, name: 'N' },
    solution: { ...state.solution!, build: { ...build, name: 'N' } },
  };
  holdText(describePicture(named), 'description');
  for (const system of SYSTEMS) {
    holdText(JSON.stringify(figuresOf(state.solution, null, system)), 'figures');
    for (const check of checksOf(state.solution!))
      holdText([checkReason(check), checkRemedy(check), checkNumbers(check, system)].join(' '), check.code);
  }
}
