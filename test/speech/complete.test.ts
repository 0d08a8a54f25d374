// @vitest-environment happy-dom
/** Another language has everything that the source says, and nothing else. */
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { GERMAN } from '../../src/speech/de/index.ts';
import { readFiles } from '../tools/source-files.ts';
import { spokenIn, type Takes } from '../tools/spoken.ts';
import { loadEverything, type Heard } from './heard.ts';

const heard = vi.hoisted((): Heard => ({ tables: new Map() }));
vi.mock('../../src/speech/language.ts', async (original) => {
  const { listening } = await import('./heard.ts');
  return listening(await original(), heard);
});

const source = readFiles('src', /\.tsx?$/).filter(
  ({ path }) => !/^src\/speech\/(de\/|load\.ts|catalogue\.ts|start-words\.ts)/.test(path),
);
const spoken = spokenIn(source);

let loaded = 0;
beforeAll(async () => {
  loaded = await loadEverything();
}, 120_000);

const tables: Readonly<Record<string, unknown>> = GERMAN;

/** Only texts with words in them can be said otherwise. */
const isSaid = (text: string) => /\p{L}{2}/u.test(text.replace(/\{\d+\}/g, ''));

const placeholders = (text: string) => [...new Set(text.match(/\{\w+\}/g))].toSorted();

describe('tables', () => {
  test('are all there, and no others', () => {
    expect(loaded).toBeGreaterThan(300);
    expect(spoken.tables.size).toBeGreaterThan(50);
    expect(new Set(heard.tables.keys())).toEqual(new Set(spoken.tables.keys()));
    expect(Object.keys(tables).toSorted()).toEqual([...spoken.tables.keys()].toSorted());
  });

  test('have the entries of the English ones, and no others', () => {
    const differences: string[] = [];
    for (const [id, english] of heard.tables) compare(id, english, tables[id], differences);
    expect(differences).toEqual([]);
  });

  test('say something else than the English ones', () => {
    const texts = [...heard.tables].flatMap(([id, english]) => textsOf(id, english, tables[id]));
    const same = texts.filter(({ english, other }) => english === other && isSaid(english));
    expect(texts.length).toBeGreaterThan(900);
    // Words that both languages have, such as "Name" and "Material".
    expect(same.length / texts.length).toBeLessThan(0.03);
  });
});

/** Values for one parameter, tried one after the other. A letter is none of any language's words. */
function samples(takes: Takes, place: number): readonly unknown[] {
  if (takes === 'number') return [0, 1, 2, 701 + 10 * place];
  if (takes === 'flag') return [true, false];
  if (takes === 'list') return [[`⟨${place}a⟩`, `⟨${place}b⟩`]];
  if (takes === 'text' || takes === 'other') return [`⟨${place}⟩`];
  return takes;
}

function combinations(lists: readonly (readonly unknown[])[]): unknown[][] {
  return lists.reduce<unknown[][]>((made, list) => made.flatMap((start) => list.map((one) => [...start, one])), [[]]);
}

const marksIn = (text: string) => [...new Set(text.match(/⟨\w+⟩|7\d1/g))].toSorted().join(' ');

type Says = (...given: readonly unknown[]) => unknown;

function compareFunctions(path: string, english: Says, other: Says, differences: string[]): void {
  const takes = spoken.functions.get(path) ?? Array.from({ length: english.length }, (): Takes => 'other');
  for (const given of combinations(takes.map(samples))) {
    let said: unknown;
    try {
      said = english(...given);
    } catch {
      // A value of a kind that only the program knows.
      continue;
    }
    const saidOtherwise: unknown = other(...given);
    if (typeof said !== 'string') compare(`${path}()`, said, saidOtherwise, differences);
    else if (typeof saidOtherwise !== 'string' || (saidOtherwise.trim() === '') !== (said.trim() === ''))
      differences.push(`${path}(${given.join(', ')}): ${String(saidOtherwise)}`);
    else if (/undefined|NaN|\[object/.test(saidOtherwise) && !/undefined|NaN|\[object/.test(said))
      differences.push(`${path}(${given.join(', ')}): ${saidOtherwise}`);
    else if (marksIn(said) !== marksIn(saidOtherwise))
      differences.push(`${path}(${given.join(', ')}): “${said}” against “${saidOtherwise}”`);
  }
}

/** A language may have other words for a term, or none. */
const OPTIONAL = /^TERM_WORDS\.[\w-]+\.also$/;

/** Where two tables differ in more than their words. */
function compare(path: string, english: unknown, other: unknown, differences: string[]): void {
  if (typeof english !== typeof other || Array.isArray(english) !== Array.isArray(other)) {
    differences.push(`${path}: ${typeof other} in place of ${typeof english}`);
  } else if (typeof english === 'function') {
    compareFunctions(path, english as Says, other as Says, differences);
  } else if (typeof english === 'object' && english !== null && other !== null) {
    const [own, others] = [english as Record<string, unknown>, other as Record<string, unknown>];
    for (const key of new Set([...Object.keys(own), ...Object.keys(others)])) {
      if (OPTIONAL.test(`${path}.${key}`) && !(key in own && key in others)) continue;
      compare(`${path}.${key}`, own[key], others[key], differences);
    }
  } else if (typeof english === 'string') {
    const text = other as string;
    if ((text.trim() === '') !== (english.trim() === '')) differences.push(`${path}: “${text}” for “${english}”`);
    if (placeholders(english).join(' ') !== placeholders(text).join(' '))
      differences.push(`${path}: ${placeholders(text).join(' ')} in place of ${placeholders(english).join(' ')}`);
  }
}

interface Pair {
  readonly path: string;
  readonly english: string;
  readonly other: string;
}

function textsOf(path: string, english: unknown, other: unknown): Pair[] {
  if (typeof english === 'string' && typeof other === 'string') return [{ path, english, other }];
  if (typeof english !== 'object' || english === null || typeof other !== 'object' || other === null) return [];
  return Object.entries(english).flatMap(([key, value]) =>
    textsOf(`${path}.${key}`, value, (other as Record<string, unknown>)[key]),
  );
}
