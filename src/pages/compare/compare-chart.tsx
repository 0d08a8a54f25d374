/** The fret-top lines of the compared necks in one drawing, what each does at the fret pointed at, and the drawing as a file. */
import type { Build } from '../../neck/build.ts';
import { useCallback, useRef } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import { useBackbow } from '../../state/store.ts';
import { reliefAtFret } from '../workshop/chart/chart-cursor.tsx';
import { useHoveredFret } from '../workshop/chart/use-hovered-fret.ts';
import { useSize } from '../workshop/chart/use-size.ts';
import { bowText } from '../../speech/bow.ts';
import { CHART_WORDS } from '../../speech/en/workshop/workshop.ts';
import { CompareDrawing, type ChartedNeck } from './compare-drawing.tsx';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import '../workshop/chart/chart.css';

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
interface CompareChartProps {
  readonly necks: readonly ChartedNeck[];
  /** Of the necks, in their order. */
  readonly builds: readonly Build[];
  readonly moment: string;
}

export function CompareChart({ necks, builds, moment }: CompareChartProps) {
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
              saveComparison({ necks, builds, moment, system, label }),
            )
          }
        >
          {CHART_WORDS.save}
        </button>
      </div>
    </section>
  );
}
