/**
 * Mutation: one small fault after the other is put into the core, and the unit tests of its rooms have to notice.
 *
 * `npm run mutate` takes the whole list; `npm run mutate -- --mutate src/mechanics/rod.ts` one file. The table of survivors is
 * printed and kept in test/output/mutation.
 *
 * @type {import('@stryker-mutator/api/core').PartialStrykerOptions}
 */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutation/vitest.config.ts', related: true },
  mutate: [
    'src/mechanics/seating/{seating,contact,forces,wire-contact}.ts',
    'src/mechanics/rod.ts',
    'src/mechanics/bench-log/{doubts,least-misfit,likelihood,posterior,question,standing}.ts',
    'src/fretwork/checks/{check-making,checks*}.ts',
  ],
  coverageAnalysis: 'perTest',
  // The limits at the head of a file are numbers of the trade, and a test of each would only repeat it.
  ignoreStatic: true,
  concurrency: 2,
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: 'test/output/mutation/mutation.json' },
  tempDirName: 'test/output/mutation/sandbox',
  ignorePatterns: ['dist', 'test/output', 'public', '.git'],
  // No TypeScript is compiled here: the name keeps the tool from rewriting tsconfig.json.
  tsconfigFile: 'none.json',
};
