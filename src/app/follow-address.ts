/** Opens the neck that the address names, now and whenever another link is pasted into the same page. */
import { routeOf } from '../state/share/address.ts';
import type { BackbowStore } from '../state/store.ts';
import { APP_WORDS } from '../speech/en/workshop/app.ts';

/**
 * The link is taken out of the address once it has been opened, so that a reload brings back the work and not the link. One
 * that was refused stays there: it may be all that its receiver has.
 * What reads links is fetched only when there is one to read.
 * @returns once the link of this address, if it has one, has been opened
 */
export async function followAddress(store: BackbowStore): Promise<void> {
  async function follow(): Promise<void> {
    const route = routeOf(location.hash);
    if (route?.kind !== 'neck') return;
    try {
      const { openLink } = await import('../pages/share/open-link.ts');
      const isOpened = openLink(store, route.link, location.href);
      if (isOpened) history.replaceState(history.state, '', `${location.pathname}${location.search}`);
    } catch {
      // The address keeps its link, so that loading the page again tries again.
      store.getState().notify('error', APP_WORDS.partMissing);
    }
  }
  await follow();
  addEventListener('hashchange', () => void follow());
}
