/** What the page tells about itself, so that tests can wait for it: pictures drawn, and predictions shown. */
import { pictureNow } from '../pages/papers/picture-source.ts';
import type { SceneStats } from '../scene/types.ts';
import type { BackbowStore } from '../state/store.ts';

export interface Probe {
  frames: number;
  predictionVersion: number;
  /** How often React has rendered the picture: scrubbing must not add to it. */
  sceneRenders: number;
  /** Numbers about the picture; null while none is mounted. */
  stats(): SceneStats | null;
}

declare global {
  interface Window {
    backbow?: Probe;
  }
}

export const probe: Probe = {
  frames: 0,
  predictionVersion: 0,
  sceneRenders: 0,
  stats: () => pictureNow()?.stats() ?? null,
};

/** Publishes the probe and counts a prediction when the page has shown it. */
export function publishProbe(store: BackbowStore): void {
  window.backbow = probe;
  store.subscribe(({ solution }, before) => {
    if (!solution || solution === before.solution) return;
    const { version } = solution;
    // The subscribers that draw run in the same turn; one frame later all of it is on screen.
    requestAnimationFrame(() => {
      probe.predictionVersion = version;
    });
  });
}
