/** Everything that stands in the picture and is not React's business: models, camera, overlay, and how one frame is drawn. */
import { Color, Group, type DataTexture, type PerspectiveCamera, type Scene, type WebGLRenderer } from 'three';
import { homeOf, shownFret } from './camera/views.ts';
import { createDirector, type Director } from './camera/director.ts';
import { createGrainTexture } from './grain-texture.ts';
import { createNeckModel, type NeckModel } from './neck-model.ts';
import { drawBowLabel } from './overlay/bow-label.ts';
import { drawAnnotations } from './overlay/annotate.ts';
import type { Ink } from './overlay/ink.ts';
import { drawOutlines } from './overlay/outlines.ts';
import { createProjector } from './overlay/project.ts';
import { drawStressKey } from './overlay/stress-key.ts';
import type { Annotations } from './section/annotations.ts';
import { endAnnotations, fretAnnotations } from './section/fret-annotations.ts';
import { createSectionModel, type SectionModel } from './section/section-model.ts';
import { slotAnnotations } from './section/slot-annotations.ts';
import type { Orbit } from './camera/orbit.ts';
import type { NeckSceneProps, SceneStats } from './types.ts';

/** How far a lifted fret stands above its seat beyond the length of its tang, mm. */
const LIFT_CLEAR_MM = 7;

export interface Stage {
  readonly director: Director;
  readonly model: NeckModel;
  readonly section: SectionModel;
  readonly root: Group;
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

const HATCH_PX = 6;

/** Distance of hatching lines that is about `HATCH_PX` on the screen, in steps of two so that it does not swim. */
function hatchMm({ distance, field }: Orbit, heightPx: number): number {
  const mmPerPx = (2 * distance * Math.tan(field / 2)) / Math.max(1, heightPx);
  return 2 ** Math.round(Math.log2(HATCH_PX * mmPerPx));
}

export function createStage(first: NeckSceneProps, invalidate: () => void): Stage {
  const grain: DataTexture = createGrainTexture();
  let props = first;
  const model = createNeckModel(grain, first.build);
  const section = createSectionModel(model);
  const root = new Group();
  root.add(model.group, section.group);
  let annotations: Annotations | null = null;
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
  /** In a cut view the selected fret is what is cut: it keeps the colour of its metal. */
  const mark = (): void => {
    const selected = section.plane() === null ? (props.selectedFret ?? -1) : -1;
    model.materials.setMarked(selected, hovered ?? -1);
  };
  const apply = (): void => {
    const { build, view, selectedFret, units } = props;
    const fret = shownFret(build, selectedFret);
    const lifted = props.lift > 0 && (props.liftedFret === 'all' || props.liftedFret === fret);
    section.setup({ build, view, fret, lifted, stress: props.stress ?? null });
    const plane = section.plane();
    const method = props.prediction?.methods[props.method] ?? null;
    if (!plane) annotations = null;
    else if (view === 'slot') annotations = slotAnnotations(build, fret, plane.atMm, method, units, lifted);
    else if (view === 'fret') annotations = fretAnnotations(build, fret, units, lifted);
    else annotations = endAnnotations(build, fret, units, lifted);
    model.setShows({ strings: props.shows.strings && plane === null });
    model.setPalette(props.palette);
    ground.set(props.palette.ground);
    mark();
  };
  apply();
  model.setLine(props.lineSource.read(), liftNow());
  const director = createDirector(home(), invalidate);

  return {
    director,
    model,
    section,
    root,
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
      mark();
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
      const plane = section.plane();
      if (plane && ink) model.materials.setHatch(hatchMm(director.orbit(), ink.height));
      gl.render(scene, camera);
      if (ink) {
        ink.context.clearRect(0, 0, ink.width, ink.height);
        const inFront = plane !== null && (plane.axis === 'x' ? camera.position.x : camera.position.z) > plane.atMm;
        if (inFront) {
          const projector = createProjector(camera, ink.width, ink.height, model.reader);
          drawOutlines(ink, projector, section.outlines());
          if (annotations && !travelling) drawAnnotations(ink, projector, annotations);
          const limit = section.stressLimitMPa();
          if (limit !== null) drawStressKey(ink, limit);
        }
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
      section.dispose();
      model.dispose();
      grain.dispose();
    },
  };
}
