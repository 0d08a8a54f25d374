/**
 * The bite factor before and after the log as two bells on a log scale: each a normal curve of ln c with the median and
 * the spread that were found, drawn to one height so that width is what differs.
 */
import { scaleLog } from 'd3-scale';
import { area, line } from 'd3-shape';
import { formatNumber } from '../../speech/quantity.ts';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import { GRIP_LOG_SPREAD } from '../../mechanics/uncertainty/inputs.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

const WIDTH = 420;
const HEIGHT = 146;
const MARGIN = { top: 18, right: 12, bottom: 44, left: 12 };
const TICKS = [0.4, 0.6, 0.8, 1, 1.5, 2, 2.5];
const POINTS = 121;

/** @returns [bite factor, height 0 to 1] along the axis */
function bell(median: number, logSpread: number, low: number, high: number): [number, number][] {
  return Array.from({ length: POINTS }, (_, i) => {
    const factor = low * (high / low) ** (i / (POINTS - 1));
    return [factor, Math.exp(-((Math.log(factor / median) / logSpread) ** 2) / 2)];
  });
}

export function BitePicture({ posterior }: { readonly posterior: BitePosterior }) {
  const { median, logSpread, p05, p95 } = posterior;
  const low = Math.min(0.35, p05 * 0.8);
  const high = Math.max(2.9, p95 * 1.25);
  const x = scaleLog([low, high], [MARGIN.left, WIDTH - MARGIN.right]);
  const base = HEIGHT - MARGIN.bottom;
  const y = (height: number) => base - height * (base - MARGIN.top);
  const before = bell(1, GRIP_LOG_SPREAD, low, high);
  const after = bell(median, logSpread, low, high);
  const stroke = line<[number, number]>()
    .x(([factor]) => x(factor))
    .y(([, height]) => y(height));
  const fill = area<[number, number]>()
    .x(([factor]) => x(factor))
    .y0(base)
    .y1(([, height]) => y(height));
  const label = LOG_WORDS.picture(formatNumber(p05, 2), formatNumber(p95, 2));
  const onLeft = x(median) > WIDTH / 2;
  return (
    <svg className="bite-picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      <g aria-hidden="true">
        <path className="bell-before" d={stroke(before) ?? ''} />
        {posterior.necks > 0 && (
          <>
            <path className="bell-fill" d={fill(after.filter(([factor]) => factor >= p05 && factor <= p95)) ?? ''} />
            <path className="bell-after" d={stroke(after) ?? ''} />
            <line className="bell-median" x1={x(median)} x2={x(median)} y1={y(1)} y2={base} />
            <text x={x(median) + (onLeft ? -6 : 6)} y={y(1) - 5} textAnchor={onLeft ? 'end' : 'start'}>
              {formatNumber(median, 2)} {LOG_WORDS.after}
            </text>
          </>
        )}
        <text className="quiet-text" x={x(0.62)} y={y(0.62)} textAnchor="end">
          {LOG_WORDS.before}
        </text>
        <line className="bell-axis" x1={MARGIN.left} x2={WIDTH - MARGIN.right} y1={base} y2={base} />
        {TICKS.map((tick) => (
          <g key={tick} transform={`translate(${x(tick)} ${base})`}>
            <line className="bell-axis" y2={4} />
            <text className="quiet-text" y={17} textAnchor="middle">
              {formatNumber(tick, 1)}
            </text>
          </g>
        ))}
        <text className="quiet-text" x={WIDTH / 2} y={HEIGHT - 6} textAnchor="middle">
          {LOG_WORDS.axis}
        </text>
      </g>
    </svg>
  );
}
