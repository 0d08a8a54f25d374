/** The chart of the build as a file, with the name of the build, the moment and a legend. */
import type { Build } from '../../build/build.ts';
import { offerFile } from '../sheets/downloads.ts';
import { fileName } from '../sheets/file-name.ts';
import { METHOD_WORDS } from '../words/panels.ts';
import { bowText } from '../words/bow.ts';
import { chartFile, CHART_FILE_SIZE } from './chart-file.tsx';
import { ChartDrawing, type ChartDrawingProps } from './chart-drawing.tsx';

const HEAD = 62;

export interface SavedChart {
  readonly build: Build;
  /** The moment on the rail, in words. */
  readonly moment: string;
  readonly drawing: Omit<ChartDrawingProps, 'size' | 'onZoom'>;
}

/** Name of the build, the moment in words, and one sample of line for each method. */
function Heading({ build, moment, drawing }: SavedChart) {
  const { methods, lines, system, label } = drawing;
  return (
    <>
      <text className="saved-name" x={12} y={22}>
        {build.name}
      </text>
      <desc>{label}</desc>
      {methods.toReversed().map((method, index) => (
        <g key={method} transform={`translate(${12 + index * 300} 46)`}>
          <line className={`fret-line line-${method}`} x1={0} x2={30} y1={-4} y2={-4} />
          <text className="saved-method" x={38}>
            {METHOD_WORDS[method].label}: {bowText(lines[method].extremeMm, system)}
          </text>
        </g>
      ))}
      <text className="saved-moment" x={CHART_FILE_SIZE.width - 12} y={22}>
        {moment}
      </text>
    </>
  );
}

export function chartSvg(saved: SavedChart): string {
  return chartFile({
    title: saved.build.name,
    head: <Heading {...saved} />,
    headHeight: HEAD,
    chart: <ChartDrawing {...saved.drawing} size={CHART_FILE_SIZE} />,
  });
}

export function saveChart(saved: SavedChart): void {
  offerFile(fileName(saved.build.name, 'line.svg'), new Blob([chartSvg(saved)], { type: 'image/svg+xml' }));
}
