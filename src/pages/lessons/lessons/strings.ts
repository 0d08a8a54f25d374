/** Why the strings make a humped neck flat, and why it goes on moving. */
import type { Lesson } from '../types.ts';

const FRETTED = { phase: 'frets', fretsIn: 'all' } as const;
const STRUNG = { phase: 'strung' } as const;
const LATER = { phase: 'weeks', days: 90 } as const;

export const strings = {
  id: 'strings',
  minutes: 6,
  steps: [
    {
      id: 'humped',
      acts: [
        { set: 'preset', id: 'bolt-on-maple', values: { method: 'press', settleDays: 90 } },
        { set: 'rail', at: FRETTED },
        { set: 'view', view: 'edge' },
        { set: 'comparing', on: false },
      ],
      facts: { bow: { q: 'relief', at: FRETTED } },
    },
    {
      id: 'pull',
      acts: [{ set: 'rail', at: FRETTED }],
      ask: { kind: 'value', of: { q: 'stringPull' }, min: 0, max: 1500, step: 10 },
      facts: { pull: { q: 'stringPull' }, kg: { q: 'stringPullKg' } },
    },
    {
      id: 'strung',
      acts: [
        { set: 'rail', at: FRETTED },
        { set: 'view', view: 'edge' },
      ],
      ask: { kind: 'line', at: STRUNG, rangeMm: 0.6 },
      reveal: [{ set: 'rail', at: STRUNG }],
      facts: { before: { q: 'relief', at: FRETTED }, after: { q: 'relief', at: STRUNG } },
    },
    {
      id: 'lever',
      acts: [
        { set: 'rail', at: STRUNG },
        { set: 'view', view: 'neck' },
        { set: 'showArrows', on: true },
      ],
      facts: {
        nut: { q: 'parameter', id: 'stringHeightNutMm' },
        twelve: { q: 'parameter', id: 'stringHeightFret12Mm' },
      },
    },
    {
      id: 'weeks',
      acts: [
        { set: 'rail', at: STRUNG },
        { set: 'showArrows', on: false },
        { set: 'view', view: 'edge' },
      ],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'now', of: { q: 'relief', at: STRUNG } },
          { id: 'later', of: { q: 'relief', at: LATER } },
        ],
      },
      reveal: [{ set: 'play', from: STRUNG, to: LATER }],
      facts: { now: { q: 'relief', at: STRUNG }, later: { q: 'relief', at: LATER } },
    },
    {
      id: 'yours',
      acts: [
        { set: 'rail', at: LATER },
        { set: 'view', view: 'edge' },
      ],
      goal: { by: ['kerfMm'], wanted: [{ id: 'relief', of: { q: 'relief', at: LATER }, atLeast: 0.19, atMost: 0.21 }] },
      facts: { hump: { q: 'relief', at: FRETTED }, later: { q: 'relief', at: LATER } },
    },
  ],
} as const satisfies Lesson;
