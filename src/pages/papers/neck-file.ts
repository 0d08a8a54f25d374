/** The neck as the picture shows it, as a 3D file. Loaded when a file is asked for. */
import { OWN_WOOD_IDS } from '../../neck/materials/own-woods.ts';
import { PROGRAM_VERSION } from '../../neck/version.ts';
import { writeGlb } from '../../geometry/export/glb.ts';
import { neckSurfaces } from '../../geometry/export/neck-surfaces.ts';
import { lineAt } from '../../mechanics/states.ts';
import { figureOf } from '../../scene/wood-figure.ts';
import { momentOf } from '../../verdict/rail.ts';
import type { BackbowState } from '../../state/store.ts';
import { drawnBowFactor } from '../../state/view-slice.ts';
import { railText } from '../workshop/rail/rail-text.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { SHEETS_WORDS } from '../../speech/en/pages/sheets.ts';
import { FILES_WORDS } from '../../speech/en/pages/papers.ts';
import { isoDate } from './date.ts';
import { stampOnDevice } from './stamp/made.ts';
import { metalName, woodNameIn } from '../../speech/names.ts';

type Shown = Pick<BackbowState, 'solution' | 'rail' | 'bowFactor' | 'chosenFactor' | 'trueScale'>;

/** @throws {Error} before the first prediction */
export async function neckFile(state: Shown): Promise<Uint8Array> {
  const { solution, rail } = state;
  if (!solution) throw new Error(SHEETS_WORDS.working);
  const { build, prediction } = solution;
  const moment = momentOf(solution, rail);
  const line = lineAt(prediction, build.method, moment);
  const factor = drawnBowFactor(state);
  const surfaces = neckSurfaces(build, {
    line: { xMm: prediction.stationXMm, reliefMm: line.reliefMm, factor },
    strung: moment.strung,
    ...(moment.fretsIn ? { fretsIn: moment.fretsIn } : {}),
    words: { ...FILES_WORDS.parts, wood: (id) => woodNameIn(build, id), metal: metalName },
    ownWoodColour: figureOf(OWN_WOOD_IDS[0]).colour,
  });
  return writeGlb(surfaces, build.name, SHEETS_WORDS.version(PROGRAM_VERSION), {
    program: 'Backbow',
    programVersion: PROGRAM_VERSION,
    stamp: stampOnDevice(build),
    date: isoDate(new Date()),
    build: build.name,
    seating: METHOD_WORDS[build.method].label,
    moment: railText(build, rail, prediction),
    phase: rail.phase,
    fretsIn: moment.fretsIn?.length ?? build.fretCount,
    strung: moment.strung,
    daysSinceStringing: moment.strung ? moment.days : null,
    rodPercent: moment.rodPercent,
    bowFactor: factor,
    reliefMm: line.extremeMm,
    straightedgeFrets: [prediction.straightedge.fromFret, prediction.straightedge.toFret],
    lengthUnit: 'metre',
    axes: FILES_WORDS.coordinates,
  });
}
