/** Necks and systems for the tests of the mechanics. */
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import type { NeckDescription } from '../../src/mechanics/description.ts';

export const DEFAULT_NECK = describeNeck(defaultBuild(), AS_STATED);

export function neckWith(change: Partial<Build>): NeckDescription {
  return describeNeck({ ...defaultBuild(), ...change }, AS_STATED);
}

/** Every preset, and a rod of the kind that no preset with those woods has. */
export const ALL_NECKS: readonly (readonly [name: string, neck: NeckDescription])[] = PRESETS.map(
  (preset) => [preset.id, describeNeck(preset.build, AS_STATED)] as const,
);

/** Twelve frets on a short scale: small enough for a dense factorisation. */
export const SMALL_NECK: NeckDescription = {
  ...DEFAULT_NECK,
  lengthMm: 60,
  jointMm: 60,
  heel: null,
  rod: null,
  channel: null,
  fretXMm: [15, 30, 45],
};
