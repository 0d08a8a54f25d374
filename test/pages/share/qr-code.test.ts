/** The QR code says what it was given: read back by a decoder of other hands (jsQR). */
import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { MOST_FOR_QR, qrPath } from '../../../src/pages/share/qr-code.tsx';

/** Draws the path as pixels, so many to a module. */
function pixelsOf(text: string, scale = 3): { data: Uint8ClampedArray; width: number } {
  const { path, size } = qrPath(text);
  const width = size * scale;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let row = 0; row < scale; row += 1) {
      for (let column = 0; column < scale; column += 1) {
        const at = 4 * ((Number(y) * scale + row) * width + Number(x) * scale + column);
        data.fill(0, at, at + 3);
      }
    }
  }
  return { data, width };
}

test.each([1, 60, 300, 700, MOST_FOR_QR])('a link of %d characters is read back', (length) => {
  const text = `https://example.org/#neck=1.${'aB3_-'.repeat(300)}`.slice(0, length);
  const { data, width } = pixelsOf(text);
  expect(jsQR(data, width, width)?.data).toBe(text);
});

test('four modules of white stand around it, as ISO/IEC 18004 asks', () => {
  const { path, size } = qrPath('https://example.org/');
  const places = Array.from(path.matchAll(/M(\d+) (\d+)h/g), ([, x, y]) => [Number(x), Number(y)]).flat();
  expect([Math.min(...places), size - 1 - Math.max(...places)]).toEqual([4, 4]);
});
