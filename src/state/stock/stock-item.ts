/** What a workshop has to saw and to seat with, as it was measured there. */
import * as z from 'zod/mini';
import { isId } from '../../mechanics/bench-log/identity.ts';
import { parameterById } from '../../neck/parameters.ts';
import type { NumberParameter } from '../../neck/parameter-kinds.ts';
import { LIST_NUMBERS } from '../../neck/schema.ts';
import type { Unit } from '../../neck/units.ts';
import type { StockForRest } from '../../verdict/fretting-advice.ts';

interface Limits {
  readonly min: number;
  readonly max: number;
  readonly unit: Unit;
}

const ofBuild = (id: 'studAreaMm2' | 'studPitchMm'): Limits => {
  const { min, max, unit } = parameterById(id) as NumberParameter;
  return { min, max, unit };
};

/** Ranges of what is measured. */
export const STOCK_NUMBERS = {
  kerfMm: LIST_NUMBERS.kerfMm,
  /** Standard deviation from slot to slot. */
  spreadMm: { min: 0, max: 0.1, unit: 'mm' },
  tangWidthMm: LIST_NUMBERS.tangWidthMm,
  studWidthMm: LIST_NUMBERS.studWidthMm,
  studAreaMm2: ofBuild('studAreaMm2'),
  studPitchMm: ofBuild('studPitchMm'),
} as const satisfies Readonly<Record<string, Limits>>;
export type StockNumber = keyof typeof STOCK_NUMBERS;

export const MOST_STOCK_NAME = 80;

const number = (id: StockNumber) => {
  const { min, max } = STOCK_NUMBERS[id];
  return z.number().check(z.minimum(min), z.maximum(max));
};
const shared = {
  id: z.string().check(z.refine(isId)),
  /** As the workshop calls it; empty where it has no name. */
  name: z.string().check(z.maxLength(MOST_STOCK_NAME)),
} as const;

const blade = z.strictObject({
  ...shared,
  kind: z.literal('blade'),
  /** As a slot of it measures. */
  kerfMm: number('kerfMm'),
  /** Null where nobody has measured it. */
  spreadMm: z.nullable(number('spreadMm')),
});

const wire = z.strictObject({
  ...shared,
  kind: z.literal('wire'),
  tangWidthMm: number('tangWidthMm'),
  studWidthMm: number('studWidthMm'),
  /** Face of a stud along the wire, and from one stud to the next; null where nobody has measured them. */
  studAreaMm2: z.nullable(number('studAreaMm2')),
  studPitchMm: z.nullable(number('studPitchMm')),
});

const item = z.discriminatedUnion('kind', [blade, wire]);

export type Blade = z.infer<typeof blade>;
export type Wire = z.infer<typeof wire>;
export type StockItem = Blade | Wire;

/** @returns null for what is no blade and no wire, or one whose studs do not stand out */
export function stockItemOf(value: unknown): StockItem | null {
  const parsed = item.safeParse(value);
  if (!parsed.success) return null;
  return parsed.data.kind === 'wire' && parsed.data.studWidthMm < parsed.data.tangWidthMm ? null : parsed.data;
}

/** What the frets to come can be seated with. */
export function stockForRest(items: readonly StockItem[]): StockForRest {
  return {
    bladesMm: items.flatMap((each) => (each.kind === 'blade' ? [each.kerfMm] : [])),
    wires: items.flatMap((each) =>
      each.kind === 'wire' ? [{ tangWidthMm: each.tangWidthMm, studWidthMm: each.studWidthMm }] : [],
    ),
  };
}
