/** Everything that stands in the picture and is not React's business: models, camera, overlay, and how one frame is drawn. */
import { Color, Group, Vector3, type DataTexture, type PerspectiveCamera, type Scene, type WebGLRenderer } from 'three';
import { homeOf, neckPoints, type Frame, type StandingNeck } from './camera/views.ts';
import { createDirector, type Director } from './camera/director.ts';
import { createComparedNecks } from './compared-necks.ts';
import { createGrainTexture } from './grain-texture.ts';
import { createNeckModel, type NeckModel } from './neck-model.ts';
import { drawBeside, drawOnCut } from './overlay/beside.ts';
import { drawBowLabel, freeCorner } from './overlay/bow-label.ts';
import { createPointing } from './overlay/pointing.ts';
import { closeFret, type Standing } from './overlay/standing.ts';
import type { Ink, Place } from './overlay/ink.ts';
import type { CutPlane } from '../geometry/cut.ts';
import type { Annotations } from './section/annotations.ts';
import { endAnnotations, fretAnnotations } from './section/fret-annotations.ts';
import { createSectionModel, type SectionModel } from './section/section-model.ts';
import { slotAnnotations } from './section/slot-annotations.ts';
import type { Orbit } from './camera/orbit.ts';
import type { PointedFret } from './pick.ts';
import { createStraightedge } from './straightedge-model.ts';
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

/** Heights of all frets: what the line says, and what the props lift on top. Undefined = all are seated. */
function createLifter() {
  let lift = new Float64Array(0);
  return ({ build, lift: share, liftedFret, lineSource }: NeckSceneProps): Float64Array | undefined => {
    const line = lineSource.read();
    if (!line.liftMm && (share <= 0 || liftedFret === null)) return undefined;
    if (lift.length !== build.fretCount) lift = new Float64Array(build.fretCount);
    const raised = share * (build.tangDepthMm + LIFT_CLEAR_MM);
    for (let index = 0; index < build.fretCount; index++) {
      const chosen = liftedFret === 'all' || liftedFret === index + 1;
      lift[index] = Math.max(line.liftMm?.[index] ?? 0, chosen ? raised : 0);
    }
    return lift;
  };
}

/** The numbers on a cut; null where nothing is cut. */
function annotationsOf(props: NeckSceneProps, plane: CutPlane | null, lifted: boolean): Annotations | null {
  if (!plane) return null;
  const { build, view, units } = props;
  const fret = closeFret(props);
  const method = props.prediction?.methods[props.method] ?? null;
  if (view === 'slot') return slotAnnotations(build, fret, plane.atMm, method, units, lifted);
  return view === 'fret' ? fretAnnotations(build, fret, units, lifted) : endAnnotations(build, fret, units, lifted);
}

/** Has all that stands look as the props say, but for the cut. */
function dress({ model, compared, straightedge }: Standing, props: NeckSceneProps, isWhole: boolean): void {
  const { build, view, palette } = props;
  const shows = { strings: props.shows.strings && isWhole, rod: props.shows.rod && isWhole };
  model.setShows(shows);
  compared.setNecks(props.compare ?? NONE);
  compared.arrange(build, view);
  compared.setLook(palette, shows, isWhole);
  straightedge.setBuild(build);
  straightedge.object.visible = props.shows.straightedge && isWhole;
  model.setPalette(palette);
}

/** Do these props show something else, to which the camera goes? */
function showsElse(before: NeckSceneProps, next: NeckSceneProps, isClose: boolean): boolean {
  if (next.view !== before.view || (next.compare?.length ?? 0) !== (before.compare?.length ?? 0)) return true;
  const otherFret = next.selectedFret !== before.selectedFret;
  return isClose && (otherFret || next.lift !== before.lift || next.liftedFret !== before.liftedFret);
}

function statsOf(
  { render, memory, programs }: WebGLRenderer['info'],
  { times }: NeckModel,
  frames: number,
): SceneStats {
  return {
    frames,
    triangles: render.triangles,
    drawCalls: render.calls,
    geometries: memory.geometries,
    textures: memory.textures,
    programs: programs?.length ?? 0,
    bendMs: times.bendMs,
    rebuildMs: times.rebuildMs,
  };
}

const STEPS_AROUND = 24;
const point = new Vector3();

/** Where all around the necks is in the picture, px. */
function placesOf(necks: readonly StandingNeck[], camera: PerspectiveCamera, { width, height }: Ink): Place[] {
  const points = neckPoints(necks, 6, STEPS_AROUND);
  return Array.from({ length: points.length / 3 }, (_, i) => {
    point.fromArray(points, 3 * i).project(camera);
    return [((point.x + 1) / 2) * width, ((1 - point.y) / 2) * height];
  });
}

/** What the props show, drawn and written: the models as they stand, and the numbers on a cut. */
function createShowing(standing: Standing, props: () => NeckSceneProps) {
  const { model, section, compared } = standing;
  const lifted = createLifter();
  const pointing = createPointing(standing);
  const ground = new Color(props().palette.ground);
  let annotations: Annotations | null = null;
  let shownLifted = false;

  const liftNow = () => lifted(props());
  const liftOfClose = (): number => liftNow()?.[closeFret(props()) - 1] ?? 0;

  const apply = (): void => {
    const now = props();
    shownLifted = liftOfClose() > 0;
    const { build, view } = now;
    section.setup({ build, view, fret: closeFret(now), lifted: shownLifted, stress: now.stress ?? null });
    const plane = section.plane();
    annotations = annotationsOf(now, plane, shownLifted);
    dress(standing, now, plane === null);
    ground.set(now.palette.ground);
    pointing.mark(now);
  };

  return {
    pointing,
    ground,
    apply,
    takeLine(): void {
      model.setLine(props().lineSource.read(), liftNow());
    },
    readLine(): void {
      // On the rail the fret that a close view shows may come and go.
      if (liftOfClose() > 0 !== shownLifted) apply();
      this.takeLine();
    },
    necks: (): StandingNeck[] => [
      { build: props().build, reader: model.reader, offset: HERE },
      ...compared.list().map(({ model: other, offset }) => ({ build: other.build(), reader: other.reader, offset })),
    ],
    home(frame: Frame): Orbit {
      const raised = liftOfClose();
      return homeOf(props().view, this.necks(), props().selectedFret, frame, raised === Infinity ? 0 : raised);
    },
    drawOver(ink: Ink, camera: PerspectiveCamera, travelling: boolean): void {
      const now = props();
      const plane = section.plane();
      ink.context.clearRect(0, 0, ink.width, ink.height);
      if (plane) drawOnCut(standing, plane, { ink, camera }, travelling ? null : annotations);
      else {
        const pointed = pointing.on(now.build, now);
        drawBeside(standing, now, { ink, camera }, { pointed, liftMm: liftNow() });
      }
      if (!travelling) pointing.draw(now, ink, camera);
      const corner = plane ? 'bottom-left' : freeCorner(ink, placesOf(this.necks(), camera, ink));
      const { factor } = now.lineSource.read();
      drawBowLabel(ink, { build: now.build, reader: model.reader, factor, corner, isCut: plane !== null });
    },
  };
}

/** Size of the picture in page pixels. */
function frameOf(gl: WebGLRenderer, ink: Ink | null): Frame {
  const ratio = gl.getPixelRatio();
  return {
    width: ink?.width ?? gl.domElement.width / ratio,
    height: Math.max(1, ink?.height ?? gl.domElement.height / ratio),
  };
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
  const showing = createShowing({ model, section, compared, straightedge }, () => props);
  let frames = 0;
  let frame: Frame = { width: 1200, height: 700 };
  showing.apply();
  showing.takeLine();
  const director = createDirector(showing.home(frame), invalidate);

  const readLine = (): void => {
    showing.readLine();
    invalidate();
  };

  return {
    director,
    model,
    section,
    root,
    props: () => props,
    necks: showing.necks,
    frames: () => frames,
    readLine,
    setProps(next) {
      const before = props;
      props = next;
      if (onlyPointing(before, next)) {
        showing.pointing.mark(props);
        invalidate();
        return;
      }
      const rebuilt = next.build !== before.build;
      if (rebuilt) model.setBuild(next.build);
      showing.apply();
      readLine();
      const home = () => showing.home(frame);
      if (showsElse(before, next, section.plane() !== null)) director.goHome(home(), next.reducedMotion);
      else if (rebuilt && director.isHome() && !director.isTravelling()) director.goHome(home(), true);
    },
    hover(pointed) {
      if (!showing.pointing.hover(pointed)) return;
      showing.pointing.mark(props);
      invalidate();
    },
    fit(instant) {
      director.goHome(showing.home(frame), instant || props.reducedMotion);
    },
    draw(gl, scene, camera, ink) {
      const { width, height } = frameOf(gl, ink);
      if (Math.abs(width - frame.width) > 0.5 || Math.abs(height - frame.height) > 0.5) {
        frame = { width, height };
        if (director.isHome()) director.goHome(showing.home(frame), true);
      }
      const travelling = director.apply(camera, frame.width / frame.height, performance.now());
      scene.background = showing.ground;
      for (const each of [model, ...compared.list().map(({ model: other }) => other)]) {
        each.bow();
        each.shadow.object.visible = camera.position.y > each.shadow.benchY();
      }
      if (section.plane() && ink) model.materials.setHatch(hatchMm(director.orbit(), ink.height));
      gl.render(scene, camera);
      if (ink) showing.drawOver(ink, camera, travelling);
      frames += 1;
      return travelling || (section.plane() === null && (props.swing?.moves ?? false));
    },
    stats: (gl) => statsOf(gl.info, model, frames),
    dispose() {
      for (const each of [section, straightedge, compared, model, grain]) each.dispose();
    },
  };
}
