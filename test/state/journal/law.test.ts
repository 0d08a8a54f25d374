/** @vitest-environment happy-dom */
/**
 * The law of the journal: whatever happens to pages, tabs and storage, every neck that was on a bench can be found again.
 * Random actions in several tabs; any writing may be the last thing that a page does.
 */
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../tools/presets.ts';
import { createJournal } from '../../../src/state/journal/journal.ts';
import { readStanding, type NeckRecord } from '../../../src/state/journal/record.ts';
import { always, device, type Page, type Tab } from './device.ts';
import { textStorage } from '../library/memory.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

type Action = {
  readonly kind:
    | 'change'
    | 'place'
    | 'preset'
    | 'undo'
    | 'redo'
    | 'rest'
    | 'reload'
    | 'close'
    | 'kill'
    | 'open'
    | 'duplicate'
    | 'lesson';
  /** Which tab, by turns. */
  readonly tab: number;
  /** After how many writings the page dies in this action; null when it lives. */
  readonly diesAfter: number | null;
  /** Does the device refuse every writing meanwhile? */
  readonly isFull: boolean;
  readonly waitMs: number;
};

const action: fc.Arbitrary<Action> = fc.record({
  kind: fc.constantFrom(
    ...(['change', 'change', 'change', 'place', 'place', 'preset', 'undo', 'undo', 'redo', 'rest'] as const),
    ...(['reload', 'reload', 'close', 'kill', 'open', 'duplicate', 'lesson'] as const),
  ),
  tab: fc.nat(4),
  diesAfter: fc.option(fc.nat(4), { freq: 6 }),
  isFull: fc.nat(9).map((share) => share === 0),
  waitMs: fc.constantFrom(0, 0, 60_000, 11 * 60_000, 26 * 3600_000),
});

/** What a build is called here: its name, and how it was last changed. */
const contentOf = ({ name, notes }: Build): string => `${name} ${notes}`;

const contentsOf = (records: readonly NeckRecord[]): string[] =>
  records.flatMap(({ standings }) =>
    standings.map(readStanding).flatMap((read) => (read.ok ? [contentOf(read.build)] : [])),
  );

interface Open {
  readonly key: number;
  readonly tab: Tab;
  page: Page | null;
  /** What the device refused so far; it is written with the next change. */
  refused: Build[];
}

/** The world as it should be: for each neck of each tab, states of which one must be found. */
class World {
  readonly local = always(textStorage());
  readonly device;
  readonly tabs: Open[] = [];
  readonly required = new Map<string, Set<string>>();
  #numbers = 0;

  constructor(isSecure: boolean) {
    this.device = device(isSecure, this.local);
  }

  next(): number {
    return (this.#numbers += 1);
  }

  /** What the page has on its bench is stored now, or may be when the page died over it. */
  expectStored(open: Open, states: readonly Build[], isSure: boolean): void {
    for (const build of states) {
      if (!build.name.startsWith('neck')) continue;
      const key = `${open.key}/${build.name}`;
      if (isSure) this.required.set(key, new Set([contentOf(build)]));
      else this.required.get(key)?.add(contentOf(build));
    }
  }

  check(found: readonly string[], when: string): void {
    for (const [key, states] of this.required)
      if (!found.some((content) => states.has(content)))
        throw new Error(`${when}: ${key} is lost; wanted one of ${[...states].join(', ')}; found ${found.join(', ')}`);
  }

  /** Opens the page in a tab; what it brings back is that tab's from now on. */
  async load(open: Open): Promise<void> {
    open.page = await this.device.page(open.tab);
    const { build } = open.page.store.getState();
    if (!open.page.isAlive()) {
      open.page.kill();
      open.page = null;
      return;
    }
    const key = `${open.key}/${build.name}`;
    if (!build.name.startsWith('neck')) return;
    const closed = [...this.required].find(
      ([other, states]) => other.endsWith(`/${build.name}`) && states.has(contentOf(build)) && this.isGone(other),
    );
    // It moves along with the work.
    if (closed && !this.required.has(key)) this.required.delete(closed[0]);
    this.required.set(key, new Set([contentOf(build)]));
  }

  isGone(key: string): boolean {
    return !this.tabs.some((open) => open.page && key.startsWith(`${open.key}/`));
  }
}

function rest(world: World, open: Open, states: readonly Build[]): void {
  vi.advanceTimersByTime(500);
  world.expectStored(open, states, open.page!.isAlive());
  if (open.page!.isAlive()) return;
  open.page!.kill();
  open.page = null;
}

async function act(world: World, { kind, tab, diesAfter, isFull, waitMs }: Action): Promise<void> {
  world.device.wait(waitMs);
  if (kind === 'open' || world.tabs.length === 0) {
    const fresh: Open = { key: world.next(), tab: world.device.newTab(), page: null, refused: [] };
    world.tabs.push(fresh);
    await world.load(fresh);
    return;
  }
  const open = world.tabs[tab % world.tabs.length];
  if (!open.page) {
    if (diesAfter !== null) world.device.dieAfter(diesAfter);
    await world.load(open);
    world.device.dieAfter(Infinity);
    return;
  }
  const { store } = open.page;
  const before = store.getState().build;
  const neckBefore = open.page.keeper.current()?.id;
  if (kind === 'duplicate') {
    const copy: Open = { key: world.next(), tab: world.device.duplicate(open.tab), page: null, refused: [] };
    world.tabs.push(copy);
    await world.load(copy);
    return;
  }
  if (kind === 'kill') {
    open.refused = [];
    open.page.kill();
    open.page = null;
    return;
  }
  if (kind === 'reload' || kind === 'close') {
    rest(world, open, [...open.refused, before]);
    open.refused = [];
    open.page?.close();
    open.page = null;
    if (kind === 'close') return;
    await world.load(open);
    const after = open.page as Page | null;
    expect(after && contentOf(after.store.getState().build)).toBe(contentOf(before));
    return;
  }
  if (diesAfter !== null) world.device.dieAfter(diesAfter);
  world.device.setFull(isFull);
  const { change, replaceBuild, undo, redo, beginLesson, placeLessonBuild, endLesson } = store.getState();
  const number = world.next();
  if (kind === 'change') {
    const name = before.name.startsWith('neck') ? before.name : `neck${number}`;
    change({ name, notes: `${number}` }, 'change');
  } else if (kind === 'place') {
    replaceBuild({ ...PRESETS[number % PRESETS.length].build, name: `neck${number}`, notes: '' }, 'place');
  } else if (kind === 'preset') replaceBuild(PRESETS[number % PRESETS.length].build, 'preset');
  else if (kind === 'undo') undo();
  else if (kind === 'redo') redo();
  else if (kind === 'lesson') {
    beginLesson('any');
    placeLessonBuild({ ...PRESETS[1].build, name: 'lesson', notes: '' });
    change({ kerfMm: 0.6 }, 'in the lesson');
    endLesson();
  }
  const after = store.getState().build;
  // A change that undo took back was the same neck.
  const isSameNeck = open.page.keeper.current()?.id === neckBefore;
  if (isSameNeck && before.name !== after.name) {
    world.required.delete(`${open.key}/${before.name}`);
    open.refused = open.refused.filter(({ name }) => name !== before.name);
  }
  const states = isSameNeck ? [after] : [before, after];
  if (isFull) {
    vi.advanceTimersByTime(500);
    open.refused.push(...states);
    world.expectStored(open, states, false);
  }
  world.device.setFull(false);
  // A page that only rests has nothing to write, so it does not try again.
  const isTried = !isFull && after !== before;
  if (!isFull || !open.page.isAlive()) rest(world, open, isTried ? [...open.refused, ...states] : []);
  if (isTried || open.page === null) open.refused = [];
  world.device.dieAfter(Infinity);
}

async function run(isSecure: boolean, actions: readonly Action[]): Promise<void> {
  const world = new World(isSecure);
  const all = () => contentsOf(createJournal(world.local).all());
  for (const [at, one] of actions.entries()) {
    await act(world, one);
    world.check(all(), `after action ${at}, ${one.kind}`);
  }
  // What the library of a new window shows, once everything is closed.
  for (const { page } of world.tabs) page?.close();
  world.check(all(), 'when everything is closed');
  const last = await world.device.page(world.device.newTab());
  const opening = last.keeper.left();
  await vi.advanceTimersByTimeAsync(500);
  const shown = [
    ...(await opening).map(({ record }) => record),
    ...[last.keeper.current()].filter((one) => one !== null),
  ];
  world.check(contentsOf(shown), 'in the library of a new window');
  last.close();
}

test.each([
  ['a secure address', true, 9400],
  ['plain HTTP', false, 9401],
] as const)('every neck that was on a bench is found again, on %s (seed 940%#)', async (_name, isSecure, seed) => {
  await fc.assert(
    fc.asyncProperty(fc.array(action, { minLength: 1, maxLength: 40 }), (actions) => run(isSecure, actions)),
    { seed, numRuns: 120 },
  );
});
