/** The neck cut open: which plane, the cut faces with their outlines, and the selected fret with its studs. */
import { BufferAttribute, Group, Vector4 } from 'three';
import { bindingInUse, slotAndTang, type Build } from '../../neck/build.ts';
import { metalById } from '../../neck/metals.ts';
import { fretPositionMm, fretPositionsMm } from '../../neck/neck-shape.ts';
import { arcPoint } from '../../geometry/arc.ts';
import { fretEnd } from '../../fretwork/ends.ts';
import type { BowReader } from '../../geometry/bend.ts';
import { bindingMeshes } from '../../geometry/board.ts';
import { cutFace, type CutFace, type CutPiece } from '../../geometry/cut-face.ts';
import type { CutLoop, CutPlane } from '../../geometry/cut.ts';
import { crownMesh, tangMesh, type FretState } from '../../geometry/frets.ts';
import { mergeMeshes } from '../../geometry/merge.ts';
import { channelMesh, rodPieces } from '../../geometry/rod.ts';
import { createSurface } from '../../geometry/surface.ts';
import type { StressField } from '../../mechanics/elements/stress.ts';
import type { NeckModel } from '../neck-model.ts';
import { createPart, type Part } from '../part.ts';
import type { SceneView } from '../types.ts';
import { glueFace } from './glue-face.ts';
import { stressFace } from './stress-face.ts';

export interface SectionSetup {
  readonly build: Build;
  readonly view: SceneView;
  readonly fret: number;
  /** Is the selected fret out of its slot? */
  readonly lifted: boolean;
  readonly stress: StressField | null;
}

/** Outlines of one kind of cut face, as drawn: positions of all its points, and where each outline is among them. */
export interface DrawnOutlines {
  readonly positions: Float32Array;
  readonly outlines: CutFace['outlines'];
  /** Wire is drawn with a stronger line. */
  readonly strong: boolean;
}

export interface SectionModel {
  readonly group: Group;
  /** Takes what to cut; new faces are bowed with the next line of the model. */
  setup(setup: SectionSetup): void;
  /** The plane now; null when nothing is cut. */
  plane(): CutPlane | null;
  outlines(): readonly DrawnOutlines[];
  /** Ends of the stress scale, MPa; null when no stress is shown. */
  stressLimitMPa(): number | null;
  dispose(): void;
}

/** The plane that a view cuts along; null = it cuts nothing. */
export function planeOf(view: SceneView, build: Build, fret: number): CutPlane | null {
  switch (view) {
    case 'slot': {
      // Through the middle of the stud next to the centre line, so that the cut shows it biting.
      const end = fretEnd(build, fret);
      return { axis: 'z', atMm: arcPoint(end.radiusMm, build.studPitchMm / 2, 0).z };
    }
    case 'fret':
    case 'end':
      return { axis: 'x', atMm: fretPositionMm(build.scaleLengthMm, fret) };
    case 'neck':
    case 'edge':
    case 'back':
      return null;
  }
}

/** The facets of a crown's underside leave the arc by less than this. */
const ON_JOINT_MM = 0.03;

type FaceId = 'neck' | 'board' | 'plain' | 'hollow' | 'rod' | 'glue' | 'stress' | 'wire';
/** Faces that are cut out of solids; glue and stress are made for the plane. */
const CUT_FACES = ['neck', 'board', 'plain', 'hollow', 'rod', 'wire'] as const;

/** The empty channel, into which one looks: its far wall, in the shade. */
const HOLLOW_COLOUR = '#8a755a';

export function createSectionModel(model: NeckModel): SectionModel {
  const { materials } = model;
  const group = new Group();
  group.matrixAutoUpdate = false;
  const faces: Record<FaceId, Part> = {
    neck: createPart(materials.faceNeck, 1),
    board: createPart(materials.faceBoard, 1),
    plain: createPart(materials.facePlain, 2),
    hollow: createPart(materials.faceHollow, 2),
    rod: createPart(materials.faceRod, 3),
    stress: createPart(materials.faceStress, 3),
    glue: createPart(materials.faceGlue, 4),
    wire: createPart(materials.faceWire, 5),
  };
  const fretPart = createPart(materials.wire);
  group.add(fretPart.object, ...Object.values(faces).map(({ object }) => object));
  let plane: CutPlane | null = null;
  let drawn: { face: Part; outlines: CutFace['outlines']; strong: boolean }[] = [];
  let limit: number | null = null;
  let before: SectionSetup | null = null;
  let glueLift = new Float64Array(0);
  let faceLift = new Float64Array(0);

  const bend = (reader: BowReader, lift: ArrayLike<number> | undefined): void => {
    if (!plane) return;
    const count = model.build().fretCount;
    if (glueLift.length !== count) {
      glueLift = new Float64Array(count);
      faceLift = new Float64Array(count);
    }
    for (let i = 0; i < count; i++) {
      const raised = lift?.[i] ?? 0;
      faceLift[i] = raised;
      glueLift[i] = raised > 0 ? Infinity : 0;
    }
    for (const id of ['neck', 'board', 'plain', 'hollow', 'rod'] as const) faces[id].bend(reader);
    if (limit !== null) faces.stress.bend(reader);
    faces.glue.bend(reader, glueLift);
    faces.wire.bend(reader, faceLift);
    fretPart.bend(reader, faceLift);
  };

  const clear = (): void => {
    plane = null;
    drawn = [];
    limit = null;
    group.visible = false;
    model.setCut([]);
    model.setElsewhere(null);
  };

  const make = ({ build, view, fret, lifted, stress }: SectionSetup): void => {
    const cut = planeOf(view, build, fret);
    if (!cut) {
      clear();
      return;
    }
    plane = cut;
    const surface = createSurface(build);
    const frets = fretPositionsMm(build.scaleLengthMm, build.fretCount);
    const numbers = new Map(frets.map((x, index) => [x, index + 1]));
    const fretOfAnchor = (anchor: number): number => numbers.get(anchor) ?? 0;
    const state: FretState = lifted ? 'loose' : 'cut';
    const metal = metalById(build.wireMetal).colour;
    const pair = (['crown', 'tang'] as const).map((part) =>
      (part === 'crown' ? crownMesh : tangMesh)(build, fretEnd(build, fret), state),
    );
    const selected = mergeMeshes(pair);
    const numberOf = (loop: CutLoop): number => fretOfAnchor(loop.anchorsMm[0]);
    // Crown and tang are one piece of wire: no line between them.
    const joint = (loop: CutLoop) => {
      const end = fretEnd(build, numberOf(loop));
      const half = slotAndTang(build, end.fret).tangWidthMm / 2;
      const [from, to] = cut.axis === 'z' ? [end.xMm - half, end.xMm + half] : [-end.tangHalfMm, end.tangHalfMm];
      const on = (_x: number, y: number, z: number): boolean =>
        Math.abs(y - surface.heightMm(end.radiusMm, z)) < ON_JOINT_MM;
      return { on, from, to };
    };
    const wires: CutPiece[] = pair.map((mesh) => ({ mesh, colour: metal, joint }));
    const seated = cut.axis === 'z' ? model.part('frets').shape() : null;
    if (seated) {
      wires.push({ mesh: seated, colour: metal, joint, skip: (loop) => numberOf(loop) === fret });
    }
    const colours = bindingInUse(build).flatMap(({ colour }) => [colour, colour]);
    const straight = (id: 'neck' | 'board' | 'nut') => {
      const mesh = model.part(id).shape();
      return mesh ? [{ mesh }] : [];
    };
    const nut = cut.axis === 'z' ? straight('nut').map(({ mesh }) => ({ mesh, colour: '#efe8d6' })) : [];
    const made: Record<(typeof CUT_FACES)[number], CutFace> = {
      neck: cutFace(straight('neck'), cut),
      board: cutFace(straight('board'), cut),
      plain: cutFace([...bindingMeshes(build).map((mesh, i) => ({ mesh, colour: colours[i] })), ...nut], cut),
      hollow: cutFace([{ mesh: channelMesh(build), colour: HOLLOW_COLOUR }], cut),
      rod: cutFace(rodPieces(build), cut),
      wire: cutFace(wires, cut, fretOfAnchor),
    };
    for (const id of CUT_FACES) faces[id].setShape(made[id].mesh);
    faces.glue.setShape(glueFace(build, cut));
    limit = null;
    faces.stress.object.visible = false;
    if (stress && view === 'slot' && stress.fret === fret) {
      const face = stressFace(stress, cut.atMm);
      faces.stress.setShape(face.mesh);
      faces.stress.object.geometry.setAttribute('value', new BufferAttribute(face.valuesMPa, 1));
      faces.stress.object.visible = true;
      limit = face.limitMPa;
      materials.setStressLimit(limit);
    }
    fretPart.setShape(selected);
    drawn = CUT_FACES.map((id) => ({ face: faces[id], outlines: made[id].outlines, strong: id === 'wire' }));
    group.visible = true;
    model.setCut([cut.axis === 'x' ? new Vector4(1, 0, 0, cut.atMm) : new Vector4(0, 0, 1, cut.atMm)]);
    model.setElsewhere(fret);
  };

  clear();
  model.follow(bend);
  return {
    group,
    setup(next) {
      const same =
        before !== null &&
        before.build === next.build &&
        before.view === next.view &&
        before.fret === next.fret &&
        before.lifted === next.lifted &&
        before.stress === next.stress;
      before = next;
      if (!same) make(next);
    },
    plane: () => plane,
    stressLimitMPa: () => limit,
    outlines: () =>
      drawn.flatMap(({ face, outlines, strong }) => {
        const positions = face.bender()?.positions;
        return positions ? [{ positions, outlines, strong }] : [];
      }),
    dispose() {
      for (const face of Object.values(faces)) face.dispose();
      fretPart.dispose();
    },
  };
}
