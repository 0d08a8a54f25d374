/** Colour and dashes of a neck's line: those of its way of seating where these tell the necks apart, else by place. */
import type { Build } from '../../neck/build.ts';
import { METHODS, type Method } from '../../mechanics/prediction-types.ts';

export function lineStyles(builds: readonly Pick<Build, 'method'>[]): Method[] {
  const methods = builds.map(({ method }) => method);
  return new Set(methods).size === methods.length ? methods : builds.map((_, index) => METHODS[index]);
}
