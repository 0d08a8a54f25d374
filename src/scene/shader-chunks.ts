/**
 * The light of the picture, as shader text: a north window up to the left, a skylight beyond the bench that the wire mirrors,
 * a warm bench below.
 *
 * The light stands still beside the viewer and the neck is turned in it, so it flatters the wire from every side. All
 * colours are linear until `encode`. Wood: diffuse light with a soft oily sheen. Metal: the room mirrored, blurred where the
 * surface turns faster than a pixel.
 */
export const LIGHT = /* glsl */ `
uniform vec3 uBench;

const vec3 WINDOW = vec3(-0.443, 0.717, 0.539);
const vec3 WINDOW_RIGHT = vec3(0.7725, 0.0, 0.635);
const vec3 SKYLIGHT = vec3(0.0, 0.894, -0.447);
const vec3 SKY = vec3(1.0, 0.995, 0.985);

vec3 encode(vec3 c) {
  c = clamp(c, 0.0, 1.0);
  return mix(c * 12.92, 1.055 * pow(c, vec3(1.0 / 2.4)) - 0.055, step(0.0031308, c));
}

// Light that falls on a matt surface with view-space normal n.
vec3 daylight(vec3 n) {
  float w = dot(n, WINDOW);
  float window = pow(clamp(0.5 + 0.5 * w, 0.0, 1.0), 1.0);
  float up = 0.5 + 0.5 * n.y;
  return SKY * window * 0.8 + mix(uBench * 0.42, vec3(0.35, 0.335, 0.315), up) * (0.68 + 0.32 * up);
}

// What is seen in the direction d, blurred over about 'blur' radians.
vec3 room(vec3 d, float blur) {
  float up = smoothstep(-0.35 - blur, 0.5 + blur, d.y);
  vec3 c = mix(uBench * 0.38, vec3(0.42, 0.42, 0.43), up);
  float front = dot(d, WINDOW);
  vec3 upAxis = cross(WINDOW_RIGHT, WINDOW);
  float x = dot(d, WINDOW_RIGHT) / max(front, 0.05);
  float y = dot(d, upAxis) / max(front, 0.05);
  float soft = 0.05 + blur;
  float pane = smoothstep(0.62 + soft, 0.62 - soft, abs(x)) * smoothstep(0.55 + soft, 0.55 - soft, abs(y));
  pane *= 1.0 - 0.35 * smoothstep(0.06 + blur, 0.0, abs(x)) * step(blur, 0.2);
  c += SKY * pane * step(0.05, front) * 2.3 / (1.0 + 2.2 * blur);
  // The skylight: a long pane across, high beyond the bench.
  float back = dot(d, SKYLIGHT);
  float u = d.x / max(back, 0.05);
  float w = dot(d, vec3(0.0, 0.447, 0.894)) / max(back, 0.05);
  float strip = smoothstep(1.5 + soft, 1.5 - soft, abs(u + 0.25)) * smoothstep(0.42 + soft, 0.42 - soft, abs(w));
  c += SKY * strip * step(0.05, back) * 2.0 / (1.0 + 1.4 * blur);
  float door = smoothstep(0.35 + soft, 0.1, distance(d, normalize(vec3(0.85, 0.25, 0.45))));
  return c + vec3(0.55, 0.5, 0.44) * door;
}

// Oily sheen of a matt body.
vec3 sheen(vec3 n, vec3 v, float rough, float strength) {
  float f = 0.04 + 0.96 * pow(1.0 - clamp(dot(n, v), 0.0, 1.0), 5.0);
  return room(reflect(-v, n), rough) * f * strength;
}
`;

/** Grain of one wood: `figure` = rings, ring distance, fibre, pores; `more` = streaks, sawn (0 flat, 1 quarter), offset. */
export const WOOD = /* glsl */ `
uniform sampler2D uGrain;

vec3 wood(vec3 p, vec3 n, vec3 colour, vec3 dark, vec4 figure, vec3 more) {
  float wander = 1.7 * sin(p.x * 0.0113 + more.z) + 0.9 * sin(p.x * 0.0291 + 2.1 * more.z);
  vec2 pith = mix(vec2(58.0, 4.0), vec2(6.0, 150.0), more.y);
  float ring = length(vec2(p.y + pith.x + 0.5 * wander, p.z + pith.y + wander)) / figure.y;
  float a = dot(p.yz, vec2(0.62, 0.785)) + 0.35 * wander + 13.7 * more.z;
  float b = dot(p.yz, vec2(-0.80, 0.60)) + 0.35 * wander + 5.3 * more.z;
  float endGrain = smoothstep(0.55, 0.85, abs(n.x));
  vec2 along = vec2(p.x / 150.0, 1.0 / 30.0);
  vec4 t = 0.5 * (texture2D(uGrain, vec2(along.x, a * along.y)) + texture2D(uGrain, vec2(along.x + 0.37, b * along.y)));
  vec4 fine = texture2D(uGrain, vec2(p.x / 31.0, a / 6.3));
  vec4 e = texture2D(uGrain, p.yz * vec2(0.21, 0.185) + more.z);
  float turn = fract(ring + 0.9 * (t.b - 0.5));
  float latewood = smoothstep(0.15, 0.9, turn) * (1.0 - smoothstep(0.9, 1.0, turn));
  float seen = 1.0 - smoothstep(0.25, 0.7, fwidth(ring));
  float shade = figure.x * 0.55 * (mix(0.4, latewood, seen) - 0.4);
  float fibre = ((t.r - 0.5) * 0.8 + (fine.r - 0.5) * 0.45) * figure.z;
  float streak = smoothstep(0.50, 0.68, t.b + 0.25 * (t.r - 0.5)) * more.x;
  float depth = shade + fibre + 0.75 * streak + 0.10 * (t.a - 0.5);
  depth = mix(depth, 1.3 * shade + 0.35 * (e.a - 0.5) + 0.3, endGrain);
  vec3 c = mix(colour, dark, clamp(0.22 + depth, -0.35, 1.15));
  float pores = mix(t.g * 1.2 + fine.g * 0.6, 0.75 * smoothstep(0.64, 0.74, e.a), endGrain);
  c *= 1.0 - 0.42 * figure.w * clamp(pores, 0.0, 1.0);
  return max(c * mix(1.0, 0.8, endGrain), 0.0);
}
`;

/** Cutting away what lies on the far side of up to two planes given in straight coordinates (n·p > d is cut away). */
export const CUT = /* glsl */ `
uniform vec4 uCut[2];

void cutAway(vec3 p) {
  if (dot(p, uCut[0].xyz) > uCut[0].w || dot(p, uCut[1].xyz) > uCut[1].w) discard;
}
`;

export const VERTEX = /* glsl */ `
attribute vec3 rest;
attribute vec3 restNormal;
#ifdef WITH_COLOUR
attribute vec3 tint;
varying vec3 vTint;
#endif
#ifdef WITH_SHADE
attribute vec2 shade;
varying vec2 vShade;
#endif
#ifdef WITH_FRET
attribute float fret;
varying float vFret;
#endif
varying vec3 vRest;
varying vec3 vRestNormal;
varying vec3 vNormal;
varying vec3 vView;

void main() {
  vRest = rest;
  vRestNormal = restNormal;
#ifdef WITH_COLOUR
  vTint = tint;
#endif
#ifdef WITH_SHADE
  vShade = shade;
#endif
#ifdef WITH_FRET
  vFret = fret;
#endif
  vec4 at = modelViewMatrix * vec4(position, 1.0);
  vNormal = normalMatrix * normal;
  vView = -at.xyz;
  gl_Position = projectionMatrix * at;
}
`;

const HEAD = /* glsl */ `
varying vec3 vRest;
varying vec3 vRestNormal;
varying vec3 vNormal;
varying vec3 vView;
${LIGHT}
${CUT}
`;

/** Up to four woods side by side from the centre line outwards; the board is the case of one. */
export const WOOD_FRAGMENT = /* glsl */ `
${HEAD}
${WOOD}
uniform vec3 uColour[4];
uniform vec3 uDark[4];
uniform vec4 uFigure[4];
uniform vec3 uMore[4];
uniform vec4 uReach;
uniform vec2 uHalfWidth;
uniform float uSeeThrough;
#ifdef WITH_SHADE
varying vec2 vShade;
#endif

void main() {
  cutAway(vRest);
  vec3 n = normalize(vNormal);
  vec3 v = normalize(vView);
  float lateral = abs(vRest.z) / (uHalfWidth.x + uHalfWidth.y * max(vRest.x, 0.0));
  vec3 c;
  if (lateral <= uReach.x) c = wood(vRest, vRestNormal, uColour[0], uDark[0], uFigure[0], uMore[0]);
  else if (lateral <= uReach.y) c = wood(vRest, vRestNormal, uColour[1], uDark[1], uFigure[1], uMore[1]);
  else if (lateral <= uReach.z) c = wood(vRest, vRestNormal, uColour[2], uDark[2], uFigure[2], uMore[2]);
  else c = wood(vRest, vRestNormal, uColour[3], uDark[3], uFigure[3], uMore[3]);
  vec3 light = daylight(n);
  float gloss = 1.0;
#ifdef WITH_SHADE
  light *= (1.0 - 0.82 * vShade.x) * (1.0 - 0.5 * vShade.y);
  gloss = (1.0 - vShade.x) * (1.0 - 0.6 * vShade.y);
#endif
  vec3 body = c * light + sheen(n, v, 0.42, 0.24) * gloss * (1.0 - 0.7 * smoothstep(0.5, 0.9, abs(vRestNormal.x)));
  gl_FragColor = vec4(encode(body), uSeeThrough);
}
`;

/** Painted or plain things: binding, nut, marks, strings. */
export const PLAIN_FRAGMENT = /* glsl */ `
${HEAD}
varying vec3 vTint;
#ifdef WITH_SHADE
varying vec2 vShade;
#endif
uniform float uSheen;

void main() {
  cutAway(vRest);
  vec3 n = normalize(vNormal);
  vec3 v = normalize(vView);
  vec3 light = daylight(n);
#ifdef WITH_SHADE
  light *= (1.0 - 0.82 * vShade.x) * (1.0 - 0.5 * vShade.y);
#endif
  vec3 c = pow(vTint, vec3(2.2));
  gl_FragColor = vec4(encode(c * light + sheen(n, v, 0.3, uSheen)), 1.0);
}
`;

/** Polished wire. */
export const METAL_FRAGMENT = /* glsl */ `
${HEAD}
uniform vec3 uMetal;
uniform float uRough;
uniform vec3 uAccent;
uniform float uSelected;
uniform float uHovered;
#ifdef WITH_FRET
varying float vFret;
#endif
#ifdef WITH_COLOUR
varying vec3 vTint;
#endif

void main() {
  cutAway(vRest);
  vec3 n = normalize(vNormal);
  vec3 v = normalize(vView);
  float turning = length(fwidth(n));
  float blur = clamp(uRough + 0.7 * turning, 0.0, 1.6);
  vec3 metal = uMetal;
#ifdef WITH_COLOUR
  metal = pow(vTint, vec3(2.2));
#endif
  vec3 f = metal + (1.0 - metal) * pow(1.0 - clamp(dot(n, v), 0.0, 1.0), 5.0);
  vec3 c = f * (0.62 * room(reflect(-v, n), blur) + 0.36 * daylight(n));
#ifdef WITH_FRET
  float on = max(1.0 - min(abs(vFret - uSelected), 1.0), 0.6 * (1.0 - min(abs(vFret - uHovered), 1.0)));
  c = mix(c, uAccent * (0.35 + 1.1 * dot(c, vec3(0.3, 0.5, 0.2))), 0.8 * on);
#endif
  gl_FragColor = vec4(encode(c), 1.0);
}
`;

/** Contact shadow on the bench. */
export const SHADOW_VERTEX = /* glsl */ `
attribute float across;
attribute float strength;
varying float vAcross;
varying float vStrength;

void main() {
  vAcross = across;
  vStrength = strength;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;

export const SHADOW_FRAGMENT = /* glsl */ `
uniform vec3 uInk;
varying float vAcross;
varying float vStrength;

void main() {
  float a = 1.0 - abs(vAcross);
  gl_FragColor = vec4(uInk, vStrength * a * a * (3.0 - 2.0 * a));
}
`;
