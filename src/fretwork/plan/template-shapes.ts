/**
 * The cutting template as lines and words in millimetres: x from the nut along the centre line, z across, the board seen
 * from above. Positions are those of slots.ts; across, a radiused board is drawn as it projects, not along its arc.
 */
import type { Build } from '../../neck/build.ts';
import { boardEndMm, boardWidthMm } from '../../neck/neck-shape.ts';
import { fretEnds, madeEnds, type FretEnd } from '../ends.ts';

export type LineKind = 'edge' | 'centre' | 'slot' | 'nut' | 'binding' | 'join' | 'bar';

export interface TemplateLine {
  readonly kind: LineKind;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  /** Fret number of a slot line. */
  readonly fret?: number;
}

export interface TemplateText {
  readonly x: number;
  readonly y: number;
  readonly sizeMm: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Turned to read from the right-hand side. */
  readonly upright?: true;
}

export interface TemplateShapes {
  readonly lines: readonly TemplateLine[];
  readonly texts: readonly TemplateText[];
  /** x of both ends, and half the greatest width, labels excluded. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly halfMm: number;
}

/** What is written beside the lines. */
export interface LineWords {
  readonly nut: string;
  /** The distance of a slot from the nut. */
  readonly position: (xMm: number) => string;
}

/** Distance of the fret numbers and positions from the edge of the board. */
const NUMBER_OFF_MM = 3.5;
const POSITION_OFF_MM = 2;
/** Room that the positions, and the crosses beyond them, take outside the edge. */
export const LABEL_ROOM_MM = 20;
const CENTRE_OVERHANG_MM = 4;

function bindingLines(build: Build, ends: readonly FretEnd[]): TemplateLine[] {
  const wood = build.bindingLineCount === 0 ? [] : ends[0].lines;
  const edgeAt = (x: number) => boardWidthMm(build, x) / 2;
  const [from, to] = [0, boardEndMm(build)];
  return wood.flatMap((line) => {
    // Binding is of even thickness, so its inner face runs beside the edge.
    const inset = ends[0].boardHalfMm - line.innerMm;
    return [-1, 1].map((side) => ({
      kind: 'binding' as const,
      x1: from,
      y1: side * (edgeAt(from) - inset),
      x2: to,
      y2: side * (edgeAt(to) - inset),
    }));
  });
}

export function templateShapes(build: Build, words: LineWords): TemplateShapes {
  const ends = fretEnds(build);
  const end = boardEndMm(build);
  const half = (x: number) => boardWidthMm(build, x) / 2;
  const lines: TemplateLine[] = [
    ...[-1, 1].map((side) => ({ kind: 'edge' as const, x1: 0, y1: side * half(0), x2: end, y2: side * half(end) })),
    { kind: 'edge', x1: end, y1: -half(end), x2: end, y2: half(end) },
    { kind: 'nut', x1: 0, y1: -half(0), x2: 0, y2: half(0) },
    { kind: 'centre', x1: -CENTRE_OVERHANG_MM, y1: 0, x2: end + CENTRE_OVERHANG_MM, y2: 0 },
    ...bindingLines(build, ends),
    ...madeEnds(build).map(({ fret, xMm, slotHalfMm }) => ({
      kind: 'slot' as const,
      fret,
      x1: xMm,
      y1: -slotHalfMm,
      x2: xMm,
      y2: slotHalfMm,
    })),
  ];
  const texts: TemplateText[] = [
    { x: 0, y: -half(0) - NUMBER_OFF_MM, sizeMm: 3, text: words.nut, anchor: 'middle' },
    ...ends.flatMap(({ fret, xMm, boardHalfMm }): TemplateText[] => [
      { x: xMm, y: -boardHalfMm - NUMBER_OFF_MM, sizeMm: 3, text: String(fret), anchor: 'middle' },
      {
        x: xMm,
        y: boardHalfMm + POSITION_OFF_MM,
        sizeMm: 2.4,
        text: words.position(xMm),
        anchor: 'start',
        upright: true,
      },
    ]),
  ];
  return {
    lines,
    texts,
    fromMm: -CENTRE_OVERHANG_MM,
    toMm: end + CENTRE_OVERHANG_MM,
    halfMm: Math.max(half(0), half(end)),
  };
}

/** The part of a line between two values of x; undefined when it lies outside. */
export function clipLine(line: TemplateLine, fromX: number, toX: number): TemplateLine | undefined {
  const { x1, y1, x2, y2 } = line;
  if (Math.max(x1, x2) < fromX || Math.min(x1, x2) > toX) return undefined;
  if (x1 === x2) return line;
  const at = (x: number) => y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
  const inside = (x: number) => Math.min(toX, Math.max(fromX, x));
  return { ...line, x1: inside(x1), y1: at(inside(x1)), x2: inside(x2), y2: at(inside(x2)) };
}
