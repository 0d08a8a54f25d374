/** The lessons, in the order in which they build on each other. */
import type { Lesson } from '../types.ts';
import { chamfer } from './chamfer.ts';
import { nipping } from './nipping.ts';
import { oneAndAll } from './one-and-all.ts';
import { straightedge } from './straightedge.ts';
import { strings } from './strings.ts';
import { threeBlades } from './three-blades.ts';
import { threeWays } from './three-ways.ts';
import { tooStiff } from './too-stiff.ts';
import { whyRelief } from './why-relief.ts';

export const LESSONS: readonly Lesson[] = [
  oneAndAll,
  threeWays,
  strings,
  threeBlades,
  straightedge,
  whyRelief,
  tooStiff,
  chamfer,
  nipping,
];
