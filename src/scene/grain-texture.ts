/**
 * One small tile of grain that all woods share: red = fine fibre streaks, green = pores, blue = broad bands, alpha = even
 * mottle. Made once, from a fixed seed, so a neck looks the same every time. Repeats in both directions.
 */
import { DataTexture, LinearFilter, LinearMipmapLinearFilter, RepeatWrapping, RGBAFormat } from 'three';

/** Columns run along the neck, rows across it. */
const WIDTH = 256;
const HEIGHT = 512;

function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Smooth repeating noise on a lattice of `columns` × `rows`, 0…1. */
function lattice(columns: number, rows: number, next: () => number): (u: number, v: number) => number {
  const values = Float32Array.from({ length: columns * rows }, next);
  const ease = (t: number): number => t * t * (3 - 2 * t);
  return (u, v) => {
    const [x, y] = [u * columns, v * rows];
    const [x0, y0] = [Math.floor(x), Math.floor(y)];
    const [tx, ty] = [ease(x - x0), ease(y - y0)];
    const at = (i: number, j: number): number => values[(j % rows) * columns + (i % columns)];
    const top = at(x0, y0) * (1 - tx) + at(x0 + 1, y0) * tx;
    const bottom = at(x0, y0 + 1) * (1 - tx) + at(x0 + 1, y0 + 1) * tx;
    return top * (1 - ty) + bottom * ty;
  };
}

/** The bytes of the tile, RGBA, row by row. */
export function grainTile(): Uint8Array {
  const next = random(20251);
  const fibres = [lattice(3, 64, next), lattice(6, 160, next), lattice(10, 256, next)];
  const bands = [lattice(2, 9, next), lattice(3, 23, next)];
  const mottle = [lattice(12, 24, next), lattice(40, 80, next)];
  const data = new Uint8Array(WIDTH * HEIGHT * 4);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const [u, v] = [x / WIDTH, y / HEIGHT];
      const at = (y * WIDTH + x) * 4;
      data[at] = 255 * (0.34 * fibres[0](u, v) + 0.36 * fibres[1](u, v) + 0.3 * fibres[2](u, v));
      data[at + 2] = 255 * (0.65 * bands[0](u, v) + 0.35 * bands[1](u, v));
      data[at + 3] = 255 * (0.5 * mottle[0](u, v) + 0.5 * mottle[1](u, v));
    }
  }
  // Pores: short dashes along the grain, fading at their ends.
  for (let n = 0; n < 1900; n++) {
    const row = Math.floor(next() * HEIGHT);
    const start = Math.floor(next() * WIDTH);
    const length = 4 + Math.floor(next() * 14);
    const depth = 0.45 + 0.55 * next();
    for (let k = 0; k < length; k++) {
      const at = (row * WIDTH + ((start + k) % WIDTH)) * 4 + 1;
      const ends = Math.sin((Math.PI * (k + 0.5)) / length);
      data[at] = Math.max(data[at], 255 * depth * ends);
    }
  }
  return data;
}

export function createGrainTexture(): DataTexture {
  const texture = new DataTexture(grainTile(), WIDTH, HEIGHT, RGBAFormat);
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  // No anisotropic filtering: software rasterisers can hang in it on triangles without area (the seam of a set heel).
  texture.needsUpdate = true;
  return texture;
}
