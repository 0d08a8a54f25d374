/**
 * The plan as tables: one source for the sheet, the screen and the CSV files. A column has the key of its quantity, a cell
 * a value in the unit of that key, or a code. Words for both: speech/tables.ts.
 */
import { quantityOf, type QuantityKey } from '../../neck/quantities.ts';
import { gaugedRadiusMm } from '../bending.ts';
import type { FretworkPlan } from './plan.ts';

/** Columns without one quantity of their own: codes, and what has another quantity in each row. */
export const CODE_COLUMNS = [
  'slotEnds',
  'metal',
  'chosen',
  'nickel',
  'figures',
  'strength',
  'severity',
  'code',
  'variant',
  'parameter',
  'quantity',
  'value',
  'limitKind',
  'limit',
  'unit',
  'source',
] as const;
export type CodeColumn = (typeof CODE_COLUMNS)[number];
export type ColumnKey = QuantityKey | CodeColumn;

/** Codes that stand in the columns of numbers and in those of few choices; the rest are ids of rows elsewhere. */
export type CellCode =
  | 'soft'
  | 'medium'
  | 'hard'
  | 'own'
  | 'flat'
  | 'straight'
  | 'spare'
  | 'open'
  | 'stopped'
  | 'yes'
  | 'no'
  | 'free'
  | 'contains';

/** null = blank: does not apply, or to be filled in by hand. A list is shown with spaces between. */
export type Cell = number | string | readonly (number | string)[] | null;

export interface Table {
  readonly id: TableId;
  readonly columns: readonly ColumnKey[];
  readonly rows: readonly (readonly Cell[])[];
}

export const TABLE_IDS = [
  'slots',
  'wire',
  'cutting',
  'seating',
  'quarters',
  'levelling',
  'setUp',
  'playing',
  'metals',
  'checks',
] as const;
export type TableId = (typeof TABLE_IDS)[number];

export function isCodeColumn(key: ColumnKey): key is CodeColumn {
  return (CODE_COLUMNS as readonly string[]).includes(key);
}

/** Unit and digits of a column; undefined for one of codes. */
export function columnQuantity(key: ColumnKey): ReturnType<typeof quantityOf> | undefined {
  return isCodeColumn(key) ? undefined : quantityOf(key);
}

/** Columns that are filled in by hand. */
export function isForHand(key: ColumnKey): boolean {
  return key === 'reliefMeasuredMm' || key === 'crownMeasuredMm';
}

const code = (value: CellCode): CellCode => value;

/** A radius as a cell: a code instead of an endless one. */
const radius = (valueMm: number, endless: CellCode): Cell => (Number.isFinite(valueMm) ? valueMm : endless);

const bendRadius = (valueMm: number): Cell => radius(gaugedRadiusMm(valueMm), 'straight');

export function slotTable(plan: FretworkPlan): Table {
  return {
    id: 'slots',
    columns: [
      'fret',
      'fretXMm',
      'fromLastFretMm',
      'fromPreviousFretMm',
      'boardWidthMm',
      'boardRadiusMm',
      'slotLengthMm',
      'slotEnds',
      'kerfMm',
      'slotDepthMm',
      'slotDepthNeededMm',
      'slotDepthAtEndMm',
      'boardLeftCentreMm',
      'boardLeftLeastMm',
      'chamferLimitMm',
    ],
    rows: plan.slots.map((slot) => [
      slot.fret,
      slot.xMm,
      slot.fromLastFretMm,
      slot.fromPreviousMm,
      slot.boardWidthMm,
      radius(slot.radiusMm, 'flat'),
      slot.lengthMm,
      code(slot.open ? 'open' : 'stopped'),
      slot.kerfMm,
      slot.depthMm,
      slot.depthNeededMm,
      slot.depthAtEndMm,
      slot.leftAtCentreMm,
      slot.leftLeastMm,
      slot.chamferLimitMm,
    ]),
  };
}

export function wireTable(plan: FretworkPlan): Table {
  return {
    id: 'wire',
    columns: [
      'fret',
      'arcLengthMm',
      'oversizeMm',
      'cutLengthMm',
      'nipMm',
      'tangLengthMm',
      'shelfMm',
      'bevelLossMm',
      'filedLengthMm',
      'bendToRadiusMm',
      'middleStandsOffMm',
    ],
    rows: plan.wire.map((piece, index) => {
      const { bendToRadiusMm, middleStandsOffMm } = plan.bends[index];
      return [
        piece.fret,
        piece.arcMm,
        piece.oversizeMm,
        piece.cutMm,
        piece.nipMm,
        piece.tangMm,
        piece.shelfMm,
        piece.bevelLossMm,
        piece.filedMm,
        bendRadius(bendToRadiusMm),
        middleStandsOffMm,
      ];
    }),
  };
}

/** One row per stick; undefined when the wire comes in a coil. */
export function cuttingTable(plan: FretworkPlan): Table | undefined {
  const cutting = plan.order.sticks?.plan;
  if (!cutting) return undefined;
  return {
    id: 'cutting',
    columns: ['stick', 'frets', 'pieceLengthsMm', 'stickLeftMm'],
    rows: cutting.sticks.map((stick, index) => [
      index + 1,
      stick.pieces.map((piece) => (piece.spare ? code('spare') : piece.fret)),
      stick.pieces.map((piece) => piece.lengthMm),
      stick.leftMm,
    ]),
  };
}

export function seatingTable(plan: FretworkPlan): Table {
  const quarterOf = new Map(
    plan.seating.quarters.flatMap(({ frets }, index) => frets.map((fret) => [fret, index + 1] as const)),
  );
  const turnOf = new Map(plan.seating.quarters.flatMap(({ frets }) => frets).map((fret, index) => [fret, index + 1]));
  const dry = plan.glueRecipe === undefined;
  return {
    id: 'seating',
    columns: [
      'fret',
      'seatingTurn',
      'quarter',
      'seatingForceN',
      'caulPressureMPa',
      'wedgeForceN',
      'pullOutForceN',
      'glueVolumeMm3',
      'glueBeadMm',
    ],
    // A zero fret has no turn among the others.
    rows: plan.glue.slots
      .filter(({ fret }) => fret > 0)
      .map(({ fret, volumeMm3, beadMm }, index) => {
        const force = plan.seating.forces?.[index];
        return [
          fret,
          turnOf.get(fret)!,
          quarterOf.get(fret)!,
          force?.seatingForceN ?? null,
          force?.pressureMPa ?? null,
          force?.wedgeForceN ?? null,
          force?.pullOutForceN ?? null,
          dry ? null : volumeMm3,
          dry ? null : beadMm,
        ];
      }),
  };
}

/** With a blank for what the straightedge shows. */
export function quarterTable(plan: FretworkPlan): Table {
  return {
    id: 'quarters',
    columns: ['quarter', 'frets', 'fretsIn', 'reliefMm', 'reliefP05Mm', 'reliefP95Mm', 'reliefMeasuredMm'],
    rows: plan.seating.quarters.map((quarter, index) => [
      index + 1,
      quarter.frets,
      quarter.fretsIn,
      quarter.expectedBowMm ?? null,
      quarter.bandMm?.[0] ?? null,
      quarter.bandMm?.[1] ?? null,
      null,
    ]),
  };
}

/** Undefined when the mechanics were not asked. */
export function levellingTable(plan: FretworkPlan): Table | undefined {
  if (!plan.levelling) return undefined;
  return {
    id: 'levelling',
    columns: ['fret', 'aboveLineMm', 'takenOffMm', 'crownLeftMm', 'levellingsLeft', 'crownMeasuredMm'],
    rows: plan.levelling.map((row) => [
      row.fret,
      row.aboveLineMm,
      row.removedMm,
      row.crownLeftMm,
      row.levellingsLeft,
      null,
    ]),
  };
}

/** The heights under the strings, a string a row; undefined when that was not asked. */
export function setUpTable(plan: FretworkPlan): Table | undefined {
  if (!plan.setUp) return undefined;
  return {
    id: 'setUp',
    columns: ['string', 'stringActionMm', 'stringReliefMm', 'nutOverFret1Mm', 'saddleOverFretsMm'],
    rows: plan.setUp.map((row) => [row.string, row.actionMm, row.reliefMm, row.nutOverFret1Mm, row.saddleOverFretsMm]),
  };
}

/** The neck as it is set up and played, a strength a row; undefined when that was not asked. */
export function playingTable(plan: FretworkPlan): Table | undefined {
  if (!plan.playing) return undefined;
  return {
    id: 'playing',
    columns: [
      'strength',
      'pluckForceN',
      'notesBuzzing',
      'notesMayBuzz',
      'stringRoomMm',
      'string',
      'frettedAt',
      'touchedFret',
      'lowestActionMm',
    ],
    rows: plan.playing.map((row) => [
      code(row.strength),
      row.forceN,
      row.notesBuzzing,
      row.notesMayBuzz,
      row.roomMm,
      row.string,
      row.frettedAt,
      row.touchedFret,
      row.lowestActionMm,
    ]),
  };
}

export function metalTable(plan: FretworkPlan): Table {
  return {
    id: 'metals',
    columns: [
      'metal',
      'chosen',
      'nickel',
      'hardnessHV',
      'wearLifeRatio',
      'modulusGPa',
      'yieldMPa',
      'bendToRadiusMm',
      'bendStaysPercent',
      'figures',
    ],
    rows: plan.metals.map(({ metal, chosen, wearLifeRatio, bendToRadiusMm, bendStays }) => [
      metal.id,
      code(chosen ? 'yes' : 'no'),
      code(metal.nickel.is === 'none' ? 'free' : 'contains'),
      metal.hardnessHV,
      wearLifeRatio,
      metal.modulusGPa,
      metal.yieldMPa,
      bendRadius(bendToRadiusMm),
      bendStays * 100,
      metal.mark,
    ]),
  };
}

/** A check a row, as codes and values; it is shown as a list, never as a table. */
export function checkTable(plan: FretworkPlan): Table {
  return {
    id: 'checks',
    columns: [
      'severity',
      'code',
      'variant',
      'parameter',
      'quantity',
      'value',
      'limitKind',
      'limit',
      'unit',
      'frets',
      'source',
    ],
    rows: plan.checks.map((check) => [
      check.severity,
      check.code,
      check.variant,
      check.parameter,
      check.quantity,
      check.value,
      check.limitKind,
      check.limit,
      check.quantity === null ? null : check.unit,
      check.frets.length === 0 ? null : check.frets,
      check.source,
    ]),
  };
}

/** All tables that this plan has. */
export function planTables(plan: FretworkPlan): Table[] {
  return [
    slotTable(plan),
    wireTable(plan),
    cuttingTable(plan),
    seatingTable(plan),
    quarterTable(plan),
    levellingTable(plan),
    setUpTable(plan),
    playingTable(plan),
    metalTable(plan),
    checkTable(plan),
  ].filter((table) => table !== undefined);
}
