/** From what was chosen in the dialog to what the link holds. */
import type { Build } from '../../neck/build.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { EMPTY_OFFER, EMPTY_PAGE, MOST_SHARED, type Shared } from '../../state/share/shared.ts';
import { saysAnything } from '../../state/share/page-text.ts';
import { waysOf } from '../../verdict/ways.ts';
import { choiceKeys, type Letter, type What } from './compose-store.ts';

export interface Choice {
  readonly what: What;
  readonly methods: readonly Method[];
  /** Other builds to put beside this one. */
  readonly others: readonly Build[];
  /** Null where the link is not a customer's page. */
  readonly letter: Letter | null;
}

/** The customer's page of some necks, with what the letter says of them. */
export function letterOf(builds: readonly Build[], { from, to, note, advised, offers }: Letter): Shared {
  const keys = choiceKeys(builds);
  const at = builds.length > 1 && advised !== null ? keys.indexOf(advised) : -1;
  const said = keys.map((key) => offers[key] ?? EMPTY_OFFER);
  return {
    builds,
    page: { from, to, note, advised: at < 0 ? null : at },
    ...(saysAnything(said) ? { offers: said } : {}),
  };
}

/** @returns null while fewer than two are chosen to compare */
export function sharedOf(build: Build, { what, methods, others, letter }: Choice): Shared | null {
  const builds = buildsOf(build, what, methods, others);
  if (what !== 'build' && builds.length < 2) return null;
  return letter ? letterOf(builds, letter) : { builds, page: EMPTY_PAGE };
}

function buildsOf(build: Build, what: What, methods: readonly Method[], others: readonly Build[]): readonly Build[] {
  switch (what) {
    case 'build':
      return [build];
    case 'methods':
      return waysOf(build).builds.filter(({ method }) => methods.includes(method));
    case 'saved':
      return [build, ...others].slice(0, MOST_SHARED);
  }
}
