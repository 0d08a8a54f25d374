/** The tests that a fault in the core is shown to: those of its own rooms, without page or language. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    environment: 'node',
    include: ['test/{neck,mechanics,fretwork,verdict}/**/*.test.ts'],
    // Written for another purpose and dear: they compare whole solutions, and would only confirm what a direct test says.
    exclude: ['test/mechanics/{any-build,simplifications}.test.ts', 'test/mechanics/uncertainty/**'],
    testTimeout: 60_000,
  },
});
