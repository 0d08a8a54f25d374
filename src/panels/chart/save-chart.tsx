/**
 * The chart as a file of its own: drawn once more at a fixed size on light paper, with the name of the build, the moment and
 * a legend, and every colour and size written into it, so that it looks the same wherever it is opened.
 */
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import type { Build } from '../../build/build.ts';
import { offerFile } from '../sheets/downloads.ts';
import { fileName } from '../sheets/file-name.ts';
import { METHOD_WORDS } from '../words/panels.ts';
import { bowText } from '../words/bow.ts';
import { ChartDrawing, type ChartDrawingProps } from './chart-drawing.tsx';

const SIZE = { width: 960, height: 340 } as const;
const HEAD = 62;
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
  for (const name of ['class', 'style', 'aria-hidden', 'data-method', 'data-chosen']) copy.removeAttribute(name);
  [...shown.children].forEach((child, index) => writeLooks(child, copy.children[index]!));
}

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
      <text className="saved-moment" x={SIZE.width - 12} y={22}>
        {moment}
      </text>
    </>
  );
}

/** The chart as the text of an SVG file; its lengths are in the units of the page. */
export function chartSvg(saved: SavedChart): string {
  const { build, drawing } = saved;
  const place = document.createElement('div');
  place.className = 'chart saved-chart';
  document.body.append(place);
  const root = createRoot(place);
  try {
    flushSync(() =>
      root.render(
        <>
          <svg>
            <Heading {...saved} />
          </svg>
          <ChartDrawing {...drawing} size={SIZE} />
        </>,
      ),
    );
    // Nobody points at a file.
    place.querySelectorAll('.cursor').forEach((cursor) => cursor.remove());
    const file = document.createElementNS(SVG, 'svg');
    const total = SIZE.height + HEAD;
    const looks = getComputedStyle(place);
    file.setAttribute('xmlns', SVG);
    file.setAttribute('viewBox', `0 0 ${SIZE.width} ${total}`);
    file.setAttribute('width', String(SIZE.width));
    file.setAttribute('height', String(total));
    file.setAttribute('font-family', looks.fontFamily);
    const ground = document.createElementNS(SVG, 'rect');
    ground.setAttribute('width', String(SIZE.width));
    ground.setAttribute('height', String(total));
    ground.setAttribute('fill', looks.backgroundColor);
    const title = document.createElementNS(SVG, 'title');
    title.textContent = build.name;
    file.append(title, ground);
    place.querySelectorAll(':scope > svg').forEach((shown, index) => {
      const group = document.createElementNS(SVG, 'g');
      if (index > 0) group.setAttribute('transform', `translate(0 ${HEAD})`);
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

export function saveChart(saved: SavedChart): void {
  offerFile(fileName(saved.build.name, 'line.svg'), new Blob([chartSvg(saved)], { type: 'image/svg+xml' }));
}
