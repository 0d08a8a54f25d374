import type { Comparison, ValueRow } from '../row.ts';
import { LOAD_CASES, readSolidFanCases, solveSolidFanCase, type SolidFanCase } from '../solid-fan-case.ts';

const LABELS = {
  wedgeAll: 'all frets wedged',
  oneFret: 'one fret',
  stringsSlotsEmpty: 'strings, slots empty',
  stringsNoSlots: 'strings, no slots',
} as const;
const MIDDLE = { wedgeAll: 0.03, oneFret: 0.05, stringsSlotsEmpty: 0.03, stringsNoSlots: 0.03 } as const;
/** A smaller twist is held to 0.03 mrad (test/mechanics/solid-fan.test.ts). */
const LEAST_MRAD = 0.1;

export function solidFanRow(solid: SolidFanCase): ValueRow {
  const ours = solveSolidFanCase(solid);
  const comparisons: Comparison[] = LOAD_CASES.flatMap((key) => {
    const reference = solid.results[key];
    const of = (label: string, which: keyof typeof reference, tolerance: number, why: string): Comparison => ({
      label: `${label}, ${LABELS[key]}`,
      printed: String(reference[which]),
      reference: reference[which],
      unit: which === 'twistMrad' ? 'mrad' : 'mm',
      tolerance,
      why,
      ours: () => ours[key][which],
    });
    return [
      of('bow in the middle', 'middleMm', MIDDLE[key], 'a plane model, each wedge cos² of itself'),
      of('bow along the bass edge', 'bassEdgeMm', 0.06, 'middle and twist'),
      of('bow along the treble edge', 'trebleEdgeMm', 0.06, 'middle and twist'),
      ...(Math.abs(reference.twistMrad) > LEAST_MRAD
        ? [of('twist', 'twistMrad', 0.25, 'the sum of what frets at nut and body do against each other')]
        : []),
    ];
  });
  return {
    id: `solid-${solid.id}`,
    kind: 'verification',
    subject: 'Solid finite elements',
    quantity: 'bow and twist of a neck with slanted frets',
    inputs: `test/reference/solid-fe-fan/${solid.file}`,
    source: solid.method.split(',')[0],
    mark: 'calc',
    comparisons,
  };
}

export const SOLID_FAN_ROWS: readonly ValueRow[] = readSolidFanCases().map(solidFanRow);
