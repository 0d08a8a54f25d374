/**
 * The wire: what each fret takes, what to order.
 *
 *   edge to edge along the arc   A = 2·R·asin(w/2R)             flat board: w
 *   piece as cut                 A + 2·o
 *   crown as filed, at its foot  2·R·asin((w/2 − i)/R)
 *   spare frets                  ⌈n·p/100⌉, each as long as the longest piece
 *   from a coil                  Σ (piece + c), in turns of 2π·R_coil
 *
 * w = board width, R = board radius at the fret, o = oversize per end, i = inset of the fret end, n = frets,
 * p = spare wire in per cent, c = loss at a cut; all mm. Source: geometry. The arc is taken on the board's surface: it is
 * the length of the underside of the crown. From sticks: see cutting.ts.
 */
import type { Build } from '../neck/build.ts';
import { arcMm } from './arc.ts';
import { cuttingPlan, type CuttingPlan, type Piece } from './plan/cutting.ts';
import { madeEnds, type FretEnd } from './ends.ts';

export interface WirePiece {
  readonly fret: number;
  /** Along the board's arc, edge to edge. */
  readonly arcMm: number;
  /** Length to cut: the arc and the oversize at both ends. */
  readonly cutMm: number;
  readonly oversizeMm: number;
  /** Tang to nip off at each end of the piece as cut; 0 where the slot is open. */
  readonly nipMm: number;
  /** Tang that stays, along the wire, in the middle of the piece. */
  readonly tangMm: number;
  readonly shelfMm: number;
  /** Length of the finished fret at its foot, along the arc. */
  readonly filedMm: number;
  /** How much shorter than its foot the top of the crown is, per end, seen from above. */
  readonly bevelLossMm: number;
}

export interface WireOrder {
  /** Wire in all frets as cut, without spare and without loss at the cuts. */
  readonly fretsMm: number;
  readonly spareFrets: number;
  /** Frets, spare and loss at the cuts. */
  readonly totalMm: number;
  /** When the wire comes in sticks. */
  readonly sticks?: {
    readonly toOrder: number;
    /** The plan for the frets and the spare. */
    readonly plan: CuttingPlan;
  };
  /** When the wire comes in a coil. */
  readonly coil?: { readonly turns: number };
}

export function wirePieces(build: Build, ends: readonly FretEnd[] = madeEnds(build)): WirePiece[] {
  return ends.map((end) => {
    const edgeToEdgeMm = 2 * arcMm(end.radiusMm, end.boardHalfMm);
    return {
      fret: end.fret,
      arcMm: edgeToEdgeMm,
      cutMm: edgeToEdgeMm + 2 * build.oversizeMm,
      oversizeMm: build.oversizeMm,
      nipMm: end.nipMm,
      tangMm: 2 * arcMm(end.radiusMm, end.tangHalfMm),
      shelfMm: end.shelfMm,
      filedMm: 2 * arcMm(end.radiusMm, end.crownFootHalfMm),
      bevelLossMm: end.bevelLossMm,
    };
  });
}

/** @throws {RangeError} when a piece is longer than a stick; in a valid build none is. */
export function wireOrder(build: Build, pieces: readonly WirePiece[] = wirePieces(build)): WireOrder {
  const spareFrets = Math.ceil((pieces.length * build.wireSparePercent) / 100);
  const longest = pieces.reduce((a, b) => (b.cutMm > a.cutMm ? b : a));
  const wanted: Piece[] = [
    ...pieces.map(({ fret, cutMm }) => ({ fret, lengthMm: cutMm })),
    ...Array.from({ length: spareFrets }, () => ({
      fret: longest.fret,
      lengthMm: longest.cutMm,
      spare: true as const,
    })),
  ];
  const totalMm = wanted.reduce((sum, piece) => sum + piece.lengthMm + build.cutLossMm, 0);
  const order = { fretsMm: pieces.reduce((sum, piece) => sum + piece.cutMm, 0), spareFrets, totalMm };
  if (build.wireForm === 'coil') {
    return { ...order, coil: { turns: totalMm / (2 * Math.PI * build.coilRadiusMm) } };
  }
  const plan = cuttingPlan(wanted, build.stickLengthMm, build.cutLossMm);
  return { ...order, sticks: { toOrder: plan.sticks.length, plan } };
}
