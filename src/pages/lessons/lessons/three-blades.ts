/** Choosing a kerf with three blades: what each does to the neck, to the hold of a fret, and to the end of the job. */
import type { Lesson } from '../types.ts';

const BARE = { phase: 'bare' } as const;
const FRETTED = { phase: 'frets', fretsIn: 'all' } as const;
const LATER = { phase: 'weeks', days: 90 } as const;
const THIN = 0.51;
const MIDDLE = 0.58;
const WIDE = 0.65;

export const threeBlades = {
  id: 'three-blades',
  minutes: 7,
  steps: [
    {
      id: 'wall',
      acts: [
        { set: 'preset', id: 'bolt-on-maple', values: { method: 'press', kerfMm: THIN } },
        { set: 'rail', at: BARE },
        { set: 'view', view: 'slot' },
        { set: 'fret', fret: 7 },
        { set: 'comparing', on: false },
      ],
      facts: {
        kerf: { q: 'parameter', id: 'kerfMm' },
        tang: { q: 'parameter', id: 'tangWidthMm' },
        studs: { q: 'parameter', id: 'studWidthMm' },
      },
    },
    {
      id: 'thin',
      acts: [
        { set: 'values', values: { kerfMm: THIN } },
        { set: 'rail', at: BARE },
        { set: 'view', view: 'edge' },
      ],
      ask: { kind: 'line', at: FRETTED, rangeMm: 0.6 },
      reveal: [{ set: 'play', from: BARE, to: FRETTED }],
      facts: { bow: { q: 'relief', at: FRETTED }, seat: { q: 'seatingForce' } },
      remember: {
        thinBow: { q: 'relief', at: FRETTED },
        thinHold: { q: 'pullOut' },
        thinLater: { q: 'relief', at: LATER },
      },
    },
    {
      id: 'wide',
      acts: [
        { set: 'values', values: { kerfMm: WIDE } },
        { set: 'rail', at: BARE },
      ],
      ask: { kind: 'value', of: { q: 'relief', at: FRETTED }, min: -0.4, max: 0.4, step: 0.01 },
      reveal: [{ set: 'play', from: BARE, to: FRETTED }],
      facts: {
        bow: { q: 'relief', at: FRETTED },
        thin: { q: 'remembered', name: 'thinBow' },
        kerf: { q: 'parameter', id: 'kerfMm' },
      },
      remember: { wideLater: { q: 'relief', at: LATER } },
    },
    {
      id: 'hold',
      acts: [{ set: 'rail', at: FRETTED }],
      ask: { kind: 'value', of: { q: 'pullOut' }, min: 0, max: 1000, step: 10 },
      facts: { hold: { q: 'pullOut' }, thin: { q: 'remembered', name: 'thinHold' } },
    },
    {
      id: 'months',
      acts: [
        { set: 'values', values: { kerfMm: MIDDLE } },
        { set: 'rail', at: BARE },
      ],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'thin', of: { q: 'remembered', name: 'thinLater' } },
          { id: 'middle', of: { q: 'relief', at: LATER } },
          { id: 'wide', of: { q: 'remembered', name: 'wideLater' } },
        ],
      },
      reveal: [{ set: 'rail', at: LATER }],
      facts: {
        thin: { q: 'remembered', name: 'thinLater' },
        middle: { q: 'relief', at: LATER },
        wide: { q: 'remembered', name: 'wideLater' },
      },
    },
    {
      id: 'strip',
      acts: [{ set: 'rail', at: LATER }],
    },
    {
      id: 'yours',
      acts: [
        { set: 'preset', id: 'set-neck-mahogany', values: { method: 'press', kerfMm: THIN } },
        { set: 'rail', at: LATER },
        { set: 'view', view: 'edge' },
      ],
      goal: {
        by: ['kerfMm'],
        wanted: [
          { id: 'relief', of: { q: 'relief', at: LATER }, atLeast: 0.14, atMost: 0.17 },
          { id: 'hold', of: { q: 'pullOut' }, atLeast: 350 },
        ],
      },
      facts: { kerf: { q: 'parameter', id: 'kerfMm' }, relief: { q: 'relief', at: LATER }, hold: { q: 'pullOut' } },
    },
  ],
} as const satisfies Lesson;
