/**
 * A short stamp of what a paper, a file or a picture was computed from, so that it can be told beside the neck on the bench
 * whether both say the same: `HGKDRT-BXQ-PLM`, for the build, the program, and the measurements that narrow its bands.
 *
 * Each part is the head of a SHA-256 hash in twenty consonants, which no eye takes for digits and no hand spells as a word:
 * 6 letters are one of 64 million, 3 one of 8000. Two of 2000 necks that share their 6 letters turn up in one workshop of
 * 30. The parts are apart so that a stamp can say in what it differs.
 *
 * The part of the build counts every value that some number is made of, also those that are out of use at the moment. It
 * leaves out name, notes, colours and lines of binding beyond those in use; and values at their defaults, so that a
 * parameter that a later release adds changes no stamp. Numbers count to 12 digits, far beyond what is typed. Nothing in it
 * depends on the order of keys, on language or units.
 */
import type { BiteReference } from '../neck/bite-reference.ts';
import { bindingInUse, type Build } from '../neck/build.ts';
import { PARAMETERS } from '../neck/parameters.ts';
import { filedExactly } from '../neck/quantities.ts';
import { PROGRAM_VERSION } from '../neck/version.ts';
import { lettersOfText } from '../mechanics/bench-log/identity.ts';
import { narrowing, type Measured } from '../mechanics/bench-log/standing.ts';
import type { OwnStrength } from '../playing/own-strength.ts';

export interface Stamp {
  readonly build: string;
  readonly program: string;
  readonly measurements: string;
}

export type StampPart = keyof Stamp;
export const STAMP_PARTS = ['build', 'program', 'measurements'] as const satisfies readonly StampPart[];

const LENGTHS: Readonly<Record<StampPart, number>> = { build: 6, program: 3, measurements: 3 };
const LETTERS_IN_ALL = 12;

const OUT: ReadonlySet<string> = new Set(['name', 'notes', 'binding', 'biteReference', 'gripReference']);
const DEFAULTS: ReadonlyMap<string, unknown> = new Map(PARAMETERS.map(({ id, default: value }) => [id, value]));

const part = (of: StampPart, text: string): string =>
  lettersOfText(`backbow ${of} 1 ${text}`, LENGTHS[of]).toUpperCase();

/** Plain data with its keys in one order and its numbers without noise. */
function canonical(value: unknown): unknown {
  if (typeof value === 'number') return filedExactly(value);
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, held]) => [key, canonical(held)] as const);
  return Object.fromEntries(entries.toSorted(([one], [other]) => (one < other ? -1 : 1)));
}

const parts = new WeakMap<Build, string>();

function buildPart(build: Build): string {
  const known = parts.get(build);
  if (known !== undefined) return known;
  const counted = Object.entries(build).filter(
    ([key, value]) => !OUT.has(key) && !(DEFAULTS.has(key) && DEFAULTS.get(key) === value),
  );
  // A line as stiff as the board is its thickness alone, as it was before lines had a material.
  const lines = bindingInUse(build).map(({ thicknessMm, material }) =>
    material === undefined ? thicknessMm : [thicknessMm, material],
  );
  const made = part('build', JSON.stringify(canonical({ ...Object.fromEntries(counted), lines })));
  parts.set(build, made);
  return made;
}

/** @param bite what narrows the bands of the build; undefined where nothing does */
export function stampOf(build: Build, bite?: Pick<BiteReference, 'hash'>, program = PROGRAM_VERSION): Stamp {
  return {
    build: buildPart(build),
    program: part('program', program),
    measurements: part('measurements', bite?.hash ?? 'none'),
  };
}

/**
 * The stamp where a maker's own strength was accepted: papers play with it, so that it counts among the measurements.
 * @param own null where none was
 */
export function playedStamp(
  build: Build,
  bite: Pick<BiteReference, 'hash'> | undefined,
  own: Pick<OwnStrength, 'forceN' | 'p05N' | 'p95N'> | null,
): Stamp {
  if (!own) return stampOf(build, bite);
  const strength = [own.forceN, own.p05N, own.p95N].map(filedExactly).join(' ');
  return stampOf(build, { hash: `${bite?.hash ?? 'none'} played ${strength}` });
}

/** Is it the stamp of bands that no measurement narrows? */
export function isUnmeasured({ measurements }: Stamp): boolean {
  return measurements === part('measurements', 'none');
}

export function stampText(stamp: Stamp): string {
  return STAMP_PARTS.map((of) => stamp[of]).join('-');
}

/** The stamp of a build with what this device has measured and accepted, as text. */
export function stampHere(measured: Measured, build: Build, own: OwnStrength | null = null): string {
  return stampText(playedStamp(build, narrowing(measured, build), own));
}

/** Reads a stamp as it was typed: small or large, with whatever between its parts. @returns null when it is none */
export function readStamp(typed: string): Stamp | null {
  const letters = typed.toUpperCase().replace(/[\s.\-–—−_]+/g, '');
  if (!/^[BCDFGHJKLMNPQRSTVWXZ]*$/.test(letters) || letters.length !== LETTERS_IN_ALL) return null;
  return { build: letters.slice(0, 6), program: letters.slice(6, 9), measurements: letters.slice(9) };
}

/** In what two stamps differ; nothing where both are of the same numbers. */
export function stampDifferences(one: Stamp, other: Stamp): StampPart[] {
  return STAMP_PARTS.filter((of) => one[of] !== other[of]);
}

/** Do they differ in one letter alone, as stamps do that were misread? */
export function isOneLetterOff(one: Stamp, other: Stamp): boolean {
  const [a, b] = [stampText(one), stampText(other)];
  return Array.from(a).filter((letter, place) => letter !== b[place]).length === 1;
}

/** A neck that may be the one of a stamp. */
export interface Candidate {
  readonly build: Build;
  /** When it was so, ms since 1970; null where that is not known. */
  readonly at: number | null;
}

/** The newest neck whose build has that stamp. */
export function neckOfStamp({ build }: Pick<Stamp, 'build'>, candidates: readonly Candidate[]): Candidate | undefined {
  const fitting = candidates.filter((candidate) => buildPart(candidate.build) === build);
  return fitting.toSorted((a, b) => (b.at ?? 0) - (a.at ?? 0))[0];
}
