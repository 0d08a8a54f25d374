/** The plan as tables: one source for the sheet, the screen and the CSV files. Values in stored units; see `shownTable`. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { displayDigits, toDisplay, type Unit, type UnitSystem } from '../../neck/units.ts';
import { formatNumber, unitLabel } from '../../speech/quantity.ts';
import type { FretworkPlan } from './plan.ts';
import { metalName, metalSource } from '../../speech/names.ts';

export interface Column {
  readonly id: string;
  readonly label: string;
  /** Undefined for words. */
  readonly unit?: Unit;
  /** Digits after the point in the stored unit. */
  readonly digits?: number;
}

/** A number with a unit of its own, in a column of words. */
export interface OwnUnit {
  readonly before?: string;
  readonly value: number;
  readonly unit: Unit;
  readonly digits: number;
}

/** null = blank: does not apply, or to be filled in by hand. A list of numbers is shown with spaces between. */
export type Cell = number | readonly number[] | string | OwnUnit | null;

export interface Table {
  readonly id: TableId;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

export const TABLE_IDS = ['slots', 'wire', 'cutting', 'seating', 'quarters', 'levelling', 'metals', 'checks'] as const;
export type TableId = (typeof TABLE_IDS)[number];

const number = (id: string, label: string, unit: Unit = 'mm', digits = 2): Column => ({
  id,
  label,
  unit,
  digits,
});
const count = (id: string, label: string): Column => number(id, label, '', 0);
const words = (id: string, label: string): Column => ({ id, label });

/** A radius as a cell; "flat" or "straight" instead of an endless one. */
const radius = (valueMm: number, endless: string): Cell => (Number.isFinite(valueMm) ? valueMm : endless);

export function slotTable(plan: FretworkPlan): Table {
  return {
    id: 'slots',
    title: say`Slots`,
    columns: [
      count('fret', say`Fret`),
      number('x', say`From the nut`),
      number('back', say`From the last fret`),
      number('gap', say`From the fret before`),
      number('width', say`Board width`),
      number('radius', say`Board radius`, 'mm', 0),
      number('length', say`Slot length`),
      words('ends', say`Slot ends`),
      number('kerf', say`Kerf`, 'mm', 3),
      number('depth', say`Depth`),
      number('needed', say`Depth needed`),
      number('end-depth', say`Depth at the end`),
      number('left', say`Board left, centre`),
      number('left-least', say`Board left, least`),
      number('chamfer', say`Chamfer, at most`),
    ],
    rows: plan.slots.map((slot) => [
      slot.fret,
      slot.xMm,
      slot.fromLastFretMm,
      slot.fromPreviousMm,
      slot.boardWidthMm,
      radius(slot.radiusMm, say`flat`),
      slot.lengthMm,
      slot.open ? say`open` : say`stopped`,
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
    title: say`Wire`,
    columns: [
      count('fret', say`Fret`),
      number('arc', say`Along the arc`),
      number('oversize', say`Oversize per end`),
      number('cut', say`Length to cut`, 'mm', 1),
      number('nip', say`Nip per end`),
      number('tang', say`Tang left`),
      number('shelf', say`Shelf per end`),
      number('bevel', say`Bevel loss per end`),
      number('filed', say`Filed length`),
      number('bend', say`Bend to radius`, 'mm', 0),
      number('off', say`Middle stands off`),
    ],
    rows: plan.wire.map((piece, index) => {
      const { bendToRadiusMm, middleStandsOffMm } = plan.bends[index]!;
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
        radius(Math.abs(bendToRadiusMm) > 10_000 ? Infinity : bendToRadiusMm, say`straight`),
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
    title: say`Cutting plan`,
    columns: [
      count('stick', say`Stick`),
      words('frets', say`Frets, longest first`),
      number('lengths', say`Lengths`, 'mm', 1),
      number('left', say`Left over`, 'mm', 1),
    ],
    rows: cutting.sticks.map((stick, index) => [
      index + 1,
      stick.pieces.map((piece) => (piece.spare ? say`spare` : String(piece.fret))).join(' '),
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
    title: say`Seating, fret by fret`,
    columns: [
      count('fret', say`Fret`),
      count('turn', say`Goes in as number`),
      count('quarter', say`Quarter`),
      number('force', say`Seating force`, 'N', 0),
      number('pressure', say`Pressure under the caul`, 'MPa', 1),
      number('wedge', say`Wedge force`, 'N', 0),
      number('pull', say`Pull-out force`, 'N', 0),
      number('glue', say`Glue`, 'mm³', 0),
      number('bead', say`Bead`, 'mm', 1),
    ],
    rows: plan.glue.slots.map(({ fret, volumeMm3, beadMm }, index) => {
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
    title: say`Bow while seating`,
    columns: [
      count('quarter', say`After quarter`),
      words('frets', say`Frets of this quarter`),
      count('in', say`Frets in`),
      number('expected', say`Bow expected`),
      number('least', say`Band from`),
      number('most', say`Band to`),
      number('measured', say`Bow measured`),
    ],
    rows: plan.seating.quarters.map((quarter, index) => [
      index + 1,
      quarter.frets.join(' '),
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
    title: say`Levelling`,
    columns: [
      count('fret', say`Fret`),
      number('above', say`Above the line`, 'mm', 3),
      number('removed', say`Taken off`, 'mm', 3),
      number('left', say`Crown left`),
      count('again', say`Levellings left`),
      number('measured', say`Crown measured`),
    ],
    rows: plan.levelling.map((row) => [
      row.fret,
      row.aboveLineMm,
      row.removedMm,
      row.crownLeftMm,
      Number.isFinite(row.levellingsLeft) ? row.levellingsLeft : say`any`,
      null,
    ]),
  };
}

export function metalTable(plan: FretworkPlan): Table {
  return {
    id: 'metals',
    title: say`Wire metals`,
    columns: [
      words('metal', say`Metal`),
      words('chosen', say`Chosen`),
      words('nickel', say`Nickel`),
      number('hardness', say`Hardness HV`, '', 0),
      number('wear', say`Wear life over the chosen`, '', 2),
      number('modulus', say`Stiffness`, 'GPa', 0),
      number('yield', say`Yield strength`, 'MPa', 0),
      number('bend', say`Bend to radius`, 'mm', 0),
      number('stays', say`Of the bend stays`, '%', 0),
      words('force', say`Effect on the wedge force`),
      words('source', say`Source`),
    ],
    rows: plan.metals.map(({ metal, chosen, wearLifeRatio, bendToRadiusMm, bendStays }) => [
      metalName(metal.id),
      chosen ? say`yes` : '',
      metal.nickel.is === 'none' ? say`free` : say`contains`,
      metal.hardnessHV,
      wearLifeRatio,
      metal.modulusGPa,
      metal.yieldMPa,
      radius(Math.abs(bendToRadiusMm) > 10_000 ? Infinity : bendToRadiusMm, say`straight`),
      bendStays * 100,
      say`none`,
      metalSource(metal),
    ]),
  };
}

export function checkTable(plan: FretworkPlan): Table {
  return {
    id: 'checks',
    title: say`Checks`,
    columns: [
      words('severity', say`Weight`),
      words('code', say`Check`),
      words('parameter', say`Parameter`),
      words('value', say`Found`),
      words('limit', say`Limit`),
      words('frets', say`Frets`),
      words('reason', say`Reason`),
      words('remedy', say`What to do`),
      words('source', say`Source`),
    ],
    rows: plan.checks.map((check) => {
      const { value, limit, limitKind, unit, digits } = check;
      return [
        check.severity,
        check.code,
        check.parameter,
        value === null ? null : { value, unit, digits },
        limit === null
          ? null
          : { before: limitKind === 'most' ? say`at most ` : say`at least `, value: limit, unit, digits },
        check.frets.length === 0 ? null : check.frets.join(' '),
        check.reason,
        check.remedy,
        check.source,
      ];
    }),
  };
}

/** Every table that this plan has. */
export function planTables(plan: FretworkPlan): Table[] {
  return [
    slotTable(plan),
    wireTable(plan),
    cuttingTable(plan),
    seatingTable(plan),
    quarterTable(plan),
    levellingTable(plan),
    metalTable(plan),
    checkTable(plan),
  ].filter((table) => table !== undefined);
}

/** Header of a column with its unit, e.g. "Kerf (mm)". */
export function columnHeader(column: Column, system: UnitSystem): string {
  const unit = column.unit === undefined ? '' : unitLabel(column.unit, system);
  return unit === '' ? column.label : `${column.label} (${unit})`;
}

function numberText(value: number, unit: Unit, digits: number, system: UnitSystem): string {
  return formatNumber(toDisplay(value, unit, system), displayDigits(digits, unit, system));
}

/** A cell as text in a unit system; blank for null. */
export function cellText(cell: Cell, column: Column, system: UnitSystem): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return cell;
  const { unit = '', digits = 2 } = column;
  if (typeof cell === 'number') return numberText(cell, unit, digits, system);
  if ('value' in cell) {
    const label = unitLabel(cell.unit, system);
    return `${cell.before ?? ''}${numberText(cell.value, cell.unit, cell.digits, system)}${label === '' ? '' : ` ${label}`}`;
  }
  return cell.map((value) => numberText(value, unit, digits, system)).join(' ');
}

/** A table as text, ready to print. */
export function shownTable(table: Table, system: UnitSystem): { header: string[]; rows: string[][] } {
  return {
    header: table.columns.map((column) => columnHeader(column, system)),
    rows: table.rows.map((row) => row.map((cell, index) => cellText(cell, table.columns[index]!, system))),
  };
}

/** Name of a table's file. */
export function tableFileName(build: Pick<Build, 'name'>, table: Table): string {
  const stem = build.name
    .normalize('NFKD')
    .replaceAll(/\p{Mark}/gu, '')
    .replaceAll(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .toLowerCase();
  return `${stem === '' ? 'neck' : stem}-${table.id}.csv`;
}
