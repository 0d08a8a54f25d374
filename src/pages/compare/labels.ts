/** What compared necks are called: by the way of seating where nothing else differs, else by name; never two alike. */
import type { Build } from '../../neck/build.ts';
import { isolated } from '../../speech/isolate.ts';
import type { ComparedNeck } from '../../state/compare/comparison-slice.ts';
import { formatWhen } from '../../state/library/when.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import { sameBuild } from '../../state/history.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';

export function neckLabels(builds: readonly Build[]): string[] {
  const [first] = builds;
  if (!first) return [];
  const byMethod = builds.map(({ method }) => METHOD_WORDS[method].label);
  const onlyMethods = builds.every((build) => sameBuild({ ...build, method: first.method }, first));
  if (onlyMethods && isDistinct(byMethod)) return byMethod;
  const names = builds.map(({ name }) => name);
  if (isDistinct(names)) return names;
  const both = builds.map(({ name }, index) => `${isolated(name)}, ${byMethod[index]}`);
  if (isDistinct(both)) return both;
  return both.map((label, index) => `${label} (${index + 1})`);
}

/** The same of columns; one that was kept says of when it is. */
export function columnLabels(necks: readonly ComparedNeck[]): string[] {
  return neckLabels(necks.map(({ build }) => build)).map((label, index) => {
    const { column } = necks[index];
    return column.follows === 'nothing' && column.since !== null
      ? COMPARE_WORDS.asOf(label, formatWhen(column.since))
      : label;
  });
}

function isDistinct(labels: readonly string[]): boolean {
  return new Set(labels).size === labels.length;
}
