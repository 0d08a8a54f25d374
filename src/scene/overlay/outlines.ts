/** The edges of cut faces, as ink lines. */
import type { DrawnOutlines } from '../section/section-model.ts';
import type { Ink } from './ink.ts';
import type { Projector } from './project.ts';

export function drawOutlines(ink: Ink, projector: Projector, faces: readonly DrawnOutlines[]): void {
  const { context, palette } = ink;
  context.save();
  context.strokeStyle = palette.ink;
  context.lineJoin = 'round';
  for (const { positions, outlines, strong } of faces) {
    context.lineWidth = strong ? 1.5 : 1.1;
    context.beginPath();
    for (const { first, count, closed } of outlines) {
      let begun = false;
      for (let i = 0; i < count; i++) {
        const at = 3 * (first + i);
        const place = projector.drawn(positions[at], positions[at + 1], positions[at + 2]);
        if (!place) continue;
        if (begun) context.lineTo(place[0], place[1]);
        else context.moveTo(place[0], place[1]);
        begun = true;
      }
      if (begun && closed) context.closePath();
    }
    context.stroke();
  }
  context.restore();
}
