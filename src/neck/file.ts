/**
 * The project file: JSON of our own, `{ "format": "backbow project", "version": 4, "build": { … }, "measurements": { … } }`.
 *
 * `measurements` holds what the build refers to, for each quantity that was measured: `bite` and `grip`, as in
 * bite-reference.ts. It is optional, and stands beside the build so that a reader that does not know it opens the same neck.
 */
import type { Build } from './build.ts';
import { GLUES } from './glues.ts';
import { ownWoodsWith, type OwnWood } from './materials/own-woods.ts';
import { hasMoved } from './woods.ts';
import type { Problem } from './problems.ts';
import { checkBuild, type CheckedBuild } from './schema.ts';

export const PROJECT_FORMAT = 'backbow project';
export const PROJECT_VERSION = 4;
export const PROJECT_EXTENSION = '.backbow.json';
/** Larger files are no project files: notes, the longest entry, take a few kilobytes. */
export const MOST_PROJECT_BYTES = 1_000_000;

/** What version 1 took every stud for: a block, in full grip after some 0.05 mm. Its builds keep that until they are changed. */
export const EARLIER_GRIP: Pick<Build, 'studShape' | 'studSoftnessMm'> = { studShape: 0, studSoftnessMm: 0.05 };

export const isEarlierGrip = ({ studShape, studSoftnessMm }: typeof EARLIER_GRIP): boolean =>
  studShape === EARLIER_GRIP.studShape && studSoftnessMm === EARLIER_GRIP.studSoftnessMm;

/**
 * Until version 3 all strings had one action and all frets one line, the saw went as far as the binding let it and a tang to the
 * edge where its slot did, all frets went into a finished neck, and every neck was right-handed.
 */
const BEFORE_3: Pick<
  Build,
  | 'bassHigherMm'
  | 'fallAwayMm'
  | 'fallAwayFromFret'
  | 'bridgeMm'
  | 'undercutTangs'
  | 'workOrder'
  | 'clampSlidePercent'
  | 'leftHanded'
> = {
  bassHigherMm: 0,
  fallAwayMm: 0,
  fallAwayFromFret: 12,
  bridgeMm: 0,
  undercutTangs: false,
  workOrder: 'neck-first',
  clampSlidePercent: 50,
  leftHanded: false,
};

/** The build of version 2 as one of version 3: a neck whose outer lines stay whole got other numbers then, and a check says so. */
export function before3(build: Record<string, unknown>): Record<string, unknown> {
  const [lines, sawn] = [build['bindingLineCount'], build['linesSawnThrough']];
  const hadWholeLines = typeof lines === 'number' && typeof sawn === 'number' && lines > sawn;
  return { ...build, ...BEFORE_3, ...(hadWholeLines ? { endsChanged: true } : {}) };
}

/**
 * Until version 4 the stiffness of the glue was a number beside its kind. Where it was that of the kind it follows the kind
 * from now on; any other stays as it was entered. Densities of some woods were derived, and wenge had 1.10 for a shear that
 * its test has not: a build with one of these woods keeps the numbers that a neck was made by, and a check says so. There
 * was one own wood, without a name. Channels tapered with the neck and stopped at a share of its wood; there was one rod,
 * and bars were solid. No neck had a zero fret or
 * was pressed straight with heat.
 */
export function before4(stored: Record<string, unknown>): Record<string, unknown> {
  const { ownModulusGPa: modulusGPa, ownDensityKgM3: densityKgM3, ...build } = stored;
  const { glueKind, glueModulusMPa } = build;
  const kind = GLUES.find(({ id }) => id === glueKind);
  const isOfKind = kind?.id === 'wood-glue' && glueModulusMPa === kind.modulusMPa;
  return {
    ...build,
    endsChanged: stored['endsChanged'] === true,
    heatPressed: false,
    heatBeforeMm: 0,
    heatAfterMm: 0,
    heatRestMm: 0,
    zeroFret: false,
    zeroFretHigherMm: 0.05,
    channelCut: 'tapered',
    channelFollowsRod: false,
    rodCount: 1,
    rodsApartMm: 16,
    barKind: 'solid',
    barWallMm: 1.5,
    glueStiffness: isOfKind ? 'kind' : 'own',
    woodValues: hasMovedWood(build) ? 'earlier' : 'printed',
    ownWoods: ownWoodsWith({ modulusGPa, densityKgM3 } as Partial<OwnWood>),
  };
}

/** Does a stored build name a wood whose values moved with version 4, in board, neck or binding? */
function hasMovedWood({ boardWood, laminates, binding }: Record<string, unknown>): boolean {
  const named = (list: unknown, key: 'wood' | 'material'): unknown[] =>
    Array.isArray(list) ? list.map((entry) => (entry as Record<string, unknown> | null)?.[key]) : [];
  return [boardWood, ...named(laminates, 'wood'), ...named(binding, 'material')].some((id) => hasMoved(String(id)));
}

/** Turns the build of version i + 1 into that of version i + 2. */
const MIGRATIONS: readonly ((build: Record<string, unknown>) => Record<string, unknown>)[] = [
  (build) => ({ ...build, studShape: EARLIER_GRIP.studShape }),
  before3,
  before4,
];

/** When a file was made and of what: the program's version and the stamp of its numbers (verdict/stamp.ts). */
export interface Made {
  readonly stamp: string;
  readonly program: string;
  /** ISO 8601, the day alone. */
  readonly date: string;
}

/** @param made for those who read the file; nothing is read back from it */
export function writeProject({ biteReference, gripReference, ...build }: Build, made?: Made): string {
  const references = {
    ...(biteReference ? { bite: biteReference } : {}),
    ...(gripReference ? { grip: gripReference } : {}),
  };
  const measurements = Object.keys(references).length > 0 ? { measurements: references } : {};
  const file = { format: PROJECT_FORMAT, version: PROJECT_VERSION, ...(made ? { made } : {}), build, ...measurements };
  return `${JSON.stringify(file, null, 2)}\n`;
}

const refuse = (problem: Problem): CheckedBuild => ({ ok: false, problems: [problem] });

/** Reads a project file; nothing in it is corrected. */
export function readProject(text: string): CheckedBuild {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return refuse({ code: 'not-json', parameter: 'file', value: undefined, detail: (error as Error).message });
  }
  return checkProject(data);
}

/** What `readProject` does with a file whose JSON has been read already. */
export function checkProject(data: unknown): CheckedBuild {
  if (typeof data !== 'object' || data === null || !('format' in data) || data.format !== PROJECT_FORMAT) {
    return refuse({ code: 'not-a-project', parameter: 'format', value: data, latest: PROJECT_VERSION });
  }
  const version: unknown = 'version' in data ? data.version : undefined;
  const place = { parameter: 'version', value: version, latest: PROJECT_VERSION };
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse({ code: 'not-a-project', ...place });
  }
  if (version > PROJECT_VERSION) return refuse({ code: 'newer-version', ...place });
  const stored: unknown = 'build' in data ? data.build : undefined;
  if (typeof stored !== 'object' || stored === null || Array.isArray(stored)) return checkBuild(stored);
  const build = MIGRATIONS.slice(version - 1).reduce((old, migrate) => migrate(old), stored as Record<string, unknown>);
  const measurements: unknown = 'measurements' in data ? data.measurements : undefined;
  return checkBuild({ ...build, ...referenceIn(measurements) });
}

/** What the file refers to; of measurements that this release does not know, nothing. */
function referenceIn(measurements: unknown): { readonly biteReference?: unknown; readonly gripReference?: unknown } {
  if (typeof measurements !== 'object' || measurements === null) return {};
  return {
    ...('bite' in measurements ? { biteReference: measurements.bite } : {}),
    ...('grip' in measurements ? { gripReference: measurements.grip } : {}),
  };
}
