/** Opens what came by link. A link that is refused leaves the build as it was. */
import { readLink } from '../../state/share/link.ts';
import type { BackbowStore } from '../../state/store.ts';
import { keepReceived } from './received-store.ts';
import { troubleTexts } from './trouble-text.ts';
import { LINK_WORDS } from '../../speech/en/pages/share.ts';

/**
 * @param address - where the link came from: the whole of it can be copied when the link is refused
 * @returns whether something was opened
 */
export function openLink(store: BackbowStore, link: string, address?: string): boolean {
  const { notify, replaceBuild, openDialog, unitSystem } = store.getState();
  const read = readLink(link);
  if (!read.ok) {
    const copy = address === undefined ? {} : { copy: { label: LINK_WORDS.copy, text: address } };
    notify('error', LINK_WORDS.notOpened, troubleTexts(read.trouble, unitSystem), copy);
    return false;
  }
  const { builds, page, offers = [] } = read.shared;
  if (builds.length > 1) {
    keepReceived({
      builds: builds.map((build) => ({ build, changedAt: null })),
      page,
      offers,
      refused: [],
      pageRefused: false,
    });
    openDialog('received');
    return true;
  }
  const build = builds[0];
  // The build has been checked, so it is accepted.
  replaceBuild(build, LINK_WORDS.stepOpen);
  notify('info', LINK_WORDS.opened(build.name));
  return true;
}
