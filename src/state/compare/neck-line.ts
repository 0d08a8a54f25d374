/** The line of a compared neck: at the moment on the rail and as much enlarged as that of the neck on the bench. */
import type { Build } from '../../neck/build.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import type { LineSource } from '../../scene/types.ts';
import { createDrawnLine } from '../drawn-line.ts';
import type { BackbowStore } from '../store.ts';

export function createNeckLine(store: BackbowStore, build: Build, prediction: Prediction): LineSource {
  const solution = { build, prediction, version: 1 };
  return createDrawnLine({
    getState: () => {
      const { rail, bowFactor, chosenFactor, trueScale } = store.getState();
      return { solution, rail, bowFactor, chosenFactor, trueScale };
    },
    subscribe: (listener) => store.subscribe(() => listener()),
  });
}
