/** Everything that stands in the picture and is not React's business: models, camera, overlay, and how one frame is drawn. */
import { Color, Group, type DataTexture, type PerspectiveCamera, type Scene, type WebGLRenderer } from 'three';
import type { Build } from '../neck/build.ts';
import { homeOf, shownFret, type Frame, type StandingNeck } from './camera/views.ts';
import { createDirector, type Director } from './camera/director.ts';
import { createComparedNecks } from './compared-necks.ts';
import { createGrainTexture } from './grain-texture.ts';
import { createNeckModel, type NeckModel } from './neck-model.ts';
import { drawForces } from './overlay/arrows.ts';
import { drawBowLabel } from './overlay/bow-label.ts';
import { drawFretCard, fretFacts } from './overlay/fret-card.ts';
import { drawGap } from './overlay/gap.ts';
import { drawFlatLine, drawNeckLabel } from './overlay/neck-labels.ts';
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
import type { PointedFret } from './pick.ts';
import { createStraightedge, gapUnder } from './straightedge-model.ts';
import type { ComparedNeck, NeckSceneProps, SceneStats } from './types.ts';

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
  hover(pointed: PointedFret | null): void;
  /** The neck and those that it is compared with, as they stand. */
  necks(): readonly StandingNeck[];
  fit(instant: boolean): void;
  /** Draws one frame. @returns true while another one is needed */
  draw(gl: WebGLRenderer, scene: Scene, camera: PerspectiveCamera, ink: Ink | null): boolean;
  props(): NeckSceneProps;
  frames(): number;
  stats(gl: WebGLRenderer): SceneStats;
  dispose(): void;
}

const HERE = [0, 0, 0] as const;
const NONE: readonly ComparedNeck[] = [];
const HATCH_PX = 6;

/** Distance of hatching lines that is about `HATCH_PX` on the screen, in steps of two so that it does not swim. */
function hatchMm({ distance, field }: Orbit, heightPx: number): number {
  const mmPerPx = (2 * distance * Math.tan(field / 2)) / Math.max(1, heightPx);
  return 2 ** Math.round(Math.log2(HATCH_PX * mmPerPx));
}

/** Did nothing change but the fret that is pointed at elsewhere (and who is told what)? */
function onlyPointing(before: NeckSceneProps, next: NeckSceneProps): boolean {
  const keys = new Set([...Object.keys(before), ...Object.keys(next)]) as Set<keyof NeckSceneProps>;
  for (const key of keys) {
    const told = typeof next[key] === 'function';
    if (before[key] !== next[key] && key !== 'hoveredFret' && !told) return false;
  }
  return true;
}

export function createStage(first: NeckSceneProps, invalidate: () => void): Stage {
  const grain: DataTexture = createGrainTexture();
  let props = first;
  const model = createNeckModel(grain, first.build);
  const section = createSectionModel(model);
  const root = new Group();
  const straightedge = createStraightedge(model.materials.strings);
  const compared = createComparedNecks(grain, invalidate);
  root.add(model.group, section.group, straightedge.object, compared.group);
  model.follow((reader) => straightedge.lay(props.build, reader));
  let annotations: Annotations | null = null;
  let lift = new Float64Array(first.build.fretCount);
  let hovered: PointedFret | null = null;
  let frames = 0;
  let frame: Frame = { width: 1200, height: 700 };
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
  const closeFret = (): number => shownFret(props.build, props.selectedFret);
  let shownLifted = false;
  const readLine = (): void => {
    const heights = liftNow();
    // On the rail the fret that a close view shows may come and go.
    if ((heights?.[closeFret() - 1] ?? 0) > 0 !== shownLifted) apply();
    model.setLine(props.lineSource.read(), heights);
    invalidate();
  };
  const necks = (): StandingNeck[] => [
    { build: props.build, reader: model.reader, offset: HERE },
    ...compared.list().map(({ model: other, offset }) => ({ build: other.build(), reader: other.reader, offset })),
  ];
  const home = (): Orbit => {
    const raised = liftNow()?.[closeFret() - 1] ?? 0;
    const seen = raised === Infinity ? 0 : raised;
    return homeOf(props.view, necks(), props.selectedFret, frame, seen);
  };
  /** The fret that is pointed at here or elsewhere; another neck may have it while this one is too short. */
  const pointedAt = (): number | null => hovered?.fret ?? props.hoveredFret ?? null;
  const pointedOn = (build: Build): number | null => {
    const fret = pointedAt();
    return fret !== null && fret <= build.fretCount ? fret : null;
  };
  /** In a cut view the selected fret is what is cut: it keeps the colour of its metal. */
  const mark = (): void => {
    const selected = section.plane() === null ? (props.selectedFret ?? -1) : -1;
    model.materials.setMarked(selected, pointedOn(props.build) ?? -1);
    for (const { model: other, neck } of compared.list()) other.materials.setMarked(-1, pointedOn(neck.build) ?? -1);
  };
  const drawPointed = (ink: Ink, camera: PerspectiveCamera): void => {
    const { build, prediction, method, units } = props;
    const other = hovered && compared.list()[hovered.neck - 1];
    const at = other
      ? { build: other.neck.build, prediction: other.neck.prediction, method: other.neck.build.method }
      : { build, prediction, method };
    const fret = pointedOn(at.build);
    if (fret === null) return;
    const [reader, offset] = other ? [other.model.reader, other.offset] : [model.reader, HERE];
    const projector = createProjector(camera, ink.width, ink.height, reader, offset);
    drawFretCard(ink, projector, at.build, fret, fretFacts(at.build, fret, at.prediction, at.method, units));
  };
  const apply = (): void => {
    const { build, view, units } = props;
    const fret = closeFret();
    const lifted = (liftNow()?.[fret - 1] ?? 0) > 0;
    shownLifted = lifted;
    section.setup({ build, view, fret, lifted, stress: props.stress ?? null });
    const plane = section.plane();
    const method = props.prediction?.methods[props.method] ?? null;
    if (!plane) annotations = null;
    else if (view === 'slot') annotations = slotAnnotations(build, fret, plane.atMm, method, units, lifted);
    else if (view === 'fret') annotations = fretAnnotations(build, fret, units, lifted);
    else annotations = endAnnotations(build, fret, units, lifted);
    const shows = { strings: props.shows.strings && plane === null, rod: props.shows.rod && plane === null };
    model.setShows(shows);
    compared.setNecks(props.compare ?? NONE);
    compared.arrange(build, view);
    compared.setLook(props.palette, shows, plane === null);
    straightedge.setBuild(build);
    straightedge.object.visible = props.shows.straightedge && plane === null;
    model.setPalette(props.palette);
    ground.set(props.palette.ground);
    mark();
  };
  /** What is written beside the whole neck. */
  const drawBeside = (ink: Ink, camera: PerspectiveCamera): void => {
    const { build, shows, prediction, method, units } = props;
    const projector = createProjector(camera, ink.width, ink.height, model.reader);
    const line = props.lineSource.read();
    if (shows.arrows && prediction && prediction.fretXMm.length === build.fretCount) {
      const fret = pointedOn(build) ?? shownFret(build, props.selectedFret);
      drawForces(ink, projector, { build, prediction, method, units, strung: shows.strings, liftMm: liftNow(), fret });
    }
    const others = compared.list();
    if (others.length > 0) {
      drawFlatLine(ink, projector, build);
      if (props.name) drawNeckLabel(ink, projector, props.name);
      for (const { model: other, neck, offset } of others) {
        const beside = createProjector(camera, ink.width, ink.height, other.reader, offset);
        drawFlatLine(ink, beside, neck.build);
        drawNeckLabel(ink, beside, neck.label);
      }
    }
    if (shows.straightedge) {
      drawGap(ink, projector, build, model.reader, gapUnder(build, line), straightedge.place(), units);
    }
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
    necks,
    frames: () => frames,
    readLine,
    setProps(next) {
      const before = props;
      props = next;
      if (onlyPointing(before, next)) {
        mark();
        invalidate();
        return;
      }
      const rebuilt = next.build !== before.build;
      if (rebuilt) model.setBuild(next.build);
      apply();
      readLine();
      const close = section.plane() !== null;
      const moved =
        next.view !== before.view ||
        (next.compare?.length ?? 0) !== (before.compare?.length ?? 0) ||
        (close &&
          (next.selectedFret !== before.selectedFret ||
            next.lift !== before.lift ||
            next.liftedFret !== before.liftedFret));
      if (moved) director.goHome(home(), next.reducedMotion);
      else if (rebuilt && director.isHome() && !director.isTravelling()) director.goHome(home(), true);
      invalidate();
    },
    hover(pointed) {
      if (pointed?.fret === hovered?.fret && pointed?.neck === hovered?.neck) return;
      hovered = pointed;
      mark();
      invalidate();
    },
    fit(instant) {
      director.goHome(home(), instant || props.reducedMotion);
    },
    draw(gl, scene, camera, ink) {
      const ratio = gl.getPixelRatio();
      const width = ink?.width ?? gl.domElement.width / ratio;
      const height = Math.max(1, ink?.height ?? gl.domElement.height / ratio);
      if (Math.abs(width - frame.width) > 0.5 || Math.abs(height - frame.height) > 0.5) {
        frame = { width, height };
        if (director.isHome()) director.goHome(home(), true);
      }
      const travelling = director.apply(camera, frame.width / frame.height, performance.now());
      scene.background = ground;
      for (const each of [model, ...compared.list().map(({ model: other }) => other)]) {
        each.bow();
        each.shadow.object.visible = camera.position.y > each.shadow.benchY();
      }
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
        if (plane === null) drawBeside(ink, camera);
        if (!travelling) drawPointed(ink, camera);
        drawBowLabel(ink, props.build, model.reader, props.lineSource.read().factor, plane !== null);
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
      straightedge.dispose();
      compared.dispose();
      model.dispose();
      grain.dispose();
    },
  };
}
