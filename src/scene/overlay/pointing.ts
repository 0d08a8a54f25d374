/** The fret that is pointed at, here or elsewhere on the page: it is marked on every neck that has it. */
import type { PerspectiveCamera } from 'three';
import type { Build } from '../../neck/build.ts';
import type { PointedFret } from '../pick.ts';
import type { NeckSceneProps } from '../types.ts';
import { drawFretCard, fretFacts } from './fret-card.ts';
import type { Ink } from './ink.ts';
import { createProjector } from './project.ts';
import type { Standing } from './standing.ts';

export function createPointing({ model, section, compared }: Standing) {
  let hovered: PointedFret | null = null;
  /** Another neck may have it while this one is too short. */
  const on = (build: Build, { hoveredFret }: NeckSceneProps): number | null => {
    const fret = hovered?.fret ?? hoveredFret ?? null;
    return fret !== null && fret <= build.fretCount ? fret : null;
  };
  return {
    on,
    /** @returns whether it is another one now */
    hover(pointed: PointedFret | null): boolean {
      if (pointed?.fret === hovered?.fret && pointed?.neck === hovered?.neck) return false;
      hovered = pointed;
      return true;
    },
    /** In a cut view the selected fret is what is cut: it keeps the colour of its metal. */
    mark(props: NeckSceneProps): void {
      const selected = section.plane() === null ? (props.selectedFret ?? -1) : -1;
      model.materials.setMarked(selected, on(props.build, props) ?? -1);
      for (const { model: other, neck } of compared.list()) {
        other.materials.setMarked(-1, on(neck.build, props) ?? -1);
      }
    },
    draw(props: NeckSceneProps, ink: Ink, camera: PerspectiveCamera): void {
      const { build, prediction, method, units } = props;
      const other = hovered && compared.list()[hovered.neck - 1];
      const at = other
        ? { build: other.neck.build, prediction: other.neck.prediction, method: other.neck.build.method }
        : { build, prediction, method };
      const fret = on(at.build, props);
      if (fret === null) return;
      const [reader, offset] = other ? [other.model.reader, other.offset] : [model.reader, undefined];
      const projector = createProjector(camera, ink.width, ink.height, reader, offset);
      drawFretCard(ink, projector, at.build, fret, fretFacts(at.build, fret, at.prediction, at.method, units));
    },
  };
}
