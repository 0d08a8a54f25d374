import { readSolidFeCases, solveSolidFeCase, type SolidFeCase } from '../solid-fe-case.ts';
import type { Comparison, ValueRow } from '../row.ts';

const LINES = [
  ['wedgeAllMm', 'bow, all frets wedged', 0.03],
  ['oneFretMm', 'bow, one fret wedged', 0.05],
  ['stringsSlotsEmptyMm', 'bow, strings, slots empty', 0.03],
  ['stringsNoSlotsMm', 'bow, strings, no slots', 0.03],
] as const;

const WHY = { 0.03: 'a plane model of a solid: 3 % for the full set and for strings', 0.05: 'a plane model of a solid: 5 % for a single fret and for slots' } as const;

/** @throws {Error} when the case has a number that cannot be compared. */
export function solidFeRow(solid: SolidFeCase): ValueRow {
  const ours = solveSolidFeCase(solid);
  const comparisons: Comparison[] = LINES.flatMap(([key, label, tolerance]) => {
    const reference = solid.results[key];
    return reference === null
      ? []
      : [{ label, printed: String(reference), reference, unit: 'mm', tolerance, why: WHY[tolerance], ours: () => ours[key] }];
  });
  // Of the slots the one that differs most.
  const openings = (solid.results.slotOpeningUmPerKN ?? []).flatMap((reference, index) =>
    reference === null ? [] : [{ slot: index + 1, reference, ours: ours.slotOpeningUmPerKN[index] }],
  );
  const worst = openings.reduce<(typeof openings)[number] | undefined>((most, opening) => {
    const off = (o: typeof opening) => Math.abs(o.ours / o.reference - 1);
    return most === undefined || off(opening) > off(most) ? opening : most;
  }, undefined);
  if (worst) {
    comparisons.push({
      label: `opening of slot ${worst.slot}, the worst of ${openings.length}`,
      printed: String(worst.reference),
      reference: worst.reference,
      unit: 'µm/kN',
      tolerance: 0.05,
      why: WHY[0.05],
      ours: () => worst.ours,
    });
  }
  return {
    id: `solid-${solid.id}`,
    kind: 'verification',
    subject: 'Solid finite elements',
    quantity: 'bow of a whole neck, and how far its slots open',
    inputs: `test/reference/solid-fe/${solid.file}`,
    source: solid.method.split(',')[0],
    mark: 'calc',
    comparisons,
  };
}

export const SOLID_FE_ROWS: readonly ValueRow[] = readSolidFeCases().map(solidFeRow);
