/**
 * Reads a trace of Chromium: how long the page's own thread ran scripts after each event.
 *
 * The trace is the JSON of Chromium's tracing (“Trace Event Format”, complete events with `ph` = X, times in µs). What
 * counts as scripting is what its developer tools colour so: handlers, callbacks, timers, messages, microtasks, compiling
 * and collecting garbage. Layout that a script forces is inside the script's own event and so counts too.
 */

/** The fields of a trace event that are read here. */
export interface TraceEvent {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  /** When it began, µs. */
  ts: number;
  /** How long it lasted by the clock, µs. */
  dur?: number;
  /** How long the thread was on a processor meanwhile, µs. */
  tdur?: number;
  args?: { data?: { type?: string } };
}

/** Scripting that belongs to one event, ms. */
export interface Scripting {
  /** By the clock: on a busy machine it holds waiting for a processor. */
  elapsedMs: number;
  /** On the processor. */
  processorMs: number;
  /** The longest callback of an animation frame among it, on the processor; 0 when no frame was drawn. */
  frameMs: number;
}

const SCRIPTING: ReadonlySet<string> = new Set([
  'EvaluateScript',
  'EventDispatch',
  'FireAnimationFrame',
  'FireIdleCallback',
  'FunctionCall',
  'HandlePostMessage',
  'MajorGC',
  'MinorGC',
  'RunMicrotasks',
  'TimerFire',
  'v8.compile',
]);

/** Scripting on one thread that is not inside other scripting, in order of time. */
function outermost(events: readonly TraceEvent[]): TraceEvent[] {
  const found: TraceEvent[] = [];
  let busyUntil = -Infinity;
  // Of two that begin together, the longer holds the shorter.
  for (const event of events.toSorted((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0))) {
    if (event.ts < busyUntil) continue;
    found.push(event);
    busyUntil = event.ts + (event.dur ?? 0);
  }
  return found;
}

/**
 * What each event of a type set going on the thread that received it, up to the next event of that type. What comes after
 * the last one has no end and is left out.
 *
 * @param events - the trace
 * @param type - type of the DOM event, such as `input`
 * @returns one entry fewer than there were events
 * @throws Error when the trace holds fewer than two such events, or they went to several threads
 */
export function scriptingPerEvent(events: readonly TraceEvent[], type: string): Scripting[] {
  const complete = events.filter(({ ph, name }) => ph === 'X' && SCRIPTING.has(name));
  const marks = complete.filter(({ name, args }) => name === 'EventDispatch' && args?.data?.type === type);
  const [first] = marks;
  if (!first || marks.length < 2) throw new Error(`The trace holds ${marks.length} events “${type}”; it needs two.`);
  if (marks.some(({ pid, tid }) => pid !== first.pid || tid !== first.tid))
    throw new Error(`The events “${type}” went to several threads.`);
  const pieces = outermost(complete.filter(({ pid, tid }) => pid === first.pid && tid === first.tid));
  const starts = marks.map(({ ts }) => ts).toSorted((a, b) => a - b);
  return starts.slice(0, -1).map((from, index) => {
    const own = pieces.filter(({ ts }) => ts >= from && ts < starts[index + 1]);
    const onProcessor = ({ tdur = 0 }: TraceEvent): number => tdur / 1000;
    return {
      elapsedMs: own.reduce((sum, { dur = 0 }) => sum + dur / 1000, 0),
      processorMs: own.reduce((sum, event) => sum + onProcessor(event), 0),
      frameMs: Math.max(0, ...own.filter(({ name }) => name === 'FireAnimationFrame').map(onProcessor)),
    };
  });
}
