/**
 * Colours of the stress: a diverging scale from blue (compression) over a pale middle to rust (tension).
 *
 * Built in OKLab, so that equal steps of stress are equal steps of lightness and chroma: L falls evenly from the middle to
 * both ends, the two hues (250° and 50°) stay apart for every kind of colour blindness, and lightness alone tells how large
 * the stress is. Source of the conversion: B. Ottosson, "A perceptual color space for image processing" (2020), matrices as
 * published there.
 */
const MIDDLE_L = 0.93;
const END_L = 0.44;
const END_CHROMA = 0.11;
const HUES = { compression: (250 * Math.PI) / 180, tension: (50 * Math.PI) / 180 };

/** OKLab → linear sRGB. */
function linearOf(L: number, a: number, b: number): [number, number, number] {
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (L - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
}

/** Lightness, a, b of a share from −1 (compression) to 1 (tension). */
export function stressLab(share: number): [number, number, number] {
  const size = Math.min(1, Math.abs(share));
  const hue = share < 0 ? HUES.compression : HUES.tension;
  const chroma = END_CHROMA * size;
  return [MIDDLE_L + (END_L - MIDDLE_L) * size, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}

/** sRGB, 0…1 each, of a share from −1 to 1. */
export function stressColour(share: number): [number, number, number] {
  const encode = (value: number): number => {
    const c = Math.min(1, Math.max(0, value));
    return c <= 0.0031308 ? 12.92 * c : 1.055 * c ** (1 / 2.4) - 0.055;
  };
  return linearOf(...stressLab(share)).map(encode) as [number, number, number];
}

/** The same as a row of bytes for a texture, from −1 to 1. */
export function stressRamp(length: number): Uint8Array {
  const bytes = new Uint8Array(length * 4);
  for (let i = 0; i < length; i++) {
    const colour = stressColour((2 * i) / (length - 1) - 1);
    bytes.set([...colour.map((value) => Math.round(255 * value)), 255], 4 * i);
  }
  return bytes;
}

/** CSS colour of a share. */
export function stressCss(share: number): string {
  return `rgb(${stressColour(share)
    .map((value) => Math.round(255 * value))
    .join(' ')})`;
}
