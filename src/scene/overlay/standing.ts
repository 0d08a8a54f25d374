/** What stands in the picture, for those who draw over it. */
import { shownFret } from '../camera/views.ts';
import type { ComparedNecks } from '../compared-necks.ts';
import type { NeckModel } from '../neck-model.ts';
import type { SectionModel } from '../section/section-model.ts';
import type { StraightedgeModel } from '../straightedge-model.ts';
import type { NeckSceneProps } from '../types.ts';

export interface Standing {
  readonly model: NeckModel;
  readonly section: SectionModel;
  readonly compared: ComparedNecks;
  readonly straightedge: StraightedgeModel;
}

/** The fret that close views show. */
export const closeFret = ({ build, selectedFret }: NeckSceneProps): number => shownFret(build, selectedFret);
