import { draw } from '../draw.ts';

/** How many inputs each fuzz test draws, and from which seed; together more than ten thousand. */
export const RUNS = {
  projectText: { seed: 8101, numRuns: draw(1500) },
  projectValues: { seed: 8142, numRuns: draw(2500) },
  anyText: { seed: 8103, numRuns: draw(500) },
  linkText: { seed: 8111, numRuns: draw(1500) },
  linkContent: { seed: 8112, numRuns: draw(1000) },
  address: { seed: 8113, numRuns: draw(500) },
  collection: { seed: 8114, numRuns: draw(600) },
  csvText: { seed: 8121, numRuns: draw(1000) },
  csvCells: { seed: 8122, numRuns: draw(1500) },
  preferences: { seed: 8131, numRuns: draw(600) },
  drafts: { seed: 8132, numRuns: draw(600) },
  records: { seed: 8133, numRuns: draw(600) },
  refusals: { seed: 8134, numRuns: draw(400) },
  typed: { seed: 8141, numRuns: draw(2000) },
} as const;
