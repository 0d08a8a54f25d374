/** Opens the neck that the address names, now and whenever another link is pasted into the same page. */
import { openLink } from '../panels/share/open-link.ts';
import { routeOf } from '../state/share/address.ts';
import type { BackbowStore } from '../state/store.ts';

/**
 * The link is taken out of the address once it has been read, so that a reload brings back the work and not the link.
 * @returns a function that stops following
 */
export function followAddress(store: BackbowStore): () => void {
  function follow(): void {
    const route = routeOf(location.hash);
    if (route?.kind !== 'neck') return;
    history.replaceState(history.state, '', `${location.pathname}${location.search}`);
    openLink(store, route.link);
  }
  follow();
  addEventListener('hashchange', follow);
  return () => removeEventListener('hashchange', follow);
}
