/**
 * Links: `<version>.<text>`, the text as that version's codec writes it. A new way of writing gets a folder and a line in
 * `DECODERS`; the old ones stay, so that every link ever given away opens.
 */
import { PROJECT_FORMAT, readProject, PROJECT_VERSION } from '../../neck/file.ts';
import type { Build } from '../../neck/build.ts';
import type { Problem } from '../../neck/problems.ts';
import { checkOffers, checkPage } from './page-text.ts';
import type { LinkTrouble, ReadLink, Shared } from './shared.ts';
import * as v1 from './v1/codec.ts';

export const LINK_VERSION = 1;
const DECODERS: Readonly<Record<number, (text: string) => v1.Unchecked | null>> = { 1: v1.decode };

/** Longest link that is read or written, in characters. Browsers take more; messages and mail often less. */
export const MOST_CHARACTERS = 32_000;

export type WrittenLink =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly trouble: LinkTrouble };

/** Writes checked builds. Refuses only what would be too long, which takes thousands of characters of notes. */
export function writeLink(shared: Shared): WrittenLink {
  const text = `${LINK_VERSION}.${v1.encode(shared)}`;
  return text.length > MOST_CHARACTERS
    ? { ok: false, trouble: { code: 'too-long', length: text.length, most: MOST_CHARACTERS } }
    : { ok: true, text };
}

const refuse = (trouble: LinkTrouble): ReadLink => ({ ok: false, trouble });

/** Reads a link; nothing in it is corrected. */
export function readLink(text: string): ReadLink {
  if (text.length > MOST_CHARACTERS) {
    return refuse({ code: 'too-long', length: text.length, most: MOST_CHARACTERS });
  }
  const [, digits, body] = /^([1-9]\d{0,5})\.([\w-]*)$/.exec(text) ?? [];
  if (digits === undefined || body === undefined) return refuse({ code: 'broken' });
  const version = Number(digits);
  const decode = DECODERS[version];
  if (!decode) return refuse({ code: 'newer', version, newest: LINK_VERSION });
  const unchecked = decode(body);
  if (!unchecked) return refuse({ code: 'broken' });
  return checkUnchecked(unchecked);
}

function checkUnchecked({ project, builds, bites, grips, page, offers }: v1.Unchecked): ReadLink {
  if (project > PROJECT_VERSION) return refuse({ code: 'newer', version: project, newest: PROJECT_VERSION });
  const checked: Build[] = [];
  const problems: Problem[] = [];
  for (const [index, build] of builds.entries()) {
    const bite = bites[index] ?? undefined;
    const grip = grips[index] ?? undefined;
    const measurements = { ...(bite === undefined ? {} : { bite }), ...(grip === undefined ? {} : { grip }) };
    // The project file's own reader brings builds of older releases up to date.
    const file = {
      format: PROJECT_FORMAT,
      version: project,
      build,
      measurements,
    };
    const read = readProject(JSON.stringify(file));
    if (read.ok) checked.push(read.build);
    else problems.push(...read.problems);
  }
  if (problems.length > 0) return refuse({ code: 'refused', problems });
  const text = checkPage(page, checked.length);
  const said = checkOffers(offers, checked.length);
  return text && said ? { ok: true, shared: { builds: checked, page: text, ...said } } : refuse({ code: 'broken' });
}
