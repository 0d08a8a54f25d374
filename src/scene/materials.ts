/** The materials of one neck, and the values that change in them. */
import {
  Color,
  DataTexture,
  DoubleSide,
  FrontSide,
  LinearFilter,
  RGBAFormat,
  ShaderMaterial,
  Vector2,
  Vector3,
  Vector4,
  type IUniform,
} from 'three';
import type { Build } from '../neck/build.ts';
import { metalById } from '../neck/metals.ts';
import { boardWidthMm } from '../neck/neck-shape.ts';
import {
  METAL_FRAGMENT,
  PLAIN_FRAGMENT,
  SHADOW_FRAGMENT,
  SHADOW_VERTEX,
  VERTEX,
  WOOD_FRAGMENT,
} from './shader-chunks.ts';
import {
  FACE_PLAIN_FRAGMENT,
  FACE_STRESS_FRAGMENT,
  FACE_VERTEX,
  FACE_WOOD_FRAGMENT,
} from './section/section-shaders.ts';
import { stressRamp } from './section/stress-colours.ts';
import type { ScenePalette } from './types.ts';
import { figureOf } from './wood-figure.ts';

/** Linear colour of an sRGB hex. */
function linear(hex: string): Vector3 {
  const { r, g, b } = new Color(hex);
  return new Vector3(r, g, b);
}

/** How much of the wood is left when it is seen through. */
const SEEN_THROUGH = 0.42;

const NO_CUT = (): Vector4[] => [new Vector4(0, 0, 0, 1), new Vector4(0, 0, 0, 1)];

interface WoodUniforms {
  readonly uColour: IUniform<Vector3[]>;
  readonly uDark: IUniform<Vector3[]>;
  readonly uFigure: IUniform<Vector4[]>;
  readonly uMore: IUniform<Vector3[]>;
  readonly uReach: IUniform<Vector4>;
  readonly uHalfWidth: IUniform<Vector2>;
}

export interface Materials {
  readonly neck: ShaderMaterial;
  readonly board: ShaderMaterial;
  readonly binding: ShaderMaterial;
  readonly plain: ShaderMaterial;
  readonly strings: ShaderMaterial;
  readonly wire: ShaderMaterial;
  readonly shadow: ShaderMaterial;
  /** Cut faces. */
  readonly faceNeck: ShaderMaterial;
  readonly faceBoard: ShaderMaterial;
  readonly facePlain: ShaderMaterial;
  readonly faceWire: ShaderMaterial;
  /** What is hollow in the wood, and what lies in it. */
  readonly faceHollow: ShaderMaterial;
  readonly faceRod: ShaderMaterial;
  readonly faceGlue: ShaderMaterial;
  readonly faceStress: ShaderMaterial;
  setBuild(build: Build): void;
  setPalette(palette: ScenePalette): void;
  /** Two planes in straight coordinates; what lies beyond n·p > d is cut away. */
  setCut(planes: readonly Vector4[]): void;
  setMarked(selected: number, hovered: number): void;
  /** Lets the wood be seen through, to show what lies in it. */
  setSeeThrough(on: boolean): void;
  /** Distance of the hatching lines on cut faces, mm. */
  setHatch(mm: number): void;
  /** Stress at the ends of the colour scale, MPa. */
  setStressLimit(limitMPa: number): void;
  dispose(): void;
}

export function createMaterials(grain: DataTexture): Materials {
  const bench = { value: new Vector3() };
  const cut = { value: NO_CUT() };
  const light = { uBench: bench, uCut: cut };
  const four = <T>(make: () => T): IUniform<T[]> => ({ value: Array.from({ length: 4 }, make) });
  const woodUniforms = (): WoodUniforms => ({
    uColour: four(() => new Vector3()),
    uDark: four(() => new Vector3()),
    uFigure: four(() => new Vector4(0, 3, 0, 0)),
    uMore: four(() => new Vector3()),
    uReach: { value: new Vector4(1e9, 1e9, 1e9, 1e9) },
    uHalfWidth: { value: new Vector2(1, 0) },
  });
  const neckUniforms = woodUniforms();
  const boardUniforms = woodUniforms();
  const wood = (uniforms: WoodUniforms, shaded: boolean): ShaderMaterial =>
    new ShaderMaterial({
      uniforms: { ...light, ...uniforms, uGrain: { value: grain }, uSeeThrough: { value: 1 } },
      vertexShader: VERTEX,
      fragmentShader: WOOD_FRAGMENT,
      defines: shaded ? { WITH_SHADE: '' } : {},
      side: FrontSide,
    });
  const plain = (sheen: number, shaded: boolean): ShaderMaterial =>
    new ShaderMaterial({
      uniforms: { ...light, uSheen: { value: sheen } },
      vertexShader: VERTEX,
      fragmentShader: PLAIN_FRAGMENT,
      defines: { WITH_COLOUR: '', ...(shaded ? { WITH_SHADE: '' } : {}) },
    });
  const marks = { uSelected: { value: -1 }, uHovered: { value: -1 }, uAccent: { value: new Vector3() } };
  const metal = { value: new Vector3() };
  const materials = {
    neck: wood(neckUniforms, false),
    board: wood(boardUniforms, true),
    binding: plain(0.35, true),
    plain: plain(0.35, false),
    strings: new ShaderMaterial({
      uniforms: { ...light, ...marks, uMetal: { value: new Vector3() }, uRough: { value: 0.3 } },
      vertexShader: VERTEX,
      fragmentShader: METAL_FRAGMENT,
      defines: { WITH_COLOUR: '' },
    }),
    wire: new ShaderMaterial({
      uniforms: { ...light, ...marks, uMetal: metal, uRough: { value: 0.1 } },
      vertexShader: VERTEX,
      fragmentShader: METAL_FRAGMENT,
      defines: { WITH_FRET: '' },
    }),
    shadow: new ShaderMaterial({
      uniforms: { uInk: { value: new Vector3() } },
      vertexShader: SHADOW_VERTEX,
      fragmentShader: SHADOW_FRAGMENT,
      transparent: true,
      depthWrite: false,
      side: DoubleSide,
    }),
  };

  const hatchMm = { value: 1 };
  const faceInk = { value: new Vector3() };
  const stressLimit = { value: 1 };
  const ramp = new DataTexture(stressRamp(256), 256, 1, RGBAFormat);
  ramp.magFilter = LinearFilter;
  ramp.minFilter = LinearFilter;
  ramp.needsUpdate = true;
  /** Later faces lie in the same plane as earlier ones and go over them. */
  const over = (steps: number) => ({
    polygonOffset: true,
    polygonOffsetFactor: -steps,
    polygonOffsetUnits: -2 * steps,
  });
  const faceWood = (uniforms: WoodUniforms): ShaderMaterial =>
    new ShaderMaterial({
      uniforms: { ...uniforms, uBench: bench, uGrain: { value: grain } },
      vertexShader: FACE_VERTEX,
      fragmentShader: FACE_WOOD_FRAGMENT,
      side: DoubleSide,
    });
  const face = (
    along: readonly [number, number],
    spacing: IUniform<number>,
    alpha: number,
    steps: number,
  ): ShaderMaterial =>
    new ShaderMaterial({
      uniforms: {
        uInk: faceInk,
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
  const faces = {
    faceNeck: faceWood(neckUniforms),
    faceBoard: faceWood(boardUniforms),
    facePlain: face([0.7071, -0.7071], hatchMm, 1, 1),
    faceHollow: face([0.7071, 0.7071], { value: 0 }, 1, 1),
    faceRod: face([0.7071, 0.7071], hatchMm, 1, 2),
    faceGlue: face([0.7071, 0.7071], { value: 0 }, 0.62, 2),
    faceWire: face([0.7071, 0.7071], hatchMm, 1, 4),
    faceStress: new ShaderMaterial({
      uniforms: { uRamp: { value: ramp }, uLimit: stressLimit },
      vertexShader: FACE_VERTEX,
      fragmentShader: FACE_STRESS_FRAGMENT,
      defines: { WITH_VALUE: '' },
      side: DoubleSide,
      transparent: true,
      ...over(1),
    }),
  };

  const setWood = (uniforms: WoodUniforms, index: number, woodId: string, sawn: number, offset: number): void => {
    const figure = figureOf(woodId);
    uniforms.uColour.value[index].copy(linear(figure.colour));
    uniforms.uDark.value[index].copy(linear(figure.grain));
    uniforms.uFigure.value[index].set(figure.rings, figure.ringMm, figure.fibre, figure.pores);
    uniforms.uMore.value[index].set(figure.streaks, sawn, offset);
  };

  return {
    ...materials,
    ...faces,
    setBuild(build) {
      const nut = boardWidthMm(build, 0) / 2;
      const slope = boardWidthMm(build, 1) / 2 - nut;
      neckUniforms.uHalfWidth.value.set(nut, slope);
      boardUniforms.uHalfWidth.value.set(nut, slope);
      let reach = 0;
      const reaches = [1e9, 1e9, 1e9, 1e9];
      for (let index = 0; index < 4; index++) {
        const laminate = build.laminates[Math.min(index, build.laminates.length - 1)];
        reach += laminate.share;
        if (index < build.laminates.length - 1) reaches[index] = reach;
        // Laminates are usually turned so that their rings stand: quarter-sawn unless the neck is one piece.
        setWood(neckUniforms, index, laminate.wood, build.laminates.length > 1 ? 0.8 : 0.15, 1.7 + 2.9 * index);
      }
      neckUniforms.uReach.value.set(reaches[0], reaches[1], reaches[2], reaches[3]);
      setWood(boardUniforms, 0, build.boardWood, build.boardSawn === 'quarter' ? 1 : 0, 0.6);
      metal.value.copy(linear(metalById(build.wireMetal).colour));
    },
    setPalette({ ground, ink, accent, dark }) {
      bench.value.copy(dark ? linear('#4a4641') : linear(ground).multiplyScalar(0.9));
      marks.uAccent.value.copy(linear(accent));
      // Hatching lies on bright metal and binding by day and by night.
      const hatch = new Color(dark ? ground : ink);
      faceInk.value.set(...(hatch.convertLinearToSRGB().toArray() as [number, number, number]));
      const shade = new Color(dark ? '#000000' : ink);
      (materials.shadow.uniforms['uInk'] as IUniform<Vector3>).value.set(
        ...(shade.convertLinearToSRGB().toArray() as [number, number, number]),
      );
    },
    setCut(planes) {
      for (let index = 0; index < 2; index++) {
        const plane = planes[index];
        if (plane) cut.value[index].copy(plane);
        else cut.value[index].set(0, 0, 0, 1);
      }
    },
    setSeeThrough(on) {
      for (const material of [materials.neck, materials.board]) {
        material.transparent = on;
        (material.uniforms['uSeeThrough'] as IUniform<number>).value = on ? SEEN_THROUGH : 1;
      }
    },
    setHatch(mm) {
      hatchMm.value = mm;
    },
    setStressLimit(limitMPa) {
      stressLimit.value = limitMPa;
    },
    setMarked(selected, hovered) {
      marks.uSelected.value = selected;
      marks.uHovered.value = hovered;
    },
    dispose() {
      for (const material of [...Object.values(materials), ...Object.values(faces)]) material.dispose();
      ramp.dispose();
    },
  };
}
