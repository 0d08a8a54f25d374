/** The chart of compared necks as a file, with the moment, and a sample of line and the greatest bow for each neck. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { footText } from '../papers/stamp/foot-text.ts';
import { chartFile, CHART_FILE_SIZE, saveChartFile } from '../workshop/chart/chart-file.tsx';
import { fileName } from '../../kit/file-name.ts';
import { bowText } from '../../speech/bow.ts';
import { CompareDrawing, type ChartedNeck } from './compare-drawing.tsx';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';

export interface SavedComparison {
  readonly necks: readonly ChartedNeck[];
  /** Of the necks, in their order. */
  readonly builds: readonly Build[];
  /** The moment on the rail, in words. */
  readonly moment: string;
  readonly system: UnitSystem;
  /** What the drawing shows, in words. */
  readonly label: string;
}

const TOP = 46;
const ROW = 22;

export function comparisonSvg({ necks, builds, moment, system, label }: SavedComparison): string {
  return chartFile({
    title: necks.map((neck) => neck.label).join(' · '),
    heading: COMPARE_WORDS.chart,
    moment,
    label,
    legend: necks.map((neck, index) => ({
      style: neck.style,
      text: COMPARE_WORDS.line(neck.label, bowText(neck.line.extremeMm, system)).replace(/\.$/, ''),
      place: [12, TOP + index * ROW],
    })),
    headHeight: TOP + necks.length * ROW,
    foot: footText(builds),
    chart: <CompareDrawing necks={necks} size={CHART_FILE_SIZE} system={system} label={label} />,
  });
}

export function saveComparison(saved: SavedComparison): void {
  const name = saved.necks.map((neck) => neck.label).join(' ');
  saveChartFile(fileName(name, 'comparison.svg'), comparisonSvg(saved));
}
