/** Drawings that lessons can show, by name. */
import type { ComponentType } from 'react';
import type { Bench } from '../quantities.ts';
import type { FigureId } from '../types.ts';
import { PullingFigure } from './pulling.tsx';

export const FIGURES: Readonly<Record<FigureId, ComponentType<{ readonly bench: Bench }>>> = {
  pulling: PullingFigure,
};
