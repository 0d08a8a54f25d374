/** A build as what it changes in another one, so that a link stays short. Works for builds of any release. */

/** A build as stored, of whatever release: plain JSON, not yet checked. */
export type StoredBuild = Readonly<Record<string, unknown>>;

export interface Changes {
  /** Values that the base lacks or has otherwise. */
  readonly set: Readonly<Record<string, unknown>>;
  /** Keys of the base that the build has not. */
  readonly drop: readonly string[];
}

const same = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

export function changesFrom(base: StoredBuild, build: StoredBuild): Changes {
  return {
    set: Object.fromEntries(
      Object.entries(build).filter(([key, value]) => !Object.hasOwn(base, key) || !same(base[key], value)),
    ),
    drop: Object.keys(base).filter((key) => !Object.hasOwn(build, key)),
  };
}

export function withChanges(base: StoredBuild, { set, drop }: Changes): StoredBuild {
  const kept = Object.entries(base).filter(([key]) => !drop.includes(key));
  return Object.fromEntries([...kept, ...Object.entries(set)]);
}
