/** Does what a step says, by the program's own means. */
import type { Build } from '../../neck/build.ts';
import { PRESETS } from '../../neck/presets.ts';
import { railStops, stopIndex } from '../../verdict/rail.ts';
import type { BackbowStore } from '../../state/store.ts';
import type { Act } from './types.ts';
import { presetBuild } from '../../speech/names.ts';
import { problemTexts } from '../../speech/problems.ts';

/** @throws {RangeError} for an unknown preset, or values that the schema refuses: a fault of the lesson, caught by its test */
export function act(store: BackbowStore, acts: readonly Act[], reducedMotion: boolean): void {
  for (const one of acts) actOnce(store, one, reducedMotion);
}

function actOnce(store: BackbowStore, one: Act, reducedMotion: boolean): void {
  const state = store.getState();
  switch (one.set) {
    case 'preset': {
      const preset = PRESETS.find(({ id }) => id === one.id);
      if (!preset) throw new RangeError(`preset "${one.id}" is not in the table`);
      place(store, { ...presetBuild(preset), ...one.values });
      return;
    }
    case 'values':
      place(store, { ...state.build, ...one.values });
      return;
    case 'rail':
      state.setPlaying(false);
      state.setRail(one.at);
      return;
    case 'play': {
      state.setRail(reducedMotion ? one.to : one.from);
      if (!reducedMotion) playTo(store, one.to);
      return;
    }
    case 'view':
      state.setView(one.view);
      return;
    case 'chart':
      state.setChart(one.chart);
      return;
    case 'hand':
      state.setHand(one.hand);
      return;
    case 'swing':
      state.setSwungNote(one.note);
      return;
    case 'fret':
      state.selectFret(one.fret);
      return;
    case 'bowFactor':
      state.setBowFactor(one.factor);
      return;
    case 'comparing':
      state.setComparing(one.on);
      return;
    case 'lifted':
      state.setLifted(one.on);
      return;
    case 'showRod':
      state.setShowRod(one.on);
      return;
    case 'showArrows':
      state.setShowArrows(one.on);
  }
}

function place(store: BackbowStore, build: Build): void {
  const outcome = store.getState().placeLessonBuild(build);
  if (!outcome.ok) throw new RangeError(problemTexts(outcome.problems, 'metric').join(' '));
}

/** Plays until the moment is reached, or somebody stops it or leaves the lesson. */
function playTo(store: BackbowStore, to: Extract<Act, { set: 'play' }>['to']): void {
  store.getState().setPlaying(true);
  const stop = store.subscribe(({ playing, rail, build, lesson }) => {
    if (!playing || !lesson) {
      stop();
      return;
    }
    const stops = railStops(build);
    if (stopIndex(stops, rail) < stopIndex(stops, to)) return;
    stop();
    store.getState().setPlaying(false);
  });
}
