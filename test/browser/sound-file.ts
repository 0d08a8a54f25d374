/** A recording as a .wav file of sixteen bits, one channel (RIFF, PCM). */
import type { Recording } from '../../src/mechanics/hearing/taps.ts';

export function wavFile({ samples, rateHz }: Recording): Buffer {
  const data = Buffer.alloc(2 * samples.length);
  samples.forEach((sample, n) => {
    data.writeInt16LE(Math.round(32_767 * Math.max(-1, Math.min(1, sample))), 2 * n);
  });
  const head = Buffer.alloc(44);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + data.length, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(rateHz, 24);
  head.writeUInt32LE(2 * rateHz, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write('data', 36);
  head.writeUInt32LE(data.length, 40);
  return Buffer.concat([head, data]);
}
