/** A recorded sound, read on the device by the browser's own means. */
import type { Recording } from '../../mechanics/hearing/taps.ts';

/** Longer ones are no taps, and would fill the memory of a phone. */
export const LONGEST_FILE_S = 120;
/** Of a file: two minutes of two channels at 96 000 a second and three bytes. */
export const LARGEST_FILE_BYTES = 70e6;

export type SoundFileTrouble = 'unreadable' | 'too-long';

export async function readSoundFile(file: Blob): Promise<Recording | SoundFileTrouble> {
  if (file.size > LARGEST_FILE_BYTES) return 'too-long';
  let sound: AudioBuffer;
  try {
    // A context that plays nothing: only its rate counts, at which the sound is read.
    sound = await new OfflineAudioContext(1, 1, 48_000).decodeAudioData(await file.arrayBuffer());
  } catch {
    return 'unreadable';
  }
  if (sound.duration > LONGEST_FILE_S) return 'too-long';
  const channels = Array.from({ length: sound.numberOfChannels }, (_, index) => sound.getChannelData(index));
  const samples = channels[0].map(
    (_sample, n) => channels.reduce((sum, channel) => sum + channel[n], 0) / channels.length,
  );
  return { samples, rateHz: sound.sampleRate };
}
