import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { fretEnds } from '../../src/fretwork/ends.ts';
import {
  MARGIN_MM,
  OVERLAP_MM,
  PAPERS,
  templatePages,
  templateSvg,
  type Paper,
  type TemplateWords,
} from '../../src/fretwork/plan/template.ts';
import { clipLine } from '../../src/fretwork/plan/template-shapes.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, UNBOUND_FLAT } from './boards.ts';
import { expectNear } from './near.ts';

interface Drawn {
  readonly kind: string;
  readonly fret: number | undefined;
  readonly bar: string | undefined;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Reads the lines back out of the SVG text. */
function readLines(svg: string): Drawn[] {
  return [...svg.matchAll(/<line ([^>]*)\/>/g)].map(([, text]) => {
    const attributes = new Map([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]));
    const coordinate = (key: string) => Number(attributes.get(key));
    return {
      kind: attributes.get('class')!,
      fret: attributes.has('data-fret') ? Number(attributes.get('data-fret')) : undefined,
      bar: attributes.get('data-length'),
      x1: coordinate('x1'),
      y1: coordinate('y1'),
      x2: coordinate('x2'),
      y2: coordinate('y2'),
    };
  });
}

const readSize = (svg: string) =>
  /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!.slice(1).map(Number);
const within = (value: number, target: number) => expect(Math.abs(value - target)).toBeLessThan(0.01);
const wordsIn = (position: TemplateWords['position']): TemplateWords => ({
  heading: 'Neck 7 <oak & ash>',
  page: (index, count) => `page ${index} of ${count}`,
  advice: (heading) => `${heading}: print at 100 %`,
  join: 'join here',
  nut: 'nut',
  position,
});
const WORDS = wordsIn((xMm) => `${xMm.toFixed(2)} mm`);
const INCHES = wordsIn((xMm) => `${(xMm / 25.4).toFixed(3)} in`);

describe('one sheet', () => {
  const svg = templateSvg(BOUND_CONICAL, WORDS);
  const lines = readLines(svg);
  const nut = lines.find((line) => line.kind === 'nut')!;

  it('one user unit is one millimetre', () => {
    const [width, height, boxWidth, boxHeight] = readSize(svg);
    expect([boxWidth, boxHeight]).toEqual([width, height]);
    expectNear(lines.find((line) => line.bar === '100 mm')!.x2 - MARGIN_MM, 100, 1e-9, 'drawn to four decimals');
    expectNear(lines.find((line) => line.bar === '4 in')!.x2 - MARGIN_MM, 101.6, 1e-9, 'drawn to four decimals');
  });

  it('measures back to 0.01 mm: slots, their length, taper, end of the board', () => {
    const slots = lines.filter((line) => line.kind === 'slot');
    expect(slots).toHaveLength(22);
    for (const end of fretEnds(BOUND_CONICAL)) {
      const slot = slots.find((line) => line.fret === end.fret)!;
      within(slot.x1 - nut.x1, 628 * (1 - 2 ** (-end.fret / 12)));
      within(slot.x2, slot.x1);
      within(slot.y2 - slot.y1, 2 * end.slotHalfMm);
    }
    within(nut.y2 - nut.y1, 43);
    // Taper: the edge at the last fret is half of 57; the board runs on 10 mm with the same taper.
    const edge = lines.find((line) => line.kind === 'edge' && line.y1 > nut.y1 + 20)!;
    const last = 628 * (1 - 2 ** (-22 / 12));
    within(edge.x2 - nut.x1, last + 10);
    const centre = (nut.y1 + nut.y2) / 2;
    within(edge.y1 + ((edge.y2 - edge.y1) * last) / (last + 10) - centre, 28.5);
    // Inner faces of three lines, both sides.
    const binding = lines.filter((line) => line.kind === 'binding' && line.y1 > centre).map((line) => line.y1 - centre);
    for (const [index, face] of [21.5 - 2.5, 21.5 - 2, 21.5 - 1.5].entries()) within(binding[index], face);
  });

  it('writes the heading as text, not as markup, and positions as they are worded', () => {
    expect(svg).toContain('Neck 7 &lt;oak &amp; ash&gt;');
    expect(svg).toContain('>314.00 mm<');
    expect(templateSvg(BOUND_CONICAL, INCHES)).toContain('>12.362 in<'); // 314/25.4 = 12.3622
  });

  it('draws no binding on an unbound board', () => {
    expect(readLines(templateSvg(UNBOUND_FLAT, WORDS)).some((line) => line.kind === 'binding')).toBe(false);
  });
});

describe.each(Object.keys(PAPERS) as Paper[])('pages of %s', (paper) => {
  const { lengthMm, heightMm } = PAPERS[paper];

  it('have the size of the paper, both bars, and nothing in the margin', () => {
    for (const { build } of PRESETS) {
      for (const { svg } of templatePages(build, WORDS, paper)) {
        expect(readSize(svg)).toEqual([lengthMm, heightMm, lengthMm, heightMm]);
        const lines = readLines(svg);
        expect(lines.filter((line) => line.bar).map((line) => line.bar)).toEqual(['100 mm', '4 in']);
        const drawing = lines.filter((line) => line.kind !== 'join');
        for (const line of drawing) {
          expect(Math.min(line.x1, line.x2)).toBeGreaterThanOrEqual(MARGIN_MM - 1e-3);
          expect(Math.max(line.x1, line.x2)).toBeLessThanOrEqual(lengthMm - MARGIN_MM + 1e-3);
          expect(Math.max(line.y1, line.y2)).toBeLessThanOrEqual(heightMm - MARGIN_MM + 1e-3);
        }
      }
    }
  });

  it('joined on their crosses they make the whole template', () => {
    const build = PRESETS.find((preset) => preset.id === 'long-four')!.build;
    const pages = templatePages(build, WORDS, paper);
    expect(pages.length).toBeGreaterThan(1);
    for (const [index, page] of pages.slice(1).entries()) {
      expectNear(pages[index].toMm - page.fromMm, OVERLAP_MM, 1e-9, 'sums of a few hundred mm');
      const upright = (svg: string) => readLines(svg).filter((line) => line.kind === 'join' && line.x1 === line.x2);
      const right = Math.max(...upright(pages[index].svg).map((line) => line.x1));
      const left = Math.min(...upright(page.svg).map((line) => line.x1));
      within(right - MARGIN_MM + pages[index].fromMm, left - MARGIN_MM + page.fromMm);
    }
    const found = new Map<number, number>();
    for (const { svg, fromMm } of pages) {
      for (const line of readLines(svg)) if (line.fret) found.set(line.fret, line.x1 - MARGIN_MM + fromMm);
    }
    for (const end of fretEnds(build)) within(found.get(end.fret)!, end.xMm);
  });

  it('every slot is on a page for any board (seed 6901)', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        const pages = templatePages(build, INCHES, paper);
        const frets = new Set(pages.flatMap(({ svg }) => readLines(svg).flatMap((line) => line.fret ?? [])));
        expect(frets.size).toBe(build.fretCount);
        expect(pages.some(({ svg }) => svg.includes('NaN'))).toBe(false);
      }),
      { seed: 6901, numRuns: 30 },
    );
  });
});

it('refuses a board higher than the paper', () => {
  const wide = { ...defaultBuild(), widthLastFretMm: 200 };
  expect(() => templatePages(wide, WORDS, 'a4')).toThrow(/A4 gives at most 210 mm/);
});

it('clips a slanting line at the edges of a page', () => {
  const line = { kind: 'edge', x1: 0, y1: 0, x2: 10, y2: 5 } as const;
  expect(clipLine(line, 2, 6)).toMatchObject({ x1: 2, y1: 1, x2: 6, y2: 3 });
  expect(clipLine(line, 11, 20)).toBeUndefined();
  expect(clipLine({ ...line, x2: 0 }, -1, 1)).toMatchObject({ y1: 0, y2: 5 });
});
