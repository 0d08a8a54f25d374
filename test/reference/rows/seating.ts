import { contactForce, embeddingStrengthMPa, type Contact } from '../../../src/mechanics/seating/contact.ts';
import { EMPTY, linearAt, type NeckDescription, type SlotFilling } from '../../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence, stringCases, type Combination, type Influence } from '../../../src/mechanics/influence.ts';
import { extremeRelief, reliefFromDepth } from '../../../src/mechanics/relief.ts';
import { seat } from '../../../src/mechanics/seating/seating.ts';
import { describeSolidFeCase, solidFeCase } from '../solid-fe-case.ts';
import { rowFromCheck, type Comparison, type ValueRow } from '../row.ts';

const STUDS = { widthMm: 0.76, areaMm2: 0.48, diameterMm: 0.78, pitchMm: 2.5 } as const;
const KERF_MM = 0.58;

/** The reference neck of the solid cases with a softer neck wood. */
const REFERENCE = solidFeCase('A-reference');
const NECK: NeckDescription = describeSolidFeCase({ ...REFERENCE, woods: { ...REFERENCE.woods, neckE: 11_000 } });
const MODEL = createNeckModel(NECK);
const ON_EMPTY = solveInfluence(MODEL, EMPTY);
const FRETS = NECK.fretXMm.length;

function bowMm(influence: Influence, combination: Combination): number {
  const from = NECK.fretXMm[0];
  const to = NECK.fretXMm[18];
  const relief = reliefFromDepth(influence.stationXMm, combineLine(influence, combination), from, to);
  return extremeRelief(influence.stationXMm, relief, from, to).extremeMm;
}

/** Studs only: the tang's body clears the walls. */
function contact(densityKgM3: number, widthMm: number): Contact {
  return {
    studForceN: (widthMm / STUDS.pitchMm) * STUDS.areaMm2 * embeddingStrengthMPa(STUDS.diameterMm, densityKgM3),
    studHeightMm: 0.13,
    studShape: 0,
    embeddingLengthMm: 0.05,
    studInterferenceMm: STUDS.widthMm - KERF_MM,
    bodyInterferenceMm: 0.5 - KERF_MM,
    bodyStiffnessNMm: widthMm * 2 * 500,
    bodyLimitN: widthMm * 2 * 60,
  };
}

/** A tang body 0.025 mm wider than the kerf, without studs. */
const BODY_ONLY: Contact = {
  studForceN: 0,
  studHeightMm: 0,
  studShape: 0,
  embeddingLengthMm: 0.05,
  studInterferenceMm: 0,
  bodyInterferenceMm: 0.025,
  bodyStiffnessNMm: 52 * 2 * 500,
  bodyLimitN: 52 * 2 * 60,
};

/** The first fret on more than 52 mm of board. */
const FRET_52 = NECK.fretXMm.findIndex((x) => linearAt(NECK.widthMm, x) > 52);

function flexibility(): Float64Array {
  return ON_EMPTY.openingMm.slice(0, FRETS * FRETS);
}

function seated(densityKgM3: number): Float64Array {
  return seat(
    NECK.fretXMm.map((x) => contact(densityKgM3, linearAt(NECK.widthMm, x))),
    flexibility(),
  ).forceN;
}

const WOODS = [
  ['ebony', 1010, '0.67', '0.29'],
  ['rosewood', 850, '0.56', '0.24'],
  ['maple', 706, '0.47', '0.20'],
] as const;

const TWO_DIGITS = 'printed with two digits, by another mesh';

const strings = { cases: stringCases(460, 3, 0)! };
const FILLED: SlotFilling = { kind: 'filled', modulusMPa: 0.6 / (0.08 / 2500 + 0.5 / 124_000), reach: 1 };

const neckComparisons: Comparison[] = [
  ...WOODS.map(([wood, density, , printed]) => ({
    label: `back-bow, board of ${wood}`,
    printed,
    reference: Number(printed),
    unit: 'mm',
    tolerance: 0.05,
    why: TWO_DIGITS,
    ours: () => -bowMm(ON_EMPTY, { wedgeN: seated(density) }),
  })),
  {
    label: 'forward bow, slots empty',
    printed: '0.35',
    reference: 0.35,
    unit: 'mm',
    tolerance: 0.05,
    why: TWO_DIGITS,
    ours: () => bowMm(ON_EMPTY, strings),
  },
  {
    label: 'forward bow, slots filled',
    printed: '0.23',
    reference: 0.23,
    unit: 'mm',
    tolerance: 0.05,
    why: TWO_DIGITS,
    ours: () => bowMm(solveInfluence(MODEL, FILLED, 'named'), strings),
  },
];

export const SEATING_ROWS: readonly ValueRow[] = [
  rowFromCheck('embed-16', 'Seating', [() => embeddingStrengthMPa(16, 420)]),
  {
    id: 'force-per-fret',
    kind: 'verification',
    subject: 'Seating',
    quantity: 'wedge force of one fret',
    inputs: 'studs 0.76 mm over, 0.48 mm², pitch 2.5 mm; kerf 0.58 mm; board about 52 mm wide; 1010, 850, 706 kg/m³',
    source: 'an earlier, separate program of the same equations',
    mark: 'calc',
    comparisons: [
      ...WOODS.map(([wood, density, printed]) => ({
        label: wood,
        printed,
        reference: Number(printed),
        unit: 'kN',
        tolerance: 0.03,
        why: TWO_DIGITS,
        ours: () => seated(density)[FRET_52] / 1000,
      })),
      {
        label: 'tang body 0.025 mm too wide, no studs',
        printed: '0.44',
        reference: 0.44,
        unit: 'kN',
        tolerance: 0.03,
        why: TWO_DIGITS,
        ours: () => seat([BODY_ONLY], Float64Array.of(ON_EMPTY.openingMm[FRET_52 * FRETS + FRET_52])).forceN[0] / 1000,
      },
    ],
  },
  {
    id: 'neck-of-frets',
    kind: 'verification',
    subject: 'Seating',
    quantity: 'bow over frets 1–19 of the reference neck',
    inputs: 'the reference neck of the solid cases with a neck of 11 GPa; the same wire; 460 N of strings',
    source: 'an earlier, separate program of the same equations',
    mark: 'calc',
    comparisons: neckComparisons,
  },
  {
    id: 'load-embedment',
    kind: 'verification',
    subject: 'Seating',
    quantity: 'force of a stud at a bite of one embedding length',
    inputs: 'p = f·(1 − exp(−β/δ)), β = δ',
    source: 'Foschi 1974, load–slip curve without hardening',
    mark: 'mem',
    comparisons: [
      {
        printed: '1 − 1/e',
        reference: 1 - 1 / Math.E,
        unit: 'of f',
        tolerance: 1e-12,
        why: 'one formula',
        ours: () => contactForce({ ...BODY_ONLY, studForceN: 1, studInterferenceMm: 0.1, bodyInterferenceMm: -1 }, 0).forceN,
      },
    ],
  },
];
