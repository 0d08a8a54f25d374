/** When the picture shows the stress in the wood, and which. */
import type { Build } from '../neck/build.ts';
import type { StressField } from '../mechanics/elements/stress.ts';
import type { SceneView } from '../scene/types.ts';
import type { BackbowState } from './store.ts';

/** Views that cut the neck open: nothing outside the cut is drawn in them, neither rod nor forces. */
const CUT_VIEWS: ReadonlySet<SceneView> = new Set<SceneView>(['slot', 'fret', 'end']);

export function isCutOpen(view: SceneView): boolean {
  return CUT_VIEWS.has(view);
}

/** Can the view show stress? Only across a slot that is wedged. */
export function canShowStress(view: SceneView, build: Pick<Build, 'method'>): boolean {
  return view === 'slot' && build.method !== 'glue';
}

/** The slot whose stress the picture of the solution wants, or null. */
export function slotUnderStress(
  state: Pick<BackbowState, 'solution' | 'selectedFret' | 'view' | 'showStress'>,
): number | null {
  const { solution, selectedFret, view, showStress } = state;
  if (!solution || !showStress || !canShowStress(view, solution.build)) return null;
  return Math.min(selectedFret, solution.build.fretCount);
}

/** The stress to colour the cut with: that of the solution and the slot in view; null while there is none. */
export function currentStress(
  state: Pick<BackbowState, 'solution' | 'stress' | 'selectedFret' | 'view' | 'showStress'>,
): StressField | null {
  const { solution, stress } = state;
  if (!stress || stress.build !== solution?.build || stress.fret !== slotUnderStress(state)) return null;
  return stress.field;
}
