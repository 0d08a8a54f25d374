/** The line of the fret tops against a straightedge, for each method; the same frets as in the picture above it. */
import { lazy, Suspense, useRef, useState } from 'react';
import { METHODS, type Method } from '../../../mechanics/prediction-types.ts';
import { useLineBands, useLines, type Lines } from '../../../state/lines.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { useFollowed } from '../../../state/follow.ts';
import { railText, useRailText } from '../rail/rail-text.ts';
import { nearestFret } from '../readouts/figures.ts';
import { bowText } from '../../../speech/bow.ts';
import { CHART_WORDS, CHARTS_WORDS, METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { NotComputed } from '../not-computed.tsx';
import { ChartDrawing } from './chart-drawing.tsx';
import { ChartTools } from './chart-tools.tsx';
import { rangeOn, type FretRange } from './fret-range.ts';
import { MethodLegend } from './method-legend.tsx';
import { useSize } from './use-size.ts';
import './chart.css';

const ChartTable = lazy(async () => ({ default: (await import('./chart-table.tsx')).ChartTable }));
const RoomChart = lazy(async () => ({ default: (await import('../room/room-chart.tsx')).RoomChart }));
const CourseChart = lazy(async () => ({ default: (await import('../over-time/course-chart.tsx')).CourseChart }));

/** The chosen method last, so that it is drawn over the others. */
function methodsDrawn(chosen: Method, comparing: boolean): Method[] {
  return comparing ? [...METHODS.filter((method) => method !== chosen), chosen] : [chosen];
}

interface DrawnProps {
  readonly solution: Solution;
  readonly drawing: NonNullable<ReturnType<typeof useDrawing>>;
  readonly asTable: boolean;
  readonly range: FretRange;
  readonly setRange: (range: FretRange) => void;
}

/** What the drawing says in words, beside what it is drawn from. */
function useDrawing(solution: Solution | null, lines: Lines | null) {
  const system = useFollowed((state) => state.unitSystem);
  const comparing = useFollowed((state) => state.comparing);
  const { band, room } = useLineBands(useFollowed);
  const moment = useFollowed((state) => state.rail);
  if (!solution || !lines) return null;
  const { build, prediction } = solution;
  const state = railText(build, moment, prediction);
  const methods = methodsDrawn(build.method, comparing);
  const said = methods.toReversed().map((method) => {
    const line = lines[method];
    return CHART_WORDS.line(
      METHOD_WORDS[method].label,
      bowText(line.extremeMm, system),
      nearestFret(prediction.fretXMm, line.extremeXMm),
    );
  });
  const label = CHART_WORDS.summary(state, said.join(' '));
  return {
    prediction,
    lines,
    band,
    room,
    methods,
    chosen: build.method,
    system,
    label,
    targetMm: build.targetReliefMm,
  };
}

function Drawn({ solution, drawing, asTable, range, setRange }: DrawnProps) {
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box, { width: 960, height: 170 });
  const state = useRailText(solution);
  return (
    <div className="chart-box" ref={box} data-keep-clear>
      {asTable ? (
        <Suspense>
          <ChartTable solution={solution} lines={drawing.lines} methods={METHODS} state={state} />
        </Suspense>
      ) : (
        <ChartDrawing {...drawing} size={size} range={range} onZoom={setRange} />
      )}
    </div>
  );
}

export function BowChart() {
  const solution = useFollowed((state) => state.solution);
  const lines = useLines(useFollowed);
  const chart = useFollowed((state) => state.chart);
  const comparing = useFollowed((state) => state.comparing);
  const [asTable, setAsTable] = useState(false);
  const [chosenRange, setRange] = useState<FretRange | null>(null);
  const drawing = useDrawing(solution, lines);
  const frets = solution?.prediction.fretXMm.length ?? 22;
  const rail = useFollowed((state) => state.rail);
  const moment = solution ? railText(solution.build, rail, solution.prediction) : '';
  const range = rangeOn(chosenRange, frets);
  const save =
    solution && drawing
      ? () =>
          void import('./save-chart.tsx').then(({ saveChart }) =>
            saveChart({ build: solution.build, moment, drawing: { ...drawing, range } }),
          )
      : undefined;
  return (
    <section className="chart" data-chart={chart} aria-label={CHARTS_WORDS[chart].title}>
      <MethodLegend lines={lines} />
      <div className="chart-row">
        <div className="chart-place">
          {solution && chart !== 'line' ? (
            <Suspense fallback={<div className="chart-box" />}>
              {chart === 'room' ? (
                <RoomChart solution={solution} />
              ) : (
                <CourseChart
                  solution={solution}
                  methods={methodsDrawn(solution.build.method, comparing)}
                  asTable={asTable}
                />
              )}
            </Suspense>
          ) : solution && drawing ? (
            <Drawn solution={solution} drawing={drawing} asTable={asTable} range={range} setRange={setRange} />
          ) : (
            <div className="chart-box">
              <NotComputed />
            </div>
          )}
        </div>
        <ChartTools
          asTable={asTable}
          setAsTable={setAsTable}
          save={save}
          range={range}
          frets={frets}
          setRange={setRange}
        />
      </div>
    </section>
  );
}
