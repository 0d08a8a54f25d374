/**
 * The parts of a neck, how each is made, and which parameters it depends on: a part is rebuilt only when one of them
 * changed. A test records what each builder reads and fails when a list is short.
 */
import type { Build } from '../neck/build.ts';
import { bindingMeshes, boardMeshes } from './board.ts';
import { fretsMesh } from './frets.ts';
import { markersMesh } from './markers.ts';
import { mergeMeshes } from './merge.ts';
import type { Mesh } from './mesh.ts';
import { neckMesh } from './neck.ts';
import { nutMesh } from './nut.ts';
import { rodMesh } from './rod.ts';
import { stringsMesh } from './strings.ts';

export interface PartPlan {
  readonly needs: readonly (keyof Build)[];
  readonly make: (build: Build) => Mesh;
}

const WIDTH = ['scaleLengthMm', 'fretCount', 'widthNutMm', 'widthLastFretMm'] as const;
const ARC = ['boardShape', 'radiusNutMm', 'radiusLastFretMm', 'boardThicknessMm'] as const;
const END = ['boardBeyondLastFretMm'] as const;
const EDGES = ['binding', 'bindingLineCount', 'linesSawnThrough', 'bridgeMm', 'undercutTangs'] as const;
const SEATS = ['regions', 'kerfMm', 'method', 'tangWidthMm', 'studWidthMm'] as const;
const SLOTS = [...SEATS, 'slotDepthMm', 'slotBottom', 'chamferMm', 'crownWidthMm'] as const;
/** Where the strings begin. */
const AT_NUT = ['stringHeightNutMm', 'zeroFret', 'zeroFretHigherMm', 'crownHeightMm'] as const;
const FRETS = [
  'zeroFret',
  ...WIDTH,
  'boardShape',
  'radiusNutMm',
  'radiusLastFretMm',
  ...EDGES,
  'nipClearanceMm',
  'endBevelDegrees',
  'endInsetMm',
  'oversizeMm',
  'crownWidthMm',
  'crownHeightMm',
  'regions',
  'tangWidthMm',
  'studWidthMm',
  'tangDepthMm',
  'studAreaMm2',
  'studPitchMm',
] as const;

/** Side marks stand out from what is under them: dark on light binding, light on dark wood. */
function sideMarkColour(build: Build): string {
  const outer = build.binding[build.bindingLineCount - 1];
  if (build.bindingLineCount === 0 || outer === undefined) return '#efe8d6';
  const value = Number.parseInt(outer.colour.slice(1), 16);
  const brightness = 0.3 * (value >> 16) + 0.6 * ((value >> 8) & 255) + 0.1 * (value & 255);
  return brightness > 120 ? '#2b2724' : '#efe8d6';
}

export const PARTS = {
  neck: {
    needs: [
      ...WIDTH,
      ...END,
      'bodyJointFret',
      'boardThicknessMm',
      'thicknessFret1Mm',
      'thicknessFret12Mm',
      'backExponent',
      'backShoulderMm',
      'heelStyle',
      'heelThicknessMm',
      'heelLengthMm',
    ],
    make: neckMesh,
  },
  board: { needs: [...WIDTH, ...ARC, ...END, ...EDGES, ...SLOTS], make: (build) => mergeMeshes(boardMeshes(build)) },
  binding: {
    needs: [...WIDTH, ...ARC, ...END, ...EDGES, ...SLOTS],
    make: (build) => mergeMeshes(bindingMeshes(build).map(({ mesh }) => mesh)),
  },
  nut: { needs: [...WIDTH, ...ARC, 'crownWidthMm', ...AT_NUT], make: nutMesh },
  frets: { needs: FRETS, make: (build) => fretsMesh(build, 'seated') },
  looseFrets: { needs: FRETS, make: (build) => fretsMesh(build, 'loose') },
  strings: {
    needs: [
      ...WIDTH,
      ...ARC,
      ...END,
      'strings',
      ...AT_NUT,
      'stringHeightFret12Mm',
      'bassHigherMm',
      'stringEdgeMm',
      'leftHanded',
    ],
    make: stringsMesh,
  },
  rod: {
    needs: [
      ...WIDTH,
      ...END,
      'bodyJointFret',
      'boardThicknessMm',
      'thicknessFret1Mm',
      'thicknessFret12Mm',
      'rodKind',
      'rodStartMm',
      'rodEndMm',
      'rodThread',
      'rodCurveMm',
      'rodSpacingMm',
      'channelWidthMm',
      'channelDepthMm',
      'channelCut',
      'channelFollowsRod',
      'rodCount',
      'rodsApartMm',
      'barKind',
      'barWallMm',
      'barCount',
      'barWidthMm',
      'barDepthMm',
    ],
    make: rodMesh,
  },
  markers: {
    needs: [...WIDTH, ...ARC, 'crownWidthMm', 'binding', 'bindingLineCount', 'leftHanded'],
    make: (build) => markersMesh(build, sideMarkColour(build)),
  },
} as const satisfies Record<string, PartPlan>;

export type PartId = keyof typeof PARTS;
export const PART_IDS = Object.keys(PARTS) as readonly PartId[];

/** Do the builds differ in anything that the part depends on? */
export function partChanged(part: PartId, before: Build, after: Build): boolean {
  return PARTS[part].needs.some((id) => before[id] !== after[id]);
}
