/** A seeded sample of the study of necks that were read themselves, made again, and what its table must say. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/mechanics/uncertainty/normal.ts';
import { draw } from '../draw.ts';
import { NECK_KINDS, NECKS_READ, neckCoverage, neckDigitOf, neckWidths, readNeckStudy } from './neck-readings.ts';
import { OUTCOMES } from './workshops.ts';

const study = readNeckStudy();

it('has a row for each kind of reading, with all its necks', () => {
  expect(study.rows.map(({ kind }) => kind)).toEqual(NECK_KINDS.map(({ id }) => id));
  for (const { hits } of study.rows) expect(hits).toMatch(new RegExp(`^[0-9a-f]{${NECKS_READ}}$`));
});

describe.each(NECK_KINDS.map((kind, at) => [kind.id, kind, study.rows[at]] as const))(
  '%s (seed 31)',
  (_id, kind, row) => {
    it('comes out again for some of its necks', () => {
      const random = seededRandom(31 + NECK_KINDS.indexOf(kind));
      const indices = Array.from({ length: draw(20, 2) }, () => uniformInt(random, 0, row.hits.length - 1));
      expect(indices.map((index) => neckDigitOf(kind, index))).toEqual(indices.map((index) => row.hits[index]));
    });

    it.each(OUTCOMES)('%s lies in its 90 %% band in as many as it should', (outcome) => {
      expect(neckCoverage(row, outcome)).toBeGreaterThanOrEqual(0.85);
      expect(neckCoverage(row, outcome)).toBeLessThanOrEqual(0.95);
    });

    it('leaves the bands as wide as its table says', () => {
      expect(neckWidths(kind)).toEqual(study.after[kind.id]);
    });
  },
);
