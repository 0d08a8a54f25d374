/**
 * Collects the licence of every package whose code, style or fonts are in the built page, from what the bundler really put
 * there, and writes them beside the page as licences.json. A package that states no licence stops the build.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rollup } from 'vite';
import type { Licence } from '../../pages/about/licences/licence.ts';

type Bundle = Rollup.OutputBundle;

/** The bundlers put small helpers of their own into what they build. */
const HELPERS: readonly (readonly [prefix: string, name: string])[] = [
  ['\0vite/', 'vite'],
  ['\0rolldown/', 'rolldown'],
];

/** The folder of the package that a module belongs to, or undefined for our own. */
export function packageFolderOf(moduleId: string, root: string): string | undefined {
  const helper = HELPERS.find(([prefix]) => moduleId.startsWith(prefix));
  if (helper) return join(root, 'node_modules', helper[1]);
  const path = moduleId
    .replaceAll('\\', '/')
    .replace(/[?#].*$/, '')
    .replace(/^\0/, '');
  const match = /^(.*(?:^|\/)node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path);
  if (!match?.[1]) return undefined;
  return /^(\/|[A-Za-z]:)/.test(match[1]) ? match[1] : join(root, match[1]);
}

/** Modules of which something is in the bundle, and files that were copied into it. */
function contentOf(bundle: Bundle): string[] {
  return Object.values(bundle).flatMap((output) =>
    output.type === 'asset'
      ? output.originalFileNames
      : Object.entries(output.modules).flatMap(([id, { renderedLength }]) =>
          // Styles leave no code behind in the chunk that asks for them.
          renderedLength > 0 || /\.css(\?|$)/.test(id) ? [id] : [],
        ),
  );
}

interface PackageJson {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name?: string };
}

/** The text of the licence as the package ships it; without those of what its own tools are built from. */
function textOf(folder: string): string | null {
  const name = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)(\.(md|txt))?$/i.test(entry));
  if (!name) return null;
  const text = readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n');
  return text.split(/^#+ *licenses of bundled dependencies/im, 1)[0].trim();
}

/** @throws when the package states no licence */
export function licenceOf(folder: string): Licence {
  const { name, version, license, author } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  ) as PackageJson;
  if (!license) throw new Error(`${name} ${version} states no licence in its package.json`);
  const by = typeof author === 'string' ? author.replace(/\s*[<(].*$/, '') : (author?.name ?? '');
  return { name, version, licence: license, by, text: textOf(folder) };
}

/** Two plugins that share what they find: one for the page, one for its workers, which are bundled apart. */
export function licences(): { page: Plugin; workers: () => Plugin } {
  const content = new Set<string>();
  let root = '';
  const collect = (bundle: Bundle) => {
    for (const id of contentOf(bundle)) content.add(id);
  };
  return {
    workers: () => ({ name: 'backbow-licences-of-workers', generateBundle: (_options, bundle) => collect(bundle) }),
    page: {
      name: 'backbow-licences',
      apply: (config, { command }) => command === 'build' && !config.build?.ssr,
      configResolved: (config) => {
        root = config.root;
      },
      generateBundle: {
        order: 'post',
        handler(_options, bundle) {
          collect(bundle);
          const folders = new Set([...content].flatMap((id) => packageFolderOf(id, root) ?? []));
          // One package may lie in several folders.
          const byName = new Map([...folders].map(licenceOf).map((found) => [`${found.name} ${found.version}`, found]));
          const list = [...byName].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, found]) => found);
          this.emitFile({ type: 'asset', fileName: 'licences.json', source: JSON.stringify(list) });
        },
      },
    },
  };
}
