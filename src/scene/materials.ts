/** The materials of one neck, and the values that change in them. */
import { Color, DoubleSide, FrontSide, ShaderMaterial, Vector3, Vector4, type DataTexture, type IUniform } from 'three';
import type { Build } from '../neck/build.ts';
import { metalById } from '../neck/metals.ts';
import {
  METAL_FRAGMENT,
  PLAIN_FRAGMENT,
  SHADOW_FRAGMENT,
  SHADOW_VERTEX,
  VERTEX,
  WOOD_FRAGMENT,
} from './shader-chunks.ts';
import { createFaceMaterials } from './section/face-materials.ts';
import type { ScenePalette } from './types.ts';
import { linear, setWoods, woodUniforms, type WoodUniforms } from './wood-uniforms.ts';

/** How much of the wood is left when it is seen through. */
const SEEN_THROUGH = 0.42;

const NO_CUT = (): Vector4[] => [new Vector4(0, 0, 0, 1), new Vector4(0, 0, 0, 1)];

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

/** Values that many of the materials share. */
interface Shared {
  readonly light: { readonly uBench: IUniform<Vector3>; readonly uCut: IUniform<Vector4[]> };
  readonly marks: {
    readonly uSelected: IUniform<number>;
    readonly uHovered: IUniform<number>;
    readonly uAccent: IUniform<Vector3>;
  };
  readonly metal: IUniform<Vector3>;
}

const createShared = (): Shared => ({
  light: { uBench: { value: new Vector3() }, uCut: { value: NO_CUT() } },
  marks: { uSelected: { value: -1 }, uHovered: { value: -1 }, uAccent: { value: new Vector3() } },
  metal: { value: new Vector3() },
});

/** The materials of what is not cut. */
function createSolids(
  { light, marks, metal }: Shared,
  grain: DataTexture,
  woods: { readonly neck: WoodUniforms; readonly board: WoodUniforms },
) {
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
  const bright = (colour: IUniform<Vector3>, rough: number, defines: Readonly<Record<string, string>>) =>
    new ShaderMaterial({
      uniforms: { ...light, ...marks, uMetal: colour, uRough: { value: rough } },
      vertexShader: VERTEX,
      fragmentShader: METAL_FRAGMENT,
      defines,
    });
  return {
    neck: wood(woods.neck, false),
    board: wood(woods.board, true),
    binding: plain(0.35, true),
    plain: plain(0.35, false),
    strings: bright({ value: new Vector3() }, 0.3, { WITH_COLOUR: '' }),
    wire: bright(metal, 0.1, { WITH_FRET: '' }),
    shadow: new ShaderMaterial({
      uniforms: { uInk: { value: new Vector3() } },
      vertexShader: SHADOW_VERTEX,
      fragmentShader: SHADOW_FRAGMENT,
      transparent: true,
      depthWrite: false,
      side: DoubleSide,
    }),
  };
}

export function createMaterials(grain: DataTexture): Materials {
  const shared = createShared();
  const { marks, metal } = shared;
  const { uBench: bench, uCut: cut } = shared.light;
  const woods = { neck: woodUniforms(), board: woodUniforms() };
  const solids = createSolids(shared, grain, woods);
  const values = { hatchMm: { value: 1 }, ink: { value: new Vector3() }, stressLimit: { value: 1 } };
  const faces = createFaceMaterials(values, woods, { bench, grain });

  return {
    ...solids,
    ...faces,
    setBuild(build) {
      setWoods(woods.neck, woods.board, build);
      metal.value.copy(linear(metalById(build.wireMetal).colour));
    },
    setPalette({ ground, ink, accent, dark }) {
      bench.value.copy(dark ? linear('#4a4641') : linear(ground).multiplyScalar(0.9));
      marks.uAccent.value.copy(linear(accent));
      // Hatching lies on bright metal and binding by day and by night.
      const hatch = new Color(dark ? ground : ink);
      values.ink.value.set(...(hatch.convertLinearToSRGB().toArray() as [number, number, number]));
      const shade = new Color(dark ? '#000000' : ink);
      (solids.shadow.uniforms['uInk'] as IUniform<Vector3>).value.set(
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
      for (const material of [solids.neck, solids.board]) {
        material.transparent = on;
        (material.uniforms['uSeeThrough'] as IUniform<number>).value = on ? SEEN_THROUGH : 1;
      }
    },
    setHatch(mm) {
      values.hatchMm.value = mm;
    },
    setStressLimit(limitMPa) {
      values.stressLimit.value = limitMPa;
    },
    setMarked(selected, hovered) {
      marks.uSelected.value = selected;
      marks.uHovered.value = hovered;
    },
    dispose() {
      for (const material of [...Object.values(solids), ...Object.values(faces)]) material.dispose();
    },
  };
}
