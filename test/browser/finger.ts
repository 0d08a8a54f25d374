/**
 * Fingers on the glass. Each gesture carries the times of a hand that takes a moment for each part and rests before it
 * lifts: touches sent all at one time are a flick, after which the page runs on by itself and takes the next tap as a
 * wish to stop it.
 */
import type { CDPSession, Page } from 'playwright-core';

/** Where fingers are, in CSS pixels from the top left of the window. */
export type Fingers = readonly (readonly [number, number])[];

/** Opened once a page: a walk over every control draws hundreds of times. */
const sessions = new WeakMap<Page, Promise<CDPSession>>();

function sessionOf(page: Page): Promise<CDPSession> {
  const open = sessions.get(page) ?? page.context().newCDPSession(page);
  sessions.set(page, open);
  return open;
}

const STEP_S = 0.05;
const REST_S = 0.3;

/**
 * Lays fingers down, moves them from place to place, rests and lifts them.
 *
 * @param places - at least one; the same number of fingers in each
 */
export async function drawWithFingers(page: Page, places: readonly Fingers[]): Promise<void> {
  const client = await sessionOf(page);
  const last = places.at(-1)!;
  // In the past, so that the next touch, which carries the time of its own, comes after it.
  let timestamp = Date.now() / 1000 - (places.length * STEP_S + 2 * REST_S);
  const send = async (type: 'touchStart' | 'touchMove' | 'touchEnd', fingers: Fingers, afterS: number) => {
    timestamp += afterS;
    await client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: fingers.map(([x, y], id) => ({ x, y, id })),
      timestamp,
    });
  };
  await send('touchStart', places[0], 0);
  for (const place of places.slice(1)) await send('touchMove', place, STEP_S);
  await send('touchMove', last, REST_S);
  await send('touchEnd', [], STEP_S);
}
