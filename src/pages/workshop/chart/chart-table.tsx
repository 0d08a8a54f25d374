/** The chart as a table, fret by fret, for whoever cannot or does not want to read the drawing. */
import { unitLabel } from '../../../speech/quantity.ts';
import { numberOf } from '../../../speech/quantity-text.ts';
import type { Method } from '../../../mechanics/prediction-types.ts';
import { sampleLine } from '../../../mechanics/relief.ts';
import type { Lines } from '../../../state/lines.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { CHART_WORDS, METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';

interface ChartTableProps {
  readonly solution: Solution;
  readonly lines: Lines;
  readonly methods: readonly Method[];
  /** The moment on the rail, in words. */
  readonly state: string;
}

export function ChartTable({ solution, lines, methods, state }: ChartTableProps) {
  const system = useBackbow((current) => current.unitSystem);
  const { fretXMm, stationXMm } = solution.prediction;
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="chart-table" tabIndex={0} aria-label={CHART_WORDS.tableTitle}>
      <table>
        <caption>{CHART_WORDS.caption(state)}</caption>
        <thead>
          <tr>
            <th scope="col">{CHART_WORDS.fret}</th>
            {methods.map((method) => (
              <th key={method} scope="col">
                {METHOD_WORDS[method].label}, {unitLabel('mm', system)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {fretXMm.map((xMm, index) => (
            <tr key={index}>
              <th scope="row">{index + 1}</th>
              {methods.map((method) => (
                <td key={method} className="number">
                  {numberOf('lineReliefMm', sampleLine(stationXMm, lines[method].reliefMm, xMm), system)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
