/** The key of the stress colours, in MPa. */
import { withDecimalSign } from '../../speech/quantity.ts';
import { stressCss } from '../section/stress-colours.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import { stroke, write, type Ink } from './ink.ts';

const WIDTH = 180;
const HEIGHT = 12;
const STEPS = 60;

export function drawStressKey(ink: Ink, limitMPa: number): void {
  const { context, width, height } = ink;
  const x = width - WIDTH - (width < 560 ? 16 : 28);
  const y = height - 44;
  for (let i = 0; i < STEPS; i++) {
    context.fillStyle = stressCss((2 * i) / (STEPS - 1) - 1);
    context.fillRect(x + (WIDTH * i) / STEPS, y, WIDTH / STEPS + 0.6, HEIGHT);
  }
  context.strokeStyle = ink.palette.ink;
  context.lineWidth = 1;
  context.strokeRect(x, y, WIDTH, HEIGHT);
  for (const share of [-1, -0.5, 0, 0.5, 1]) {
    const tick = x + (WIDTH * (share + 1)) / 2;
    stroke(ink, [
      [tick, y + HEIGHT],
      [tick, y + HEIGHT + 4],
    ]);
    const value = share * limitMPa;
    const size = withDecimalSign(String(Number(Math.abs(value).toPrecision(2))));
    const text = value === 0 ? '0' : `${value < 0 ? '−' : '+'}${size}`;
    write(ink, text, [tick, y + HEIGHT + 6], { size: 11, align: 'center', baseline: 'top' });
  }
  write(ink, SCENE_WORDS.stressKey, [x + WIDTH, y - 21], { size: 12, align: 'right' });
  write(ink, SCENE_WORDS.compression, [x, y - 6], { size: 12 });
  write(ink, SCENE_WORDS.tension, [x + WIDTH, y - 6], { size: 12, align: 'right' });
}
