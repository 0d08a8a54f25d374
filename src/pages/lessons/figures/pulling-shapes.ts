/**
 * Shapes of a slot with its fret, cut along the neck; mm, x along the neck from the middle of the slot, y down from the
 * board's surface. Sizes are those of the build. The chips are drawn for illustration: nothing here computes them.
 */
import type { Build } from '../../../neck/build.ts';

export type Point = readonly [x: number, y: number];

export type SlotSizes = Pick<
  Build,
  'kerfMm' | 'slotDepthMm' | 'tangWidthMm' | 'tangDepthMm' | 'studWidthMm' | 'crownWidthMm' | 'crownHeightMm'
>;

/** Half width and depth of the piece of board that is drawn. */
export const VIEW = { halfMm: 2.6, downMm: 4.4, upMm: 4.6 } as const;
/** How far the fret is lifted beyond the foot of its tang. */
const CLEAR_MM = 1;
/** Chamfers narrower than this leave the edge as good as sharp (the limit of the check of the same name). */
const SHARP_BELOW_MM = 0.1;
/** A chip: how far along the surface and how far down it reaches. Drawn, not computed. */
const CHIP = { alongMm: 0.55, downMm: 0.4 } as const;

export function pathOf(points: readonly Point[]): string {
  return `M${points.map(([x, y]) => `${x.toFixed(3)} ${y.toFixed(3)}`).join('L')}Z`;
}

const mirrored = (points: readonly Point[]): Point[] => points.map(([x, y]) => [-x, y]);

/** Depth of the studs' middle below the surface, once seated. */
function studDepthMm({ tangDepthMm }: SlotSizes): number {
  return tangDepthMm * 0.5;
}

/** Lift of the fret at a share of the way out. */
export function liftMm(sizes: SlotSizes, share: number): number {
  return share * (sizes.tangDepthMm + CLEAR_MM);
}

/** Has an edge nothing to hold it together when the studs come up through it? */
export function isSharp(chamferMm: number): boolean {
  return chamferMm < SHARP_BELOW_MM;
}

/** How far the chips have come away, 0 to 1: they break as the studs reach the surface. */
export function chipShare(sizes: SlotSizes, share: number, chamferMm: number): number {
  if (!isSharp(chamferMm)) return 0;
  const above = liftMm(sizes, share) - studDepthMm(sizes) + 0.25;
  return Math.max(0, Math.min(1, above / 0.8));
}

/** The board: both walls, the chamfer on both edges, the floor of the slot. */
export function boardPath(sizes: SlotSizes, chamferMm: number, chipped: number): string {
  const half = sizes.kerfMm / 2;
  const { halfMm, downMm } = VIEW;
  const corner: Point[] =
    chipped > 0
      ? [
          [half + CHIP.alongMm, 0],
          [half + CHIP.alongMm * 0.55, CHIP.downMm * 0.35],
          [half, CHIP.downMm],
        ]
      : [
          [half + chamferMm, 0],
          [half, chamferMm],
        ];
  const right: Point[] = [[halfMm, downMm], [halfMm, 0], ...corner, [half, sizes.slotDepthMm]];
  return pathOf([...right, ...mirrored(right).toReversed()]);
}

/** One chip on the right, and its mirror on the left, turned up and away by the share. */
export function chipPaths(sizes: SlotSizes, chipped: number): string[] {
  if (chipped <= 0) return [];
  const half = sizes.kerfMm / 2;
  const angle = chipped * 0.9;
  const hinge: Point = [half + CHIP.alongMm, 0];
  const turned = (point: Point): Point => {
    const [x, y] = [point[0] - hinge[0], point[1] - hinge[1]];
    return [
      hinge[0] + x * Math.cos(angle) - y * Math.sin(angle),
      hinge[1] + x * Math.sin(angle) + y * Math.cos(angle) - chipped * 0.1,
    ];
  };
  const chip = [
    hinge,
    [half + CHIP.alongMm * 0.55, CHIP.downMm * 0.35] as Point,
    [half, CHIP.downMm] as Point,
    [half, 0] as Point,
  ];
  const right = chip.map(turned);
  return [pathOf(right), pathOf(mirrored(right))];
}

/** The fret, lifted: crown, tang and a stud on each side. */
export function fretPaths(sizes: SlotSizes, share: number): { readonly crown: string; readonly tang: string } {
  const lift = liftMm(sizes, share);
  const { crownWidthMm, crownHeightMm, tangWidthMm, tangDepthMm, studWidthMm } = sizes;
  const crownHalf = crownWidthMm / 2;
  const steps = 24;
  const arc = Array.from({ length: steps + 1 }, (_, index): Point => {
    const angle = (Math.PI * index) / steps;
    return [-crownHalf * Math.cos(angle), -lift - crownHeightMm * Math.sin(angle)];
  });
  const [body, stud, at] = [tangWidthMm / 2, studWidthMm / 2, studDepthMm(sizes)];
  const right: Point[] = [
    [body, -lift],
    [body, at - 0.2 - lift],
    [stud, at - 0.05 - lift],
    [stud, at + 0.15 - lift],
    [body, at + 0.3 - lift],
    [body, tangDepthMm - lift],
  ];
  return { crown: pathOf(arc), tang: pathOf([...right, ...mirrored(right).toReversed()]) };
}
