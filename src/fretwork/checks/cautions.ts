/** Cautions, shown at the step where they matter, as codes. They remind; local rules and data sheets decide. */
import type { Build } from '../../neck/build.ts';
import { isOwnWood } from '../../neck/materials/own-woods.ts';
import { woodById } from '../../neck/woods.ts';
import { basedOn, type Basis, type SourceCode } from '../facts.ts';

export type CautionId =
  | 'dust'
  | 'dust-sensitising'
  | 'wire-ends'
  | 'pressing'
  | 'glue'
  | 'solvents'
  | 'strings'
  | 'rod'
  | 'listed-wood'
  | 'heat';

export interface Caution extends Basis {
  readonly id: CautionId;
  /** Ids of the woods, or of the glue, that it names. */
  readonly about: readonly string[];
}

/** Ids of the woods of a build that fretting touches or that its papers name: the board first, then the neck's. */
export function woodsOf(build: Pick<Build, 'boardWood' | 'laminates'>): string[] {
  return [...new Set([build.boardWood, ...build.laminates.map((laminate) => laminate.wood)])];
}

/** Woods of a build with a note on trade in them, by id. */
export function listedWoods(build: Pick<Build, 'boardWood' | 'laminates'>): string[] {
  return woodsOf(build).filter((id) => !isOwnWood(id) && woodById(id).trade.is !== 'free');
}

function sensitises(id: string): boolean {
  return !isOwnWood(id) && woodById(id).dust.is !== 'ordinary';
}

function caution(id: CautionId, source: SourceCode = 'practice', about: readonly string[] = []): Caution {
  return { id, about, ...basedOn(source) };
}

/** Is this job one of a neck that is pressed straight with heat first? */
export const isHeatPressed = ({ job, heatPressed }: Pick<Build, 'job' | 'heatPressed'>): boolean =>
  job === 'refret' && heatPressed;

/** The cautions that this build calls for, by id. */
export function cautionsFor(build: Build): ReadonlyMap<CautionId, Caution> {
  const listed = listedWoods(build);
  const cautions: (Caution | false)[] = [
    caution('dust', 'dust-rule'),
    sensitises(build.boardWood) && caution('dust-sensitising', 'toxic-woods', [build.boardWood]),
    caution('wire-ends'),
    caution('pressing'),
    build.method !== 'press' && caution('glue', 'practice', [build.glueKind]),
    build.method !== 'press' && caution('solvents'),
    caution('strings'),
    build.rodKind !== 'none' && caution('rod'),
    isHeatPressed(build) && caution('heat'),
    listed.length > 0 && caution('listed-wood', 'listed-species', listed),
  ];
  return new Map(cautions.filter((one) => one !== false).map((one) => [one.id, one]));
}
