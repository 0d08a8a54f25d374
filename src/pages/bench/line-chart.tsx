/** The neck's line as it was predicted at hand-over, and as it is known after the readings, each with its range. */
import { area, line } from 'd3-shape';
import { useRef } from 'react';
import type { ReadLines } from '../../mechanics/while-fretting/advice.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { enteredBowText } from '../../speech/bow.ts';
import { BENCH_ADVICE_WORDS } from '../../speech/en/bench/bench.ts';
import { CHART_WORDS } from '../../speech/en/workshop/workshop.ts';
import type { JobPrediction } from '../../state/jobs/job-document.ts';
import { FretAxis, HeightAxis } from '../workshop/chart/chart-axes.tsx';
import { chartScales, type ChartScales } from '../workshop/chart/chart-scales.ts';
import { useSize } from '../workshop/chart/use-size.ts';

interface Points {
  readonly p05Mm: ArrayLike<number>;
  readonly p50Mm: ArrayLike<number>;
  readonly p95Mm: ArrayLike<number>;
}

interface LineChartProps {
  readonly predicted: JobPrediction;
  /** Of the quarter that is full now; null between two quarters. */
  readonly expected: Points | null;
  /** Null before something was read. */
  readonly lines: ReadLines | null;
  /** What was read last, mm; hollow positive. */
  readonly measuredMm: number | null;
  readonly system: UnitSystem;
}

type Kind = 'predicted' | 'now' | 'end';

interface DrawnProps {
  readonly kind: Kind;
  readonly xMm: readonly number[];
  readonly points: Points;
  readonly scales: ChartScales;
}

function Drawn({ kind, xMm, points, scales: { x, y } }: DrawnProps) {
  const band = area<number>()
    .x((at) => x(at))
    .y0((_at, index) => y(points.p05Mm[index]))
    .y1((_at, index) => y(points.p95Mm[index]));
  const middle = line<number>()
    .x((at) => x(at))
    .y((_at, index) => y(points.p50Mm[index]));
  const at = Array.from(xMm);
  return (
    <g className={`bench-line bench-line-${kind}`} aria-hidden="true">
      {kind !== 'end' && <path className="bench-band" d={band(at) ?? ''} />}
      <path className="bench-middle" d={middle(at) ?? ''} />
    </g>
  );
}

/** Where the gap was read: at the greatest of the line. */
function Read({
  measuredMm,
  xMm,
  scales: { x, y },
  points,
}: Omit<DrawnProps, 'kind'> & { readonly measuredMm: number }) {
  let at = 0;
  for (let index = 1; index < xMm.length - 1; index += 1) {
    if (Math.abs(points.p50Mm[index]) > Math.abs(points.p50Mm[at])) at = index;
  }
  return (
    <g className="bench-read" aria-hidden="true">
      <line x1={x(xMm[at])} x2={x(xMm[at])} y1={y(0)} y2={y(measuredMm)} />
      <circle cx={x(xMm[at])} cy={y(measuredMm)} r={5} />
    </g>
  );
}

export function LineChart({ predicted, expected, lines, measuredMm, system }: LineChartProps) {
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box, { width: 350, height: 200 });
  const { spanFrom, spanTo, xMm } = predicted;
  // Beyond the straightedge the ranges open like a fan: they take no part in the height.
  const within = (points: Points) =>
    [points.p05Mm, points.p95Mm].flatMap((all) => Array.from(all).slice(spanFrom, spanTo + 1));
  const shown = [
    ...(expected ? [{ kind: 'predicted' as const, points: expected }] : []),
    ...(lines
      ? [
          { kind: 'end' as const, points: lines.end },
          { kind: 'now' as const, points: lines.now },
        ]
      : []),
  ];
  if (shown.length === 0) return null;
  const heights = [...shown.flatMap(({ points }) => within(points)), ...(measuredMm === null ? [] : [measuredMm])];
  const scales = chartScales(size, xMm.at(-1)!, heights);
  const { x, y } = scales;
  const says = measuredMm === null ? BENCH_ADVICE_WORDS.keys.predicted : enteredBowText(measuredMm, system);
  return (
    <figure className="bench-chart chart">
      <figcaption className="visually-hidden">{BENCH_ADVICE_WORDS.chart}</figcaption>
      <div ref={box} className="bench-chart-box">
        <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={BENCH_ADVICE_WORDS.chartLabel(says)}>
          <clipPath id="bench-clip">
            <rect x={x.range()[0]} y={0} width={x.range()[1] - x.range()[0]} height={size.height} />
          </clipPath>
          <FretAxis fretXMm={xMm.slice(1, -1)} scales={scales} size={size} />
          <HeightAxis y={y} size={size} system={system} />
          <g clipPath="url(#bench-clip)">
            {shown.map(({ kind, points }) => (
              <Drawn key={kind} kind={kind} xMm={xMm} points={points} scales={scales} />
            ))}
          </g>
          <g className="straightedge" aria-hidden="true">
            <line x1={x(xMm[spanFrom])} x2={x(xMm[spanTo])} y1={y(0)} y2={y(0)} />
            <text x={x(xMm[spanFrom]) + 6} y={y(0) + ((measuredMm ?? -1) < 0 ? 14 : -6)}>
              {CHART_WORDS.straightedge}
            </text>
          </g>
          {measuredMm !== null && (
            <Read
              measuredMm={measuredMm}
              xMm={xMm}
              scales={scales}
              points={lines?.now ?? expected ?? shown[0].points}
            />
          )}
        </svg>
      </div>
      <ul className="bench-keys">
        {shown.map(({ kind }) => (
          <li key={kind} className={`bench-line-${kind}`}>
            <svg viewBox="0 0 28 10" aria-hidden="true">
              <path className="bench-middle" d="M0 5h28" />
            </svg>
            {BENCH_ADVICE_WORDS.keys[kind]}
          </li>
        ))}
      </ul>
    </figure>
  );
}
