/**
 * Builds that once broke a law, as project files: a seed would draw another build as soon as a parameter is added or has another
 * range. Each is named by the seed that found it.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Build } from '../../src/neck/build.ts';
import { PROJECT_EXTENSION, readProject } from '../../src/neck/file.ts';

export function mendedBuild(seed: number): Build {
  const text = readFileSync(join(import.meta.dirname, 'mended', `${seed}${PROJECT_EXTENSION}`), 'utf8');
  const read = readProject(text);
  if (!read.ok) throw new Error(`mended/${seed} cannot be read: ${JSON.stringify(read.problems)}`);
  return read.build;
}
