/** What is written beside a build in the files that are made of it today. */
import type { Build } from '../../../neck/build.ts';
import type { Made } from '../../../neck/file.ts';
import { PROGRAM_VERSION } from '../../../neck/version.ts';
import { keptStrength } from '../../../state/matches/kept-strength.ts';
import { store } from '../../../state/store.ts';
import { stampHere } from '../../../verdict/stamp.ts';
import { isoDate } from '../date.ts';

export function madeToday(build: Build): Made {
  return { stamp: stampOnDevice(build), program: PROGRAM_VERSION, date: isoDate(new Date()) };
}

/** The stamp of a build with what this device has measured. */
export function stampOnDevice(build: Build): string {
  return stampHere(store.getState(), build, keptStrength());
}
