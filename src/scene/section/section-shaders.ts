/** Cut faces are drawn flat, as in an engineering drawing: no light, grain for wood, hatching for everything else. */
import { LIGHT, WOOD } from '../shader-chunks.ts';

export const FACE_VERTEX = /* glsl */ `
attribute vec3 rest;
attribute vec3 restNormal;
#ifdef WITH_COLOUR
attribute vec3 tint;
varying vec3 vTint;
#endif
#ifdef WITH_VALUE
attribute float value;
varying float vValue;
#endif
varying vec3 vRest;
varying vec3 vRestNormal;

void main() {
  vRest = rest;
  vRestNormal = restNormal;
#ifdef WITH_COLOUR
  vTint = tint;
#endif
#ifdef WITH_VALUE
  vValue = value;
#endif
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;

export const FACE_WOOD_FRAGMENT = /* glsl */ `
varying vec3 vRest;
varying vec3 vRestNormal;
${LIGHT}
${WOOD}
uniform vec3 uColour[4];
uniform vec3 uDark[4];
uniform vec4 uFigure[4];
uniform vec3 uMore[4];
uniform vec4 uReach;
uniform vec2 uHalfWidth;

void main() {
  float lateral = abs(vRest.z) / (uHalfWidth.x + uHalfWidth.y * max(vRest.x, 0.0));
  int k = lateral <= uReach.x ? 0 : lateral <= uReach.y ? 1 : lateral <= uReach.z ? 2 : 3;
  vec3 c = wood(vRest, vRestNormal, uColour[k], uDark[k], uFigure[k], uMore[k]);
  // A freshly sawn face is paler than an oiled one.
  gl_FragColor = vec4(encode(c * 1.12 + 0.012), 1.0);
}
`;

/** uHatch: direction in the plane of the cut (x or z along, y up), distance of the lines in mm; 0 = none. */
export const FACE_PLAIN_FRAGMENT = /* glsl */ `
varying vec3 vRest;
varying vec3 vTint;
uniform vec3 uInk;
uniform vec2 uHatchAlong;
uniform float uHatchMm;
uniform float uAlpha;

void main() {
  vec3 c = vTint;
  float along = dot(vec2(vRest.x + vRest.z, vRest.y), uHatchAlong) / max(uHatchMm, 1e-6);
  float wide = fwidth(along);
  float line = 1.0 - smoothstep(0.5 * wide, 1.3 * wide, abs(fract(along) - 0.5));
  c = mix(c, uInk, 0.6 * line * step(1e-6, uHatchMm));
  gl_FragColor = vec4(c, uAlpha);
}
`;

export const FACE_STRESS_FRAGMENT = /* glsl */ `
varying float vValue;
uniform sampler2D uRamp;
uniform float uLimit;

void main() {
  gl_FragColor = vec4(texture2D(uRamp, vec2(0.5 + 0.4980 * clamp(vValue / uLimit, -1.0, 1.0), 0.5)).rgb, 0.9);
}
`;
