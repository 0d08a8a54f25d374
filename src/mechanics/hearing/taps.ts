/**
 * Taps in a recording: where each begins, how long it rings, how loud it is, and whether it was clipped.
 *
 *   e_i      mean square of 5 ms, without what is slower than 15 Hz (wind, handling); and of the differences from sample to
 *            sample, in which a hum counts for little and the crack of a blow for much
 *   a tap    10 ms of which either is at least 6 times (8 dB) the loudest 5 ms of the 60 ms before, the last 10 ms left out:
 *            there a slow tone may already be rising
 *   ringing  until it has fallen to twice the floor (the quietest fifth of the recording), at most 1.5 s, or to the next tap
 *   clipped  three samples at full scale, or four crests cut off at one height: a tone that dies away has no two
 *
 * The factors are our own, tried on synthesised recordings (test/mechanics/hearing/).
 */
export interface Recording {
  readonly samples: Float32Array;
  readonly rateHz: number;
}

export interface Tap {
  /** Samples from the first after the blow's own crack to the end of the ringing. */
  readonly from: number;
  readonly to: number;
  /** First sample of the blow. */
  readonly onset: number;
  /** Loudest sample of the ringing, 1 at full scale. */
  readonly peak: number;
  readonly isClipped: boolean;
}

const FRAME_S = 0.005;
const BEFORE_FRAMES = 12;
const LAG_FRAMES = 2;
const RISE = 6;
/** No hand taps faster; what comes sooner is a bounce. */
const REFRACTORY_S = 0.15;
/** The crack of the blow itself, which holds every frequency. */
const CRACK_S = 0.012;
const SHORTEST_S = 0.1;
const LONGEST_S = 1.5;
const SLOW_HZ = 15;
const FULL_SCALE = 0.985;

/** Mean squares of frames, slow drift taken away. */
export function frameEnergies({ samples, rateHz }: Recording): Float64Array {
  const size = Math.round(FRAME_S * rateHz);
  const energies = new Float64Array(Math.floor(samples.length / size));
  const follow = 1 - Math.exp((-2 * Math.PI * SLOW_HZ) / rateHz);
  let drift = samples[0] ?? 0;
  for (let frame = 0; frame < energies.length; frame += 1) {
    let sum = 0;
    for (let n = frame * size; n < (frame + 1) * size; n += 1) {
      drift += follow * (samples[n] - drift);
      sum += (samples[n] - drift) ** 2;
    }
    energies[frame] = sum / size;
  }
  return energies;
}

/** Mean square of the quietest fifth. */
export function floorOf(energies: Float64Array): number {
  return energies.toSorted()[Math.floor(energies.length / 5)] ?? 0;
}

/** Mean squares of frames of the differences from sample to sample. */
function crackEnergies({ samples, rateHz }: Recording): Float64Array {
  const differences = samples.map((sample, n) => sample - (samples[n - 1] ?? sample));
  return frameEnergies({ samples: differences, rateHz });
}

function onsetFrames(kinds: readonly Float64Array[]): number[] {
  const onsets: number[] = [];
  const refractory = Math.round(REFRACTORY_S / FRAME_S);
  for (let frame = BEFORE_FRAMES; frame + 1 < kinds[0].length; frame += 1) {
    if (frame - (onsets.at(-1) ?? -refractory) < refractory) continue;
    for (const energies of kinds) {
      const least = RISE * Math.max(...energies.subarray(frame - BEFORE_FRAMES, frame - LAG_FRAMES));
      if ((energies[frame] + energies[frame + 1]) / 2 <= least) continue;
      onsets.push(energies[frame] > least ? frame : frame + 1);
      break;
    }
  }
  return onsets;
}

function isClipped(ringing: Float32Array, peak: number): boolean {
  let [full, crests, run] = [0, 0, 0];
  for (const sample of ringing) {
    if (Math.abs(sample) >= FULL_SCALE) full += 1;
    run = Math.abs(sample) >= 0.9998 * peak ? run + 1 : 0;
    if (run === 3) crests += 1;
  }
  return full >= 3 || (peak >= 0.05 && crests >= 4);
}

export function findTaps(recording: Recording): Tap[] {
  const { samples, rateHz } = recording;
  const energies = frameEnergies(recording);
  const floor = floorOf(energies);
  const size = Math.round(FRAME_S * rateHz);
  const onsets = onsetFrames([energies, crackEnergies(recording)]);
  const taps: Tap[] = [];
  for (const [index, first] of onsets.entries()) {
    const last = Math.min(onsets[index + 1] ?? Infinity, energies.length, first + Math.round(LONGEST_S / FRAME_S));
    let end = first + Math.round(SHORTEST_S / FRAME_S);
    const loudness = (frame: number) => Math.max(...energies.subarray(frame, frame + BEFORE_FRAMES / 2));
    while (end < last && loudness(end) > 2 * floor) end += 1;
    // The frame before the next blow may already hold its beginning.
    const to = (Math.min(end, last) - 1) * size;
    const onset = first * size;
    const from = onset + Math.round(CRACK_S * rateHz);
    if (to - from < (SHORTEST_S - 3 * FRAME_S) * rateHz) continue;
    const ringing = samples.subarray(from, to);
    const peak = ringing.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
    taps.push({ from, to, onset, peak, isClipped: isClipped(ringing, peak) });
  }
  return taps;
}
