/** The tests that a fault in the core is shown to: those of its own rooms, which must find it by themselves. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    environment: 'node',
    include: [
      'test/mechanics/{seating,bench-log}/**/*.test.ts',
      'test/mechanics/rod*.test.ts',
      'test/fretwork/**/*.test.ts',
    ],
    env: { DRAW: 'few' },
    testTimeout: 60_000,
  },
});
