/**
 * The spectrum as it is drawn: the mean power of all taps in steps of equal ratio, dB below its highest. Where a step is
 * narrower than the distance of two lines it shows what lies between them.
 */
import type { Spectrum } from './fourier.ts';

export interface Overview {
  readonly lowHz: number;
  readonly highHz: number;
  /** 0 for the highest, the others below it. */
  readonly levelsDb: readonly number[];
}

const LOW_HZ = 20;
const HIGH_HZ = 4000;
const STEPS = 640;
const LOWEST_DB = -80;

/** Highest power within a step, or between lines that straddle it. */
function powerIn({ amplitudes, lineHz }: Spectrum, fromHz: number, toHz: number): number {
  const [from, to] = [fromHz / lineHz, toHz / lineHz];
  if (Math.floor(to) <= Math.floor(from)) {
    const line = Math.floor(from);
    const share = (from + to) / 2 - line;
    return ((1 - share) * (amplitudes[line] ?? 0) + share * (amplitudes[line + 1] ?? 0)) ** 2;
  }
  let most = 0;
  for (let k = Math.ceil(from); k <= to; k += 1) most = Math.max(most, amplitudes[k] ?? 0);
  return most ** 2;
}

export function overview(spectra: readonly Spectrum[]): Overview {
  const edge = (step: number) => LOW_HZ * (HIGH_HZ / LOW_HZ) ** (step / STEPS);
  const powers = Array.from({ length: STEPS }, (_, step) =>
    spectra.reduce((sum, spectrum) => sum + powerIn(spectrum, edge(step), edge(step + 1)), 0),
  );
  const most = Math.max(...powers, Number.MIN_VALUE);
  const levelsDb = powers.map((power) => Math.max(LOWEST_DB, 10 * Math.log10(Math.max(power / most, 1e-12))));
  return { lowHz: LOW_HZ, highHz: HIGH_HZ, levelsDb };
}
