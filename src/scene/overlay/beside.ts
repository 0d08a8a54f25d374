/** What is written and drawn over the picture: beside the whole neck, or on a cut. */
import type { PerspectiveCamera } from 'three';
import type { CutPlane } from '../../geometry/cut.ts';
import type { Annotations } from '../section/annotations.ts';
import { gapUnder } from '../straightedge-model.ts';
import type { NeckSceneProps } from '../types.ts';
import { drawAnnotations } from './annotate.ts';
import { drawForces } from './arrows.ts';
import { drawGap } from './gap.ts';
import type { Ink } from './ink.ts';
import { drawFlatLine, drawNeckLabel, drawThread } from './neck-labels.ts';
import { drawOutlines } from './outlines.ts';
import { createProjector } from './project.ts';
import { closeFret, type Standing } from './standing.ts';
import { drawStressKey } from './stress-key.ts';
import { drawSwing } from './swing.ts';

/** A sheet over the picture, and from where the picture is seen. */
interface View {
  readonly ink: Ink;
  readonly camera: PerspectiveCamera;
}

/** What is written beside the whole neck. @param pointed the fret that is pointed at on it */
export function drawBeside(
  { model, compared, straightedge }: Standing,
  props: NeckSceneProps,
  { ink, camera }: View,
  { pointed, liftMm }: { readonly pointed: number | null; readonly liftMm: Float64Array | undefined },
): void {
  const { build, shows, prediction, method, units } = props;
  const projector = createProjector(camera, ink.width, ink.height, model.reader);
  const line = props.lineSource.read();
  if (shows.arrows && prediction && prediction.fretXMm.length === build.fretCount) {
    const fret = pointed ?? closeFret(props);
    drawForces(ink, projector, { build, prediction, method, units, strung: shows.strings, liftMm, fret });
  }
  const others = compared.list();
  if (others.length > 0) {
    drawFlatLine(ink, projector, build);
    if (props.name) drawNeckLabel(ink, projector, props.name);
    for (const { model: other, neck, offset } of others) {
      const beside = createProjector(camera, ink.width, ink.height, other.reader, offset);
      drawFlatLine(ink, beside, neck.build);
      drawNeckLabel(ink, beside, neck.label);
    }
  }
  // With others in the picture each has its flat line.
  else if (props.view === 'neck') drawThread(ink, projector, build);
  if (props.swing) drawSwing(ink, projector, { build, reader: model.reader, factor: line.factor }, props.swing);
  if (shows.straightedge) {
    drawGap(ink, projector, build, model.reader, gapUnder(build, line), straightedge.place(), units);
  }
}

/** What is written on a cut, as long as it is seen from its open side. @param annotations null while the camera travels */
export function drawOnCut(
  { model, section }: Standing,
  plane: CutPlane,
  { ink, camera }: View,
  annotations: Annotations | null,
): void {
  if ((plane.axis === 'x' ? camera.position.x : camera.position.z) <= plane.atMm) return;
  const projector = createProjector(camera, ink.width, ink.height, model.reader);
  drawOutlines(ink, projector, section.outlines());
  if (annotations) drawAnnotations(ink, projector, annotations);
  const limit = section.stressLimitMPa();
  if (limit !== null) drawStressKey(ink, limit);
}
