/**
 * Reads straight lines out of the pages of a PDF as Chromium writes it (ISO 32000): deflated content streams, the
 * graphics-state stack, `cm`, `m`, `l`, `S`. Nothing else is needed to measure a drawing.
 */
import { inflateSync } from 'node:zlib';

export interface PdfLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Strokes of one straight line each; mm from the lower left corner of the page. */
  readonly lines: readonly PdfLine[];
}

type Matrix = readonly [number, number, number, number, number, number];

const MM_PER_POINT = 25.4 / 72;

function times(m: Matrix, n: Matrix): Matrix {
  return [
    m[0] * n[0] + m[1] * n[2],
    m[0] * n[1] + m[1] * n[3],
    m[2] * n[0] + m[3] * n[2],
    m[2] * n[1] + m[3] * n[3],
    m[4] * n[0] + m[5] * n[2] + n[4],
    m[4] * n[1] + m[5] * n[3] + n[5],
  ];
}

function linesOf(content: string): PdfLine[] {
  const lines: PdfLine[] = [];
  const stack: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let path: [number, number][] = [];
  let operands: number[] = [];
  const place = (x: number, y: number): [number, number] => [
    (matrix[0] * x + matrix[2] * y + matrix[4]) * MM_PER_POINT,
    (matrix[1] * x + matrix[3] * y + matrix[5]) * MM_PER_POINT,
  ];
  for (const [word] of content.matchAll(/\[[^\]]*\]|<[^>]*>|\S+/g)) {
    const value = Number(word);
    if (!Number.isNaN(value)) {
      operands.push(value);
      continue;
    }
    if (word === 'q') stack.push(matrix);
    else if (word === 'Q') matrix = stack.pop() ?? matrix;
    else if (word === 'cm') matrix = times(operands.slice(-6) as unknown as Matrix, matrix);
    else if (word === 'm' || word === 'l') path.push(place(operands.at(-2)!, operands.at(-1)!));
    else if (word === 'S' && path.length === 2) {
      const [[x1, y1], [x2, y2]] = path as [[number, number], [number, number]];
      lines.push({ x1, y1, x2, y2 });
    }
    if (['S', 's', 'f', 'n', 'f*', 'B'].includes(word)) path = [];
    operands = [];
  }
  return lines;
}

function streamOf(pdf: Buffer, object: number): string {
  const text = pdf.toString('latin1');
  const start = text.search(new RegExp(`(^|\\n)${object} 0 obj\\b`));
  const begin = /stream\r?\n/g;
  begin.lastIndex = start;
  const found = begin.exec(text)!;
  const from = found.index + found[0].length;
  return inflateSync(pdf.subarray(from, text.indexOf('endstream', from))).toString('latin1');
}

/** Pages in order. @throws {Error} when a content stream is missing or cannot be inflated */
export function readPdf(pdf: Buffer): PdfPage[] {
  const text = pdf.toString('latin1');
  return [
    ...text.matchAll(
      /<<([^<>]|<<[^<>]*(<<[^<>]*>>[^<>]*)*>>)*\/Type \/Page\b([^<>]|<<[^<>]*(<<[^<>]*>>[^<>]*)*>>)*>>/g,
    ),
  ].map(([page]) => {
    const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page);
    const contents = /\/Contents (\d+) 0 R/.exec(page);
    return {
      widthMm: Number(box?.[1]) * MM_PER_POINT,
      heightMm: Number(box?.[2]) * MM_PER_POINT,
      lines: contents ? linesOf(streamOf(pdf, Number(contents[1]))) : [],
    };
  });
}
