/**
 * Which modules of the built page come in one file. Left alone, the bundler makes a file for each set of parts that share
 * some modules: sixty requests before the first picture, each compressed by itself. Here what always comes together comes
 * in one file, and nobody is sent a module that his page does not import.
 *
 * Three parts of the page are loaded by themselves: the workshop, the customer's page, and the picture, which both show.
 * A module of the workshop that one of the other two imports as well is in `common`; any other of its modules is in
 * `workshop`, also where a dialog uses it, since a dialog is opened from the workshop; likewise for the picture. What the
 * entry itself imports stays with the entry: no words may be loaded before the language is chosen.
 */
import { resolve } from 'node:path';
import type { Rolldown } from 'vite';

const ENTRY = 'src/app/main.tsx';
const WORKSHOP = 'src/app/workshop.tsx';
const CUSTOMER = 'src/app/customer.tsx';
/** What a customer reads while the rest of the page is on its way; a module of it is never in one file with others' modules. */
const FIRST = 'src/app/customer-first.ts';
const PICTURE = 'src/scene/index.ts';

type Context = Pick<Rolldown.ChunkingContext, 'getModuleInfo'>;

/** A module and everything that it imports at once, and that these do. */
function withImports(start: string, context: Context): ReadonlySet<string> {
  const found = new Set([start]);
  for (const id of found) for (const other of context.getModuleInfo(id)?.importedIds ?? []) found.add(other);
  return found;
}

/**
 * @param root - folder of the project
 * @returns the name of the file for a module, or null where the bundler shall decide
 */
export function fileOf(root: string): (id: string, context: Context) => string | null {
  let parts: Readonly<Record<'entry' | 'first' | 'workshop' | 'customer' | 'picture', ReadonlySet<string>>> | undefined;
  return (id, context) => {
    const of = (path: string) => withImports(resolve(root, path), context);
    parts ??= {
      entry: of(ENTRY),
      first: of(FIRST),
      workshop: of(WORKSHOP),
      customer: of(CUSTOMER),
      picture: of(PICTURE),
    };
    const { entry, first, workshop, customer, picture } = parts;
    if (entry.has(id) || first.has(id)) return null;
    if (workshop.has(id)) return customer.has(id) || picture.has(id) ? 'common' : 'workshop';
    return picture.has(id) && !customer.has(id) ? 'picture' : null;
  };
}
