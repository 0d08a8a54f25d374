/** The ways in which one neck can be seated. */
import type { Build } from '../neck/build.ts';
import type { Problem } from '../neck/problems.ts';
import { checkBuild } from '../neck/schema.ts';
import { METHODS, type Method } from '../mechanics/prediction-types.ts';

/** Why one way of seating cannot be had with this neck. */
export interface Impossible {
  readonly method: Method;
  readonly problems: readonly Problem[];
}

export interface Ways {
  /** The neck seated in each way that is possible. */
  readonly builds: readonly Build[];
  readonly impossible: readonly Impossible[];
}

const known = new WeakMap<Build, Ways>();

function findWays(build: Build): Ways {
  const builds: Build[] = [];
  const impossible: Impossible[] = [];
  for (const method of METHODS) {
    const seated = method === build.method ? build : { ...build, method };
    const checked = checkBuild(seated);
    if (checked.ok) builds.push(seated);
    else impossible.push({ method, problems: checked.problems });
  }
  return { builds, impossible };
}

/** The neck seated in each way, or why it cannot be. The same builds for the same build, so that their identity tells. */
export function waysOf(build: Build): Ways {
  const found = known.get(build) ?? findWays(build);
  known.set(build, found);
  return found;
}

/** The neck seated in one way; undefined where that is not possible. */
export function seatedAs(build: Build, method: Method): Build | undefined {
  return waysOf(build).builds.find((way) => way.method === method);
}
