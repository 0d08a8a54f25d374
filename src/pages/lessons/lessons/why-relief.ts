/** Why there is relief at all: the swing of a string, which a hollow follows and a straight neck does not. */
import type { Lesson } from '../types.ts';

const PLAYED = { phase: 'rod' } as const;
const WITH = { straight: 0, hollow: 0.25, deep: 0.7 } as const;
const room = (reliefMm: number) => ({ q: 'roomWith', reliefMm }) as const;

export const whyRelief = {
  id: 'why-relief',
  minutes: 5,
  steps: [
    {
      id: 'swing',
      acts: [
        {
          set: 'preset',
          id: 'bolt-on-maple',
          values: { method: 'press', targetReliefMm: WITH.straight, stringHeightFret12Mm: 2.9, levellingLossMm: 0 },
        },
        { set: 'hand', hand: { strength: 'medium', direction: 'along', ownForceN: null } },
        { set: 'rail', at: PLAYED },
        { set: 'view', view: 'neck' },
        { set: 'chart', chart: 'room' },
        { set: 'swing', note: { string: 1, note: 1 } },
      ],
      facts: { action: { q: 'action' }, fret: { q: 'worstFret' }, room: { q: 'leastRoom' } },
      remember: { lowest: { q: 'lowestAction' } },
    },
    {
      id: 'which',
      acts: [
        { set: 'swing', note: null },
        { set: 'chart', chart: 'line' },
      ],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'straight', of: room(WITH.straight) },
          { id: 'hollow', of: room(WITH.hollow) },
          { id: 'deep', of: room(WITH.deep) },
        ],
      },
      reveal: [
        { set: 'values', values: { targetReliefMm: WITH.hollow } },
        { set: 'rail', at: PLAYED },
        { set: 'chart', chart: 'room' },
        { set: 'swing', note: { string: 1, note: 1 } },
      ],
      facts: { straight: room(WITH.straight), hollow: room(WITH.hollow), deep: room(WITH.deep) },
    },
    {
      id: 'deep',
      acts: [
        { set: 'values', values: { targetReliefMm: WITH.deep } },
        { set: 'rail', at: PLAYED },
        { set: 'chart', chart: 'room' },
        { set: 'swing', note: { string: 1, note: 10 } },
      ],
      facts: { fret: { q: 'worstFret' }, room: { q: 'leastRoom' } },
    },
    {
      id: 'lower',
      acts: [
        { set: 'values', values: { targetReliefMm: WITH.hollow } },
        { set: 'rail', at: PLAYED },
        { set: 'swing', note: { string: 1, note: 1 } },
      ],
      facts: { lowest: { q: 'lowestAction' }, straight: { q: 'remembered', name: 'lowest' } },
    },
    {
      id: 'yours',
      acts: [
        { set: 'values', values: { targetReliefMm: WITH.straight, stringHeightFret12Mm: 2.9 } },
        { set: 'rail', at: PLAYED },
        { set: 'swing', note: { string: 1, note: 1 } },
      ],
      goal: {
        by: ['targetReliefMm', 'stringHeightFret12Mm'],
        wanted: [
          { id: 'room', of: { q: 'leastRoom' }, atLeast: 0 },
          { id: 'action', of: { q: 'action' }, atMost: 1.75 },
        ],
      },
    },
  ],
} as const satisfies Lesson;
