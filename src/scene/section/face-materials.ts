/** The materials of cut faces. */
import {
  DataTexture,
  DoubleSide,
  LinearFilter,
  RGBAFormat,
  ShaderMaterial,
  Vector2,
  type Vector3,
  type IUniform,
} from 'three';
import type { WoodUniforms } from '../wood-uniforms.ts';
import { FACE_PLAIN_FRAGMENT, FACE_STRESS_FRAGMENT, FACE_VERTEX, FACE_WOOD_FRAGMENT } from './section-shaders.ts';
import { stressRamp } from './stress-colours.ts';

/** Values that change in the materials of cut faces. */
export interface FaceValues {
  /** Distance of the hatching lines, mm. */
  readonly hatchMm: IUniform<number>;
  readonly ink: IUniform<Vector3>;
  /** Stress at the ends of the colour scale, MPa. */
  readonly stressLimit: IUniform<number>;
}

/** Later faces lie in the same plane as earlier ones and go over them. */
const over = (steps: number) => ({
  polygonOffset: true,
  polygonOffsetFactor: -steps,
  polygonOffsetUnits: -2 * steps,
});

/** How a face of one colour is drawn. */
interface Hatching {
  readonly along: readonly [number, number];
  /** Distance of its lines, mm; 0 for none. */
  readonly spacing: IUniform<number>;
  readonly alpha: number;
  readonly steps: number;
}

const hatched = (ink: FaceValues['ink'], { along, spacing, alpha, steps }: Hatching): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: {
      uInk: ink,
      uHatchAlong: { value: new Vector2(...along) },
      uHatchMm: spacing,
      uAlpha: { value: alpha },
    },
    vertexShader: FACE_VERTEX,
    fragmentShader: FACE_PLAIN_FRAGMENT,
    defines: { WITH_COLOUR: '' },
    side: DoubleSide,
    transparent: alpha < 1,
    ...over(steps),
  });

function stressed(limit: FaceValues['stressLimit']): ShaderMaterial {
  const ramp = new DataTexture(stressRamp(256), 256, 1, RGBAFormat);
  ramp.magFilter = LinearFilter;
  ramp.minFilter = LinearFilter;
  ramp.needsUpdate = true;
  const material = new ShaderMaterial({
    uniforms: { uRamp: { value: ramp }, uLimit: limit },
    vertexShader: FACE_VERTEX,
    fragmentShader: FACE_STRESS_FRAGMENT,
    defines: { WITH_VALUE: '' },
    side: DoubleSide,
    transparent: true,
    ...over(1),
  });
  material.addEventListener('dispose', () => ramp.dispose());
  return material;
}

const RISING = [0.7071, 0.7071] as const;
const FALLING = [0.7071, -0.7071] as const;

/** @param woods of neck and board */
export function createFaceMaterials(
  { hatchMm, ink, stressLimit }: FaceValues,
  woods: { readonly neck: WoodUniforms; readonly board: WoodUniforms },
  { bench, grain }: { readonly bench: IUniform<Vector3>; readonly grain: DataTexture },
) {
  const wood = (uniforms: WoodUniforms): ShaderMaterial =>
    new ShaderMaterial({
      uniforms: { ...uniforms, uBench: bench, uGrain: { value: grain } },
      vertexShader: FACE_VERTEX,
      fragmentShader: FACE_WOOD_FRAGMENT,
      side: DoubleSide,
    });
  return {
    faceNeck: wood(woods.neck),
    faceBoard: wood(woods.board),
    facePlain: hatched(ink, { along: FALLING, spacing: hatchMm, alpha: 1, steps: 1 }),
    faceHollow: hatched(ink, { along: RISING, spacing: { value: 0 }, alpha: 1, steps: 1 }),
    faceRod: hatched(ink, { along: RISING, spacing: hatchMm, alpha: 1, steps: 2 }),
    faceGlue: hatched(ink, { along: RISING, spacing: { value: 0 }, alpha: 0.62, steps: 2 }),
    faceWire: hatched(ink, { along: RISING, spacing: hatchMm, alpha: 1, steps: 4 }),
    faceStress: stressed(stressLimit),
  };
}
