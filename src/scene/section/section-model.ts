/** The neck cut open: which plane, the cut faces with their outlines, and the selected fret with its studs. */
import { BufferAttribute, Group, Vector4 } from 'three';
import { slotAndTang, type Build } from '../../neck/build.ts';
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
import type { Mesh } from '../../geometry/mesh.ts';
import { channelMesh, rodPieces } from '../../geometry/rod.ts';
import { createSurface } from '../../geometry/surface.ts';
import type { StressField } from '../../mechanics/elements/stress.ts';
import type { Materials } from '../materials.ts';
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

function createFaces(materials: Materials): Record<FaceId, Part> {
  return {
    neck: createPart(materials.faceNeck, 1),
    board: createPart(materials.faceBoard, 1),
    plain: createPart(materials.facePlain, 2),
    hollow: createPart(materials.faceHollow, 2),
    rod: createPart(materials.faceRod, 3),
    stress: createPart(materials.faceStress, 3),
    glue: createPart(materials.faceGlue, 4),
    wire: createPart(materials.faceWire, 5),
  };
}

/** Bows the faces along; those of the wire are lifted with their fret. */
function createFaceBender(faces: Readonly<Record<FaceId, Part>>, fretPart: Part) {
  let glueLift = new Float64Array(0);
  let faceLift = new Float64Array(0);
  return (reader: BowReader, lift: ArrayLike<number> | undefined, fretCount: number, stressed: boolean): void => {
    if (glueLift.length !== fretCount) {
      glueLift = new Float64Array(fretCount);
      faceLift = new Float64Array(fretCount);
    }
    for (let i = 0; i < fretCount; i++) {
      const raised = lift?.[i] ?? 0;
      faceLift[i] = raised;
      glueLift[i] = raised > 0 ? Infinity : 0;
    }
    for (const id of ['neck', 'board', 'plain', 'hollow', 'rod'] as const) faces[id].bend(reader);
    if (stressed) faces.stress.bend(reader);
    faces.glue.bend(reader, glueLift);
    faces.wire.bend(reader, faceLift);
    fretPart.bend(reader, faceLift);
  };
}

/** Crown and tang of the fret that is cut. */
const fretPieces = (build: Build, fret: number, state: FretState): readonly Mesh[] => [
  crownMesh(build, fretEnd(build, fret), state),
  tangMesh(build, fretEnd(build, fret), state),
];

/**
 * The face of every wire that the plane goes through.
 * @param pieces of the selected fret
 * @param seated shape of the frets in their slots
 */
function wireFace(build: Build, fret: number, cut: CutPlane, pieces: readonly Mesh[], seated: Mesh | null): CutFace {
  const surface = createSurface(build);
  const frets = fretPositionsMm(build.scaleLengthMm, build.fretCount);
  const numbers = new Map(frets.map((x, index) => [x, index + 1]));
  const fretOfAnchor = (anchor: number): number => numbers.get(anchor) ?? 0;
  const metal = metalById(build.wireMetal).colour;
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
  const wires: CutPiece[] = pieces.map((mesh) => ({ mesh, colour: metal, joint }));
  if (seated) wires.push({ mesh: seated, colour: metal, joint, skip: (loop) => numberOf(loop) === fret });
  return cutFace(wires, cut, fretOfAnchor);
}

type CutFaces = Record<(typeof CUT_FACES)[number], CutFace>;

/** The faces that the plane leaves of everything solid. */
function facesAlong(cut: CutPlane, model: NeckModel, build: Build, wire: CutFace): CutFaces {
  const straight = (id: 'neck' | 'board' | 'nut') => {
    const mesh = model.part(id).shape();
    return mesh ? [{ mesh }] : [];
  };
  const nut = cut.axis === 'z' ? straight('nut').map(({ mesh }) => ({ mesh, colour: '#efe8d6' })) : [];
  return {
    neck: cutFace(straight('neck'), cut),
    board: cutFace(straight('board'), cut),
    plain: cutFace([...bindingMeshes(build), ...nut], cut),
    hollow: cutFace([{ mesh: channelMesh(build), colour: HOLLOW_COLOUR }], cut),
    rod: cutFace(rodPieces(build), cut),
    wire,
  };
}

const sameSetup = (a: SectionSetup, b: SectionSetup): boolean =>
  a.build === b.build && a.view === b.view && a.fret === b.fret && a.lifted === b.lifted && a.stress === b.stress;

export function createSectionModel(model: NeckModel): SectionModel {
  const { materials } = model;
  const group = new Group();
  group.matrixAutoUpdate = false;
  const faces = createFaces(materials);
  const fretPart = createPart(materials.wire);
  group.add(fretPart.object, ...Object.values(faces).map(({ object }) => object));
  let plane: CutPlane | null = null;
  let drawn: { face: Part; outlines: CutFace['outlines']; strong: boolean }[] = [];
  let limit: number | null = null;
  let before: SectionSetup | null = null;
  const bend = createFaceBender(faces, fretPart);

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
    const pieces = fretPieces(build, fret, lifted ? 'loose' : 'cut');
    const seated = cut.axis === 'z' ? model.part('frets').shape() : null;
    const made = facesAlong(cut, model, build, wireFace(build, fret, cut, pieces, seated));
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
    fretPart.setShape(mergeMeshes(pieces));
    drawn = CUT_FACES.map((id) => ({ face: faces[id], outlines: made[id].outlines, strong: id === 'wire' }));
    group.visible = true;
    model.setCut([cut.axis === 'x' ? new Vector4(1, 0, 0, cut.atMm) : new Vector4(0, 0, 1, cut.atMm)]);
    model.setElsewhere(fret);
  };

  clear();
  model.follow((reader, lift) => plane && bend(reader, lift, model.build().fretCount, limit !== null));
  return {
    group,
    setup(next) {
      const isSame = before !== null && sameSetup(before, next);
      before = next;
      if (!isSame) make(next);
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
