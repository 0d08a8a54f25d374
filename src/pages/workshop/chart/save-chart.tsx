/** The chart of the build as a file, with the name of the build, the moment and a legend. */
import type { Build } from '../../../neck/build.ts';
import { fileName } from '../../../kit/file-name.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { bowText } from '../../../speech/bow.ts';
import { footText } from '../../papers/stamp/foot-text.ts';
import { chartFile, CHART_FILE_SIZE, saveChartFile } from './chart-file.tsx';
import { ChartDrawing, type ChartDrawingProps } from './chart-drawing.tsx';

export interface SavedChart {
  readonly build: Build;
  /** The moment on the rail, in words. */
  readonly moment: string;
  readonly drawing: Omit<ChartDrawingProps, 'size' | 'onZoom'>;
}

export function chartSvg({ build, moment, drawing }: SavedChart): string {
  const { methods, lines, system, label } = drawing;
  return chartFile({
    title: build.name,
    heading: build.name,
    moment,
    label,
    legend: methods.toReversed().map((method, index) => ({
      style: method,
      text: `${METHOD_WORDS[method].label}: ${bowText(lines[method].extremeMm, system)}`,
      place: [12 + index * 300, 46],
    })),
    headHeight: 62,
    foot: footText([build]),
    chart: <ChartDrawing {...drawing} size={CHART_FILE_SIZE} />,
  });
}

export function saveChart(saved: SavedChart): void {
  saveChartFile(fileName(saved.build.name, 'line.svg'), chartSvg(saved));
}
