/** The scene by itself, for its browser tests: everything about it can be set from the test. */
import { Profiler, useSyncExternalStore } from 'react';
import { createRoot } from 'react-dom/client';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../tools/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { createLineSource, NeckScene, type NeckSceneHandle, type NeckSceneProps } from '../../../src/scene/index.ts';

const predictor = createPredictor();
const callbacks = { hovered: [] as (number | null)[], picked: [] as number[], unavailable: [] as (string | null)[] };
const counts = { frames: 0, predictionVersion: 1, renders: 0 };

const prepared = (build: Build) => {
  const prediction = predictor.predict(build);
  return { build, prediction, method: build.method };
};

const first = prepared(PRESETS[0].build);
const source = createLineSource({
  xMm: first.prediction.stationXMm,
  reliefMm: first.prediction.methods.press.fretted.reliefMm,
  factor: 40,
});

let props: NeckSceneProps = {
  ...first,
  lineSource: source,
  palette: { ground: '#f4efe4', ink: '#2b2621', accent: '#9a6a16', dark: false },
  units: 'metric',
  view: 'neck',
  selectedFret: 7,
  reducedMotion: true,
  shows: { strings: false, straightedge: false, rod: false, arrows: false },
  lift: 0,
  liftedFret: null,
  label: 'The neck',
  onHoverFret: (fret) => callbacks.hovered.push(fret),
  onPickFret: (fret) => callbacks.picked.push(fret),
  onUnavailable: (reason) => callbacks.unavailable.push(reason),
  onFrame: (frames) => {
    counts.frames = frames;
  },
};
const listeners = new Set<() => void>();
let handle: NeckSceneHandle | null = null;

const control = {
  callbacks,
  renders: () => counts.renders,
  /** Changes props of the scene. */
  set(change: Partial<NeckSceneProps>) {
    props = { ...props, ...change };
    for (const listener of listeners) listener();
  },
  /** Shows a preset with changes, and its line with the frets in. */
  show(preset: number, change: Partial<Build> = {}, factor = 40) {
    const next = prepared({ ...PRESETS[preset].build, ...change });
    control.set(next);
    source.set({
      xMm: next.prediction.stationXMm,
      reliefMm: next.prediction.methods[next.method].fretted.reliefMm,
      factor,
    });
  },
  /** Another shape without computing its line: for many changes in a row. */
  reshape(preset: number, change: Partial<Build>) {
    control.set({ build: { ...PRESETS[preset].build, ...change }, prediction: null });
  },
  /** A line of a circular bow of this height. */
  bow(heightMm: number, factor: number, liftMm?: number[]) {
    const xMm = props.prediction?.stationXMm ?? new Float64Array([0, 400]);
    const span = 380;
    const reliefMm = Float64Array.from(xMm, (x) => (4 * heightMm * x * (span - x)) / span ** 2);
    source.set({ xMm, reliefMm, factor, ...(liftMm ? { liftMm } : {}) });
  },
  props: () => props,
  stats: () => handle?.stats(),
  fit: () => handle?.fit(),
  async png(widthPx: number, heightPx: number) {
    const blob = await handle?.exportPng({ widthPx, heightPx, caption: 'a caption' });
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
  },
};
export type SceneControl = typeof control;

declare global {
  interface Window {
    scene: SceneControl;
  }
}

function Page() {
  const current = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => props,
  );
  return (
    <Profiler id="scene" onRender={() => (counts.renders += 1)}>
      <NeckScene
        {...current}
        ref={(next) => {
          handle = next;
        }}
      />
    </Profiler>
  );
}

window.scene = control;
Object.assign(window, { backbow: counts });
createRoot(document.getElementById('picture') as HTMLElement).render(<Page />);
