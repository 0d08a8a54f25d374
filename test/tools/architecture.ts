/**
 * The rules of the house: which room may import which, what the pure rooms may not touch, and no cycles.
 *
 * The rules are plain functions over files, so that they can be tried on bad samples as well as on the source.
 */
import { posix } from 'node:path';
import { reachOf, type Reach } from './imports.ts';
import type { SourceFile } from './source-files.ts';

/**
 * The storeys of the house, from the ground up. A room may import rooms of lower storeys and its neighbours on the same
 * one, as long as neighbours do not import each other in a circle.
 */
export const STOREYS: readonly (readonly string[])[] = [
  ['neck'],
  ['fretwork', 'mechanics'],
  ['verdict', 'geometry', 'playing'],
  ['speech'],
  ['scene', 'kit', 'pages', 'state'],
  ['app'],
];

/** Rooms of plain computation: no React, no three, no page. */
export const PURE_ROOMS: ReadonlySet<string> = new Set([
  'neck',
  'fretwork',
  'mechanics',
  'verdict',
  'geometry',
  'playing',
]);

/** Packages that draw, hold a page's state or need a page. */
const PAGE_PACKAGES =
  /^(react|react-dom|three|leva|zustand|zundo|comlink|idb-keyval|happy-dom|@react-three\/.+|@testing-library\/.+)(\/|$)/;

/** Names that exist only in a page or a worker. */
const PAGE_GLOBALS =
  /^(window|document|navigator|location|history|screen|localStorage|sessionStorage|indexedDB|caches|self|postMessage|fetch|XMLHttpRequest|WebSocket|EventSource|Worker|SharedWorker|FileReader|Image|Audio|alert|confirm|prompt|matchMedia|getComputedStyle|customElements|requestAnimationFrame|cancelAnimationFrame|requestIdleCallback|ResizeObserver|IntersectionObserver|MutationObserver|OffscreenCanvas|ImageData|DOMParser|DOMRect|DOMMatrix|Element|JSX|(HTML|SVG|CSS|WebGL|Canvas).+)$/;

/** What runs in Node, not in a page: it may use Node's own modules. */
const NODE_ENTRIES = /^src\/app\/(predict\.ts|packaging\/.+|cli\/.+)$/;

/** What makes the page works with the bundler; it is not part of the page. */
function isTool(path: string, name: string): boolean {
  return path.startsWith('src/app/packaging/') && name === 'vite';
}

/** Something that breaks a rule, in words that say what and where. */
export type Violation = string;

function roomOf(path: string): string | undefined {
  return /^src\/([^/]+)\//.exec(path)?.[1];
}

function storeyOf(room: string): number {
  return STOREYS.findIndex((rooms) => rooms.includes(room));
}

/** The package that an import names: `@scope/name` or `name`. */
function packageOf(name: string): string {
  return name.split('/', name.startsWith('@') ? 2 : 1).join('/');
}

/** The file that a relative import means: extensions may be left out, queries such as `?worker` do not count. */
export function resolveImport(from: string, name: string, paths: ReadonlySet<string>): string | undefined {
  const path = posix.join(posix.dirname(from), name.replace(/[?#].*$/, ''));
  return [path, `${path}.ts`, `${path}.tsx`, `${path}/index.ts`, `${path}/index.tsx`].find((candidate) =>
    paths.has(candidate),
  );
}

/**
 * Circles in a graph, each as the names along it with the first repeated at the end.
 *
 * @param graph - for each name, the names that it leads to
 */
export function findCycles(graph: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const cycles: string[][] = [];
  const finished = new Set<string>();
  const trail: string[] = [];
  const visit = (name: string): void => {
    const start = trail.indexOf(name);
    if (start >= 0) cycles.push([...trail.slice(start), name]);
    if (start >= 0 || finished.has(name)) return;
    trail.push(name);
    for (const next of graph.get(name) ?? []) visit(next);
    trail.pop();
    finished.add(name);
  };
  for (const name of graph.keys()) visit(name);
  return cycles;
}

function checkRoom(reach: Reach, room: string): Violation[] {
  if (storeyOf(room) < 0) return [`${reach.path} is in “${room}”, which is no room of the house`];
  const violations: Violation[] = [];
  const isNodeEntry = NODE_ENTRIES.test(reach.path);
  for (const { name } of reach.imports) {
    if (name.startsWith('node:') && !isNodeEntry)
      violations.push(`${reach.path} imports ${name}, which a page has not`);
    if (PURE_ROOMS.has(room) && PAGE_PACKAGES.test(name))
      violations.push(`${reach.path} imports ${name}; ${room} is plain computation`);
  }
  if (PURE_ROOMS.has(room)) {
    if (reach.path.endsWith('.tsx')) violations.push(`${reach.path} is a .tsx file; ${room} is plain computation`);
    for (const name of reach.globals)
      if (PAGE_GLOBALS.test(name)) violations.push(`${reach.path} uses ${name}; ${room} is plain computation`);
  }
  return violations;
}

/**
 * Checks source files against the rules of the house.
 *
 * @param files - the files under src, with paths from the project's folder
 * @param declaredPackages - names under `dependencies` in package.json
 * @returns what breaks the rules; empty when nothing does. Having no files at all breaks them too.
 */
export function checkHouse(files: readonly SourceFile[], declaredPackages: ReadonlySet<string>): Violation[] {
  const sources = files.filter((file) => /\.tsx?$/.test(file.path));
  if (sources.length === 0) return ['there are no source files'];

  const violations: Violation[] = [];
  const paths = new Set(files.map((file) => file.path));
  const fileGraph = new Map<string, Set<string>>();
  const roomGraph = new Map<string, Set<string>>();
  for (const reach of sources.map(reachOf)) {
    const room = roomOf(reach.path);
    if (room === undefined) {
      violations.push(`${reach.path} is in no room`);
      continue;
    }
    violations.push(...checkRoom(reach, room));
    const leadsTo = new Set<string>();
    fileGraph.set(reach.path, leadsTo);
    for (const { name, typeOnly } of reach.imports) {
      if (!name.startsWith('.')) {
        if (!name.startsWith('node:') && !declaredPackages.has(packageOf(name)) && !isTool(reach.path, name))
          violations.push(`${reach.path} imports ${name}, which is not among the dependencies in package.json`);
        continue;
      }
      const target = resolveImport(reach.path, name, paths);
      if (target === undefined) {
        violations.push(`${reach.path} imports ${name}, which is no file under src`);
        continue;
      }
      // Files that know each other's types only are no circle when the program runs.
      if (!typeOnly) leadsTo.add(target);
      const targetRoom = roomOf(target) ?? '';
      if (targetRoom === room) continue;
      if (storeyOf(targetRoom) > storeyOf(room))
        violations.push(`${reach.path} imports ${target}: ${room} stands below ${targetRoom}`);
      if (!roomGraph.has(room)) roomGraph.set(room, new Set());
      roomGraph.get(room)?.add(targetRoom);
    }
  }
  for (const cycle of findCycles(roomGraph)) violations.push(`rooms import each other: ${cycle.join(' → ')}`);
  for (const cycle of findCycles(fileGraph)) violations.push(`files import each other: ${cycle.join(' → ')}`);
  return violations;
}

/** Hosts of package registries and file mirrors; addresses of one machine. In pieces, so that this file passes itself. */
const FOREIGN = [
  new RegExp(`\\b(${['registry\\.n' + 'pmjs', 'n' + 'pmjs\\.(org|com)', 'registry\\.y' + 'arnpkg'].join('|')})`, 'i'),
  new RegExp(
    `\\b(${['un' + 'pkg', 'jsd' + 'elivr', 'skyp' + 'ack', 'es' + 'm'].join('|')})\\.(com|net|dev|sh|org)\\b`,
    'i',
  ),
  new RegExp(`\\b(${['p' + 'ypi\\.org', 'deb\\.deb' + 'ian\\.org', 'npm\\.pkg\\.gith' + 'ub'].join('|')})`, 'i'),
  new RegExp(
    `(^|[^\\w./-])/(${['wo' + 'rk', 'ro' + 'ot', 'ho' + 'me', 'Us' + 'ers', 'tm' + 'p', 'm' + 'nt'].join('|')})/[\\w.]`,
  ),
  new RegExp(`\\b[A-Z]:\\\\{1,2}Us` + `ers\\b`),
];

/**
 * Finds what would tie the files to one machine or one registry.
 *
 * @param files - any text files
 * @returns for each finding the file, the line number and the line
 */
export function findForeignAddresses(files: readonly SourceFile[]): Violation[] {
  return files.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, index) => {
      if (!FOREIGN.some((pattern) => pattern.test(line))) return [];
      return [`${path}:${index + 1}: ${line.trim().slice(0, 160)}`];
    }),
  );
}
