/** Runs beside the browser's sound: gathers what the microphone gives and hands it to the page, a stretch at a time. */

/** What a worklet's surroundings offer; the page's own do not know it. */
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

/** Some 43 ms at 48 000 a second: often enough for a level that moves. */
const STRETCH = 2048;

class Recorder extends AudioWorkletProcessor {
  private stretch = new Float32Array(STRETCH);
  private filled = 0;

  /** @returns whether it wants to go on */
  process([input]: readonly (readonly Float32Array[])[]): boolean {
    for (const sample of input?.[0] ?? []) {
      this.stretch[this.filled] = sample;
      this.filled += 1;
      if (this.filled < STRETCH) continue;
      this.port.postMessage(this.stretch, [this.stretch.buffer]);
      this.stretch = new Float32Array(STRETCH);
      this.filled = 0;
    }
    return true;
  }
}

registerProcessor('recorder', Recorder);
