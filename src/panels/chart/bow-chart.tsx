/** The line of the fret tops against a straightedge, for each method; the same frets as in the picture above it. */
import { useRef, useState } from 'react';
import { METHODS, type Method } from '../../mechanics/prediction-types.ts';
import { useLineBands, useLines, type Lines } from '../../state/lines.ts';
import type { Solution } from '../../state/solution-slice.ts';
import { useBackbow } from '../../state/store.ts';
import { CourseChart } from '../over-time/course-chart.tsx';
import { COURSE_WORDS } from '../over-time/words.ts';
import { useRailText } from '../rail/rail-text.ts';
import { nearestFret } from '../readouts/figures.ts';
import { bowText } from '../words/bow.ts';
import { CHART_WORDS, METHOD_WORDS } from '../words/panels.ts';
import { ChartDrawing } from './chart-drawing.tsx';
import { MethodLegend } from './method-legend.tsx';
import { ChartTable } from './chart-table.tsx';
import { useSize } from './use-size.ts';
import './chart.css';

/** The chosen method last, so that it is drawn over the others. */
function methodsDrawn(chosen: Method, comparing: boolean): Method[] {
  return comparing ? [...METHODS.filter((method) => method !== chosen), chosen] : [chosen];
}

interface DrawnProps {
  readonly solution: Solution;
  readonly lines: Lines;
  readonly asTable: boolean;
}

function Drawn({ solution, lines, asTable }: DrawnProps) {
  const system = useBackbow((state) => state.unitSystem);
  const comparing = useBackbow((state) => state.comparing);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box, { width: 960, height: 170 });
  const { band, room } = useLineBands();
  const state = useRailText(solution.build);
  const { method: chosen } = solution.build;
  const methods = methodsDrawn(chosen, comparing);
  const { fretXMm } = solution.prediction;
  const said = methods.toReversed().map((method) => {
    const line = lines[method];
    return CHART_WORDS.line(
      METHOD_WORDS[method].label,
      bowText(line.extremeMm, system),
      nearestFret(fretXMm, line.extremeXMm),
    );
  });
  return (
    <div className="chart-box" ref={box}>
      {asTable ? (
        <ChartTable solution={solution} lines={lines} methods={METHODS} state={state} />
      ) : (
        <ChartDrawing
          size={size}
          prediction={solution.prediction}
          lines={lines}
          band={band}
          room={room}
          methods={methods}
          chosen={chosen}
          system={system}
          label={CHART_WORDS.summary(state, said.join(' '))}
        />
      )}
    </div>
  );
}

export function BowChart() {
  const solution = useBackbow((state) => state.solution);
  const lines = useLines();
  const overTime = useBackbow((state) => state.overTime);
  const comparing = useBackbow((state) => state.comparing);
  const [asTable, setAsTable] = useState(false);
  return (
    <section className="chart" aria-label={overTime ? COURSE_WORDS.title : CHART_WORDS.title}>
      <MethodLegend lines={lines} asTable={asTable} setAsTable={setAsTable} />
      {solution && overTime ? (
        <CourseChart solution={solution} methods={methodsDrawn(solution.build.method, comparing)} asTable={asTable} />
      ) : solution && lines ? (
        <Drawn solution={solution} lines={lines} asTable={asTable} />
      ) : (
        <div className="chart-box" />
      )}
    </section>
  );
}
