/** The drawing of the chart: axis of frets, straightedge, one line per method, the greatest gap of the chosen one. */
import { area as areaShape, line as lineShape } from 'd3-shape';
import { scaleLinear } from 'd3-scale';
import { displayUnit, formatNumber, fromDisplay, toDisplay, type UnitSystem } from '../../build/units.ts';
import type { Method, Prediction } from '../../mechanics/prediction-types.ts';
import type { LineBand } from '../../mechanics/uncertainty/band-at.ts';
import type { Lines } from '../../state/lines.ts';
import { nearestFret } from '../readouts/figures.ts';
import { bowText } from '../words/bow.ts';
import { CHART_WORDS } from '../words/panels.ts';
import { useId } from 'react';
import { useFretPointer } from './use-fret-pointer.ts';
import { ChartCursor } from './chart-cursor.tsx';
import { chartScales, MARGIN, printedFrets, type ChartScales, type ChartSize } from './chart-scales.ts';

interface ChartDrawingProps {
  readonly size: ChartSize;
  readonly prediction: Prediction;
  readonly lines: Lines;
  /** Of the chosen method's line; null while it is being computed. */
  readonly band: LineBand | null;
  /** The drawing leaves room for this band. */
  readonly room: LineBand | null;
  /** In the order of drawing: the last lies on top. */
  readonly methods: readonly Method[];
  readonly chosen: Method;
  readonly system: UnitSystem;
  readonly label: string;
}

/** Least space between two printed fret numbers, px. */
const FRET_NUMBER_GAP = 22;

function* reliefsUnder({ prediction, lines, methods, room }: ChartDrawingProps): Generator<number> {
  const endXMm = prediction.fretXMm.at(-1)!;
  if (room) {
    // Only under the straightedge: beyond it the band opens like a fan.
    const { fromFret, toFret } = prediction.straightedge;
    for (let point = fromFret; point <= toFret; point += 1) yield* [room.p05Mm[point]!, room.p95Mm[point]!];
  }
  for (const method of methods) {
    const { reliefMm } = lines[method];
    for (let index = 0; index < reliefMm.length; index += 1) {
      if (prediction.stationXMm[index]! <= endXMm) yield reliefMm[index]!;
    }
  }
}

export function ChartDrawing(props: ChartDrawingProps) {
  const { size, prediction, lines, band, methods, chosen, system } = props;
  const endXMm = prediction.stationXMm.at(-1)!;
  const scales = chartScales(size, endXMm, reliefsUnder(props));
  const { x, y } = scales;
  const stations = Array.from(prediction.stationXMm);
  const drawing = useFretPointer((share) => nearestFret(prediction.fretXMm, x.invert(share * size.width)));

  return (
    <svg ref={drawing} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={props.label}>
      <FretAxis prediction={prediction} scales={scales} size={size} />
      <HeightAxis scales={scales} size={size} system={system} />
      {band && <BandArea band={band} chosen={chosen} scales={scales} size={size} />}
      <Straightedge prediction={prediction} scales={scales} isHump={lines[chosen].extremeMm < 0} />
      {methods.map((method) => {
        const { reliefMm } = lines[method];
        const path = lineShape<number>()
          .x((at) => x(at))
          .y((_at, index) => y(reliefMm[index]!));
        return (
          <path
            key={method}
            className={`fret-line line-${method}`}
            data-method={method}
            data-chosen={method === chosen || undefined}
            d={path(stations) ?? ''}
          />
        );
      })}
      <GreatestGap lines={lines} chosen={chosen} scales={scales} size={size} system={system} />
      <ChartCursor prediction={prediction} line={lines[chosen]} scales={scales} size={size} system={system} />
    </svg>
  );
}

function FretAxis({ prediction, scales, size }: Pick<ChartDrawingProps, 'prediction' | 'size'> & Scaled) {
  const base = size.height - MARGIN.bottom;
  const at = prediction.fretXMm.map((xMm) => scales.x(xMm));
  const printed = new Set(printedFrets(at, FRET_NUMBER_GAP));
  return (
    <g className="axis" aria-hidden="true">
      <line x1={scales.x(0)} x2={scales.x.range()[1]} y1={base} y2={base} />
      {at.map((px, index) => (
        <g key={index} transform={`translate(${px} ${base})`}>
          <line className="fret-tick" y1={MARGIN.top - base} y2={4} />
          {printed.has(index + 1) && <text y={17}>{index + 1}</text>}
        </g>
      ))}
      <text className="axis-name" x={MARGIN.left - 8} y={base + 17}>
        {CHART_WORDS.axis}
      </text>
    </g>
  );
}

interface Scaled {
  readonly scales: ChartScales;
}

function HeightAxis({ scales, size, system }: Pick<ChartDrawingProps, 'size' | 'system'> & Scaled) {
  const { y } = scales;
  const shown = scaleLinear().domain(y.domain().map((mm) => toDisplay(mm, 'mm', system)));
  const ticks = shown.ticks(Math.max(3, Math.round(size.height / 40)));
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
        {displayUnit('mm', system).label}
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

type BandProps = Pick<ChartDrawingProps, 'chosen' | 'size'> & Scaled & { readonly band: LineBand };

/** Where the chosen line lies in 90 of 100 such necks. */
function BandArea({ band, chosen, scales, size }: BandProps) {
  const clip = useId();
  const { x, y } = scales;
  const shape = areaShape<number>()
    .x((at) => x(at))
    .y0((_at, index) => y(band.p05Mm[index]!))
    .y1((_at, index) => y(band.p95Mm[index]!));
  return (
    <g aria-hidden="true">
      <clipPath id={clip}>
        <rect x={MARGIN.left} y={MARGIN.top} width={size.width} height={size.height - MARGIN.top - MARGIN.bottom} />
      </clipPath>
      <path className={`band band-${chosen}`} clipPath={`url(#${clip})`} d={shape(Array.from(band.xMm)) ?? ''} />
    </g>
  );
}

type StraightedgeProps = Pick<ChartDrawingProps, 'prediction'> & Scaled & { readonly isHump: boolean };

/** Its name stands on the side where the chosen line is not. */
function Straightedge({ prediction, scales, isHump }: StraightedgeProps) {
  const { fromFret, toFret } = prediction.straightedge;
  const [from, to] = [fromFret, toFret].map((fret) => scales.x(prediction.fretXMm[fret - 1]!)) as [number, number];
  const level = scales.y(0);
  return (
    <g className="straightedge" aria-hidden="true">
      <line x1={from} x2={to} y1={level} y2={level} />
      <line x1={from} x2={from} y1={level - 4} y2={level + 4} />
      <line x1={to} x2={to} y1={level - 4} y2={level + 4} />
      <text x={from + 6} y={level + (isHump ? 14 : -6)}>
        {CHART_WORDS.straightedge}
      </text>
    </g>
  );
}

type GapProps = Pick<ChartDrawingProps, 'lines' | 'chosen' | 'size' | 'system'> & Scaled;

function GreatestGap({ lines, chosen, scales, size, system }: GapProps) {
  const line = lines[chosen];
  const px = scales.x(line.extremeXMm);
  const [level, tip] = [scales.y(0), scales.y(line.extremeMm)];
  const text = bowText(line.extremeMm, system);
  // Too small a gap cannot carry a dimension line.
  if (Math.abs(tip - level) < 5) return null;
  const onLeft = px > size.width / 2;
  return (
    <g className="gap" aria-hidden="true">
      <line x1={px} x2={px} y1={level} y2={tip} />
      <line x1={px - 4} x2={px + 4} y1={tip} y2={tip} />
      <line x1={px - 4} x2={px + 4} y1={level} y2={level} />
      <text x={px + (onLeft ? -8 : 8)} y={(level + tip) / 2} dy="0.35em" textAnchor={onLeft ? 'end' : 'start'}>
        {text}
      </text>
    </g>
  );
}
