/** The chart of compared necks as a file, with the moment, and a sample of line and the greatest bow for each neck. */
import type { UnitSystem } from '../../build/units.ts';
import { chartFile, CHART_FILE_SIZE } from '../chart/chart-file.tsx';
import { offerFile } from '../sheets/downloads.ts';
import { fileName } from '../sheets/file-name.ts';
import { bowText } from '../words/bow.ts';
import { CompareDrawing, type ChartedNeck } from './compare-drawing.tsx';
import { COMPARE_WORDS } from './words.ts';

export interface SavedComparison {
  readonly necks: readonly ChartedNeck[];
  /** The moment on the rail, in words. */
  readonly moment: string;
  readonly system: UnitSystem;
  /** What the drawing shows, in words. */
  readonly label: string;
}

const TOP = 46;
const ROW = 22;

function Heading({ necks, moment, system, label }: SavedComparison) {
  return (
    <>
      <text className="saved-name" x={12} y={22}>
        {COMPARE_WORDS.chart}
      </text>
      <desc>{label}</desc>
      {necks.map((neck, index) => (
        <g key={neck.label} transform={`translate(12 ${TOP + index * ROW})`}>
          <line className={`fret-line line-${neck.style}`} x1={0} x2={30} y1={-4} y2={-4} />
          <text className="saved-method" x={38}>
            {COMPARE_WORDS.line(neck.label, bowText(neck.line.extremeMm, system)).replace(/\.$/, '')}
          </text>
        </g>
      ))}
      <text className="saved-moment" x={CHART_FILE_SIZE.width - 12} y={22}>
        {moment}
      </text>
    </>
  );
}

export function comparisonSvg(saved: SavedComparison): string {
  const { necks, system, label } = saved;
  return chartFile({
    title: necks.map((neck) => neck.label).join(' · '),
    head: <Heading {...saved} />,
    headHeight: TOP + necks.length * ROW,
    chart: <CompareDrawing necks={necks} size={CHART_FILE_SIZE} system={system} label={label} />,
  });
}

export function saveComparison(saved: SavedComparison): void {
  const name = saved.necks.map((neck) => neck.label).join(' ');
  offerFile(fileName(name, 'comparison.svg'), new Blob([comparisonSvg(saved)], { type: 'image/svg+xml' }));
}
