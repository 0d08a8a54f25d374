/** Shapes of a neck seen from the side, its bend larger than life; px in the box of one drawing, x from the nut on. */
import type { Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';

export const STRIP = { width: 360, height: 74, margin: 6, level: 34 } as const;
/** Drawn, not to scale: a neck as long as this is a hair high. */
const CROWN = 3;
const BOARD = 5;
const WOOD = 9;
const HEEL = 9;
const NUT = 5;

export interface StripShapes {
  readonly board: string;
  readonly wood: string;
  /** Each fret from the board to its top. */
  readonly frets: string;
  readonly nut: string;
  /** A straight line where the neck would lie if nothing bent it. */
  readonly level: string;
  readonly strings: string;
}

type Point = readonly [x: number, y: number];

const closed = (points: readonly Point[]): string => `${open(points)}Z`;
const open = (points: readonly Point[]): string =>
  `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(2)}`).join('L')}`;

/** @param lengthMm what the whole width shows, the same for all that stand below each other */
export function stripShapes(prediction: Prediction, line: ReliefLine, factor: number, lengthMm: number): StripShapes {
  const { stationXMm, fretXMm, straightedge } = prediction;
  const { width, margin, level } = STRIP;
  const scale = (width - 2 * margin) / lengthMm;
  const x = (mm: number) => margin + mm * scale;
  const y = (at: number) => level + line.reliefMm[at] * factor * scale;
  const stations = Array.from(stationXMm, (_, at) => at);
  const along = (down: number): Point[] => stations.map((at) => [x(stationXMm[at]), y(at) + down]);
  const heelXMm = fretXMm[straightedge.toFret - 1];
  const under = stations.map((at): Point => {
    const deep = stationXMm[at] >= heelXMm ? WOOD + HEEL : WOOD;
    return [x(stationXMm[at]), y(at) + CROWN + BOARD + deep];
  });
  const nearest = (mm: number) =>
    stations.reduce((best, at) => (Math.abs(stationXMm[at] - mm) < Math.abs(stationXMm[best] - mm) ? at : best), 0);
  const frets = Array.from(fretXMm, (mm) => {
    const top = y(nearest(mm));
    return open([
      [x(mm), top],
      [x(mm), top + CROWN],
    ]);
  });
  const [from, to] = [straightedge.fromFret, straightedge.toFret].map((fret) => x(fretXMm[fret - 1]));
  const nutTop = y(0) - NUT + CROWN;
  return {
    board: closed([...along(CROWN), ...along(CROWN + BOARD).toReversed()]),
    wood: closed([...along(CROWN + BOARD), ...under.toReversed()]),
    frets: frets.join(''),
    nut: closed([
      [x(0) - 3, nutTop],
      [x(0), nutTop],
      [x(0), y(0) + CROWN + BOARD],
      [x(0) - 3, y(0) + CROWN + BOARD],
    ]),
    level: open([
      [from, level],
      [to, level],
    ]),
    strings: open([
      [x(0), nutTop],
      [width - 1, level - NUT * 3],
    ]),
  };
}
