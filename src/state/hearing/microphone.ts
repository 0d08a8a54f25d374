/**
 * The microphone, when somebody asks for it: what it hears stays in the page's memory until the dialog is closed. The browser
 * is asked to leave the sound as it is: what cleans up speech takes a ringing bar for noise.
 */
import recorderAddress from './recorder.worklet.ts?worker&url';

export type MicrophoneTrouble = 'insecure' | 'none' | 'denied' | 'in-use';

export interface Listening {
  readonly rateHz: number;
  readonly stop: () => void;
}

/** Browsers give it to pages over https alone, or on the same machine. */
export function microphoneTrouble(): MicrophoneTrouble | undefined {
  if (!window.isSecureContext) return 'insecure';
  // Older browsers leave it out where there is none.
  const { mediaDevices } = navigator as { readonly mediaDevices?: MediaDevices };
  return mediaDevices && 'audioWorklet' in AudioContext.prototype ? undefined : 'none';
}

const BY_ERROR: Readonly<Record<string, MicrophoneTrouble>> = {
  NotAllowedError: 'denied',
  SecurityError: 'denied',
  NotFoundError: 'none',
  OverconstrainedError: 'none',
};

const AS_IT_IS: MediaTrackConstraints = {
  echoCancellation: false,
  noiseSuppression: false,
  autoGainControl: false,
  channelCount: 1,
};

/**
 * Starts to listen.
 * @param hears told each stretch of sound
 * @param ended told when the microphone goes away by itself
 */
export async function listen(
  hears: (stretch: Float32Array) => void,
  ended: () => void,
): Promise<Listening | MicrophoneTrouble> {
  const trouble = microphoneTrouble();
  if (trouble) return trouble;
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: AS_IT_IS });
  } catch (error) {
    return BY_ERROR[error instanceof DOMException ? error.name : ''] ?? 'in-use';
  }
  const context = new AudioContext();
  const stop = () => {
    for (const track of stream.getTracks()) track.stop();
    if (context.state !== 'closed') void context.close();
  };
  try {
    await context.audioWorklet.addModule(recorderAddress);
    const recorder = new AudioWorkletNode(context, 'recorder', { numberOfOutputs: 0 });
    recorder.port.addEventListener('message', ({ data }: MessageEvent<Float32Array>) => hears(data));
    recorder.port.start();
    context.createMediaStreamSource(stream).connect(recorder);
    await context.resume();
  } catch {
    stop();
    return 'in-use';
  }
  for (const track of stream.getTracks()) track.addEventListener('ended', ended);
  return { rateHz: context.sampleRate, stop };
}
