import { expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { PAPERS, templatePages, templateSvg, type Paper } from '../../../src/fretwork/plan/template.ts';
import { templateWords } from '../../../src/pages/papers/template-words.ts';
import { inWholePixels } from '../../../src/pages/papers/whole-pixels.ts';

const WORDS = templateWords(PRESETS[0].build, 'metric', 'today', 'HGKDRT-BXQ-PLM');

test.each(Object.keys(PAPERS) as Paper[])(
  '%s: a millimetre of the drawing is 96/25.4 pixels in both directions, to rounding',
  (paper) => {
    for (const { svg } of templatePages(PRESETS[0].build, WORDS, paper)) {
      const page = inWholePixels(svg);
      const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(page.svg)!.map(Number);
      // Divided and printed in double precision.
      expect(Math.abs(page.widthPx / width / (96 / 25.4) - 1)).toBeLessThan(1e-12);
      expect(Math.abs(page.heightPx / height / (96 / 25.4) - 1)).toBeLessThan(1e-12);
      expect([page.widthPx % 1, page.heightPx % 1]).toEqual([0, 0]);
      // Less than a pixel is left off, and the drawing itself is untouched.
      expect(PAPERS[paper].lengthMm - width).toBeLessThan(25.4 / 96);
      expect(PAPERS[paper].heightMm - height).toBeLessThan(25.4 / 96);
      expect(page.svg.slice(page.svg.indexOf('>'))).toBe(svg.slice(svg.indexOf('>')));
    }
  },
);

test('refuses what is not at full size', () => {
  expect(() => inWholePixels('<svg width="10px" height="10px" viewBox="0 0 10 10">')).toThrow(RangeError);
  expect(() => inWholePixels('<svg xmlns="x" width="10mm" height="10mm" viewBox="0 0 20 20">')).toThrow(RangeError);
  expect(() => inWholePixels(templateSvg(PRESETS[0].build, WORDS))).not.toThrow();
});
