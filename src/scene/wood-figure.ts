/** How each wood looks beside its colours: our own judgement by eye, for the picture only. */
import { isOwnWood } from '../neck/materials/own-woods.ts';
import { woodById } from '../neck/woods.ts';

export interface WoodFigure {
  /** sRGB hex of the oiled surface and of its darker grain. */
  readonly colour: string;
  readonly grain: string;
  /** How strongly the growth rings show, 0…1, and how far apart they are. */
  readonly rings: number;
  readonly ringMm: number;
  /** Fine streaks along the grain, 0…1. */
  readonly fibre: number;
  /** Open pores, 0…1. */
  readonly pores: number;
  /** Broad irregular dark streaks, 0…1. */
  readonly streaks: number;
}

type Look = Omit<WoodFigure, 'colour' | 'grain'>;

const PLAIN: Look = { rings: 0.35, ringMm: 3, fibre: 0.5, pores: 0.3, streaks: 0.1 };

const LOOKS: Record<string, Look> = {
  'sugar-maple': { rings: 0.3, ringMm: 3.4, fibre: 0.4, pores: 0.12, streaks: 0.05 },
  'red-maple': { rings: 0.34, ringMm: 3.2, fibre: 0.45, pores: 0.14, streaks: 0.12 },
  'bigleaf-maple': { rings: 0.3, ringMm: 3.8, fibre: 0.45, pores: 0.14, streaks: 0.1 },
  'black-walnut': { rings: 0.5, ringMm: 3.6, fibre: 0.55, pores: 0.5, streaks: 0.35 },
  'black-cherry': { rings: 0.4, ringMm: 3, fibre: 0.4, pores: 0.15, streaks: 0.15 },
  'white-ash': { rings: 0.85, ringMm: 2.6, fibre: 0.5, pores: 0.7, streaks: 0.05 },
  'yellow-poplar': { rings: 0.3, ringMm: 3.6, fibre: 0.4, pores: 0.1, streaks: 0.3 },
  'yellow-birch': { rings: 0.35, ringMm: 3, fibre: 0.45, pores: 0.2, streaks: 0.1 },
  'white-oak': { rings: 0.7, ringMm: 2.4, fibre: 0.6, pores: 0.8, streaks: 0.05 },
  'black-locust': { rings: 0.7, ringMm: 2.8, fibre: 0.55, pores: 0.6, streaks: 0.15 },
  mahogany: { rings: 0.2, ringMm: 4.5, fibre: 0.6, pores: 0.75, streaks: 0.18 },
  'african-mahogany': { rings: 0.22, ringMm: 4.5, fibre: 0.65, pores: 0.75, streaks: 0.25 },
  'spanish-cedar': { rings: 0.4, ringMm: 3.2, fibre: 0.55, pores: 0.6, streaks: 0.15 },
  sapele: { rings: 0.25, ringMm: 4, fibre: 0.7, pores: 0.6, streaks: 0.4 },
  'indian-rosewood': { rings: 0.4, ringMm: 2.6, fibre: 0.7, pores: 0.75, streaks: 0.75 },
  bubinga: { rings: 0.35, ringMm: 3, fibre: 0.55, pores: 0.4, streaks: 0.45 },
  ovangkol: { rings: 0.5, ringMm: 2.6, fibre: 0.6, pores: 0.55, streaks: 0.6 },
  purpleheart: { rings: 0.15, ringMm: 4, fibre: 0.5, pores: 0.35, streaks: 0.12 },
  'goncalo-alves': { rings: 0.35, ringMm: 3, fibre: 0.5, pores: 0.3, streaks: 0.95 },
  ipe: { rings: 0.25, ringMm: 3, fibre: 0.6, pores: 0.4, streaks: 0.3 },
  macawood: { rings: 0.35, ringMm: 3, fibre: 0.6, pores: 0.4, streaks: 0.4 },
  'ebony-african': { rings: 0.08, ringMm: 4, fibre: 0.45, pores: 0.3, streaks: 0.3 },
  'african-padauk': { rings: 0.2, ringMm: 4, fibre: 0.6, pores: 0.8, streaks: 0.3 },
  'brazilian-rosewood': { rings: 0.35, ringMm: 2.8, fibre: 0.65, pores: 0.6, streaks: 0.95 },
  sipo: { rings: 0.22, ringMm: 4.5, fibre: 0.65, pores: 0.7, streaks: 0.3 },
  moabi: { rings: 0.15, ringMm: 4, fibre: 0.45, pores: 0.25, streaks: 0.25 },
  'roasted-maple': { rings: 0.36, ringMm: 3.2, fibre: 0.45, pores: 0.14, streaks: 0.12 },
  'laminated-bamboo': { rings: 0.9, ringMm: 3, fibre: 0.8, pores: 0.1, streaks: 0.1 },
  'strand-bamboo': { rings: 0.6, ringMm: 1.4, fibre: 0.9, pores: 0.1, streaks: 0.8 },
  'paper-resin': { rings: 0, ringMm: 4, fibre: 0.05, pores: 0, streaks: 0.02 },
  wenge: { rings: 0.95, ringMm: 1.5, fibre: 0.5, pores: 0.6, streaks: 0.1 },
};

/** @throws {RangeError} when no wood has that id. */
export function figureOf(woodId: string): WoodFigure {
  if (isOwnWood(woodId)) return { colour: '#b98d5c', grain: '#96693c', ...PLAIN };
  const { colour, grain } = woodById(woodId);
  return { colour, grain, ...(LOOKS[woodId] ?? PLAIN) };
}
