/**
 * What holds each slot of a neck at its ends (slot-cell.ts). It is computed for the first slot, one in the middle and the last;
 * between them it runs as a parabola in the number of the slot, as it changes with the room between slots and their length.
 */
import { linearAt, type NeckWood, type SlotEnds, type WidthShears } from '../description.ts';
import { contactWeights } from './loads.ts';
import { nodeAt, type Mesh } from './mesh.ts';
import { inPlane } from './section.ts';
import { slotHold, type CellLayer, type CellMaterial, type SlotHold } from './slot-cell.ts';

/** The constants of a wood as a solid: C = S⁻¹ of the three strains, and the shears. */
function material(wood: NeckWood, shears: WidthShears): CellMaterial {
  const { modulusMPa: e, depthRatio, widthRatio, shearRatio, poisson, poissonWidth, poissonDepthWidth } = wood;
  const s11 = 1;
  const s22 = 1 / depthRatio;
  const s33 = 1 / widthRatio;
  const [s12, s13, s23] = [-poisson, -poissonWidth, -poissonDepthWidth / depthRatio];
  const det = s11 * (s22 * s33 - s23 * s23) - s12 * (s12 * s33 - s13 * s23) + s13 * (s12 * s23 - s13 * s22);
  const c = (value: number) => (e * value) / det;
  return {
    plane: inPlane(wood),
    solid: [c(s22 * s33 - s23 * s23), c(s13 * s23 - s12 * s33), c(s11 * s33 - s13 * s13), shearRatio * e],
    across: [c(s12 * s23 - s13 * s22), c(s12 * s13 - s11 * s23), c(s11 * s22 - s12 * s12)],
    shears: [shears.alongWidth * e, shears.depthWidth * e],
  };
}

/** Half the length that a single slot is given, mm. */
const LONE_MM = 20;

/** Half of what lies between a slot and its neighbours on average, mm. */
function halfPitchMm(fretXMm: readonly number[], slot: number): number {
  const from = fretXMm[slot - 1] ?? fretXMm[slot];
  const to = fretXMm[slot + 1] ?? fretXMm[slot];
  const gaps = Number(slot > 0) + Number(slot + 1 < fretXMm.length);
  return gaps === 0 ? LONE_MM : (to - from) / gaps / 2;
}

function holdAt(mesh: Mesh, slot: number, ends: SlotEnds): SlotHold {
  const { section, rows, slotRows, boardRows } = mesh;
  const { description } = section;
  const xMm = description.fretXMm[slot];
  const half = linearAt(description.widthMm, xMm) / 2;
  const bound = ends.lines.reduce((sum, { widthMm }) => sum + widthMm, 0);
  const layers: CellLayer[] = [{ toHalfMm: half - bound, material: material(description.board, ends.boardShears) }];
  for (const { widthMm, wood, shears } of ends.lines)
    layers.push({ toHalfMm: layers.at(-1)!.toHalfMm + widthMm, material: material(wood, shears) });
  const left = mesh.slotLeftColumn[slot];
  return slotHold({
    section,
    // Where its rows are: a hundredth off, the last of them may lie below the wood of a back that falls away.
    xMm: mesh.columnXMm[left],
    rowYMm: Float64Array.from({ length: rows + 1 }, (_, row) => mesh.nodeYMm[nodeAt(mesh, left, row)]),
    slotRows,
    boardRows,
    contact: contactWeights(mesh, slot),
    kerfMm: description.slot.kerfMm,
    halfPitchMm: halfPitchMm(description.fretXMm, slot),
    layers,
    slotHalfMm: half - ends.slotShortMm,
    tangHalfMm: half - ends.tangShortMm,
  });
}

/** One for each slot; undefined where every slot opens alike across the board. */
export function slotHolds(mesh: Mesh): readonly SlotHold[] | undefined {
  const { ends, fretXMm } = mesh.section.description;
  if (ends === undefined || fretXMm.length === 0) return undefined;
  const last = fretXMm.length - 1;
  if (last < 2) return fretXMm.map((_, slot) => holdAt(mesh, slot, ends));
  const middle = Math.round(last / 2);
  const known = [0, middle, last].map((slot) => holdAt(mesh, slot, ends));
  return fretXMm.map((_, slot) => {
    const shares = [
      ((slot - middle) * (slot - last)) / (middle * last),
      (slot * (slot - last)) / (middle * (middle - last)),
      (slot * (slot - middle)) / (last * (last - middle)),
    ];
    const between = (key: keyof SlotHold) => known.reduce((sum, hold, k) => sum + shares[k] * hold[key], 0);
    return { stripMm: Math.max(0, between('stripMm')), wedge: between('wedge'), ownMm: between('ownMm') };
  });
}
