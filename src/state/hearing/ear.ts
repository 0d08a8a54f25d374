/** Listening, or reading a file, and what is heard in it, looked for in a worker. What goes on is told to whoever watches. */
import { releaseProxy, wrap, type Remote } from 'comlink';
import type { Expected } from '../../mechanics/hearing/expected.ts';
import type { Heard } from '../../mechanics/hearing/hear.ts';
import type { Recording } from '../../mechanics/hearing/taps.ts';
import { listen, microphoneTrouble, type Listening, type MicrophoneTrouble } from './microphone.ts';
import { readSoundFile, type SoundFileTrouble } from './sound-file.ts';
import type { HearingApi } from './hearing.worker.ts';

/** Both hands are at the blank: listening ends by itself with five taps that agree, or after this. */
const LONGEST_S = 40;
const ENOUGH_TAPS = 5;
const LOOK_EVERY_MS = 600;
/** The last tap rings on after it was heard. */
const RING_ON_S = 0.8;

export type HearingTrouble = MicrophoneTrouble | SoundFileTrouble | 'broken';

export interface Hearing {
  readonly phase: 'idle' | 'opening' | 'listening' | 'reading';
  /** Loudest sample of the last stretch, 0 to 1. */
  readonly level: number;
  readonly seconds: number;
  readonly heard: Heard | undefined;
  readonly trouble: HearingTrouble | undefined;
}

/** Stretches of sound in one piece. */
function joined(stretches: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(stretches.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const stretch of stretches) {
    whole.set(stretch, at);
    at += stretch.length;
  }
  return whole;
}

const pause = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

/** One go at hearing; another go, a stop or the end makes it none. */
class Session {
  listening: Listening | undefined;
  private readonly stretches: Float32Array[] = [];
  private samples = 0;

  add(stretch: Float32Array): void {
    this.stretches.push(stretch);
    this.samples += stretch.length;
  }

  get seconds(): number {
    return this.listening ? this.samples / this.listening.rateHz : 0;
  }

  recording(rateHz: number): Recording {
    return { samples: joined(this.stretches), rateHz };
  }
}

export class Ear {
  private hearing: Hearing = {
    phase: 'idle',
    level: 0,
    seconds: 0,
    heard: undefined,
    trouble: microphoneTrouble(),
  };
  private readonly watching = new Set<() => void>();
  private session: Session | undefined;
  private worker: Worker | undefined;
  private api: Remote<HearingApi> | undefined;

  readonly now = (): Hearing => this.hearing;

  readonly watch = (told: () => void): (() => void) => {
    this.watching.add(told);
    return () => this.watching.delete(told);
  };

  readonly stop = (): void => {
    this.session?.listening?.stop();
    this.session = undefined;
    this.tell({ phase: 'idle' });
  };

  /** Lets the microphone and the worker go. */
  readonly close = (): void => {
    this.stop();
    this.api?.[releaseProxy]();
    this.worker?.terminate();
    this.api = undefined;
    this.worker = undefined;
  };

  readonly open = async (file: Blob, expected: Expected | undefined): Promise<void> => {
    const session = this.begin('reading');
    const recording = await readSoundFile(file);
    if (this.session !== session) return;
    if (typeof recording === 'string') this.tell({ trouble: recording });
    else await this.look(recording, expected, session);
    if (this.session === session) this.stop();
  };

  readonly start = async (expected: Expected | undefined): Promise<void> => {
    const session = this.begin('opening');
    const isOn = () => this.session === session;
    const hears = (stretch: Float32Array) => {
      if (!isOn()) return;
      session.add(stretch);
      const level = stretch.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
      this.tell({ level, seconds: session.seconds });
    };
    const gone = () => {
      if (isOn()) this.stop();
    };
    const listening = await listen(hears, gone);
    if (typeof listening === 'string') {
      if (!isOn()) return;
      this.stop();
      this.tell({ trouble: listening });
    } else if (isOn()) {
      session.listening = listening;
      this.tell({ phase: 'listening' });
      await this.follow(session, listening, expected);
    } else listening.stop();
  };

  /** Looks again and again at what there is so far. */
  private async follow(session: Session, { rateHz }: Listening, expected: Expected | undefined): Promise<void> {
    let last = LONGEST_S;
    while (this.session === session) {
      await pause(LOOK_EVERY_MS);
      if (this.session !== session) return;
      const { seconds } = session;
      const heard = await this.look(session.recording(rateHz), expected, session);
      if ((heard?.tone?.taps ?? 0) >= ENOUGH_TAPS) last = Math.min(last, seconds + RING_ON_S);
      if (seconds > last && this.session === session) this.stop();
    }
  }

  private begin(phase: Hearing['phase']): Session {
    this.stop();
    this.session = new Session();
    this.tell({ phase, level: 0, seconds: 0, heard: undefined, trouble: undefined });
    return this.session;
  }

  private async look(
    recording: Recording,
    expected: Expected | undefined,
    session: Session,
  ): Promise<Heard | undefined> {
    try {
      const heard = await this.ask(recording, expected);
      if (this.session === session) this.tell({ heard });
      return heard;
    } catch {
      if (this.session !== session) return undefined;
      this.stop();
      this.tell({ trouble: 'broken' });
      return undefined;
    }
  }

  private ask(recording: Recording, expected: Expected | undefined): Promise<Heard> {
    this.worker ??= new Worker(new URL('./hearing.worker.ts', import.meta.url), { type: 'module', name: 'hearing' });
    this.api ??= wrap<HearingApi>(this.worker);
    const { worker, api } = this;
    return new Promise((resolve, reject) => {
      worker.addEventListener('error', () => reject(new Error('the worker broke off')), { once: true });
      api.hear(recording, expected).then(resolve, reject);
    });
  }

  private tell(change: Partial<Hearing>): void {
    this.hearing = { ...this.hearing, ...change };
    for (const told of this.watching) told();
  }
}
