/** What goes to a worker that knows the build before. */
import type { Build } from '../neck/build.ts';

/** What of a build differs from the one before: set over that one, it gives the build. All of it when there was none. */
export function changeOf(build: Build, before: Build | undefined): Partial<Build> {
  if (!before) return build;
  return Object.fromEntries(Object.entries(build).filter(([key, value]) => value !== before[key as keyof Build]));
}
