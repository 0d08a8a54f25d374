/** Links and collections that are damaged, forged or hostile. */
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { openLink } from '../../src/pages/share/open-link.ts';
import { troubleTexts } from '../../src/pages/share/trouble-text.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { addressOf, routeOf } from '../../src/state/share/address.ts';
import { readCollection, writeCollection } from '../../src/state/share/file.ts';
import { readLink, writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE, type ReadLink } from '../../src/state/share/shared.ts';
import { createBackbowStore } from '../../src/state/store.ts';
import { forged } from '../state/share/forged.ts';
import { hold, holdFinite } from '../sweep/invariant.ts';
import { damaged, hostileText, spoilt } from './hostile.ts';
import { RUNS } from './runs.ts';

const PAGE = { from: 'Workshop at the mill', to: 'a customer', note: 'As we said.', advised: 0 };
const SHARED = [
  ...PRESETS.map(({ build }) => ({ builds: [build], page: EMPTY_PAGE })),
  { builds: PRESETS.slice(0, 3).map(({ build }) => build), page: PAGE },
];
const LINKS = SHARED.map((shared) => {
  const written = writeLink(shared);
  if (!written.ok) throw new Error('a preset gives no link');
  return written.text;
});

function holdWhole(read: ReadLink): void {
  if (read.ok) {
    hold(read.shared.builds.length > 0, () => 'nothing was shared');
    for (const build of read.shared.builds) {
      hold(checkBuild(build).ok, () => 'what was read is no build');
      holdFinite(build, 'build');
    }
    return;
  }
  const texts = troubleTexts(read.trouble, 'metric');
  hold(texts.length > 0 && texts.every((text) => text.length > 10), () => `no sentence: ${texts.join(' ')}`);
}

describe('links', () => {
  test(`with characters lost, doubled or exchanged never open as another neck (seed ${RUNS.linkText.seed})`, () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    const link = fc.constantFrom(...LINKS).chain((text) => damaged(text).map((input) => [text, input] as const));
    fc.assert(
      fc.property(link, ([text, input]) => {
        const read = readLink(input);
        holdWhole(read);
        // A damaged link that opens is one that damage did not change.
        hold(!read.ok || isDeepStrictEqual(read, readLink(text)), () => 'it opens as something else');
        const { build } = store.getState();
        hold(openLink(store, input) || store.getState().build === build, () => 'the build was touched');
        store.getState().closeDialog();
      }),
      RUNS.linkText,
    );
  });

  test(`with a sum that fits and contents of somebody else's (seed ${RUNS.linkContent.seed})`, () => {
    const changes = { set: { name: 'Forged', fretCount: 24 }, drop: [] };
    const content = { project: 1, builds: [changes, { set: { kerfMm: 0.6 }, drop: ['notes'] }], page: PAGE };
    const input = fc.oneof({ weight: 3, arbitrary: spoilt(content) }, { weight: 1, arbitrary: hostileText });
    fc.assert(
      fc.property(input, (data) => holdWhole(readLink(forged(data ?? null)))),
      RUNS.linkContent,
    );
    expect('hacked' in {}).toBe(false);
  });

  test(`in addresses of every kind (seed ${RUNS.address.seed})`, () => {
    fc.assert(
      fc.property(
        fc.oneof(hostileText, fc.constantFrom('#neck=', '#customer=', '#neck=%', '#neck=1.%E0%A4')),
        (text) => {
          for (const hash of [text, `#${text}`, `#neck=${text}`, `#customer=${text}`]) {
            const route = routeOf(hash);
            if (route) holdWhole(readLink(route.link));
          }
          const address = addressOf(`https://workshop.example/${text}`, { kind: 'neck', link: LINKS[0] });
          expect(routeOf(`#${address.split('#').at(-1)!}`)).toEqual({ kind: 'neck', link: LINKS[0] });
        },
      ),
      RUNS.address,
    );
  });
});

test(`collections with values spoilt or characters lost (seed ${RUNS.collection.seed})`, () => {
  const text = writeCollection(
    PRESETS.map(({ build }, index) => ({ build, changedAt: index === 0 ? null : 1e12 + index })),
    PAGE,
  );
  const input = fc.oneof(
    damaged(text),
    spoilt(JSON.parse(text)).map((data) => JSON.stringify(data) ?? ''),
    hostileText,
  );
  fc.assert(
    fc.property(input, (file) => {
      const read = readCollection(file);
      if (!read.ok) return;
      for (const { build, changedAt } of read.builds) {
        hold(checkBuild(build).ok, () => 'what was read is no build');
        hold(changedAt === null || Number.isFinite(changedAt), () => `changed at ${changedAt}`);
      }
      for (const { problems, place } of read.refused)
        hold(problems.length > 0 && place > 0, () => 'refused without a reason');
      // A build is taken or refused, and none is lost on the way.
      const { builds } = JSON.parse(file) as { builds: unknown[] };
      hold(read.builds.length + read.refused.length === builds.length, () => 'a build is lost');
    }),
    RUNS.collection,
  );
});
