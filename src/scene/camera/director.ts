/** Moves the camera: to the home of a view, along a gesture, by keys. Holds the orbit; draws nothing itself. */
import type { PerspectiveCamera } from 'three';
import { between, panned, positionOf, turned, zoomed, type Orbit } from './orbit.ts';

const TRAVEL_MS = 620;

export interface Director {
  orbit(): Orbit;
  /** Is the camera where its view puts it (not moved by hand since)? */
  isHome(): boolean;
  /** Is it on its way? */
  isTravelling(): boolean;
  /** Goes to a place: at once, or on the way from now. */
  goHome(to: Orbit, instant: boolean): void;
  turn(byAzimuth: number, byElevation: number): void;
  pan(right: number, up: number): void;
  zoom(by: number): void;
  /** Puts the camera where it belongs at this time. @returns true while it travels */
  apply(camera: PerspectiveCamera, aspect: number, nowMs: number): boolean;
}

export function createDirector(first: Orbit, onMove: () => void): Director {
  let now = first;
  let home = true;
  let travel: { from: Orbit; to: Orbit; startMs: number | null } | null = null;
  const byHand = (next: Orbit): void => {
    travel = null;
    now = next;
    home = false;
    onMove();
  };
  return {
    orbit: () => now,
    isHome: () => home,
    isTravelling: () => travel !== null,
    goHome(to, instant) {
      home = true;
      if (instant) {
        travel = null;
        now = to;
      } else {
        travel = { from: now, to, startMs: null };
      }
      onMove();
    },
    turn: (a, e) => byHand(turned(now, a, e)),
    pan: (right, up) => byHand(panned(now, right, up)),
    zoom: (by) => byHand(zoomed(now, by)),
    apply(camera, aspect, nowMs) {
      if (travel) {
        travel.startMs ??= nowMs;
        const share = (nowMs - travel.startMs) / TRAVEL_MS;
        now = between(travel.from, travel.to, share);
        if (share >= 1) travel = null;
      }
      camera.position.set(...positionOf(now));
      camera.up.set(0, 1, 0);
      camera.fov = (now.field * 180) / Math.PI;
      camera.aspect = aspect;
      camera.near = Math.max(0.5, now.distance * 0.02);
      camera.far = now.distance + 4000;
      camera.lookAt(now.target[0], now.target[1], now.target[2]);
      camera.updateProjectionMatrix();
      camera.updateMatrixWorld();
      return travel !== null;
    },
  };
}
