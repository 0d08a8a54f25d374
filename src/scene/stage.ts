/** Everything that stands in the picture and is not React's business: models, camera, overlay, and how one frame is drawn. */
import { Color, type DataTexture, type PerspectiveCamera, type Scene, type WebGLRenderer } from 'three';
import { homeOf } from './camera/views.ts';
import { createDirector, type Director } from './camera/director.ts';
import { createGrainTexture } from './grain-texture.ts';
import { createNeckModel, type NeckModel } from './neck-model.ts';
import { drawBowLabel } from './overlay/bow-label.ts';
import type { Ink } from './overlay/ink.ts';
import type { NeckSceneProps, SceneStats } from './types.ts';

/** How far a lifted fret stands above its seat beyond the length of its tang, mm. */
const LIFT_CLEAR_MM = 7;

export interface Stage {
  readonly director: Director;
  readonly model: NeckModel;
  /** Takes the props of this render; rebuilds what they changed. */
  setProps(props: NeckSceneProps): void;
  /** Takes the current line of the source. */
  readLine(): void;
  hover(fret: number | null): void;
  fit(instant: boolean): void;
  /** Draws one frame. @returns true while another one is needed */
  draw(gl: WebGLRenderer, scene: Scene, camera: PerspectiveCamera, ink: Ink | null): boolean;
  props(): NeckSceneProps;
  frames(): number;
  stats(gl: WebGLRenderer): SceneStats;
  dispose(): void;
}

export function createStage(first: NeckSceneProps, invalidate: () => void): Stage {
  const grain: DataTexture = createGrainTexture();
  let props = first;
  const model = createNeckModel(grain, first.build);
  let lift = new Float64Array(first.build.fretCount);
  let hovered: number | null = null;
  let frames = 0;
  let aspect = 0;
  const ground = new Color(first.palette.ground);

  /** Heights of all frets: what the line says, and what the props lift on top. Undefined = all are seated. */
  const liftNow = (): Float64Array | undefined => {
    const { build, lift: share, liftedFret } = props;
    const line = props.lineSource.read();
    if (!line.liftMm && (share <= 0 || liftedFret === null)) return undefined;
    if (lift.length !== build.fretCount) lift = new Float64Array(build.fretCount);
    const raised = share * (build.tangDepthMm + LIFT_CLEAR_MM);
    for (let index = 0; index < build.fretCount; index++) {
      const chosen = liftedFret === 'all' || liftedFret === index + 1;
      lift[index] = Math.max(line.liftMm?.[index] ?? 0, chosen ? raised : 0);
    }
    return lift;
  };
  const readLine = (): void => {
    model.setLine(props.lineSource.read(), liftNow());
    invalidate();
  };
  const home = (): ReturnType<typeof homeOf> =>
    homeOf(props.view, props.build, model.reader, props.selectedFret, aspect || 1.6);
  const apply = (): void => {
    model.setShows(props.shows);
    model.setPalette(props.palette);
    ground.set(props.palette.ground);
    model.materials.setMarked(props.selectedFret ?? -1, hovered ?? -1);
  };
  apply();
  model.setLine(props.lineSource.read(), liftNow());
  const director = createDirector(home(), invalidate);

  return {
    director,
    model,
    props: () => props,
    frames: () => frames,
    readLine,
    setProps(next) {
      const before = props;
      props = next;
      if (next.build !== before.build) model.setBuild(next.build);
      apply();
      readLine();
      const moved =
        next.view !== before.view ||
        (next.view !== 'neck' &&
          next.view !== 'edge' &&
          next.view !== 'back' &&
          next.selectedFret !== before.selectedFret);
      if (moved) director.goHome(home(), next.reducedMotion);
      else if (next.build !== before.build && director.isHome() && !director.isTravelling())
        director.goHome(home(), true);
      invalidate();
    },
    hover(fret) {
      if (fret === hovered) return;
      hovered = fret;
      model.materials.setMarked(props.selectedFret ?? -1, hovered ?? -1);
      invalidate();
    },
    fit(instant) {
      director.goHome(home(), instant || props.reducedMotion);
    },
    draw(gl, scene, camera, ink) {
      const { width, height } = gl.domElement;
      const nextAspect = width / Math.max(1, height);
      if (Math.abs(nextAspect - aspect) > 1e-3) {
        aspect = nextAspect;
        if (director.isHome()) director.goHome(home(), true);
      }
      const travelling = director.apply(camera, aspect, performance.now());
      scene.background = ground;
      model.shadow.object.visible = camera.position.y > model.shadow.benchY();
      gl.render(scene, camera);
      if (ink) {
        ink.context.clearRect(0, 0, ink.width, ink.height);
        drawBowLabel(ink, props.build, model.reader, props.lineSource.read().factor);
      }
      frames += 1;
      return travelling;
    },
    stats(gl) {
      const { render, memory, programs } = gl.info;
      return {
        frames,
        triangles: render.triangles,
        drawCalls: render.calls,
        geometries: memory.geometries,
        textures: memory.textures,
        programs: programs?.length ?? 0,
        bendMs: model.times.bendMs,
        rebuildMs: model.times.rebuildMs,
      };
    },
    dispose() {
      model.dispose();
      grain.dispose();
    },
  };
}
