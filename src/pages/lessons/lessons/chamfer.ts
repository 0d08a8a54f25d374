/** The small bevel on a slot's edges, and the person who will pull the frets one day. */
import type { Lesson } from '../types.ts';

const FRETTED = { phase: 'frets', fretsIn: 'all' } as const;

export const chamfer = {
  id: 'chamfer',
  minutes: 6,
  steps: [
    {
      id: 'edge',
      acts: [
        { set: 'preset', id: 'set-neck-mahogany', values: { chamferMm: 0, method: 'press' } },
        { set: 'rail', at: FRETTED },
        { set: 'view', view: 'slot' },
        { set: 'fret', fret: 7 },
      ],
      facts: { kerf: { q: 'parameter', id: 'kerfMm' }, studs: { q: 'parameter', id: 'studWidthMm' } },
    },
    {
      id: 'width',
      acts: [
        { set: 'values', values: { chamferMm: 0.25 } },
        { set: 'view', view: 'slot' },
      ],
      ask: { kind: 'value', of: { q: 'chamferRoom' }, min: 0, max: 1.5, step: 0.01 },
      facts: {
        room: { q: 'chamferRoom' },
        crown: { q: 'parameter', id: 'crownWidthMm' },
        now: { q: 'parameter', id: 'chamferMm' },
      },
    },
    {
      id: 'pull',
      acts: [{ set: 'view', view: 'slot' }],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'press', of: { q: 'pullOut', method: 'press' } },
          { id: 'both', of: { q: 'pullOut', method: 'both' } },
        ],
      },
      facts: { press: { q: 'pullOut', method: 'press' }, both: { q: 'pullOut', method: 'both' } },
    },
    {
      id: 'refrets',
      acts: [{ set: 'lifted', on: true }],
      figure: 'pulling',
      facts: { now: { q: 'parameter', id: 'chamferMm' } },
    },
    {
      id: 'record',
      acts: [
        { set: 'lifted', on: false },
        { set: 'view', view: 'neck' },
      ],
    },
    {
      id: 'yours',
      acts: [
        { set: 'values', values: { chamferMm: 0, kerfMm: 0.6 } },
        { set: 'view', view: 'slot' },
      ],
      goal: {
        by: ['chamferMm'],
        wanted: [
          { id: 'covered', of: { q: 'parameter', id: 'chamferMm' }, atMost: { q: 'chamferRoom' } },
          { id: 'sound', without: ['no-chamfer', 'chamfer-too-wide'] },
        ],
      },
    },
  ],
} as const satisfies Lesson;
