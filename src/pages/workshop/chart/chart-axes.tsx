/** The axes of drawings of fret-top lines: frets below, heights at the left. */
import { fromDisplay, toDisplay, type UnitSystem } from '../../../neck/units.ts';
import { formatNumber, unitLabel } from '../../../speech/quantity.ts';
import type { Prediction } from '../../../mechanics/prediction-types.ts';
import { CHART_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { MARGIN, printedFrets, type ChartScales, type ChartSize } from './chart-scales.ts';
import { ticksBetween } from './linear-scale.ts';

interface AxisProps {
  readonly scales: ChartScales;
  readonly size: ChartSize;
}

/** Relief in mm to px. */
type HeightScale = ChartScales['y'];

/** Least space between two printed fret numbers, px. */
const FRET_NUMBER_GAP = 22;

/** One tick for each fret; numbers where there is room. */
export function FretAxis({ fretXMm, scales, size }: AxisProps & { readonly fretXMm: Prediction['fretXMm'] }) {
  const base = size.height - MARGIN.bottom;
  const [startXMm, endXMm] = scales.x.domain();
  const shown = Array.from(fretXMm).flatMap((xMm, index) =>
    xMm >= startXMm && xMm <= endXMm ? [{ fret: index + 1, px: scales.x(xMm) }] : [],
  );
  const printed = new Set(
    printedFrets(
      shown.map(({ px }) => px),
      FRET_NUMBER_GAP,
    ),
  );
  return (
    <g className="axis" aria-hidden="true">
      <line x1={scales.x.range()[0]} x2={scales.x.range()[1]} y1={base} y2={base} />
      {shown.map(({ fret, px }, index) => (
        <g key={fret} transform={`translate(${px} ${base})`}>
          <line className="fret-tick" y1={MARGIN.top - base} y2={4} />
          {printed.has(index + 1) && <text y={17}>{fret}</text>}
        </g>
      ))}
      <text className="axis-name" x={MARGIN.left - 8} y={base + 17}>
        {CHART_WORDS.axis}
      </text>
    </g>
  );
}

/** Heights in the reader's units, the hump above. */
export function HeightAxis({
  y,
  size,
  system,
}: Pick<AxisProps, 'size'> & { readonly y: HeightScale; readonly system: UnitSystem }) {
  const [low, high] = y.domain();
  const shown = (mm: number) => toDisplay(mm, 'mm', system);
  const ticks = ticksBetween(shown(low), shown(high), Math.max(3, Math.round(size.height / 40)));
  const digits = Math.max(...ticks.map((tick) => (String(Number(tick.toFixed(6))).split('.')[1] ?? '').length));
  const left = MARGIN.left - 8;
  return (
    <g className="axis heights" aria-hidden="true">
      {ticks.map((tick) => (
        <text key={tick} x={left} y={y(fromDisplay(tick, 'mm', system))} dy="0.35em">
          {formatNumber(Math.abs(tick), digits)}
        </text>
      ))}
      <text className="axis-name" x={left} y={12}>
        {unitLabel('mm', system)}
      </text>
      <text className="side" x={MARGIN.left + 4} y={MARGIN.top - 8}>
        ↑ {CHART_WORDS.above}
      </text>
      <text className="side" x={MARGIN.left + 4} y={size.height - MARGIN.bottom - 6}>
        ↓ {CHART_WORDS.below}
      </text>
    </g>
  );
}
