/** What the choices are called. */
import type { Build } from '../../neck/build.ts';
import { withinSentence } from '../../speech/language.ts';
import { isolated } from '../../speech/isolate.ts';
import { sameBuild } from '../../state/history.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';

/** One neck, seated in different ways: all of them look alike. */
export function isOneNeck(builds: readonly Build[]): boolean {
  const [first] = builds;
  return builds.every((build) => sameBuild({ ...build, method: first.method }, first));
}

/** By the way of seating where nothing else differs, else by name; never two alike. */
export function choiceLabels(builds: readonly Build[]): string[] {
  if (isOneNeck(builds)) return builds.map(({ method }) => CUSTOMER_WORDS.methods[method]);
  const names = builds.map(({ name }) => name);
  return builds.map(({ name, method }, index) => {
    if (names.filter((other) => other === name).length === 1) return name;
    const longer = `${isolated(name)}: ${withinSentence(CUSTOMER_WORDS.methods[method])}`;
    const twins = builds.filter((build) => build.name === name && build.method === method);
    return twins.length === 1 ? longer : `${longer} (${index + 1})`;
  });
}

/** Places of the choices as they are shown: the one that is advised first. */
export function shownOrder(count: number, advised: number | null): number[] {
  const places = Array.from({ length: count }, (_, index) => index);
  return advised === null ? places : [advised, ...places.filter((index) => index !== advised)];
}
