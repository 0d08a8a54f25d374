/** The drawing of the compared necks' lines, with the band of each at its greatest bow. */
import { line as lineShape } from 'd3-shape';
import type { UnitSystem } from '../../neck/units.ts';
import type { Method, Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import { FretAxis, HeightAxis } from '../workshop/chart/chart-axes.tsx';
import { ChartCursor } from '../workshop/chart/chart-cursor.tsx';
import { chartScales, type ChartScales, type ChartSize } from '../workshop/chart/chart-scales.ts';
import { useFretPointer } from '../workshop/chart/use-fret-pointer.ts';
import { nearestFret } from '../workshop/readouts/figures.ts';
import { CHART_WORDS } from '../../speech/en/workshop/workshop.ts';

export interface ChartedNeck {
  readonly label: string;
  readonly style: Method;
  readonly prediction: Prediction;
  readonly line: ReliefLine;
  /** Of the greatest bow; null while it is being computed. */
  readonly band: Band | null;
}

function* reliefsOf(necks: readonly ChartedNeck[]): Generator<number> {
  for (const { line, prediction, band } of necks) {
    if (band) yield* [band.p05, band.p95];
    const end = prediction.fretXMm.at(-1)!;
    for (let at = 0; at < line.reliefMm.length; at += 1) {
      if (prediction.stationXMm[at] <= end) yield line.reliefMm[at];
    }
  }
}

/** Beside each other, so that bars of equal places can be told apart. */
const BAR_STEP_PX = 9;

function Neck({
  neck,
  index,
  count,
  scales,
}: { neck: ChartedNeck; index: number; count: number } & { scales: ChartScales }) {
  const { x, y } = scales;
  const { line, prediction, style, band } = neck;
  const path = lineShape<number>()
    .x((at) => x(at))
    .y((_at, station) => y(line.reliefMm[station]));
  const barX = x(line.extremeXMm) + (index - (count - 1) / 2) * BAR_STEP_PX;
  return (
    <g>
      <path className={`fret-line line-${style}`} data-neck={index} d={path(Array.from(prediction.stationXMm)) ?? ''} />
      {band && (
        <g className={`compare-bar bar-${style}`}>
          <line x1={barX} x2={barX} y1={y(band.p05)} y2={y(band.p95)} />
          <line x1={barX - 3} x2={barX + 3} y1={y(band.p05)} y2={y(band.p05)} />
          <line x1={barX - 3} x2={barX + 3} y1={y(band.p95)} y2={y(band.p95)} />
        </g>
      )}
    </g>
  );
}

interface CompareDrawingProps {
  readonly necks: readonly ChartedNeck[];
  readonly size: ChartSize;
  readonly system: UnitSystem;
  /** What the drawing shows, in words. */
  readonly label: string;
}

const fretSays = (fret: number) => `${CHART_WORDS.axis} ${fret}`;

export function CompareDrawing({ necks, size, system, label }: CompareDrawingProps) {
  const endXMm = Math.max(...necks.map(({ prediction }) => prediction.stationXMm.at(-1)!));
  const scales = chartScales(size, endXMm, reliefsOf(necks));
  const { fretXMm, straightedge } = necks[0].prediction;
  const [from, to] = [straightedge.fromFret, straightedge.toFret].map((fret) => scales.x(fretXMm[fret - 1])) as [
    number,
    number,
  ];
  const drawing = useFretPointer((share) => nearestFret(fretXMm, scales.x.invert(share * size.width)));
  return (
    <svg ref={drawing} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <FretAxis fretXMm={fretXMm} scales={scales} size={size} />
      <HeightAxis y={scales.y} size={size} system={system} />
      <g className="straightedge" aria-hidden="true">
        <line x1={from} x2={to} y1={scales.y(0)} y2={scales.y(0)} />
      </g>
      {necks.map((neck, index) => (
        <Neck key={neck.label} neck={neck} index={index} count={necks.length} scales={scales} />
      ))}
      <ChartCursor lines={necks} scales={scales} size={size} says={fretSays} />
    </svg>
  );
}
