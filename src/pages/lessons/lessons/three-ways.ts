/** Press fit, glue fit, press and glue: what each does to the same neck. */
import type { Lesson } from '../types.ts';

const FRETTED = { phase: 'frets', fretsIn: 'all' } as const;
const STRUNG = { phase: 'strung' } as const;
const LATER = { phase: 'weeks', days: 90 } as const;
const relief = (method: 'press' | 'glue' | 'both', at: typeof FRETTED | typeof STRUNG) =>
  ({ q: 'relief', at, method }) as const;

export const threeWays = {
  id: 'three-ways',
  minutes: 6,
  steps: [
    {
      id: 'ways',
      acts: [
        { set: 'preset', id: 'bolt-on-maple', values: { method: 'press' } },
        { set: 'rail', at: { phase: 'bare' } },
        { set: 'view', view: 'neck' },
        { set: 'comparing', on: false },
      ],
    },
    {
      id: 'glued',
      acts: [
        { set: 'values', values: { method: 'glue' } },
        { set: 'rail', at: { phase: 'bare' } },
        { set: 'view', view: 'edge' },
      ],
      ask: { kind: 'line', at: FRETTED, method: 'glue', rangeMm: 0.6 },
      reveal: [{ set: 'play', from: { phase: 'bare' }, to: FRETTED }],
      facts: { glue: relief('glue', FRETTED), press: relief('press', FRETTED) },
    },
    {
      id: 'air',
      acts: [
        { set: 'values', values: { method: 'press' } },
        { set: 'rail', at: FRETTED },
        { set: 'view', view: 'slot' },
        { set: 'fret', fret: 9 },
      ],
      ask: { kind: 'value', of: { q: 'extraFlexibility', method: 'press' }, min: 0, max: 100, step: 1 },
      facts: {
        press: { q: 'extraFlexibility', method: 'press' },
        glue: { q: 'extraFlexibility', method: 'glue' },
      },
    },
    {
      id: 'strung',
      acts: [
        { set: 'view', view: 'edge' },
        { set: 'rail', at: FRETTED },
      ],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'press', of: relief('press', STRUNG) },
          { id: 'glue', of: relief('glue', STRUNG) },
          { id: 'both', of: relief('both', STRUNG) },
        ],
      },
      reveal: [
        { set: 'rail', at: STRUNG },
        { set: 'comparing', on: true },
      ],
      facts: { press: relief('press', STRUNG), glue: relief('glue', STRUNG), both: relief('both', STRUNG) },
    },
    {
      id: 'price',
      acts: [
        { set: 'rail', at: STRUNG },
        { set: 'comparing', on: true },
        { set: 'view', view: 'neck' },
      ],
      facts: {
        press: { q: 'pullOut', method: 'press' },
        glue: { q: 'pullOut', method: 'glue' },
        both: { q: 'pullOut', method: 'both' },
      },
    },
    {
      id: 'choose',
      acts: [
        { set: 'values', values: { method: 'press' } },
        { set: 'rail', at: LATER },
        { set: 'view', view: 'edge' },
      ],
      goal: {
        by: ['method', 'kerfMm'],
        wanted: [
          { id: 'give', of: { q: 'extraFlexibility' }, atMost: 5 },
          { id: 'relief', of: { q: 'relief', at: LATER }, atLeast: 0.18, atMost: 0.22 },
        ],
      },
    },
  ],
} as const satisfies Lesson;
