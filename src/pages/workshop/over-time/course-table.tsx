/** The course as a table: the named times, every method, and the band of the chosen one. */
import { unitLabel } from '../../../speech/quantity.ts';
import { numberOf } from '../../../speech/quantity-text.ts';
import { METHODS } from '../../../mechanics/prediction-types.ts';
import { sampleExtremes } from '../../../mechanics/uncertainty/band-at.ts';
import { bandOf } from '../../../mechanics/uncertainty/band.ts';
import type { Uncertainty } from '../../../mechanics/uncertainty/types.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { bowBandText } from '../../../speech/bow.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { timeText } from '../../../speech/times.ts';
import { NAMED_DAYS, reliefAfter } from './course.ts';
import { SOLVER_WORDS } from '../../../speech/en/workshop/solver.ts';
import { COURSE_WORDS } from '../../../speech/en/workshop/course.ts';

interface CourseTableProps {
  readonly solution: Solution;
  readonly uncertainty: Uncertainty | null;
}

export function CourseTable({ solution, uncertainty }: CourseTableProps) {
  const system = useBackbow((state) => state.unitSystem);
  const isMissing = useBackbow((state) => state.notComputed !== null);
  const { build, prediction } = solution;
  const band = (days: number) => {
    if (!uncertainty) return isMissing ? SOLVER_WORDS.notComputed : '…';
    const { p05, p95 } = bandOf(sampleExtremes(uncertainty, build.method, { strung: true, days, rodPercent: 0 }));
    return bowBandText(p05, p95, system);
  };
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="chart-table" tabIndex={0} aria-label={COURSE_WORDS.table}>
      <table>
        <caption>{COURSE_WORDS.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{COURSE_WORDS.time}</th>
            {METHODS.map((method) => (
              <th key={method} scope="col">
                {METHOD_WORDS[method].label}, {unitLabel('mm', system)}
              </th>
            ))}
            <th scope="col">{COURSE_WORDS.bandColumn(METHOD_WORDS[build.method].label)}</th>
          </tr>
        </thead>
        <tbody>
          {NAMED_DAYS.map((days) => (
            <tr key={days}>
              <th scope="row">{timeText(days)}</th>
              {METHODS.map((method) => (
                <td key={method} className="number">
                  {numberOf('reliefMm', reliefAfter(prediction, method, days), system)}
                </td>
              ))}
              <td className="number">{band(days)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
