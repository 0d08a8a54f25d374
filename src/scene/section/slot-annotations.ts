/** The numbers on the cut across a slot. All are the library's: build, slot, seat and prediction. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { seatAt } from '../../neck/kerf.ts';
import { slots, type Slot } from '../../fretwork/slots.ts';
import { studShape } from '../../geometry/tang.ts';
import { surfaceHeightMm } from '../../geometry/surface.ts';
import type { MethodPrediction } from '../../mechanics/prediction-types.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import type { Annotations, Callout, Distance, Point3 } from './annotations.ts';

type Item = Distance | Callout;

/** The cut that is written on. */
interface SlotCut {
  readonly build: Build;
  readonly slot: Slot;
  readonly seat: ReturnType<typeof seatAt>;
  readonly units: UnitSystem;
  /** From the middle of the slot at the surface of the board, mm. */
  readonly at: (x: number, y: number) => Point3;
  readonly text: (key: QuantityKey, value: number) => string;
  /** How far from the middle lengths of the height are written, clear of crown and chamfer, mm. */
  readonly asideMm: number;
}

const distance = (from: Point3, to: Point3, beside: readonly [number, number], text: string): Distance => ({
  kind: 'distance',
  from,
  to,
  beside: [beside[0], beside[1], 0],
  text,
});

const callout = (margin: Callout['margin'], at: Point3, text: string): Callout => ({
  kind: 'callout',
  at,
  margin,
  text,
});

const minor = (item: Item): Item => ({ ...item, minor: true });

/** The slot in the board. */
function ofSlot({ build, slot, seat, at, text, asideMm }: SlotCut): Item[] {
  const words = SCENE_WORDS.section;
  const half = seat.kerfMm / 2;
  const { depthMm, leftAtCentreMm } = slot;
  const { boardThicknessMm, chamferMm } = build;
  const items = [
    distance(at(-half, 0), at(-half, -depthMm), [half - asideMm, 0], words.slotDepth(text('slotDepthMm', depthMm))),
    distance(
      at(-half, -depthMm),
      at(-half, -boardThicknessMm),
      [half - asideMm, 0],
      words.boardLeft(text('boardLeftCentreMm', leftAtCentreMm)),
    ),
    minor(
      distance(
        at(half, 0),
        at(half, -boardThicknessMm),
        [asideMm + 1.3 - half, 0],
        words.boardThickness(text('boardThicknessMm', boardThicknessMm)),
      ),
    ),
    distance(at(-half, -depthMm), at(half, -depthMm), [0, -0.45], words.kerf(text('kerfMm', seat.kerfMm))),
  ];
  if (chamferMm > 0) {
    const edge = at(-half - chamferMm / 2, -chamferMm / 2);
    items.push(minor(callout('left', edge, words.chamfer(text('chamferMm', chamferMm)))));
  }
  return items;
}

/** The wire that is seated in it. @param studY middle of a stud's height */
function ofWire({ build, seat, at, text, asideMm }: SlotCut, studY: number): Item[] {
  const words = SCENE_WORDS.section;
  const { crownWidthMm, crownHeightMm, tangDepthMm } = build;
  const crown = crownWidthMm / 2;
  return [
    distance(
      at(-crown, 0),
      at(crown, 0),
      [0, crownHeightMm + 0.35],
      words.crownWidth(text('crownWidthMm', crownWidthMm)),
    ),
    minor(
      distance(
        at(crown, 0),
        at(crown, crownHeightMm),
        [asideMm - crown, 0],
        words.crownHeight(text('crownHeightMm', crownHeightMm)),
      ),
    ),
    callout(
      'right',
      at(seat.tangWidthMm / 2, -tangDepthMm * 0.9),
      words.tang(text('tangWidthMm', seat.tangWidthMm), text('tangDepthMm', tangDepthMm)),
    ),
    callout('right', at(seat.studWidthMm / 2, studY), words.studs(text('studWidthMm', seat.studWidthMm))),
  ];
}

/** How far the studs bite, and with what force. */
function ofBite({ seat, at, text }: SlotCut, studY: number, fret: number, prediction: MethodPrediction | null): Item[] {
  const words = SCENE_WORDS.section;
  const half = seat.kerfMm / 2;
  const bite = prediction?.biteMm[fret - 1] ?? 0;
  if (bite <= 0) return [];
  const force = prediction?.wedgeForceN[fret - 1] ?? 0;
  return [
    callout('left', at(-half, studY), words.bite(text('studBiteMm', bite))),
    minor(callout('left', at(-half, studY * 1.25), words.wedge(text('wedgeForceN', force)))),
  ];
}

/** What fills the slot below the tang: glue, and air. */
function belowTang({ build, slot, seat, units, at }: SlotCut): Item[] {
  const words = SCENE_WORDS.section;
  const half = seat.kerfMm / 2;
  const items: Item[] = [];
  const glued = build.method !== 'press' && build.glueReachPercent > 0;
  const reach = (slot.depthMm * build.glueReachPercent) / 100;
  if (glued && reach > build.tangDepthMm) {
    items.push(callout('left', at(-half * 0.4, -(build.tangDepthMm + reach) / 2), words.glue));
  }
  const gapTop = glued ? Math.max(build.tangDepthMm, reach) : build.tangDepthMm;
  if (slot.depthMm - gapTop > 0.02) {
    const gap = formatQuantity(slot.depthMm - gapTop, 'mm', 2, units);
    items.push(callout('right', at(half * 0.4, -(gapTop + slot.depthMm) / 2), words.air(gap)));
  }
  return items;
}

/**
 * @param zMm the plane of the cut
 * @param prediction of the method in use; null while it is computed
 */
export function slotAnnotations(
  build: Build,
  fret: number,
  zMm: number,
  prediction: MethodPrediction | null,
  units: UnitSystem,
  lifted: boolean,
): Annotations {
  const slot = slots(build)[fret - 1];
  const seat = seatAt(build, fret);
  const { xMm } = slot;
  const surface = surfaceHeightMm(build, xMm, zMm);
  const cut: SlotCut = {
    build,
    slot,
    seat,
    units,
    at: (x, y) => [xMm + x, surface + y, zMm],
    text: (key, value) => textOf(key, value, units),
    asideMm: Math.max(build.crownWidthMm / 2, seat.kerfMm / 2 + build.chamferMm) + 0.55,
  };
  const stud = studShape(build, fret);
  const studY = -(stud.topMm + stud.bottomMm) / 2;
  const seated = () => [...ofWire(cut, studY), ...ofBite(cut, studY, fret, prediction), ...belowTang(cut)];
  return { anchorMm: xMm, items: [...ofSlot(cut), ...(lifted ? [] : seated())], narrowMargin: 'right' };
}
