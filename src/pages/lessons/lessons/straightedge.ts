/** Reading a straightedge: a long one and a short one, on a hollow and on a hump. */
import type { Lesson } from '../types.ts';

const FRETTED = { phase: 'frets', fretsIn: 'all' } as const;
const LATER = { phase: 'weeks', days: 90 } as const;
const PLAYED = { phase: 'rod' } as const;

/** Fret 7 is half-way from fret 1 to fret 16, where this neck meets its body. */
const short = (at: typeof LATER | typeof PLAYED) => ({ q: 'lightUnder', fromFret: 1, toFret: 7, at }) as const;

export const straightedge = {
  id: 'straightedge',
  minutes: 6,
  steps: [
    {
      id: 'light',
      acts: [
        { set: 'preset', id: 'bolt-on-maple', values: { method: 'press' } },
        { set: 'rail', at: LATER },
        { set: 'view', view: 'edge' },
        { set: 'comparing', on: false },
      ],
      facts: { last: { q: 'edgeEnd' }, relief: { q: 'relief', at: LATER } },
    },
    {
      id: 'short',
      acts: [{ set: 'rail', at: LATER }],
      ask: { kind: 'value', of: short(LATER), min: 0, max: 0.4, step: 0.01 },
      facts: { short: short(LATER), relief: { q: 'relief', at: LATER } },
    },
    {
      id: 'hump',
      acts: [
        { set: 'rail', at: FRETTED },
        { set: 'view', view: 'edge' },
      ],
      facts: { hump: { q: 'relief', at: FRETTED } },
    },
    {
      id: 'rock',
      acts: [{ set: 'rail', at: FRETTED }],
      ask: { kind: 'value', of: { q: 'lightRocked', at: FRETTED }, min: 0, max: 1, step: 0.01 },
      facts: {
        last: { q: 'edgeEnd' },
        rocked: { q: 'lightRocked', at: FRETTED },
        hump: { q: 'relief', at: FRETTED },
      },
    },
    {
      id: 'yours',
      acts: [
        { set: 'values', values: { targetReliefMm: 0.1 } },
        { set: 'rail', at: PLAYED },
        { set: 'view', view: 'edge' },
      ],
      goal: {
        by: ['targetReliefMm'],
        wanted: [{ id: 'short', of: short(PLAYED), atLeast: 0.045, atMost: 0.055 }],
      },
      facts: { short: short(PLAYED), relief: { q: 'relief', at: PLAYED } },
    },
  ],
} as const satisfies Lesson;
