/** The numbers on the cut across a slot. All are the library's: build, slot, seat and prediction. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { seatAt } from '../../neck/kerf.ts';
import { slots } from '../../fretwork/slots.ts';
import { studShape } from '../../geometry/tang.ts';
import { surfaceHeightMm } from '../../geometry/surface.ts';
import type { MethodPrediction } from '../../mechanics/prediction-types.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import type { Annotations, Callout, Distance, Point3 } from './annotations.ts';

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
  const words = SCENE_WORDS.section;
  const slot = slots(build)[fret - 1];
  const seat = seatAt(build, fret);
  const surface = surfaceHeightMm(build, slot.xMm, zMm);
  const { xMm } = slot;
  const text = (key: QuantityKey, value: number): string => textOf(key, value, units);
  const at = (x: number, y: number): Point3 => [xMm + x, surface + y, zMm];
  const distance = (from: Point3, to: Point3, beside: readonly [number, number], text: string): Distance => ({
    kind: 'distance',
    from,
    to,
    beside: [beside[0], beside[1], 0],
    text,
  });
  const callout = (margin: Callout['margin'], place: Point3, text: string): Callout => ({
    kind: 'callout',
    at: place,
    margin,
    text,
  });
  const minor = (item: Distance | Callout): Distance | Callout => ({ ...item, minor: true });
  const half = seat.kerfMm / 2;
  const crown = build.crownWidthMm / 2;
  const aside = Math.max(crown, half + build.chamferMm) + 0.55;
  const left = build.boardThicknessMm - slot.depthMm;
  const items: (Distance | Callout)[] = [
    distance(
      at(-half, 0),
      at(-half, -slot.depthMm),
      [half - aside, 0],
      words.slotDepth(text('slotDepthMm', slot.depthMm)),
    ),
    distance(
      at(-half, -slot.depthMm),
      at(-half, -slot.depthMm - left),
      [half - aside, 0],
      words.boardLeft(text('boardLeftCentreMm', slot.leftAtCentreMm)),
    ),
    minor(
      distance(
        at(half, 0),
        at(half, -build.boardThicknessMm),
        [aside + 1.3 - half, 0],
        words.boardThickness(text('boardThicknessMm', build.boardThicknessMm)),
      ),
    ),
    distance(at(-half, -slot.depthMm), at(half, -slot.depthMm), [0, -0.45], words.kerf(text('kerfMm', seat.kerfMm))),
  ];
  if (build.chamferMm > 0) {
    items.push(
      minor(
        callout(
          'left',
          at(-half - build.chamferMm / 2, -build.chamferMm / 2),
          words.chamfer(text('chamferMm', build.chamferMm)),
        ),
      ),
    );
  }
  if (!lifted) {
    const stud = studShape(build, fret);
    const studY = -(stud.topMm + stud.bottomMm) / 2;
    items.push(
      distance(
        at(-crown, 0),
        at(crown, 0),
        [0, build.crownHeightMm + 0.35],
        words.crownWidth(text('crownWidthMm', build.crownWidthMm)),
      ),
      minor(
        distance(
          at(crown, 0),
          at(crown, build.crownHeightMm),
          [aside - crown, 0],
          words.crownHeight(text('crownHeightMm', build.crownHeightMm)),
        ),
      ),
      callout(
        'right',
        at(seat.tangWidthMm / 2, -build.tangDepthMm * 0.9),
        words.tang(text('tangWidthMm', seat.tangWidthMm), text('tangDepthMm', build.tangDepthMm)),
      ),
      callout('right', at(seat.studWidthMm / 2, studY), words.studs(text('studWidthMm', seat.studWidthMm))),
    );
    const bite = prediction?.biteMm[fret - 1] ?? 0;
    if (bite > 0) {
      items.push(callout('left', at(-half, studY), words.bite(text('studBiteMm', bite))));
      const force = prediction?.wedgeForceN[fret - 1] ?? 0;
      items.push(minor(callout('left', at(-half, studY * 1.25), words.wedge(text('wedgeForceN', force)))));
    }
    const glued = build.method !== 'press' && build.glueReachPercent > 0;
    const reach = (slot.depthMm * build.glueReachPercent) / 100;
    if (glued && reach > build.tangDepthMm) {
      items.push(callout('left', at(-half * 0.4, -(build.tangDepthMm + reach) / 2), words.glue));
    }
    const gapTop = glued ? Math.max(build.tangDepthMm, reach) : build.tangDepthMm;
    if (slot.depthMm - gapTop > 0.02) {
      items.push(
        callout(
          'right',
          at(half * 0.4, -(gapTop + slot.depthMm) / 2),
          words.air(formatQuantity(slot.depthMm - gapTop, 'mm', 2, units)),
        ),
      );
    }
  }
  return { anchorMm: xMm, items, narrowMargin: 'right' };
}
