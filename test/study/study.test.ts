/** A seeded sample of the study made again, and what its table must say. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/mechanics/uncertainty/normal.ts';
import { draw } from '../draw.ts';
import { coverageOf, digitOf, SHAPES, studyBands, workshopsOf } from './study.ts';
import { readStudy } from './table.ts';
import { KINDS, OUTCOMES } from './workshops.ts';

const study = readStudy();

it('has a row for each kind of measurement and truth, with all its workshops', () => {
  expect(study.rows.map(({ kind, shape }) => [shape, kind])).toEqual(
    SHAPES.flatMap((shape) => KINDS.map(({ id }) => [shape, id])),
  );
  for (const { hits, shape } of study.rows) expect(hits).toMatch(new RegExp(`^[0-9a-f]{${workshopsOf(shape)}}$`));
});

describe.each(study.rows.map((row) => [row.kind, row.shape, row] as const))(
  '%s, shape %s (seed 12)',
  (_kind, shape, row) => {
    it('comes out again for some of its workshops', () => {
      const random = seededRandom(12 + study.rows.indexOf(row));
      const kind = KINDS.find(({ id }) => id === row.kind)!;
      const indices = Array.from({ length: draw(20, 2) }, () => uniformInt(random, 0, row.hits.length - 1));
      expect(indices.map((index) => digitOf(kind, shape, index))).toEqual(indices.map((index) => row.hits[index]));
    });

    it.each(OUTCOMES)('%s lies in its 90 %% band in as many as it should', (outcome) => {
      const coverage = coverageOf(row, outcome);
      const [least, most] = shape === null ? [0.85, 0.95] : [LEAST_FAR_OUT, 1];
      expect(coverage).toBeGreaterThanOrEqual(least);
      expect(coverage).toBeLessThanOrEqual(most);
    });
  },
);

/** With studs two standard deviations from what is assumed. */
const LEAST_FAR_OUT = 0.8;

it('leaves the bands as wide as its table says', () => {
  const { rows: _rows, ...bands } = study;
  expect(studyBands()).toEqual(bands);
});
