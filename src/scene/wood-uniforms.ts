/** What the pictures of a wood are drawn from: up to four pieces side by side, each of a wood of its own. */
import { Color, Vector2, Vector3, Vector4, type IUniform } from 'three';
import type { Build } from '../neck/build.ts';
import { areLaminatesConstant, boardWidthMm, laminateJoints } from '../neck/neck-shape.ts';
import { figureOf } from './wood-figure.ts';

export interface WoodUniforms {
  readonly uColour: IUniform<Vector3[]>;
  readonly uDark: IUniform<Vector3[]>;
  readonly uFigure: IUniform<Vector4[]>;
  readonly uMore: IUniform<Vector3[]>;
  readonly uReach: IUniform<Vector4>;
  readonly uHalfWidth: IUniform<Vector2>;
}

/** Linear colour of an sRGB hex. */
export function linear(hex: string): Vector3 {
  const { r, g, b } = new Color(hex);
  return new Vector3(r, g, b);
}

const four = <T>(make: () => T): IUniform<T[]> => ({ value: Array.from({ length: 4 }, make) });

export const woodUniforms = (): WoodUniforms => ({
  uColour: four(() => new Vector3()),
  uDark: four(() => new Vector3()),
  uFigure: four(() => new Vector4(0, 3, 0, 0)),
  uMore: four(() => new Vector3()),
  uReach: { value: new Vector4(1e9, 1e9, 1e9, 1e9) },
  uHalfWidth: { value: new Vector2(1, 0) },
});

/** How a piece lies in the tree. */
interface Sawing {
  /** 1 for quarter-sawn, 0 for flat-sawn. */
  readonly sawn: number;
  readonly offset: number;
}

function setWood(uniforms: WoodUniforms, index: number, woodId: string, { sawn, offset }: Sawing): void {
  const figure = figureOf(woodId);
  uniforms.uColour.value[index].copy(linear(figure.colour));
  uniforms.uDark.value[index].copy(linear(figure.grain));
  uniforms.uFigure.value[index].set(figure.rings, figure.ringMm, figure.fibre, figure.pores);
  uniforms.uMore.value[index].set(figure.streaks, sawn, offset);
}

/** Has neck and board look as those of the build. */
export function setWoods(neck: WoodUniforms, board: WoodUniforms, build: Build): void {
  const nut = boardWidthMm(build, 0) / 2;
  const slope = boardWidthMm(build, 1) / 2 - nut;
  // Of constant laminates the shader measures in mm what it measures in half widths of others.
  if (areLaminatesConstant(build)) neck.uHalfWidth.value.set(1, 0);
  else neck.uHalfWidth.value.set(nut, slope);
  board.uHalfWidth.value.set(nut, slope);
  const joints = laminateJoints(build);
  const reaches = [1e9, 1e9, 1e9, 1e9];
  for (let index = 0; index < 4; index++) {
    const laminate = build.laminates[Math.min(index, build.laminates.length - 1)];
    reaches[index] = joints[index] ?? 1e9;
    // Laminates are usually turned so that their rings stand: quarter-sawn unless the neck is one piece.
    const sawn = build.laminates.length > 1 ? 0.8 : 0.15;
    setWood(neck, index, laminate.wood, { sawn, offset: 1.7 + 2.9 * index });
  }
  neck.uReach.value.set(reaches[0], reaches[1], reaches[2], reaches[3]);
  setWood(board, 0, build.boardWood, { sawn: build.boardSawn === 'quarter' ? 1 : 0, offset: 0.6 });
}
