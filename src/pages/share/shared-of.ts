/** From what was chosen in the dialog to what the link holds. */
import type { Build } from '../../neck/build.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { EMPTY_PAGE, MOST_SHARED, type PageText, type Shared } from '../../state/share/shared.ts';
import { waysOf } from '../../verdict/ways.ts';
import type { What } from './compose-store.ts';

export interface Choice {
  readonly what: What;
  readonly methods: readonly Method[];
  /** Other builds to put beside this one. */
  readonly others: readonly Build[];
  /** Null where the link is not a customer's page. */
  readonly page: PageText | null;
}

/** @returns null while fewer than two are chosen to compare */
export function sharedOf(build: Build, { what, methods, others, page }: Choice): Shared | null {
  const builds = buildsOf(build, what, methods, others);
  if (what !== 'build' && builds.length < 2) return null;
  if (!page) return { builds, page: EMPTY_PAGE };
  const advised = page.advised !== null && page.advised < builds.length && builds.length > 1 ? page.advised : null;
  return { builds, page: { ...page, advised } };
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
