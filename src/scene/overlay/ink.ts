/** Drawing on top of the picture in page pixels: the same strokes go to the screen and into the exported picture. */
import type { ScenePalette } from '../types.ts';

export interface Ink {
  readonly context: CanvasRenderingContext2D;
  readonly width: number;
  readonly height: number;
  readonly palette: ScenePalette;
  /** Family of the page's text. */
  readonly font: string;
}

export type Place = readonly [x: number, y: number];

/** A line through the points, over a wider one in the colour of the ground, so that it shows on dark wood and on light. */
export function stroke(
  ink: Ink,
  points: readonly Place[],
  width = 1,
  colour = ink.palette.ink,
  dash: number[] = [],
): void {
  const { context, palette } = ink;
  context.save();
  context.lineJoin = 'round';
  context.beginPath();
  points.forEach(([x, y], index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
  context.strokeStyle = palette.ground;
  context.globalAlpha = 0.85;
  context.lineWidth = width + 2.6;
  context.stroke();
  context.globalAlpha = 1;
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.setLineDash(dash);
  context.stroke();
  context.restore();
}

export interface TextStyle {
  readonly size?: number;
  readonly weight?: number;
  readonly align?: CanvasTextAlign;
  readonly baseline?: CanvasTextBaseline;
  readonly colour?: string;
  /** Paint the ground behind the letters, so that they stay legible over anything. */
  readonly halo?: boolean;
}

function setFont(ink: Ink, { size = 12, weight = 400 }: TextStyle): void {
  ink.context.font = `${weight} ${size}px ${ink.font}`;
}

export function textWidth(ink: Ink, text: string, style: TextStyle = {}): number {
  ink.context.save();
  setFont(ink, style);
  const { width } = ink.context.measureText(text);
  ink.context.restore();
  return width;
}

export function write(ink: Ink, text: string, [x, y]: Place, style: TextStyle = {}): void {
  const { context, palette } = ink;
  context.save();
  setFont(ink, style);
  context.textAlign = style.align ?? 'left';
  context.textBaseline = style.baseline ?? 'alphabetic';
  if (style.halo !== false) {
    context.lineJoin = 'round';
    context.lineWidth = 4;
    context.strokeStyle = palette.ground;
    context.strokeText(text, x, y);
  }
  context.fillStyle = style.colour ?? palette.ink;
  context.fillText(text, x, y);
  context.restore();
}

/** A slim arrow head with its point at `tip`, coming from `from`. */
export function arrowHead(ink: Ink, tip: Place, from: Place, size = 6, colour = ink.palette.ink): void {
  const { context } = ink;
  const angle = Math.atan2(tip[1] - from[1], tip[0] - from[0]);
  context.save();
  context.fillStyle = colour;
  context.translate(tip[0], tip[1]);
  context.rotate(angle);
  context.beginPath();
  context.moveTo(0, 0);
  context.lineTo(-size, size * 0.32);
  context.lineTo(-size, -size * 0.32);
  context.closePath();
  context.fill();
  context.restore();
}
