/** Relief against time: where the neck goes once it is strung, how sure that is, and when a back-bow has gone. */
import { useMemo, useRef } from 'react';
import type { Method } from '../../../mechanics/prediction-types.ts';
import { currentBands, type Solution } from '../../../state/solution-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { momentOf } from '../../../verdict/rail.ts';
import { useSize } from '../chart/use-size.ts';
import { useRailText } from '../rail/rail-text.ts';
import { bowText } from '../../../speech/bow.ts';
import { CHARTS_WORDS, METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { timeText } from '../../../speech/times.ts';
import { courseOf, flatText, reliefAfter } from './course.ts';
import { CourseDrawing } from './course-drawing.tsx';
import { CourseTable } from './course-table.tsx';
import { COURSE_WORDS } from '../../../speech/en/workshop/course.ts';
import './over-time.css';

interface CourseChartProps {
  readonly solution: Solution;
  /** The chosen one last. */
  readonly methods: readonly Method[];
  readonly asTable: boolean;
}

export function CourseChart({ solution, methods, asTable }: CourseChartProps) {
  const { build, prediction } = solution;
  const system = useBackbow((state) => state.unitSystem);
  const rail = useBackbow((state) => state.rail);
  const uncertainty = useBackbow(currentBands);
  const nowText = useRailText(solution);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box, { width: 960, height: 150 });
  const shown = methods.join(' ');
  const courses = useMemo(
    () => shown.split(' ').map((method) => courseOf(prediction, method as Method)),
    [prediction, shown],
  );
  const band = uncertainty?.methods[build.method].timeCourse ?? null;
  const moment = momentOf(solution, rail);
  const flat = flatText(prediction, build.method, band?.flat ?? null);
  const said = methods
    .toReversed()
    .map((method) =>
      COURSE_WORDS.method(
        METHOD_WORDS[method].label,
        bowText(reliefAfter(prediction, method, 0), system),
        bowText(reliefAfter(prediction, method, build.settleDays), system),
        timeText(build.settleDays),
        bowText(reliefAfter(prediction, method, 3650), system),
      ),
    );
  return (
    <>
      <p className="course-says">
        <strong>{METHOD_WORDS[build.method].label}:</strong> {flat}{' '}
        <span className="quiet">{COURSE_WORDS.rodNeutral}</span>
      </p>
      <div className="chart-box course-box" ref={box} data-keep-clear>
        {asTable ? (
          <CourseTable solution={solution} uncertainty={uncertainty} />
        ) : (
          <CourseDrawing
            size={size}
            courses={courses}
            chosen={build.method}
            band={band}
            targetMm={build.targetReliefMm}
            nowDays={moment.strung ? moment.days : null}
            nowText={nowText}
            system={system}
            label={`${CHARTS_WORDS.time.title}. ${said.join(' ')} ${flat}`}
          />
        )}
      </div>
    </>
  );
}
