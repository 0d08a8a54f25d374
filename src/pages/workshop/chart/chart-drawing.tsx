/** The drawing of the chart: axis of frets, straightedge, one line per method, the greatest gap of the chosen one. */
import { area as areaShape, line as lineShape } from 'd3-shape';
import type { UnitSystem } from '../../../neck/units.ts';
import type { Method, Prediction } from '../../../mechanics/prediction-types.ts';
import type { LineBand } from '../../../mechanics/uncertainty/band-at.ts';
import { store } from '../../../state/store.ts';
import type { Lines } from '../../../state/lines.ts';
import { nearestFret } from '../readouts/figures.ts';
import { bowText } from '../../../speech/bow.ts';
import { CHART_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { useId } from 'react';
import { RELIEF_TOLERANCE_MM } from '../../../fretwork/checks/limits.ts';
import { rangeMm, wholeBoard, zoomed, type FretRange } from './fret-range.ts';
import { useFretPointer } from './use-fret-pointer.ts';
import { ChartCursor } from './chart-cursor.tsx';
import { FretAxis, HeightAxis } from './chart-axes.tsx';
import { chartScales, MARGIN, type ChartScales, type ChartSize } from './chart-scales.ts';

export interface ChartDrawingProps {
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
  /** Part of the board to show; all of it when undefined. */
  readonly range?: FretRange;
  /** Called with a longer or shorter range by the wheel or by two fingers. */
  readonly onZoom?: (range: FretRange) => void;
  /** Relief wanted once the neck is strung, mm. */
  readonly targetMm: number;
}

/** Every relief that must fit in, of what is shown from one place to another. */
function* reliefsUnder(props: ChartDrawingProps, startXMm: number, endXMm: number): Generator<number> {
  const { prediction, lines, methods, room, targetMm } = props;
  yield* [targetMm - RELIEF_TOLERANCE_MM, targetMm + RELIEF_TOLERANCE_MM];
  const lastXMm = Math.min(endXMm, prediction.fretXMm.at(-1)!);
  const isShown = (xMm: number) => xMm >= startXMm && xMm <= lastXMm;
  if (room) {
    // Only under the straightedge: beyond it the band opens like a fan.
    const { fromFret, toFret } = prediction.straightedge;
    for (let point = fromFret; point <= toFret; point += 1) {
      if (isShown(room.xMm[point])) yield* [room.p05Mm[point], room.p95Mm[point]];
    }
  }
  for (const method of methods) {
    const { reliefMm } = lines[method];
    for (let index = 0; index < reliefMm.length; index += 1) {
      if (isShown(prediction.stationXMm[index])) yield reliefMm[index];
    }
  }
}

export function ChartDrawing(props: ChartDrawingProps) {
  const { size, prediction, lines, band, methods, chosen, system } = props;
  const { fretXMm } = prediction;
  const range = props.range ?? wholeBoard(fretXMm.length);
  const [startXMm, endXMm] = rangeMm(range, fretXMm, prediction.stationXMm.at(-1)!);
  const scales = chartScales(size, endXMm, reliefsUnder(props, startXMm, endXMm), startXMm);
  const { x, y } = scales;
  const stations = Array.from(prediction.stationXMm);
  const fretAt = (share: number) => nearestFret(fretXMm, x.invert(share * size.width));
  const drawing = useFretPointer(
    fretAt,
    (share, factor) => props.onZoom?.(zoomed(range, fretAt(share), factor, fretXMm.length)),
    store.getState().selectFret,
  );
  const clip = useId();
  const clipped = { clipPath: `url(#${clip})` };

  return (
    <svg ref={drawing} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={props.label}>
      <FretAxis fretXMm={fretXMm} scales={scales} size={size} />
      <HeightAxis y={scales.y} size={size} system={system} />
      <clipPath id={clip}>
        <rect
          x={MARGIN.left}
          y={MARGIN.top}
          width={size.width - MARGIN.left - MARGIN.right}
          height={size.height - MARGIN.top - MARGIN.bottom}
        />
      </clipPath>
      <Target targetMm={props.targetMm} prediction={prediction} scales={scales} />
      {band && (
        <g {...clipped}>
          <BandArea band={band} chosen={chosen} scales={scales} />
        </g>
      )}
      <Straightedge prediction={prediction} scales={scales} isHump={lines[chosen].extremeMm < 0} />
      <g {...clipped}>
        {methods.map((method) => {
          const { reliefMm } = lines[method];
          const path = lineShape<number>()
            .x((at) => x(at))
            .y((_at, index) => y(reliefMm[index]));
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
      </g>
      <GreatestGap lines={lines} chosen={chosen} scales={scales} size={size} system={system} />
      <ChartCursor
        lines={[{ prediction, line: lines[chosen] }]}
        scales={scales}
        size={size}
        says={(fret, reliefMm) => CHART_WORDS.hover(fret, bowText(reliefMm, system))}
      />
    </svg>
  );
}

interface Scaled {
  readonly scales: ChartScales;
}

type BandProps = Pick<ChartDrawingProps, 'chosen'> & Scaled & { readonly band: LineBand };

/** Where the chosen line lies in 90 of 100 such necks. */
function BandArea({ band, chosen, scales }: BandProps) {
  const { x, y } = scales;
  const shape = areaShape<number>()
    .x((at) => x(at))
    .y0((_at, index) => y(band.p05Mm[index]))
    .y1((_at, index) => y(band.p95Mm[index]));
  return <path className={`band band-${chosen}`} aria-hidden="true" d={shape(Array.from(band.xMm)) ?? ''} />;
}

/** Two places across the drawing, kept inside what is shown, px. */
function within({ x }: ChartScales, [from, to]: readonly [number, number]): [number, number] {
  const [left, right] = x.range();
  return [Math.max(left, from), Math.min(right, to)];
}

type TargetProps = Pick<ChartDrawingProps, 'prediction' | 'targetMm'> & Scaled;

/** Where the greatest gap should be once the neck is strung and its rod is set. */
function Target({ prediction, targetMm, scales }: TargetProps) {
  const { fromFret, toFret } = prediction.straightedge;
  const at = (fret: number) => scales.x(prediction.fretXMm[fret - 1]);
  const [from, to] = within(scales, [at(fromFret), at(toFret)]);
  if (from >= to) return null;
  const [top, bottom] = [scales.y(targetMm - RELIEF_TOLERANCE_MM), scales.y(targetMm + RELIEF_TOLERANCE_MM)];
  return (
    <g className="target" aria-hidden="true">
      <rect x={from} y={top} width={to - from} height={bottom - top} />
      <text x={to - 6} y={(top + bottom) / 2} dy="0.35em">
        {CHART_WORDS.target}
      </text>
    </g>
  );
}

type StraightedgeProps = Pick<ChartDrawingProps, 'prediction'> & Scaled & { readonly isHump: boolean };

/** Its name stands on the side where the chosen line is not. */
function Straightedge({ prediction, scales, isHump }: StraightedgeProps) {
  const { fromFret, toFret } = prediction.straightedge;
  const ends = [fromFret, toFret].map((fret) => scales.x(prediction.fretXMm[fret - 1])) as [number, number];
  const [from, to] = within(scales, ends);
  const level = scales.y(0);
  if (from >= to) return null;
  return (
    <g className="straightedge" aria-hidden="true">
      <line x1={from} x2={to} y1={level} y2={level} />
      {ends.map((px) =>
        px >= from && px <= to ? <line key={px} x1={px} x2={px} y1={level - 4} y2={level + 4} /> : null,
      )}
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
  const [left, right] = scales.x.range();
  // Too small a gap cannot carry a dimension line.
  if (Math.abs(tip - level) < 5 || px < left || px > right) return null;
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
