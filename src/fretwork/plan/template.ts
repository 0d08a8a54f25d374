/**
 * The cutting template as SVG at 1:1: one user unit is one millimetre (width and height in mm, viewBox in the same
 * numbers). One long sheet, or pages that overlap and are joined by marks. Every sheet carries a bar of 100 mm and one of
 * 4 in (101.6 mm) to be measured before the saw comes out: printers scale.
 *
 *   printable length   l = page length − 2·margin
 *   step               l − overlap
 *   pages              ⌈(length − overlap)/step⌉
 *
 * Paper: A4 297 × 210 mm (ISO 216); Letter 11 × 8.5 in.
 */
import type { Build } from '../../neck/build.ts';
import { MM_PER_INCH } from '../../neck/units.ts';
import {
  clipLine,
  LABEL_ROOM_MM,
  templateShapes,
  type LineKind,
  type LineWords,
  type TemplateLine,
  type TemplateShapes,
  type TemplateText,
} from './template-shapes.ts';

export const PAPERS = {
  a4: { label: 'A4', lengthMm: 297, heightMm: 210 },
  letter: { label: 'Letter', lengthMm: 279.4, heightMm: 215.9 },
} as const;
export type Paper = keyof typeof PAPERS;

export const MARGIN_MM = 12;
export const OVERLAP_MM = 12;

/** Stroke width in mm and dash of each kind of line. */
const STYLE: Readonly<Record<LineKind, { readonly width: number; readonly dash?: string }>> = {
  edge: { width: 0.15 },
  nut: { width: 0.2 },
  slot: { width: 0.1 },
  centre: { width: 0.1, dash: '6 1 1 1' },
  binding: { width: 0.08, dash: '4 1.2' },
  join: { width: 0.1 },
  bar: { width: 0.2 },
};

const BAR_TICK_MM = 3;
const BAR_ROOM_MM = 16;
const HEADING_ROOM_MM = 10;
/** Middle of a join's cross beyond the edge: the positions end at about 14 mm. */
const JOIN_OFF_MM = 17;

/** What is written on the sheets beside the drawing. */
export interface TemplateWords extends LineWords {
  /** Name of the build, version, date. */
  readonly heading: string;
  readonly page: (index: number, count: number) => string;
  /** The heading of a sheet, with how to print it. */
  readonly advice: (heading: string) => string;
  readonly join: string;
}

/** A number for SVG: four decimals of a millimetre, no exponent. */
function n(value: number): string {
  return String(Number(value.toFixed(4)));
}

function escape(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

function drawLine(line: TemplateLine, dx: number, dy: number): string {
  const { width, dash } = STYLE[line.kind];
  const fret = line.fret === undefined ? '' : ` data-fret="${line.fret}"`;
  return `<line class="${line.kind}"${fret} x1="${n(line.x1 + dx)}" y1="${n(line.y1 + dy)}" x2="${n(line.x2 + dx)}" y2="${n(line.y2 + dy)}" stroke-width="${width}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}/>`;
}

function drawText(text: TemplateText, dx: number, dy: number): string {
  const [x, y] = [n(text.x + dx), n(text.y + dy)];
  const turn = text.upright ? ` transform="rotate(90 ${x} ${y})"` : '';
  // A third of the size brings turned figures onto the line that they belong to.
  const shift = text.upright ? ` dy="${n(text.sizeMm / 3)}"` : '';
  return `<text fill="#000" stroke="none" x="${x}" y="${y}"${shift} font-size="${text.sizeMm}" text-anchor="${text.anchor}"${turn}>${escape(text.text)}</text>`;
}

/** A bar of a known length with its label. */
function bar(x: number, y: number, lengthMm: number, label: string): string {
  const line = (x1: number, y1: number, x2: number, y2: number, name = '') =>
    `<line class="bar"${name} x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke-width="${STYLE.bar.width}"/>`;
  return [
    line(x, y, x + lengthMm, y, ` data-length="${label}"`),
    line(x, y - BAR_TICK_MM / 2, x, y + BAR_TICK_MM / 2),
    line(x + lengthMm, y - BAR_TICK_MM / 2, x + lengthMm, y + BAR_TICK_MM / 2),
    drawText({ x: x + lengthMm + 2, y: y + 1, sizeMm: 3, text: label, anchor: 'start' }, 0, 0),
  ].join('\n');
}

function bars(x: number, y: number): string {
  return [bar(x, y, 100, '100 mm'), bar(x, y + 7, 4 * MM_PER_INCH, '4 in')].join('\n');
}

function sheet(lengthMm: number, heightMm: number, title: string, body: readonly string[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(lengthMm)}mm" height="${n(heightMm)}mm" viewBox="0 0 ${n(lengthMm)} ${n(heightMm)}">`,
    `<title>${escape(title)}</title>`,
    '<g fill="none" stroke="#000" font-family="sans-serif">',
    ...body,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** Height of the drawing with its labels, bars and heading, mm. */
function bodyHeightMm(shapes: TemplateShapes): number {
  return HEADING_ROOM_MM + 2 * (shapes.halfMm + LABEL_ROOM_MM) + BAR_ROOM_MM;
}

/** The whole template on one sheet as long as the board. */
export function templateSvg(build: Build, words: TemplateWords): string {
  const shapes = templateShapes(build, words);
  const length = Math.max(shapes.toMm - shapes.fromMm, 130) + 2 * MARGIN_MM;
  const height = bodyHeightMm(shapes) + 2 * MARGIN_MM;
  const dx = MARGIN_MM - shapes.fromMm;
  const dy = MARGIN_MM + HEADING_ROOM_MM + LABEL_ROOM_MM + shapes.halfMm;
  return sheet(length, height, words.heading, [
    drawText({ x: MARGIN_MM, y: MARGIN_MM + 4, sizeMm: 4, text: words.advice(words.heading), anchor: 'start' }, 0, 0),
    ...shapes.lines.map((line) => drawLine(line, dx, dy)),
    ...shapes.texts.map((text) => drawText(text, dx, dy)),
    bars(MARGIN_MM, dy + shapes.halfMm + LABEL_ROOM_MM + 4),
  ]);
}

/** Marks on the line where two pages meet: a cross above and below the board, clear of numbers and positions. */
function joinMarks(x: number, halfMm: number): TemplateLine[] {
  const out = halfMm + JOIN_OFF_MM;
  return [-1, 1].flatMap((side): TemplateLine[] => [
    { kind: 'join', x1: x - 3, y1: side * out, x2: x + 3, y2: side * out },
    { kind: 'join', x1: x, y1: side * (out - 3), x2: x, y2: side * (out + 3) },
  ]);
}

export interface TemplatePage {
  readonly svg: string;
  /** Part of the board on this page, mm from the nut. */
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * The template on pages of landscape paper, in order from the nut.
 * @throws {RangeError} when the board is wider than the paper.
 */
export function templatePages(build: Build, words: TemplateWords, paper: Paper): TemplatePage[] {
  const { lengthMm, heightMm, label } = PAPERS[paper];
  const shapes = templateShapes(build, words);
  const needed = bodyHeightMm(shapes) + 2 * MARGIN_MM;
  if (needed > heightMm) {
    throw new RangeError(
      `the template is ${n(needed)} mm high with its labels; ${label} gives at most ${n(heightMm)} mm`,
    );
  }
  const printable = lengthMm - 2 * MARGIN_MM;
  const step = printable - OVERLAP_MM;
  const total = shapes.toMm - shapes.fromMm;
  const count = Math.max(1, Math.ceil((total - OVERLAP_MM) / step - 1e-9));
  const dy = MARGIN_MM + HEADING_ROOM_MM + LABEL_ROOM_MM + shapes.halfMm;
  // Page i ends where page i + 1 has begun an overlap before; they meet in the middle of it.
  const joins = Array.from({ length: count - 1 }, (_, i) => shapes.fromMm + (i + 1) * step + OVERLAP_MM / 2);

  return Array.from({ length: count }, (_, index): TemplatePage => {
    const fromMm = shapes.fromMm + index * step;
    const toMm = Math.min(shapes.toMm, fromMm + printable);
    const dx = MARGIN_MM - fromMm;
    const within = (x: number) => x >= fromMm && x <= toMm;
    const heading = words.page(index + 1, count);
    const meets = joins.filter(within);
    const svg = sheet(lengthMm, heightMm, heading, [
      drawText({ x: MARGIN_MM, y: MARGIN_MM + 4, sizeMm: 4, text: words.advice(heading), anchor: 'start' }, 0, 0),
      ...shapes.lines
        .map((line) => clipLine(line, fromMm, toMm))
        .filter((line) => line !== undefined)
        .map((line) => drawLine(line, dx, dy)),
      ...shapes.texts.filter((text) => within(text.x)).map((text) => drawText(text, dx, dy)),
      ...meets.flatMap((x) => joinMarks(x, shapes.halfMm)).map((line) => drawLine(line, dx, dy)),
      ...meets.map((x) =>
        drawText(
          {
            x: x + (x - fromMm < printable / 2 ? 4 : -4),
            y: -shapes.halfMm - JOIN_OFF_MM - 1,
            sizeMm: 2.4,
            text: words.join,
            anchor: x - fromMm < printable / 2 ? 'start' : 'end',
          },
          dx,
          dy,
        ),
      ),
      bars(MARGIN_MM, dy + shapes.halfMm + LABEL_ROOM_MM + 4),
    ]);
    return { svg, fromMm, toMm };
  });
}
