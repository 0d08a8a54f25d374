/**
 * The picture. Mount `NeckScene` in a box that has a size; it fills it.
 *
 * ```tsx
 * <NeckScene build={build} lineSource={source} prediction={prediction} method={build.method} palette={palette}
 *   units="metric" view="neck" selectedFret={null} reducedMotion={false} lift={0} liftedFret={null}
 *   shows={{ strings: true, straightedge: false, rod: false, arrows: false }} label="Neck, 22 frets, 0.29 mm back-bow" />
 * ```
 *
 * The line comes through `lineSource`, not through props: keep one source for the life of the picture, call its listeners
 * when the line changes, and scrubbing renders no React. The other props are for things that change by hand.
 */
export type {
  ComparedNeck,
  DrawnLine,
  LineSource,
  NeckSceneHandle,
  NeckSceneProps,
  ScenePalette,
  SceneShows,
  SceneStats,
  SceneView,
} from './types.ts';
export { SCENE_VIEWS } from './types.ts';
export { createLineSource } from './line-source.ts';
export { NeckScene } from './neck-scene.tsx';
