/** Reading a trace: checked on a small one made by hand in Chromium's format. */
import { expect, test } from 'vitest';
import { scriptingPerEvent, type TraceEvent } from './browser/trace.ts';

const piece = (name: string, ts: number, dur: number, more: Partial<TraceEvent> = {}): TraceEvent => ({
  name,
  ph: 'X',
  pid: 1,
  tid: 1,
  ts,
  dur,
  tdur: dur / 2,
  ...more,
});
const input = (ts: number, dur: number): TraceEvent =>
  piece('EventDispatch', ts, dur, { args: { data: { type: 'input' } } });

test('scripting goes to the event before it, is counted once, and only on the thread of the events', () => {
  const trace = [
    piece('FunctionCall', 500, 100),
    input(1000, 2000),
    // Inside the handler: part of it.
    piece('FunctionCall', 1200, 800),
    // Not scripting, and not this thread.
    piece('Layout', 4000, 1000),
    piece('FunctionCall', 4000, 1000, { tid: 2 }),
    piece('FireAnimationFrame', 6000, 4000),
    piece('FunctionCall', 6000, 3000),
    input(20_000, 1000),
    piece('HandlePostMessage', 22_000, 600),
    input(40_000, 1000),
    piece('FireAnimationFrame', 45_000, 9000),
  ];
  // Whole and half milliseconds: exact in floating point.
  expect(scriptingPerEvent(trace.toReversed(), 'input')).toEqual([
    { elapsedMs: 6, processorMs: 3, frameMs: 2 },
    { elapsedMs: 1.6, processorMs: 0.8, frameMs: 0 },
  ]);
});

test('a trace without two such events says so', () => {
  expect(() => scriptingPerEvent([input(0, 1)], 'input')).toThrow('1 events “input”');
  expect(() => scriptingPerEvent([input(0, 1)], 'keydown')).toThrow('0 events “keydown”');
});
