/** The fret-top lines of the compared necks in one drawing, with the band of each at its greatest bow. */
import { line as lineShape } from 'd3-shape';
import { useCallback, useRef } from 'react';
import type { UnitSystem } from '../../build/units.ts';
import type { Method, Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import { useBackbow } from '../../state/store.ts';
import { FretAxis, HeightAxis } from '../chart/chart-axes.tsx';
import { ChartCursor, reliefAtFret } from '../chart/chart-cursor.tsx';
import { chartScales, type ChartScales, type ChartSize } from '../chart/chart-scales.ts';
import { useFretPointer } from '../chart/use-fret-pointer.ts';
import { useHoveredFret } from '../chart/use-hovered-fret.ts';
import { useSize } from '../chart/use-size.ts';
import { nearestFret } from '../readouts/figures.ts';
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

function* reliefsOf(necks: readonly ChartedNeck[]): Generator<number> {
  for (const { line, prediction, band } of necks) {
    if (band) yield* [band.p05, band.p95];
    const end = prediction.fretXMm.at(-1)!;
    for (let at = 0; at < line.reliefMm.length; at += 1) {
      if (prediction.stationXMm[at]! <= end) yield line.reliefMm[at]!;
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
  const { fretXMm, straightedge } = necks[0]!.prediction;
  const [from, to] = [straightedge.fromFret, straightedge.toFret].map((fret) => scales.x(fretXMm[fret - 1]!)) as [
    number,
    number,
  ];
  const drawing = useFretPointer((share) => nearestFret(fretXMm, scales.x.invert(share * size.width)));
  return (
    <svg ref={drawing} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <FretAxis fretXMm={fretXMm} scales={scales} size={size} />
      <HeightAxis scales={scales} size={size} system={system} />
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

/** What a neck does at the fret that is pointed at; written by hand, like the cursor in the drawing. */
function AtFret({ neck, system }: { readonly neck: ChartedNeck; readonly system: UnitSystem }) {
  const place = useRef<HTMLSpanElement>(null);
  const write = useCallback(
    (fret: number | null) => {
      const relief = fret === null ? undefined : reliefAtFret(neck, fret);
      place.current!.textContent =
        fret === null || relief === undefined ? '' : CHART_WORDS.hover(fret, bowText(relief, system));
    },
    [neck, system],
  );
  useHoveredFret(write);
  return <span ref={place} className="at-fret quiet" aria-hidden="true" />;
}

/** @param moment what is compared, in words */
export function CompareChart({ necks, moment }: { readonly necks: readonly ChartedNeck[]; readonly moment: string }) {
  const system = useBackbow((state) => state.unitSystem);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box, { width: 900, height: 200 });
  const says = necks.map(({ label, line }) => COMPARE_WORDS.line(label, bowText(line.extremeMm, system))).join(' ');
  const label = COMPARE_WORDS.chartLabel(says);
  return (
    <section className="chart compare-chart" aria-label={COMPARE_WORDS.chart}>
      <ul className="compare-legend">
        {necks.map((neck) => (
          <li key={neck.label}>
            <svg className="swatch" viewBox="0 0 24 6" aria-hidden="true">
              <line x1="0" y1="3" x2="24" y2="3" className={`line-${neck.style}`} />
            </svg>
            <span>
              {neck.label} <strong>{bowText(neck.line.extremeMm, system)}</strong>
            </span>
            <AtFret neck={neck} system={system} />
          </li>
        ))}
      </ul>
      <div className="chart-box" ref={box}>
        <CompareDrawing necks={necks} size={size} system={system} label={label} />
      </div>
      <div className="compare-chart-foot">
        <p className="quiet">{COMPARE_WORDS.chartNote}</p>
        <button
          type="button"
          onClick={() =>
            void import('./save-comparison.tsx').then(({ saveComparison }) =>
              saveComparison({ necks, moment, system, label }),
            )
          }
        >
          {CHART_WORDS.save}
        </button>
      </div>
    </section>
  );
}
