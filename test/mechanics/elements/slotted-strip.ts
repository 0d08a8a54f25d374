/**
 * Extra rotation of a strip in bending from one slot across its edge, by the library's elements on a mesh graded towards
 * the tip of the slot. Half the strip by symmetry: the ligament below the slot stands still along x.
 */
import { edgeTraction, planeModel, type Stiffness } from './plane-model.ts';

export interface SlottedStrip {
  /** Height h. */
  readonly heightMm: number;
  /** Depth of the slot a; 0 for none. */
  readonly slotDepthMm: number;
  /** 0 is a crack. */
  readonly kerfMm: number;
  readonly stiffness: Stiffness;
  /** Longitudinal modulus, MPa. */
  readonly modulusMPa: number;
  /** Edge of the elements at the tip. */
  readonly finestMm: number;
  readonly halfLengthMm?: number;
}

const GROWTH = 1.15;

/** From `from` towards `to` in steps that grow from the finest; ends on `to`. */
function graded(from: number, to: number, finest: number): number[] {
  const length = Math.abs(to - from);
  const steps: number[] = [];
  let reached = 0;
  for (let step = finest; reached < length - 1e-12; step *= GROWTH) {
    reached += step;
    steps.push(step);
  }
  const scale = length / reached;
  let at = from;
  return steps.map((step) => (at += Math.sign(to - from) * step * scale));
}

/** Rotation of one end against the other per moment. */
function rotationPerMoment(strip: SlottedStrip): number {
  const { heightMm: h, slotDepthMm: a, kerfMm, finestMm, halfLengthMm = 6 * h } = strip;
  const half = kerfMm / 2;
  const inKerf = half > 0 ? Math.max(1, Math.ceil(half / finestMm)) : 0;
  const xs = [
    ...Array.from({ length: inKerf }, (_, k) => (half * k) / inKerf),
    half,
    ...graded(half, halfLengthMm, finestMm),
  ];
  const ys =
    a > 0 ? [...graded(a, 0, finestMm).toReversed(), a, ...graded(a, h, finestMm)] : [0, ...graded(0, h, h / 8)];
  const tip = ys.indexOf(a);
  const model = planeModel({
    xs,
    ys,
    stiffness: () => strip.stiffness,
    present: (column, row) => column >= inKerf || row >= tip,
  });
  const held = new Map<number, number>();
  for (let row = a > 0 ? tip : 0; row < ys.length; row += 1) held.set(model.node(0, row).dof, 0);
  held.set(model.node(0, ys.length - 1).dof + 1, 0);
  // Unit moment on the end: opens the slot, which lies at y = 0.
  const forces = edgeTraction(model, xs.length - 1, ys, (y) => (12 * (h / 2 - y)) / h ** 3);
  const u = model.solve(forces, held);
  return 2 * forces.reduce((work, force, dof) => work + force * u[dof], 0);
}

/** θ·E·b·h²/M of the slot alone, plane stress. */
export function slotRotation(strip: SlottedStrip): number {
  const whole = (2 * (strip.halfLengthMm ?? 6 * strip.heightMm) * 12) / (strip.modulusMPa * strip.heightMm ** 3);
  return (rotationPerMoment(strip) - whole) * strip.modulusMPa * strip.heightMm ** 2;
}
