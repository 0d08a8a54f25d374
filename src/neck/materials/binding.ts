/**
 * What binding is made of: a wood of the table, or one of these. Modulus of the sheet at room temperature, GPa, the middle of
 * the range that is printed; ν 0.35 is usual for plastics and matters little (assumption).
 *
 *   celluloid            1.3–2.8   plastics handbooks, cellulose nitrate (from memory)
 *   cellulose acetate    1.0–3.0   Springer Handbook of Condensed Matter and Materials Data (2005), Table 3.3-23 (read)
 *   ABS                  1.9–2.7   plastics handbooks (from memory)
 *   vulcanised fibre     4.0–8.0   data sheets, along the sheet (from memory)
 */
import { WOODS } from '../woods.ts';

export interface SheetMaterial<Id extends string = string> {
  readonly id: Id;
  readonly modulusMPa: number;
  /** What harms it at the bench: heat softens it, solvents of glue and lacquer swell it, water makes it grow. */
  readonly harmedBy: readonly ('heat' | 'solvent' | 'water')[];
}

const ROWS = [
  {
    id: 'celluloid',
    modulusMPa: 2000,
    harmedBy: ['heat', 'solvent'],
  },
  {
    id: 'cellulose-acetate',
    modulusMPa: 2000,
    harmedBy: ['heat', 'solvent'],
  },
  {
    id: 'abs',
    modulusMPa: 2300,
    harmedBy: ['heat', 'solvent'],
  },
  {
    id: 'fibre',
    modulusMPa: 5000,
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
