/** A neck so stiff that its rod hardly moves it, and frets that are in too tight for it. */
import type { Lesson } from '../types.ts';

const LATER = { phase: 'weeks', days: 90 } as const;
const TIGHT = { method: 'both', kerfMm: 0.47, targetReliefMm: 0.2, settleDays: 90 } as const;

/** Half of the frets went into slots that are too narrow; the others are still to be sawn. */
const HALF_IN = {
  ...TIGHT,
  method: 'press',
  seatingOrder: 'nut-first',
  regions: [{ fromFret: 1, toFret: 12, kerfMm: 0.47, tangWidthMm: 0.5, studWidthMm: 0.76 }],
} as const;

/** The relief that is wanted lies between the ends of the rod's range, and every fret holds. */
const WITHIN_REACH = [
  {
    id: 'reach',
    of: { q: 'rodReach', end: 'least' },
    atLeast: { q: 'parameter', id: 'targetReliefMm' },
  },
  { id: 'holds', without: ['no-bite', 'weak-bite'] },
] as const;

export const tooStiff = {
  id: 'too-stiff',
  minutes: 7,
  steps: [
    {
      id: 'slim',
      acts: [
        { set: 'preset', id: 'slim-soft', values: { settleDays: 90 } },
        { set: 'rail', at: LATER },
        { set: 'view', view: 'neck' },
        { set: 'showRod', on: true },
        { set: 'comparing', on: false },
      ],
      ask: { kind: 'value', of: { q: 'rodTravel' }, min: 0, max: 2, step: 0.01 },
      facts: {
        travel: { q: 'rodTravel' },
        least: { q: 'rodReach', end: 'least' },
        most: { q: 'rodReach', end: 'most' },
      },
      remember: { slimTravel: { q: 'rodTravel' } },
    },
    {
      id: 'stiff',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: { settleDays: 90 } },
        { set: 'rail', at: LATER },
      ],
      ask: { kind: 'value', of: { q: 'rodTravel' }, min: 0, max: 2, step: 0.01 },
      facts: {
        travel: { q: 'rodTravel' },
        slim: { q: 'remembered', name: 'slimTravel' },
        thickness: { q: 'parameter', id: 'thicknessFret1Mm' },
      },
    },
    {
      id: 'tight',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: TIGHT },
        { set: 'rail', at: { phase: 'bare' } },
        { set: 'view', view: 'edge' },
      ],
      ask: { kind: 'line', at: LATER, rangeMm: 0.6 },
      reveal: [{ set: 'play', from: { phase: 'bare' }, to: LATER }],
      facts: {
        kerf: { q: 'parameter', id: 'kerfMm' },
        tang: { q: 'parameter', id: 'tangWidthMm' },
        force: { q: 'wedgeForce' },
        settled: { q: 'relief', at: LATER },
      },
    },
    {
      id: 'reach',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: TIGHT },
        { set: 'rail', at: LATER },
        { set: 'showRod', on: true },
      ],
      ask: {
        kind: 'which',
        is: 'greatest',
        options: [
          { id: 'wanted', of: { q: 'parameter', id: 'targetReliefMm' } },
          { id: 'reached', of: { q: 'rodReach', end: 'least' } },
        ],
      },
      facts: {
        wanted: { q: 'parameter', id: 'targetReliefMm' },
        least: { q: 'rodReach', end: 'least' },
        most: { q: 'rodReach', end: 'most' },
      },
    },
    {
      id: 'one-way',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: { ...TIGHT, rodKind: 'one-way', channelDepthMm: 11.5 } },
        { set: 'rail', at: LATER },
      ],
      facts: {
        least: { q: 'rodReach', end: 'least' },
        most: { q: 'rodReach', end: 'most' },
      },
    },
    {
      id: 'ways-out',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: { ...TIGHT, kerfMm: 0.58, method: 'press' } },
        { set: 'rail', at: LATER },
        { set: 'comparing', on: true },
      ],
      facts: {
        settled: { q: 'relief', at: LATER },
        least: { q: 'rodReach', end: 'least' },
      },
    },
    {
      id: 'within-reach',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: TIGHT },
        { set: 'rail', at: LATER },
        { set: 'view', view: 'edge' },
        { set: 'showRod', on: true },
        { set: 'comparing', on: false },
      ],
      goal: { by: ['kerfMm'], wanted: WITHIN_REACH },
      facts: { wanted: { q: 'parameter', id: 'targetReliefMm' } },
    },
    {
      id: 'rescue',
      acts: [
        { set: 'preset', id: 'thick-five-piece', values: HALF_IN },
        { set: 'rail', at: { phase: 'frets', fretsIn: 12 } },
        { set: 'view', view: 'edge' },
      ],
      goal: { by: ['kerfMm'], wanted: WITHIN_REACH },
      facts: {
        half: { q: 'relief', at: { phase: 'frets', fretsIn: 12 } },
        wanted: { q: 'parameter', id: 'targetReliefMm' },
        least: { q: 'rodReach', end: 'least' },
      },
    },
  ],
} as const satisfies Lesson;
