/** What the choices are called. */
import type { Build } from '../../neck/build.ts';
import { withinSentence } from '../../speech/language.ts';
import { isolated } from '../../speech/isolate.ts';
import { sameBuild } from '../../state/history.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';

/** By the way of seating where nothing else differs, else by name; never two alike. */
export function choiceLabels(builds: readonly Build[]): string[] {
  const [first] = builds;
  if (!first) return [];
  const onlyMethods = builds.every((build) => sameBuild({ ...build, method: first.method }, first));
  if (onlyMethods) return builds.map(({ method }) => CUSTOMER_WORDS.methods[method]);
  const names = builds.map(({ name }) => name);
  return builds.map(({ name, method }, index) => {
    if (names.filter((other) => other === name).length === 1) return name;
    const longer = `${isolated(name)}: ${withinSentence(CUSTOMER_WORDS.methods[method])}`;
    const twins = builds.filter((build) => build.name === name && build.method === method);
    return twins.length === 1 ? longer : `${longer} (${index + 1})`;
  });
}
