/**
 * What binding is made of: a wood of the table, or one of these. Modulus of the sheet at room temperature, the middle of the
 * range that is printed; ν 0.35 is usual for plastics and matters little (assumption).
 */
import { WOODS } from '../woods.ts';

export interface SheetMaterial<Id extends string = string> {
  readonly id: Id;
  readonly modulusMPa: number;
  readonly rangeMPa: readonly [number, number];
  readonly source: string;
  readonly mark: 'src' | 'mem';
  /** What harms it at the bench: heat softens it, solvents of glue and lacquer swell it, water makes it grow. */
  readonly harmedBy: readonly ('heat' | 'solvent' | 'water')[];
}

const HANDBOOK = 'Springer Handbook of Condensed Matter and Materials Data (2005)';

const ROWS = [
  {
    id: 'celluloid',
    modulusMPa: 2000,
    rangeMPa: [1300, 2800],
    source: 'plastics handbooks, cellulose nitrate',
    mark: 'mem',
    harmedBy: ['heat', 'solvent'],
  },
  {
    id: 'cellulose-acetate',
    modulusMPa: 2000,
    rangeMPa: [1000, 3000],
    source: `${HANDBOOK}, Table 3.3-23`,
    mark: 'src',
    harmedBy: ['heat', 'solvent'],
  },
  {
    id: 'abs',
    modulusMPa: 2300,
    rangeMPa: [1900, 2700],
    source: 'plastics handbooks, ABS',
    mark: 'mem',
    harmedBy: ['heat', 'solvent'],
  },
  {
    id: 'fibre',
    modulusMPa: 5000,
    rangeMPa: [4000, 8000],
    source: 'data sheets of vulcanised fibre, along the sheet',
    mark: 'mem',
    harmedBy: ['water'],
  },
] as const satisfies readonly SheetMaterial[];

export type SheetMaterialId = (typeof ROWS)[number]['id'];

export const SHEET_MATERIALS: readonly SheetMaterial<SheetMaterialId>[] = ROWS;

/** Every material that a line of binding can have besides the board's own wood. */
export const BINDING_MATERIAL_IDS: readonly string[] = [
  ...SHEET_MATERIALS.map(({ id }) => id),
  ...WOODS.map(({ id }) => id),
];

/** @returns undefined for a wood, and for binding that counts as board. */
export function sheetMaterial(id: string | undefined): SheetMaterial<SheetMaterialId> | undefined {
  return SHEET_MATERIALS.find((material) => material.id === id);
}
