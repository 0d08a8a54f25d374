/**
 * The one parameter table. It feeds the controls, the validation, the project file, the link, the sheets and the help.
 * To add a parameter: add a row here; `Build` (build.ts), the schema and the controls follow.
 */
import type { Build } from './build.ts';
import { GLUES } from './glues.ts';
import { METALS } from './metals.ts';
import { areNippedShort } from './neck-shape.ts';
import type {
  ChoiceParameter,
  FlagParameter,
  GroupId,
  MeasuredParameter,
  NumberParameter,
  Parameter,
  ParameterSource,
} from './parameter-kinds.ts';
import type { Unit } from './units.ts';
import { WOOD_IDS } from './woods.ts';

type When = Readonly<Record<string, readonly (string | boolean)[]>>;
interface More {
  readonly digits?: number;
  readonly source?: ParameterSource;
  readonly when?: When;
  readonly integer?: true;
}

function number<const Id extends string>(
  group: GroupId,
  id: Id,
  unit: Unit,
  [min, max, step, standard]: readonly [min: number, max: number, step: number, standard: number],
  typical: readonly [number, number],
  more: More = {},
): NumberParameter<Id> {
  const digits = more.digits ?? Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const { source = 'practice', when, integer } = more;
  return {
    kind: 'number',
    id,
    group,
    unit,
    min,
    max,
    step,
    digits,
    default: standard,
    typical,
    source,
    ...(when ? { when } : {}),
    ...(integer ? { integer } : {}),
  };
}

function choice<const Id extends string, const Value extends string>(
  group: GroupId,
  id: Id,
  options: readonly Value[],
  standard: NoInfer<Value>,
  more: Pick<More, 'source' | 'when'> = {},
): ChoiceParameter<Id, Value> {
  const { source = 'practice', when } = more;
  return { kind: 'choice', id, group, options, default: standard, source, ...(when ? { when } : {}) };
}

function flag<const Id extends string>(
  group: GroupId,
  id: Id,
  standard: boolean,
  more: Pick<More, 'source' | 'when'> = {},
): FlagParameter<Id> {
  const { source = 'practice', when } = more;
  return { kind: 'flag', id, group, default: standard, source, ...(when ? { when } : {}) };
}

/** Somebody has to measure it: null until then. The standard value stands in builds whose blank is not measured. */
function measurement<const Id extends string>(
  group: GroupId,
  id: Id,
  unit: Unit,
  range: readonly [min: number, max: number, step: number, standard: number],
  typical: readonly [number, number],
  more: More,
): MeasuredParameter<Id> {
  return { ...number(group, id, unit, range, typical, more), measured: true };
}

export type BlankPart = 'neck' | 'board';

/**
 * A wood known by its species, or measured as a blank by tapping it or by hanging a weight on it. The frequency is the
 * first one in bending, the blank hung at 22 % from both ends and tapped at its middle.
 */
function blank<const P extends BlankPart>(part: P, group: GroupId, size: readonly [number, number, number]) {
  const source = 'blank-tests';
  const measured = { source, when: { [`${part}BlankTest`]: ['tap', 'sag'] } } as const;
  const tap = { source, when: { [`${part}BlankTest`]: ['tap'] } } as const;
  const sag = { source, when: { [`${part}BlankTest`]: ['sag'] } } as const;
  const isNeck = part === 'neck';
  const massG = Math.round((size[0] * size[1] * size[2] * 0.7) / 1000);
  return [
    choice(group, `${part}BlankTest`, ['none', 'tap', 'sag'], 'none'),
    measurement(group, `${part}BlankLengthMm`, 'mm', [200, 1200, 1, size[0]], [400, 900], measured),
    measurement(group, `${part}BlankWidthMm`, 'mm', [20, 200, 0.5, size[1]], [50, 110], measured),
    measurement(group, `${part}BlankThicknessMm`, 'mm', [3, 60, 0.1, size[2]], [6, 30], measured),
    measurement(group, `${part}BlankMassG`, 'g', [20, 5000, 1, massG], [150, 2000], tap),
    measurement(group, `${part}BlankFrequencyHz`, 'Hz', [10, 3000, 0.5, isNeck ? 225 : 105], [40, 400], tap),
    measurement(group, `${part}BlankSpanMm`, 'mm', [150, 1200, 1, Math.round(size[0] * 0.8)], [300, 800], sag),
    measurement(group, `${part}BlankLoadN`, 'N', [0.5, 500, 0.5, isNeck ? 50 : 10], [5, 100], sag),
    measurement(group, `${part}BlankSagMm`, 'mm', [0.05, 50, 0.01, isNeck ? 0.6 : 2.2], [0.5, 5], sag),
  ] as const;
}

// prettier-ignore
export const PARAMETERS = [
  // The neck
  number('neck', 'scaleLengthMm', 'mm', [330, 920, 1, 648], [560, 870], { digits: 1 }),
  number('neck', 'fretCount', '', [12, 36, 1, 22], [19, 24], { integer: true }),
  number('neck', 'bodyJointFret', '', [10, 24, 1, 16], [12, 19], { integer: true }),
  number('neck', 'widthNutMm', 'mm', [28, 64, 0.1, 43], [38, 54]),
  number('neck', 'widthLastFretMm', 'mm', [34, 80, 0.1, 56], [50, 65]),
  number('neck', 'thicknessFret1Mm', 'mm', [13, 32, 0.1, 21], [19, 24]),
  number('neck', 'thicknessFret12Mm', 'mm', [13, 34, 0.1, 23], [20, 26]),
  number('neck', 'backExponent', '', [1.4, 4, 0.05, 2.2], [1.7, 2.8], { source: 'profile' }),
  number('neck', 'backShoulderMm', 'mm', [0.5, 6, 0.1, 2.5], [2, 3]),
  choice('neck', 'heelStyle', ['block', 'set'], 'block'),
  number('neck', 'heelThicknessMm', 'mm', [0, 50, 0.5, 20], [10, 30], { source: 'assumed' }),
  number('neck', 'heelLengthMm', 'mm', [5, 90, 1, 30], [15, 50], { source: 'assumed' }),
  ...blank('neck', 'neck', [750, 90, 25]),
  flag('neck', 'leftHanded', false),
  flag('neck', 'zeroFret', false),
  number('neck', 'zeroFretHigherMm', 'mm', [0, 0.6, 0.05, 0.05], [0, 0.2], { when: { zeroFret: [true] } }),

  // The board
  choice('board', 'boardWood', WOOD_IDS, 'indian-rosewood', { source: 'wood-tables' }),
  choice('board', 'boardSawn', ['flat', 'quarter'], 'flat', { source: 'elastic-ratios' }),
  number('board', 'boardThicknessMm', 'mm', [2.5, 10, 0.1, 6], [5, 7]),
  choice('board', 'boardShape', ['flat', 'cylinder', 'cone'], 'cylinder'),
  number('board', 'radiusNutMm', 'mm', [150, 1000, 1, 305], [184, 508], { when: { boardShape: ['cylinder', 'cone'] } }),
  number('board', 'radiusLastFretMm', 'mm', [150, 1500, 1, 406], [254, 610], { when: { boardShape: ['cone'] } }),
  number('board', 'boardBeyondLastFretMm', 'mm', [3, 40, 0.5, 10], [5, 20]),
  ...blank('board', 'board', [560, 70, 9]),

  // The wire
  choice('wire', 'wireMetal', METALS.map(({ id }) => id), 'nickel-silver-18', { source: 'alloy-data' }),
  number('wire', 'crownWidthMm', 'mm', [1.2, 3.4, 0.01, 2.4], [2, 2.9]),
  number('wire', 'crownHeightMm', 'mm', [0.6, 1.8, 0.01, 1.2], [0.9, 1.5]),
  number('wire', 'tangWidthMm', 'mm', [0.3, 0.9, 0.005, 0.5], [0.48, 0.56]),
  number('wire', 'studWidthMm', 'mm', [0.3, 1.4, 0.005, 0.76], [0.7, 0.95]),
  number('wire', 'tangDepthMm', 'mm', [0.8, 3, 0.05, 2], [1.4, 2.2]),
  number('wire', 'studAreaMm2', 'mm²', [0.1, 1.5, 0.01, 0.48], [0.3, 0.7], { source: 'assumed' }),
  number('wire', 'studPitchMm', 'mm', [1, 8, 0.05, 2.5], [2, 4]),
  number('wire', 'studShape', '', [0, 3, 0.05, 1], [0.5, 1.5], { source: 'assumed' }),
  number('wire', 'leastCrownMm', 'mm', [0.3, 1.4, 0.05, 0.8], [0.7, 1]),
  number('wire', 'levellingLossMm', 'mm', [0, 0.4, 0.01, 0.05], [0.02, 0.1]),
  choice('wire', 'wireForm', ['stick', 'coil'], 'stick'),
  number('wire', 'stickLengthMm', 'mm', [100, 2000, 1, 260], [240, 620], { when: { wireForm: ['stick'] } }),
  number('wire', 'coilRadiusMm', 'mm', [50, 600, 1, 150], [90, 300], { when: { wireForm: ['coil'] } }),
  number('wire', 'cutLossMm', 'mm', [0, 5, 0.1, 0.5], [0, 2]),
  number('wire', 'wireSparePercent', '%', [0, 100, 1, 10], [5, 20]),
  number('wire', 'wireRadiusPercent', '%', [50, 120, 1, 90], [80, 100], { when: { boardShape: ['cylinder', 'cone'] } }),
  flag('wire', 'nickelSensitivePlayer', false),

  // The slots
  number('slots', 'kerfMm', 'mm', [0.3, 1.2, 0.005, 0.58], [0.51, 0.64], { digits: 3 }),
  number('slots', 'slotDepthMm', 'mm', [1, 6, 0.05, 3], [2.3, 3.2]),
  number('slots', 'slotClearanceMm', 'mm', [0, 2, 0.05, 0.4], [0.2, 0.8]),
  choice('slots', 'slotBottom', ['radiused', 'flat'], 'radiused'),
  number('slots', 'chamferMm', 'mm', [0, 1.2, 0.05, 0.25], [0.15, 0.4]),

  // How they go in
  choice('seating', 'workOrder', ['neck-first', 'board-first'], 'neck-first'),
  choice('seating', 'method', ['press', 'glue', 'both'], 'press'),
  choice('seating', 'seatingTool', ['hammer', 'press'], 'press'),
  choice('seating', 'seatingOrder', ['spread', 'nut-first', 'body-first'], 'spread'),
  choice('seating', 'glueKind', GLUES.map(({ id }) => id), 'wood-glue', { when: { method: ['glue', 'both'] } }),
  choice('seating', 'glueStiffness', ['kind', 'own'], 'kind', { source: 'glue-table', when: { method: ['glue', 'both'] } }),
  number('seating', 'glueModulusMPa', 'MPa', [50, 6000, 50, 2500], [500, 3500], { source: 'assumed', when: { method: ['glue', 'both'], glueStiffness: ['own'] } }),
  number('seating', 'glueReachPercent', '%', [0, 100, 1, 100], [50, 100], { source: 'assumed', when: { method: ['glue', 'both'] } }),

  // Edges and binding
  number('edges', 'bindingLineCount', '', [0, 5, 1, 0], [0, 3], { integer: true }),
  number('edges', 'linesSawnThrough', '', [0, 5, 1, 0], [0, 3], { integer: true }),
  flag('edges', 'endsChanged', false),
  number('edges', 'bridgeMm', 'mm', [0, 8, 0.1, 0], [0, 3]),
  flag('edges', 'undercutTangs', false),
  number('edges', 'nipClearanceMm', 'mm', [0, 2, 0.05, 0.5], [0.3, 1]),
  number('edges', 'endBevelDegrees', '°', [10, 60, 1, 32], [25, 40]),
  number('edges', 'endInsetMm', 'mm', [0, 3, 0.05, 0.1], [0, 0.4]),
  number('edges', 'oversizeMm', 'mm', [0, 8, 0.25, 2], [1, 4]),

  // The strings
  number('strings', 'stringHeightNutMm', 'mm', [0.5, 5, 0.05, 1.7], [1.2, 2.2], { when: { zeroFret: [false] } }),
  number('strings', 'stringHeightFret12Mm', 'mm', [1, 8, 0.05, 3.1], [2.5, 5]),
  number('strings', 'bassHigherMm', 'mm', [-1, 2, 0.05, 0], [0, 0.7]),
  number('strings', 'stringEdgeMm', 'mm', [1.5, 7, 0.1, 3.4], [2.8, 4.5]),

  // Rod and bars
  choice('rod', 'rodKind', ['none', 'one-way', 'two-way'], 'two-way'),
  number('rod', 'rodStartMm', 'mm', [-20, 60, 1, 5], [0, 20], { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodEndMm', 'mm', [100, 700, 1, 385], [340, 480], { when: { rodKind: ['one-way', 'two-way'] } }),
  choice('rod', 'channelCut', ['straight', 'tapered'], 'straight', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'channelWidthMm', 'mm', [0, 14, 0.1, 6.5], [5, 10], { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'channelDepthMm', 'mm', [0, 20, 0.1, 9], [7, 14], { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodCurveMm', 'mm', [0, 8, 0.1, 3], [1, 5], { when: { rodKind: ['one-way'] } }),
  flag('rod', 'channelFollowsRod', false, { when: { rodKind: ['one-way'], channelCut: ['straight'] } }),
  number('rod', 'rodSpacingMm', 'mm', [3, 12, 0.1, 6], [5, 8], { when: { rodKind: ['two-way'] } }),
  number('rod', 'rodCount', '', [1, 2, 1, 1], [1, 2], { integer: true, when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodsApartMm', 'mm', [7, 40, 0.5, 16], [12, 24], { when: { rodKind: ['one-way', 'two-way'] } }),
  choice('rod', 'rodThread', ['M5', 'M6'], 'M5', { source: 'iso-898', when: { rodKind: ['one-way', 'two-way'] } }),
  choice('rod', 'rodClass', ['4.8', '8.8'], '4.8', { source: 'iso-898', when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'wrenchTorqueNm', 'N·m', [0.5, 6, 0.1, 2], [1.5, 3], { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodSettingPercent', '%', [-100, 100, 1, 0], [-60, 60], { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'barCount', '', [0, 2, 1, 0], [0, 2], { integer: true }),
  choice('rod', 'barKind', ['solid', 'steel', 'steel-tube', 'steel-t'], 'solid'),
  number('rod', 'barWidthMm', 'mm', [1, 10, 0.1, 3.2], [3, 6]),
  number('rod', 'barDepthMm', 'mm', [2, 14, 0.1, 9.5], [6, 10]),
  number('rod', 'barWallMm', 'mm', [0.5, 3, 0.1, 1.5], [1, 2]),
  number('rod', 'barModulusGPa', 'GPa', [50, 250, 1, 125], [110, 150], { source: 'assumed' }),

  // Time and climate
  number('time', 'restDays', 'day', [0, 365, 0.5, 3], [1, 14]),
  number('time', 'settleDays', 'day', [1, 3650, 1, 90], [30, 365]),
  flag('time', 'climateOn', false),
  number('time', 'boardMoistureChange', '% MC', [-6, 6, 0.1, 2], [-3, 3], { source: 'moisture', when: { climateOn: [true] } }),
  number('time', 'neckMoistureChange', '% MC', [-6, 6, 0.1, 1], [-3, 3], { source: 'moisture', when: { climateOn: [true] } }),
  choice('time', 'levelledIn', ['none', 'bare', 'strung'], 'none'),
  number('time', 'fallAwayMm', 'mm', [0, 1, 0.05, 0], [0, 0.3]),
  number('time', 'fallAwayFromFret', '', [8, 30, 1, 12], [12, 17], { integer: true }),
  number('time', 'targetReliefMm', 'mm', [-0.2, 0.8, 0.01, 0.15], [0.05, 0.35]),

  // A neck that exists
  choice('existing', 'job', ['new', 'refret'], 'new'),
  flag('existing', 'heatPressed', false, { when: { job: ['refret'] } }),
  number('existing', 'startingBowMm', 'mm', [-1, 1.5, 0.01, 0], [-0.2, 0.6], { source: 'own-measurement', when: { job: ['refret'], heatPressed: [false] } }),
  ...(['heatBeforeMm', 'heatAfterMm', 'heatRestMm'] as const).map((id) => number('existing', id, 'mm', [-1, 1.5, 0.01, 0], [-0.2, 0.6], { source: 'own-measurement', when: { job: ['refret'], heatPressed: [true] } })),

  // Assumptions
  choice('assumptions', 'woodValues', ['printed', 'earlier'], 'printed', { source: 'wood-tables' }),
  number('assumptions', 'studSoftnessMm', 'mm', [0.002, 0.2, 0.001, 0.017], [0.005, 0.04], { source: 'assumed' }),
  number('assumptions', 'wallStiffnessNMm3', 'N/mm³', [50, 30000, 10, 500], [250, 5000], { source: 'assumed' }),
  number('assumptions', 'friction', '', [0.1, 0.8, 0.01, 0.4], [0.2, 0.65], { source: 'friction' }),
  number('assumptions', 'wedgeRelaxation', '', [0, 2, 0.05, 0.5], [0.3, 0.7], { source: 'relaxation' }),
  number('assumptions', 'clampSlidePercent', '%', [0, 100, 5, 50], [0, 100], { source: 'assumed', when: { workOrder: ['board-first'] } }),
  number('assumptions', 'biteFactor', '', [0.2, 5, 0.01, 1], [0.6, 1.6], { source: 'bench-log' }),
] as const satisfies readonly Parameter[];

export type ParameterRow = (typeof PARAMETERS)[number];
export type ParameterId = ParameterRow['id'];

const BY_ID = new Map<string, Parameter>(PARAMETERS.map((parameter) => [parameter.id, parameter]));

/** @throws {RangeError} when no parameter has that id. */
export function parameterById(id: string): Parameter {
  const parameter = BY_ID.get(id);
  if (!parameter) throw new RangeError(`parameter "${id}" is not in the table`);
  return parameter;
}

/** What rests on more than one value of another parameter. */
const RESTS_ON: Partial<Record<ParameterId, (build: Build) => boolean>> = {
  linesSawnThrough: (build) => build.bindingLineCount > 0,
  rodsApartMm: (build) => build.rodCount > 1,
  barKind: (build) => build.barCount > 0,
  barWidthMm: (build) => build.barCount > 0,
  barDepthMm: (build) => build.barCount > 0,
  barWallMm: (build) => build.barCount > 0 && (build.barKind === 'steel-tube' || build.barKind === 'steel-t'),
  barModulusGPa: (build) => build.barCount > 0 && build.barKind === 'solid',
  endsChanged: (build) => build.endsChanged,
  // What older builds were computed with is offered to those alone.
  woodValues: (build) => build.woodValues !== 'printed',
  // Only a tang that is nipped short ends before its slot does.
  nipClearanceMm: areNippedShort,
};

/** Is the control for this parameter of use in this build? (Its `when` conditions hold.) */
export function isRelevant({ id, when }: Parameter, build: Build): boolean {
  if (RESTS_ON[id as ParameterId]?.(build) === false) return false;
  if (!when) return true;
  return Object.entries(when).every(([id, values]) => values.includes(build[id as keyof Build] as string | boolean));
}
