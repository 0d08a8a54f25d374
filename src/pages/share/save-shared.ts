/** What is shared as a file: one neck as its project file, several as a collection. */
import { writeProject } from '../../neck/file.ts';
import { COLLECTION_EXTENSION, writeCollection } from '../../state/share/file.ts';
import { saysAnything } from '../../state/share/page-text.ts';
import type { Shared } from '../../state/share/shared.ts';
import { offerDownload } from '../../kit/files.ts';
import { fileName } from '../../kit/file-name.ts';
import { madeToday } from '../papers/stamp/made.ts';
import { fileNameOf } from '../workshop/project/project-file.ts';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';

export function saveShared({ builds, page, offers }: Shared): void {
  const [first, ...others] = builds;
  const isPlain =
    !saysAnything(offers) && page.from === '' && page.to === '' && page.note === '' && page.advised === null;
  if (others.length === 0 && isPlain) {
    offerDownload(fileNameOf(first.name), writeProject(first, madeToday(first)), 'application/json');
    return;
  }
  const name = fileName(first.name, SHARE_WORDS.fileNames.comparison);
  const text = writeCollection(
    builds.map((build) => ({ build, changedAt: null, made: madeToday(build) })),
    page,
    offers,
  );
  offerDownload(`${name}${COLLECTION_EXTENSION}`, text, 'application/json');
}
