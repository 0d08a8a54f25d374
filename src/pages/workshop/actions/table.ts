/** The table of actions. */
import { METHODS } from '../../../mechanics/prediction-types.ts';
import { SCENE_VIEWS } from '../../../scene/types.ts';
import type { BackbowState } from '../../../state/store.ts';
import { canShowStress, isCutOpen } from '../../../state/stress-view.ts';
import { BOW_FACTOR } from '../../../state/bow-factor.ts';
import type { ChartShown } from '../../../state/view-slice.ts';
import { openProject, saveProject } from '../project/project-file.ts';
import { PROGRAM_WORDS } from '../../../speech/en/pages/licences.ts';
import { goTo } from '../../papers/route.ts';
import { ACTION_WORDS, OPENING_WORDS } from '../../../speech/en/workshop/actions.ts';
import {
  CHARTS_WORDS,
  METHOD_WORDS,
  PROJECT_WORDS,
  RAIL_WORDS,
  VIEW_WORDS,
} from '../../../speech/en/workshop/workshop.ts';
import { SHEETS_WORDS } from '../../../speech/en/pages/sheets.ts';
import type { Action, ActionGroup } from './types.ts';

/** Bow factors that the keys step through. */
const FACTORS = [1, 2, 5, 10, 20, 30, 40, 60, 80, 100, 150, 200] as const;

function factorAfter(state: BackbowState, direction: 1 | -1): number {
  const bowFactor = state.bowFactor ?? state.chosenFactor;
  return direction > 0
    ? (FACTORS.find((factor) => factor > bowFactor) ?? BOW_FACTOR.max)
    : (FACTORS.findLast((factor) => factor < bowFactor) ?? BOW_FACTOR.min);
}

function action(
  group: ActionGroup,
  id: string,
  keys: readonly string[],
  rest: Omit<Action, 'id' | 'group' | 'keys' | 'changesBuild'> & { changesBuild?: true },
): Action {
  return { group, id, keys, changesBuild: false, ...rest };
}

/** Shows a chart, and the line along the neck when it is there already. */
const chartAction = (chart: ChartShown, id: string, key: string): Action =>
  action('view', id, [key], {
    label: () => CHARTS_WORDS[chart].action,
    pressed: (state) => state.chart === chart,
    run: (store) => store.getState().setChart(store.getState().chart === chart ? 'line' : chart),
  });

export const ACTIONS: readonly Action[] = [
  action('project', 'open', ['Mod+O'], {
    label: () => PROJECT_WORDS.open,
    changesBuild: true,
    run: (store) => openProject(store),
  }),
  action('project', 'save', ['Mod+S'], { label: () => PROJECT_WORDS.save, run: (store) => void saveProject(store) }),
  action('project', 'keep', ['Mod+Shift+S'], {
    label: () => OPENING_WORDS.keep,
    run: async (store) => {
      const { keepBench } = await import('../../library/keep.ts');
      await keepBench(store);
    },
  }),
  action('project', 'library', ['I'], {
    label: () => OPENING_WORDS.library,
    run: (store) => store.getState().openDialog('library'),
  }),
  action('project', 'share', ['S'], {
    label: () => OPENING_WORDS.share,
    run: (store) => store.getState().openDialog('share'),
  }),
  action('project', 'compare', ['G'], {
    label: () => OPENING_WORDS.compare,
    run: (store) => store.getState().openDialog('compare'),
  }),
  action('project', 'wanted', ['W'], {
    label: () => OPENING_WORDS.wanted,
    run: (store) => store.getState().openDialog('wanted'),
  }),
  action('project', 'bench-log', ['J'], {
    label: () => OPENING_WORDS.log,
    run: (store) => store.getState().openDialog('bench-log'),
  }),
  action('project', 'refret', ['X'], {
    label: () => OPENING_WORDS.refret,
    run: (store) => store.getState().openDialog('refret'),
  }),
  action('project', 'at-the-bench', ['O'], { label: () => OPENING_WORDS.bench, run: () => goTo('bench') }),
  action('project', 'reseat', [], {
    label: () => OPENING_WORDS.reseat,
    run: (store) => store.getState().openDialog('reseat'),
  }),
  action('project', 'plan', ['F'], { label: () => SHEETS_WORDS.open, run: () => goTo('plan') }),
  action('project', 'template', ['K'], { label: () => SHEETS_WORDS.template, run: () => goTo('template') }),
  action('project', 'files', ['D'], { label: () => SHEETS_WORDS.files, run: () => goTo('files') }),
  action('edit', 'undo', ['Mod+Z'], {
    label: (state) => PROJECT_WORDS.undo(state.history.past.at(-1)?.label),
    enabled: (state) => state.history.past.length > 0,
    changesBuild: true,
    run: (store) => store.getState().undo(),
  }),
  action('edit', 'redo', ['Mod+Shift+Z', 'Mod+Y'], {
    label: (state) => PROJECT_WORDS.redo(state.history.future.at(-1)?.label),
    enabled: (state) => state.history.future.length > 0,
    changesBuild: true,
    run: (store) => store.getState().redo(),
  }),
  action('edit', 'next-method', ['M'], {
    label: () => ACTION_WORDS.nextMethod,
    changesBuild: true,
    run: (store) => {
      const { build, change } = store.getState();
      const method = METHODS[(METHODS.indexOf(build.method) + 1) % METHODS.length];
      change({ method }, METHOD_WORDS[method].label);
    },
  }),
  action('job', 'play', ['P'], {
    label: (state) => (state.playing ? RAIL_WORDS.pause : RAIL_WORDS.play),
    run: (store) => store.getState().setPlaying(!store.getState().playing),
  }),
  action('job', 'step-back', [','], {
    label: () => RAIL_WORDS.back,
    run: (store) => void store.getState().stepRail(-1),
  }),
  action('job', 'step-on', ['.'], {
    label: () => RAIL_WORDS.forward,
    run: (store) => void store.getState().stepRail(1),
  }),
  ...SCENE_VIEWS.map((view, index) =>
    action('view', `view-${view}`, [String(index + 1)], {
      label: () => VIEW_WORDS[view].label,
      pressed: (state) => state.view === view,
      run: (store) => store.getState().setView(view),
    }),
  ),
  action('view', 'next-fret', ['N'], {
    label: () => ACTION_WORDS.nextFret,
    enabled: (state) => state.selectedFret < state.build.fretCount,
    run: (store) => store.getState().selectFret(store.getState().selectedFret + 1),
  }),
  action('view', 'previous-fret', ['B'], {
    label: () => ACTION_WORDS.previousFret,
    enabled: (state) => state.selectedFret > 1,
    run: (store) => store.getState().selectFret(store.getState().selectedFret - 1),
  }),
  action('view', 'more-bow', [']'], {
    label: () => ACTION_WORDS.moreBow,
    run: (store) => store.getState().setBowFactor(factorAfter(store.getState(), 1)),
  }),
  action('view', 'less-bow', ['['], {
    label: () => ACTION_WORDS.lessBow,
    run: (store) => store.getState().setBowFactor(factorAfter(store.getState(), -1)),
  }),
  action('view', 'true-size', ['T'], {
    label: () => ACTION_WORDS.trueSize,
    pressed: (state) => state.trueScale,
    run: (store) => store.getState().setTrueScale(!store.getState().trueScale),
  }),
  action('view', 'lift', ['L'], {
    label: () => ACTION_WORDS.lift,
    pressed: (state) => state.lifted,
    run: (store) => store.getState().setLifted(!store.getState().lifted),
  }),
  action('view', 'rod', ['R'], {
    label: () => ACTION_WORDS.rod,
    enabled: (state) => !isCutOpen(state.view),
    pressed: (state) => state.showRod,
    run: (store) => store.getState().setShowRod(!store.getState().showRod),
  }),
  action('view', 'arrows', ['A'], {
    label: () => ACTION_WORDS.arrows,
    enabled: (state) => !isCutOpen(state.view),
    pressed: (state) => state.showArrows,
    run: (store) => store.getState().setShowArrows(!store.getState().showArrows),
  }),
  action('view', 'stress', ['Z'], {
    label: () => ACTION_WORDS.stress,
    enabled: (state) => canShowStress(state.view, state.build),
    pressed: (state) => state.showStress,
    run: (store) => store.getState().setShowStress(!store.getState().showStress),
  }),
  action('view', 'comparing', ['C'], {
    label: () => ACTION_WORDS.comparing,
    pressed: (state) => state.comparing,
    run: (store) => store.getState().setComparing(!store.getState().comparing),
  }),
  chartAction('time', 'over-time', 'V'),
  chartAction('room', 'will-it-buzz', 'H'),
  action('page', 'licences', [], {
    label: () => PROGRAM_WORDS.open,
    run: (store) => store.getState().openDialog('licences'),
  }),
  action('page', 'proof', ['Q'], {
    label: () => OPENING_WORDS.proof,
    run: (store) => store.getState().openDialog('proof'),
  }),
  action('page', 'units', ['U'], {
    label: () => ACTION_WORDS.units,
    run: (store) => {
      const { unitSystem, setUnitSystem } = store.getState();
      setUnitSystem(unitSystem === 'metric' ? 'inch' : 'metric');
    },
  }),
  action('page', 'lessons', ['E'], {
    label: () => OPENING_WORDS.lessons,
    run: (store) => store.getState().openDialog('lessons'),
  }),
  action('page', 'glossary', ['Y'], {
    label: () => OPENING_WORDS.glossary,
    run: (store) => store.getState().openDialog('glossary'),
  }),
  action('page', 'help', ['?'], {
    label: () => ACTION_WORDS.help,
    run: (store) => store.getState().setHelpOpen(!store.getState().helpOpen),
  }),
];

/** @throws {RangeError} when no action has that id */
export function actionById(id: string): Action {
  const found = ACTIONS.find((candidate) => candidate.id === id);
  if (!found) throw new RangeError(`action "${id}" is not in the table`);
  return found;
}
