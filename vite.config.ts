import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { fileOf } from './src/app/packaging/chunks.ts';
import { licences } from './src/app/packaging/licences.ts';
import { offlineFiles } from './src/app/packaging/offline-files.ts';
import { securityPolicy } from './src/app/packaging/security-policy.ts';

const { page: pageLicences, workers: workerLicences } = licences();

const UNIT = {
  environment: 'node',
  // A slow machine is not a fault.
  testTimeout: 300_000,
  hookTimeout: 300_000,
  // Every processor: by itself it would leave one idle.
  maxWorkers: availableParallelism(),
} as const;

const RECKONING = ['neck', 'mechanics', 'fretwork', 'verdict', 'geometry', 'playing', 'reference', 'study', 'sweep'];
const testsIn = (rooms: readonly string[]): string[] => rooms.map((room) => `test/${room}/**/*.test.ts`);

/** Rooms whose tests have what they need for themselves, and no store, page or language that other files would find changed. */
const APART = ['app', 'bench', 'faults', 'links', 'scene', 'speech', 'tools'];
/** What a file does with modules or the process that others would notice: a page, a language, a mock. */
const NOTICED = /@vitest-environment|\bvi\b|house\.ts|state\/store\.ts/;
const shared = APART.flatMap((room) =>
  readdirSync(join(import.meta.dirname, 'test', room), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => `test/${room}/${name.replaceAll('\\', '/')}`),
).filter((path) => !NOTICED.test(readFileSync(join(import.meta.dirname, path), 'utf8')));
const SHARING = [...testsIn(RECKONING), ...shared];

/** A static page that can be served from any folder, so every address in it is relative. */
export default defineConfig({
  base: './',
  plugins: [react(), securityPolicy(), pageLicences, offlineFiles()],
  worker: { format: 'es', plugins: () => [workerLicences()] },
  build: {
    target: 'es2023',
    outDir: 'dist',
    sourcemap: false,
    chunkSizeWarningLimit: 1500,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: fileOf(import.meta.dirname), debugName: 'parts', includeDependenciesRecursively: false }],
        },
      },
    },
  },
  test: {
    projects: [
      // Rooms that only reckon, and files that leave modules as they are: they share processes, each of which reads the
      // modules once.
      { extends: true, test: { ...UNIT, name: 'unit-reckoning', isolate: false, include: SHARING } },
      {
        extends: true,
        test: {
          ...UNIT,
          name: 'unit-page',
          include: ['test/**/*.test.{ts,tsx}'],
          exclude: ['test/browser/**', 'test/output/**', ...SHARING],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          // Files share two processes, each of which reads the modules and starts a browser once.
          isolate: false,
          include: ['test/browser/**/*.spec.ts'],
          testTimeout: 300_000,
          hookTimeout: 300_000,
          // As long as the browser waits for what a page does: a slow machine is not a fault.
          expect: { poll: { timeout: 120_000 } },
          globalSetup: ['test/browser/set-up.ts'],
          // Two at a time: each draws by itself on more than one processor.
          maxWorkers: 2,
        },
      },
    ],
  },
});
