/** The picture as a PNG, with everything that is written into it. */
import type { PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import { write, type Ink } from './overlay/ink.ts';
import { drawScaleBar } from './overlay/scale-bar.ts';
import { PictureFailed } from './picture-failed.ts';
import type { Stage } from './stage.ts';

export interface ExportOptions {
  readonly widthPx?: number;
  readonly heightPx?: number;
  /** One line at the lower right, e.g. the name of the build and the version. */
  readonly caption?: string;
  /** What stands after the length of the scale bar, e.g. "at the middle of the picture"; no bar without it. */
  readonly scaleNote?: string;
}

/**
 * Draws at the given size and copies it in the same task (a WebGL canvas is empty afterwards), the overlay on top.
 * @throws {PictureFailed} when the browser cannot make the PNG
 */
export async function exportPicture(
  stage: Stage,
  gl: WebGLRenderer,
  scene: Scene,
  camera: PerspectiveCamera,
  overlay: HTMLCanvasElement | null,
  options: ExportOptions = {},
): Promise<Blob> {
  const before = { width: gl.domElement.width, height: gl.domElement.height };
  const width = options.widthPx ?? before.width;
  const height = options.heightPx ?? before.height;
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new PictureFailed('no-picture-file');
  const ratio = gl.getPixelRatio();
  const scale = width / Math.max(640, Math.min(width, 1440));
  const font = overlay ? getComputedStyle(overlay).fontFamily : 'sans-serif';
  const layer = document.createElement('canvas');
  layer.width = width;
  layer.height = height;
  const layerContext = layer.getContext('2d');
  if (!layerContext) throw new PictureFailed('no-picture-file');
  layerContext.setTransform(scale, 0, 0, scale, 0, 0);
  const ink: Ink = {
    context: layerContext,
    width: width / scale,
    height: height / scale,
    palette: stage.props().palette,
    font,
  };
  gl.setDrawingBufferSize(width, height, 1);
  try {
    stage.draw(gl, scene, camera, ink);
    context.drawImage(gl.domElement, 0, 0);
  } finally {
    gl.setDrawingBufferSize(before.width / ratio, before.height / ratio, ratio);
  }
  context.drawImage(layer, 0, 0);
  const over: Ink = { ...ink, context };
  context.setTransform(scale, 0, 0, scale, 0, 0);
  if (options.caption) write(over, options.caption, [ink.width - 20, ink.height - 18], { size: 12, align: 'right' });
  if (options.scaleNote !== undefined) {
    const { units } = stage.props();
    drawScaleBar(over, stage.director.orbit(), units, [ink.width - 20, ink.height - 46], options.scaleNote);
  }
  stage.director.apply(camera, before.width / Math.max(1, before.height), performance.now());
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw new PictureFailed('no-picture-file');
  return blob;
}
