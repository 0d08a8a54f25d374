/**
 * A chart as a file of its own: drawn once more at a fixed size on light paper under a head, with every colour and size
 * written into it, so that it looks the same wherever it is opened.
 */
import type { ReactNode } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import type { Method } from '../../../mechanics/prediction-types.ts';
import { offerDownload } from '../../../kit/files.ts';

/** Size of the chart without its head, px. */
export const CHART_FILE_SIZE = { width: 960, height: 340 } as const;
/** Height of the line at its foot, px. */
const FOOT_HEIGHT = 22;
const SVG = 'http://www.w3.org/2000/svg';

/** What a style sheet would say of these, the file says itself. */
const LOOKS = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'opacity',
  'paint-order',
  'font-size',
  'font-weight',
  'font-style',
  'text-anchor',
] as const;

/** The same on every element: not worth writing down. */
const PLAIN: Readonly<Record<string, string>> = {
  'fill-opacity': '1',
  'stroke-width': '1px',
  'stroke-dasharray': 'none',
  'stroke-linejoin': 'miter',
  opacity: '1',
  'paint-order': 'normal',
  'font-style': 'normal',
};

function writeLooks(shown: Element, copy: Element): void {
  const looks = getComputedStyle(shown);
  for (const name of LOOKS) {
    const value = looks.getPropertyValue(name);
    if (value !== '' && value !== PLAIN[name]) copy.setAttribute(name, value);
  }
  for (const name of ['class', 'style', 'aria-hidden', 'data-method', 'data-chosen', 'data-neck'])
    copy.removeAttribute(name);
  [...shown.children].forEach((child, index) => writeLooks(child, copy.children[index]));
}

/** A line of the chart in the legend at the head: a sample of it, and what it says. */
export interface LegendEntry {
  readonly style: Method;
  readonly text: string;
  /** Left end and base line of the entry, px. */
  readonly place: readonly [number, number];
}

/** A head of its own, and the chart below it. */
export interface ChartFile {
  /** Name of the file's content, for those who list it. */
  readonly title: string;
  /** What stands at the left of the head. */
  readonly heading: string;
  /** What stands at the right: the moment on the rail, in words. */
  readonly moment: string;
  /** What the chart shows, in words. */
  readonly label: string;
  readonly legend: readonly LegendEntry[];
  readonly headHeight: number;
  /** What it was computed from: program, day and stamp. */
  readonly foot: string;
  /** The chart as one svg element of CHART_FILE_SIZE. */
  readonly chart: ReactNode;
}

function Head({ heading, moment, label, legend }: ChartFile) {
  return (
    <svg>
      <text className="saved-name" x={12} y={22}>
        {heading}
      </text>
      <desc>{label}</desc>
      {legend.map(({ style, text, place }) => (
        <g key={place.join(' ')} transform={`translate(${place.join(' ')})`}>
          <line className={`fret-line line-${style}`} x1={0} x2={30} y1={-4} y2={-4} />
          <text className="saved-method" x={38}>
            {text}
          </text>
        </g>
      ))}
      <text className="saved-moment" x={CHART_FILE_SIZE.width - 12} y={22}>
        {moment}
      </text>
    </svg>
  );
}

/** The chart as the text of an SVG file; its lengths are in the units of the page. */
export function chartFile(content: ChartFile): string {
  const { headHeight, chart, foot } = content;
  const place = document.createElement('div');
  place.className = 'chart saved-chart';
  document.body.append(place);
  const root = createRoot(place);
  try {
    flushSync(() =>
      root.render(
        <>
          <Head {...content} />
          {chart}
          <svg>
            <text className="saved-foot" x={CHART_FILE_SIZE.width - 12} y={FOOT_HEIGHT - 7}>
              {foot}
            </text>
          </svg>
        </>,
      ),
    );
    // Nobody points at a file.
    place.querySelectorAll('.cursor').forEach((cursor) => cursor.remove());
    const file = document.createElementNS(SVG, 'svg');
    const total = CHART_FILE_SIZE.height + headHeight + FOOT_HEIGHT;
    const looks = getComputedStyle(place);
    file.setAttribute('xmlns', SVG);
    file.setAttribute('viewBox', `0 0 ${CHART_FILE_SIZE.width} ${total}`);
    file.setAttribute('width', String(CHART_FILE_SIZE.width));
    file.setAttribute('height', String(total));
    file.setAttribute('font-family', looks.fontFamily);
    const ground = document.createElementNS(SVG, 'rect');
    ground.setAttribute('width', String(CHART_FILE_SIZE.width));
    ground.setAttribute('height', String(total));
    ground.setAttribute('fill', looks.backgroundColor);
    const title = document.createElementNS(SVG, 'title');
    title.textContent = content.title;
    file.append(title, ground);
    place.querySelectorAll(':scope > svg').forEach((shown, index) => {
      const group = document.createElementNS(SVG, 'g');
      const down = [0, headHeight, headHeight + CHART_FILE_SIZE.height][index] ?? 0;
      if (down > 0) group.setAttribute('transform', `translate(0 ${down})`);
      const copy = shown.cloneNode(true) as Element;
      writeLooks(shown, copy);
      group.append(...copy.childNodes);
      file.append(group);
    });
    return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(file)}\n`;
  } finally {
    root.unmount();
    place.remove();
  }
}

/** Offers a chart as a file. @param file its name */
export function saveChartFile(file: string, svg: string): void {
  offerDownload(file, svg, 'image/svg+xml');
}
