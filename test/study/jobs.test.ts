/** A seeded sample of the study of the advice made again, and what its table must say. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/mechanics/uncertainty/normal.ts';
import { draw } from '../draw.ts';
import { closeShare, digitOfJob, jobOf, JOBS, readJobStudy, RODS, worseShare } from './jobs.ts';

const { rows } = readJobStudy();

it('has a row for necks with their rods and without, with all jobs', () => {
  expect(rows.map(({ rods }) => rods)).toEqual(RODS);
  for (const { jobs } of rows) expect(jobs).toMatch(new RegExp(`^[0-7]{${JOBS}}$`));
});

describe.each(rows.map((row) => [row.rods, row] as const))('rods %s (seed 47)', (rods, { jobs }) => {
  it('comes out again for some of its jobs', () => {
    const random = seededRandom(47 + RODS.indexOf(rods));
    const indices = Array.from({ length: draw(10, 1) }, () => uniformInt(random, 0, JOBS - 1));
    expect(indices.map((index) => digitOfJob(jobOf(rods, index)))).toEqual(indices.map((index) => jobs[index]));
  });
});

it('ends more jobs well than going on, no fewer than the rule of three, and hardly any worse than going on', () => {
  for (const row of rows) {
    expect(closeShare([row], 'advice')).toBeGreaterThan(closeShare([row], 'none'));
    expect(closeShare([row], 'advice')).toBeGreaterThanOrEqual(closeShare([row], 'rule'));
  }
  expect(worseShare(rows, 'advice')).toBeLessThan(0.05);
  expect(worseShare(rows, 'advice')).toBeLessThanOrEqual(worseShare(rows, 'rule'));
});
