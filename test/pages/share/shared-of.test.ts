/** What is chosen in the share dialog is what the link holds. */
import { expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { choiceKeys } from '../../../src/pages/share/compose-store.ts';
import type { Build } from '../../../src/neck/build.ts';
import { letterOf, sharedOf, type Choice } from '../../../src/pages/share/shared-of.ts';
import { waysOf } from '../../../src/verdict/ways.ts';
import { EMPTY_PAGE } from '../../../src/state/share/shared.ts';

const { build } = PRESETS[1];
const others = [PRESETS[2].build, PRESETS[3].build, PRESETS[4].build];
const page = { from: 'Workshop under the bridge', to: 'Ada', note: 'Look.' };
const keyOf = (method: Build['method'], of = build) =>
  choiceKeys(waysOf(of).builds)[waysOf(of).builds.findIndex((way) => way.method === method)];
const letter = { ...page, advised: keyOf('both'), offers: {} };
const choose = (choice: Partial<Choice>) =>
  sharedOf(build, { what: 'build', methods: ['press', 'glue', 'both'], others: [], letter: null, ...choice });

test('one neck, with nothing said', () => {
  expect(choose({})).toEqual({ builds: [build], page: EMPTY_PAGE });
});

test('one neck for a customer: there is nothing to advise among', () => {
  expect(choose({ letter })).toEqual({ builds: [build], page: { ...page, advised: null } });
});

test('ways of seating, in the order of the program', () => {
  const shared = choose({ what: 'methods', methods: ['both', 'press'], letter });
  expect(shared?.builds).toEqual([
    { ...build, method: 'press' },
    { ...build, method: 'both' },
  ]);
  expect(shared?.page.advised).toBe(1);
  expect(choose({ what: 'methods', methods: ['glue', 'press'], letter })?.page.advised).toBeNull();
});

test('price and time stay with their neck and way, whatever stands beside them, and go with no other neck', () => {
  const offer = { price: '180', time: 'two days' };
  const priced = { ...letter, offers: { [keyOf('both')]: offer } };
  expect(choose({ what: 'methods', methods: ['both', 'press'], letter: priced })?.offers).toEqual([
    { price: '', time: '' },
    offer,
  ]);
  const renamed = { ...build, name: 'Another' };
  expect(letterOf(waysOf(renamed).builds, priced)).toEqual({
    builds: waysOf(renamed).builds,
    page: { ...page, advised: null },
  });
});

test('fewer than two are nothing to compare', () => {
  expect(choose({ what: 'methods', methods: ['glue'] })).toBeNull();
  expect(choose({ what: 'saved' })).toBeNull();
});

test('the neck on the bench first, and never more than three', () => {
  expect(choose({ what: 'saved', others })?.builds).toEqual([build, others[0], others[1]]);
});

test('every preset can be seated in every way, or it is said why not', () => {
  for (const preset of PRESETS) {
    const { builds, impossible } = waysOf(preset.build);
    expect(builds.length + impossible.length).toBe(3);
    for (const { problems } of impossible) expect(problems.length).toBeGreaterThan(0);
  }
});
