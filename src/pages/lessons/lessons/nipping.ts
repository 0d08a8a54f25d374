/** A bound board: the tang must stop before the binding that is left whole. */
import type { Lesson } from '../types.ts';

const FRETTED = { phase: 'frets', fretsIn: 'all' } as const;
const FRET = 12;

export const nipping = {
  id: 'nipping',
  minutes: 5,
  steps: [
    {
      id: 'bound',
      acts: [
        { set: 'preset', id: 'set-neck-mahogany' },
        { set: 'rail', at: FRETTED },
        { set: 'fret', fret: FRET },
        { set: 'view', view: 'neck' },
      ],
      facts: {
        lines: { q: 'parameter', id: 'bindingLineCount' },
        sawn: { q: 'parameter', id: 'linesSawnThrough' },
        whole: { q: 'wholeLines', fret: FRET },
      },
    },
    {
      id: 'nip',
      acts: [
        { set: 'fret', fret: FRET },
        { set: 'view', view: 'neck' },
        { set: 'lifted', on: true },
      ],
      ask: { kind: 'value', of: { q: 'nip', fret: FRET }, min: 0, max: 10, step: 0.05 },
      reveal: [
        { set: 'lifted', on: false },
        { set: 'view', view: 'end' },
      ],
      facts: {
        nip: { q: 'nip', fret: FRET },
        clearance: { q: 'parameter', id: 'nipClearanceMm' },
        oversize: { q: 'parameter', id: 'oversizeMm' },
        shelf: { q: 'shelf', fret: FRET },
      },
    },
    {
      id: 'all-sawn',
      acts: [
        { set: 'lifted', on: false },
        { set: 'values', values: { linesSawnThrough: 3 } },
        { set: 'fret', fret: FRET },
        { set: 'view', view: 'end' },
      ],
      facts: { nip: { q: 'nip', fret: FRET } },
    },
    {
      id: 'none-sawn',
      acts: [
        { set: 'values', values: { linesSawnThrough: 0 } },
        { set: 'fret', fret: FRET },
        { set: 'view', view: 'neck' },
      ],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'shelf', of: { q: 'shelf', fret: FRET } },
          { id: 'oversize', of: { q: 'parameter', id: 'oversizeMm' } },
        ],
      },
      reveal: [{ set: 'view', view: 'end' }],
      facts: {
        nip: { q: 'nip', fret: FRET },
        shelf: { q: 'shelf', fret: FRET },
        oversize: { q: 'parameter', id: 'oversizeMm' },
      },
    },
    {
      id: 'yours',
      acts: [
        { set: 'values', values: { linesSawnThrough: 3, nipClearanceMm: 0.1, oversizeMm: 0 } },
        { set: 'fret', fret: FRET },
        { set: 'view', view: 'end' },
      ],
      goal: {
        by: ['linesSawnThrough', 'nipClearanceMm', 'oversizeMm'],
        wanted: [
          { id: 'closed', of: { q: 'wholeLines', fret: FRET }, atLeast: 1 },
          { id: 'rests', of: { q: 'shelf', fret: FRET }, atLeast: 0.3, atMost: 1.6 },
          { id: 'clean', without: ['tight-nip', 'shelf-short', 'slot-shows', 'little-oversize'] },
        ],
      },
      facts: { nip: { q: 'nip', fret: FRET } },
    },
  ],
} as const satisfies Lesson;
