/**
 * Strips as JSON, there and back, and what makes one the same one: the hash of what it says, its id left out, made as that of
 * an entry of the bench log is.
 */
import { hashOfText } from '../bench-log/identity.ts';
import type { StripContent, TryStrip } from './document.ts';
import { checkStrip, type StripProblem } from './document-problems.ts';

const FORMAT = 'backbow try strips';
const VERSION = 1;
const CONTENT_FORMAT = 'backbow try strip 1';
/** Numbers count to a millionth, as those of an entry do. */
const DIGITS = 6;

/** The same for the same content, whatever the order of its keys; what is null or an empty text is left out. */
function canonical(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toFixed(DIGITS)) + 0;
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== 'object' || value === null) return value;
  const said = Object.entries(value).filter(([, inner]) => inner !== null && inner !== '');
  return said.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([key, inner]) => [key, canonical(inner)]);
}

/** Hash of what a strip says: 32 hexadecimal digits. */
export function stripHash(strip: StripContent | TryStrip): string {
  return hashOfText(JSON.stringify([CONTENT_FORMAT, canonical({ ...strip, id: null })]));
}

export function writeStrips(strips: readonly TryStrip[]): string {
  return `${JSON.stringify({ format: FORMAT, version: VERSION, strips }, null, 2)}\n`;
}

export type ReadStrips =
  | { readonly ok: true; readonly strips: readonly TryStrip[] }
  | { readonly ok: false; readonly problems: readonly StripProblem[] };

const refused = (code: 'not-json' | 'not-strips' | 'newer-version', value: unknown): ReadStrips => ({
  ok: false,
  problems: [{ code, at: 'file', value, ...(code === 'newer-version' ? { max: VERSION } : {}) }],
});

/** Reads what `writeStrips` wrote. Paths of problems begin with the number of the strip, counted from 0. */
export function readStrips(text: string): ReadStrips {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return refused('not-json', error instanceof Error ? error.message : String(error));
  }
  const { format, version, strips } = (data ?? {}) as Record<string, unknown>;
  if (format !== FORMAT || !Array.isArray(strips)) return refused('not-strips', format);
  if (version !== VERSION) return refused(Number(version) > VERSION ? 'newer-version' : 'not-strips', version);
  const checked = strips.map(checkStrip);
  const problems = checked.flatMap((one, index) =>
    one.ok ? [] : one.problems.map((problem) => ({ ...problem, at: `strips.${index}.${problem.at}` })),
  );
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, strips: checked.flatMap((one) => (one.ok ? [one.strip] : [])) };
}
