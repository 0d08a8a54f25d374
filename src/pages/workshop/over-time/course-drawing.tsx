/** The drawing: time on a log scale from an hour to ten years, the relief with the hump above. */
import { area, line } from 'd3-shape';
import { scaleLog, type ScaleContinuousNumeric } from 'd3-scale';
import type { UnitSystem } from '../../../neck/units.ts';
import { RELIEF_TOLERANCE_MM } from '../../../fretwork/checks/limits.ts';
import type { Method } from '../../../mechanics/prediction-types.ts';
import { FIRST_DAYS, LAST_DAYS } from '../../../mechanics/uncertainty/time-course.ts';
import type { TimeCourseBand } from '../../../mechanics/uncertainty/types.ts';
import { HeightAxis } from '../chart/chart-axes.tsx';
import { chartScales, MARGIN, type ChartScales, type ChartSize } from '../chart/chart-scales.ts';
import { timeText } from '../../../speech/times.ts';
import { NAMED_DAYS, shortTime, type Course } from './course.ts';
import { COURSE_WORDS } from '../../../speech/en/workshop/course.ts';

interface CourseDrawingProps {
  readonly size: ChartSize;
  /** In the order of drawing: the last lies on top, and is the chosen one. */
  readonly courses: readonly Course[];
  readonly chosen: Method;
  /** Of the chosen method; null while it is being computed. */
  readonly band: TimeCourseBand | null;
  readonly targetMm: number;
  /** Days since stringing of the moment on the rail; null before that. */
  readonly nowDays: number | null;
  readonly nowText: string;
  readonly system: UnitSystem;
  readonly label: string;
}

interface Scales {
  readonly x: ScaleContinuousNumeric<number, number>;
  readonly y: ChartScales['y'];
}

/** Below this width the times are written short, px. */
const NARROW = 640;

function* reliefsOf({ courses, band, targetMm }: CourseDrawingProps): Generator<number> {
  yield* [0, targetMm - RELIEF_TOLERANCE_MM, targetMm + RELIEF_TOLERANCE_MM];
  for (const { reliefMm } of courses) yield* reliefMm;
  if (band) {
    yield* band.p05Mm;
    yield* band.p95Mm;
  }
}

function TimeAxis({ size, x }: Pick<CourseDrawingProps, 'size'> & Pick<Scales, 'x'>) {
  const base = size.height - MARGIN.bottom;
  const isNarrow = size.width < NARROW;
  return (
    <g className="axis" aria-hidden="true">
      <line x1={x(FIRST_DAYS)} x2={x(LAST_DAYS)} y1={base} y2={base} />
      {NAMED_DAYS.map((days) => (
        <g key={days} transform={`translate(${x(days)} ${base})`}>
          <line className="fret-tick" y1={MARGIN.top - base} y2={4} />
          <text className={days === LAST_DAYS ? 'last-time' : undefined} y={17}>
            {isNarrow ? shortTime(days) : timeText(days)}
          </text>
        </g>
      ))}
    </g>
  );
}

function Target({ targetMm, size, x, y }: Pick<CourseDrawingProps, 'targetMm' | 'size'> & Scales) {
  const [top, bottom] = [y(targetMm - RELIEF_TOLERANCE_MM), y(targetMm + RELIEF_TOLERANCE_MM)];
  return (
    <g className="course-target" aria-hidden="true">
      <rect x={x(FIRST_DAYS)} width={x(LAST_DAYS) - x(FIRST_DAYS)} y={top} height={bottom - top} />
      <text x={size.width - MARGIN.right - 4} y={(top + bottom) / 2} dy="0.35em" textAnchor="end">
        {COURSE_WORDS.wanted}
      </text>
    </g>
  );
}

function Now({
  nowDays,
  nowText,
  size,
  x,
}: Pick<CourseDrawingProps, 'nowDays' | 'nowText' | 'size'> & Pick<Scales, 'x'>) {
  if (nowDays === null) return null;
  const at = x(Math.min(LAST_DAYS, Math.max(FIRST_DAYS, nowDays)));
  const onLeft = at > size.width / 2;
  return (
    <g className="course-now" aria-hidden="true">
      <line x1={at} x2={at} y1={MARGIN.top} y2={size.height - MARGIN.bottom} />
      <text x={at + (onLeft ? -6 : 6)} y={MARGIN.top - 8} textAnchor={onLeft ? 'end' : 'start'}>
        {nowText}
      </text>
    </g>
  );
}

export function CourseDrawing(props: CourseDrawingProps) {
  const { size, courses, chosen, band, system, label } = props;
  const { y } = chartScales(size, 1, reliefsOf(props));
  const x = scaleLog([FIRST_DAYS, LAST_DAYS], [MARGIN.left, size.width - MARGIN.right]);
  const path = line<number>().x((days) => x(days));
  return (
    <svg className="course" viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={label}>
      <TimeAxis size={size} x={x} />
      <HeightAxis y={y} size={size} system={system} />
      <Target {...props} x={x} y={y} />
      {band && (
        <path
          className={`band band-${chosen}`}
          aria-hidden="true"
          d={
            area<number>()
              .x((days) => x(days))
              .y0((_days, at) => y(band.p05Mm[at]))
              .y1((_days, at) => y(band.p95Mm[at]))(Array.from(band.days)) ?? ''
          }
        />
      )}
      <g className="course-flat" aria-hidden="true">
        <line x1={x(FIRST_DAYS)} x2={x(LAST_DAYS)} y1={y(0)} y2={y(0)} />
        <text x={size.width - MARGIN.right - 4} y={y(0) - 5} textAnchor="end">
          {COURSE_WORDS.flat}
        </text>
      </g>
      {courses.map(({ method, days, reliefMm }) => (
        <path
          key={method}
          className={`fret-line line-${method}`}
          data-method={method}
          data-chosen={method === chosen || undefined}
          d={path.y((_days, at) => y(reliefMm[at]))(Array.from(days)) ?? ''}
        />
      ))}
      <Now {...props} x={x} />
    </svg>
  );
}
