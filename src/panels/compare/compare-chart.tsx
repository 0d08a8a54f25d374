/** The fret-top lines of the compared necks in one drawing, with the band of each at its greatest bow. */
import { line as lineShape } from 'd3-shape';
import { scaleLinear } from 'd3-scale';
import { useRef } from 'react';
import { displayUnit, formatNumber, fromDisplay, toDisplay, type UnitSystem } from '../../build/units.ts';
import type { Method, Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import { useBackbow } from '../../state/store.ts';
import { chartScales, MARGIN, printedFrets, type ChartScales, type ChartSize } from '../chart/chart-scales.ts';
import { useSize } from '../chart/use-size.ts';
import { bowText } from '../words/bow.ts';
import { CHART_WORDS } from '../words/panels.ts';
import { COMPARE_WORDS } from './words.ts';
import '../chart/chart.css';

export interface ChartedNeck {
  readonly label: string;
  readonly style: Method;
  readonly prediction: Prediction;
  readonly line: ReliefLine;
  /** Of the greatest bow; null while it is being computed. */
  readonly band: Band | null;
}

/** Least space between two printed fret numbers, px. */
const FRET_NUMBER_GAP = 22;

function* reliefsOf(necks: readonly ChartedNeck[]): Generator<number> {
  for (const { line, prediction, band } of necks) {
    if (band) yield* [band.p05, band.p95];
    const end = prediction.fretXMm.at(-1)!;
    for (let at = 0; at < line.reliefMm.length; at += 1) {
      if (prediction.stationXMm[at]! <= end) yield line.reliefMm[at]!;
    }
  }
}

interface Drawn {
  readonly scales: ChartScales;
  readonly size: ChartSize;
}

function Axes({ scales, size, first, system }: Drawn & { readonly first: Prediction; readonly system: UnitSystem }) {
  const { x, y } = scales;
  const base = size.height - MARGIN.bottom;
  const at = first.fretXMm.map((xMm) => x(xMm));
  const printed = new Set(printedFrets(at, FRET_NUMBER_GAP));
  const shown = scaleLinear().domain(y.domain().map((mm) => toDisplay(mm, 'mm', system)));
  const ticks = shown.ticks(Math.max(3, Math.round(size.height / 40)));
  const digits = Math.max(...ticks.map((tick) => (String(Number(tick.toFixed(6))).split('.')[1] ?? '').length));
  const left = MARGIN.left - 8;
  return (
    <>
      <g className="axis" aria-hidden="true">
        {at.map((px, index) => (
          <g key={index} transform={`translate(${px} ${base})`}>
            <line className="fret-tick" y1={MARGIN.top - base} y2={4} />
            {printed.has(index + 1) && <text y={17}>{index + 1}</text>}
          </g>
        ))}
        <line x1={x(0)} x2={x.range()[1]} y1={base} y2={base} />
        <text className="axis-name" x={left} y={base + 17}>
          {CHART_WORDS.axis}
        </text>
      </g>
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
        <text className="side" x={MARGIN.left + 4} y={base - 6}>
          ↓ {CHART_WORDS.below}
        </text>
      </g>
    </>
  );
}

/** Beside each other, so that bars of equal places can be told apart. */
const BAR_STEP_PX = 9;

function Neck({
  neck,
  index,
  count,
  scales,
}: { neck: ChartedNeck; index: number; count: number } & Pick<Drawn, 'scales'>) {
  const { x, y } = scales;
  const { line, prediction, style, band } = neck;
  const path = lineShape<number>()
    .x((at) => x(at))
    .y((_at, station) => y(line.reliefMm[station]!));
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

export function CompareChart({ necks }: { readonly necks: readonly ChartedNeck[] }) {
  const system = useBackbow((state) => state.unitSystem);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box, { width: 900, height: 200 });
  const endXMm = Math.max(...necks.map(({ prediction }) => prediction.stationXMm.at(-1)!));
  const scales = chartScales(size, endXMm, reliefsOf(necks));
  const first = necks[0]!.prediction;
  const says = necks.map(({ label, line }) => COMPARE_WORDS.line(label, bowText(line.extremeMm, system))).join(' ');
  const [from, to] = [first.straightedge.fromFret, first.straightedge.toFret].map((fret) =>
    scales.x(first.fretXMm[fret - 1]!),
  ) as [number, number];
  return (
    <section className="chart compare-chart" aria-label={COMPARE_WORDS.chart}>
      <ul className="compare-legend">
        {necks.map(({ label, style, line }) => (
          <li key={label}>
            <svg className="swatch" viewBox="0 0 24 6" aria-hidden="true">
              <line x1="0" y1="3" x2="24" y2="3" className={`line-${style}`} />
            </svg>
            {label} <strong>{bowText(line.extremeMm, system)}</strong>
          </li>
        ))}
      </ul>
      <div className="chart-box" ref={box}>
        <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={COMPARE_WORDS.chartLabel(says)}>
          <Axes scales={scales} size={size} first={first} system={system} />
          <g className="straightedge" aria-hidden="true">
            <line x1={from} x2={to} y1={scales.y(0)} y2={scales.y(0)} />
          </g>
          {necks.map((neck, index) => (
            <Neck key={neck.label} neck={neck} index={index} count={necks.length} scales={scales} />
          ))}
        </svg>
      </div>
      <p className="quiet">{COMPARE_WORDS.chartNote}</p>
    </section>
  );
}
