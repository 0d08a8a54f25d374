/**
 * What each sample of a neck would show on the bench.
 *
 *   pull       s(x)·q_s                                     on one day: nothing creeps, and the studs keep what they have
 *   rod        n·k(x)·q_k/(T_0 + (T − T_0)·q_k)             n turns clockwise; T turns from snug to the limit, T_0 of them
 *                                                           the stretch of the bars, the rest what the wood lets the anchors
 *                                                           give, in proportion to what the rod bends it
 *   bow        of greatest size under the straightedge, with the frets that are in
 *
 * s, k, q_s, q_k: lines and factors of the samples (uncertainty/model.ts); x the fret under the dial.
 */
import type { Build } from '../../neck/build.ts';
import type { Method } from '../prediction-types.ts';
import { turnsAtLimit } from '../rod.ts';
import { sampleExtremes } from '../uncertainty/band-at.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import type { Draws } from '../uncertainty/sampling.ts';
import type { NeckReading } from './readings.ts';

/** Turns of the nut from snug to the limit: those that stretch the bars, and all of them. */
export interface NutTurns {
  readonly ofBars: number;
  readonly all: number;
}

export function nutTurnsOf(build: Build, { prediction }: Pick<ResponseModel, 'prediction'>, method: Method): NutTurns {
  return {
    ofBars: turnsAtLimit(build, prediction.rod, 0),
    all: prediction.methods[method].rodTurnsAtLimit,
  };
}

/** One number a sample, mm; hollow positive. */
export function expectedMm(draws: Draws, method: Method, nut: NutTurns, reading: NeckReading): Float64Array {
  const { stringsMm, rodMm, stringsFactor, rodFactor } = draws.methods[method];
  switch (reading.kind) {
    case 'pull':
      return stringsFactor.map((factor) => stringsMm[reading.fret] * factor);
    case 'rod':
      return rodFactor.map((factor) =>
        nut.all === 0
          ? 0
          : (reading.turns * rodMm[reading.fret] * factor) / (nut.ofBars + (nut.all - nut.ofBars) * factor),
      );
    case 'quarter':
      return sampleExtremes(draws, method, { strung: false, days: 0, rodPercent: 0, fretsIn: reading.fretsIn });
    case 'fretted':
      return sampleExtremes(draws, method, { strung: false, days: 0, rodPercent: 0 });
    case 'strung':
      return sampleExtremes(draws, method, { strung: true, days: reading.days, rodPercent: 0 });
  }
}
