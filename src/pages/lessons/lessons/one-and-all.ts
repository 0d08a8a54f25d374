/** One fret bends a neck by next to nothing; two dozen add up. */
import type { Lesson } from '../types.ts';

const ONE = { phase: 'frets', fretsIn: 2 } as const;
const ALL = { phase: 'frets', fretsIn: 'all' } as const;

export const oneAndAll = {
  id: 'one-and-all',
  minutes: 5,
  steps: [
    {
      id: 'bare',
      acts: [
        {
          set: 'preset',
          id: 'bolt-on-maple',
          values: { fretCount: 24, bodyJointFret: 17, widthLastFretMm: 57, seatingOrder: 'spread' },
        },
        { set: 'rail', at: { phase: 'bare' } },
        { set: 'view', view: 'edge' },
        { set: 'comparing', on: false },
        { set: 'bowFactor', factor: 40 },
      ],
    },
    {
      id: 'one',
      acts: [{ set: 'rail', at: { phase: 'frets', fretsIn: 1 } }],
      ask: { kind: 'value', of: { q: 'relief', at: ONE }, min: -0.4, max: 0.4, step: 0.01 },
      reveal: [{ set: 'rail', at: ONE }],
      facts: { fret: { q: 'nthFret', n: 2 }, bow: { q: 'relief', at: ONE } },
    },
    {
      id: 'all',
      acts: [{ set: 'rail', at: ONE }],
      ask: { kind: 'line', at: ALL, rangeMm: 0.6 },
      reveal: [{ set: 'play', from: ONE, to: ALL }],
      facts: {
        one: { q: 'relief', at: ONE },
        all: { q: 'relief', at: ALL },
        times: { q: 'ratio', of: { q: 'relief', at: ALL }, to: { q: 'relief', at: ONE } },
      },
    },
    {
      id: 'inside',
      acts: [
        { set: 'rail', at: ALL },
        { set: 'view', view: 'neck' },
        { set: 'fret', fret: 9 },
      ],
      ask: { kind: 'value', of: { q: 'wedgeForce' }, min: 0, max: 2000, step: 10 },
      reveal: [
        { set: 'view', view: 'slot' },
        { set: 'showArrows', on: true },
      ],
      facts: {
        force: { q: 'wedgeForce' },
        studs: { q: 'parameter', id: 'studWidthMm' },
        kerf: { q: 'parameter', id: 'kerfMm' },
      },
    },
    {
      id: 'yours',
      acts: [
        { set: 'rail', at: ALL },
        { set: 'view', view: 'edge' },
        { set: 'showArrows', on: false },
      ],
      goal: {
        by: ['kerfMm'],
        wanted: [
          { id: 'hump', of: { q: 'relief', at: ALL }, atLeast: -0.1, atMost: 0.1 },
          { id: 'holds', without: ['no-bite', 'weak-bite'] },
        ],
      },
      facts: { all: { q: 'relief', at: ALL } },
    },
  ],
} as const satisfies Lesson;
