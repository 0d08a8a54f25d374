import type { Build } from '../../src/neck/build.ts';
import type { Problem } from '../../src/neck/problems.ts';
import { checkBuild } from '../../src/neck/schema.ts';

/** The problem with giving one parameter this value in this build, or undefined. The build itself must be valid. */
export function checkChange(build: Build, change: Partial<Build>): readonly Problem[] {
  const checked = checkBuild({ ...build, ...change });
  return checked.ok ? [] : checked.problems;
}
