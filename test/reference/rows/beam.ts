import { UNCUT } from '../../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence, type Combination } from '../../../src/mechanics/influence.ts';
import { extremeRelief, reliefFromDepth } from '../../../src/mechanics/relief.ts';
import { ISOTROPIC, middleCurvature, rectangularNeck } from '../../mechanics/elements/rectangular.ts';
import { printedCheck, type ValueRow } from '../row.ts';

const LENGTH_MM = 504;
const WIDTH_MM = 50;
const HEIGHT_MM = 21;
const MODULUS_MPA = 12_000;
const STIFFNESS = (MODULUS_MPA * WIDTH_MM * HEIGHT_MM ** 3) / 12;

const STRIP = rectangularNeck({
  lengthMm: LENGTH_MM,
  widthMm: WIDTH_MM,
  boardThicknessMm: 6,
  neckThicknessMm: HEIGHT_MM - 6,
  board: { modulusMPa: MODULUS_MPA, ...ISOTROPIC },
  neck: { modulusMPa: MODULUS_MPA, ...ISOTROPIC },
});

function strip(cases: NonNullable<Combination['cases']>): { readonly xs: Float64Array; readonly line: Float64Array } {
  const influence = solveInfluence(createNeckModel(STRIP), UNCUT, 'named');
  return { xs: influence.stationXMm, line: combineLine(influence, { cases }) };
}

/** Offset of a line from its chord over the whole strip, with its sign. */
function offsetMm({ xs, line }: { readonly xs: Float64Array; readonly line: Float64Array }): number {
  return extremeRelief(xs, reliefFromDepth(xs, line, 0, LENGTH_MM), 0, LENGTH_MM).extremeMm;
}

function constantCurvature(): ValueRow {
  const { printed, unit, tolerance, ...head } = printedCheck('const-curvature');
  const kappa = 1.3e-6;
  const xs = Float64Array.from({ length: 101 }, (_, i) => (i * LENGTH_MM) / 100);
  return {
    ...head,
    subject: 'Section and beam',
    kind: 'verification',
    inputs: `${head.inputs}; here κ 1.3e-6 /mm, L ${LENGTH_MM} mm`,
    comparisons: [
      {
        label: 'relief of a parabola',
        printed,
        reference: (kappa * LENGTH_MM ** 2) / 8,
        unit,
        tolerance: 1e-9,
        why: `${tolerance} asked; one number over another here`,
        ours: () => offsetMm({ xs, line: xs.map((x) => (-kappa * x * x) / 2) }),
      },
      {
        label: 'mesh under a couple',
        printed: 'M L²/(8 E I)',
        reference: (1e5 * LENGTH_MM ** 2) / (8 * STIFFNESS),
        unit,
        tolerance: 1e-4,
        why: 'the beam’s formula is exact but for the last row of elements at each end',
        ours: () => -offsetMm(strip({ couple: 1e5 })),
      },
    ],
  };
}

export const BEAM_ROWS: readonly ValueRow[] = [
  constantCurvature(),
  {
    id: 'cantilever',
    kind: 'verification',
    subject: 'Section and beam',
    quantity: 'bow of a cantilever with a load at its tip, against its chord',
    inputs: `rectangular strip ${WIDTH_MM} × ${HEIGHT_MM} × ${LENGTH_MM} mm, E 12 GPa, 10 N`,
    source: 'beam tables (Gere & Goodno, Mechanics of Materials; Roark, Table 8.1): P L³/(16 E I) at mid-span, P L³/(9√3 E I) at most',
    mark: 'mem',
    note: 'Shear adds a straight line to a cantilever, which a chord does not see.',
    comparisons: [
      {
        printed: '−P L³/(9√3 E I)',
        reference: -(10 * LENGTH_MM ** 3) / (9 * Math.sqrt(3) * STIFFNESS),
        unit: 'mm',
        tolerance: 2e-3,
        why: 'the greatest offset is read at the columns of the mesh, and the ends disturb it',
        ours: () => offsetMm(strip({ slope: 10 })),
      },
    ],
  },
  {
    id: 'eccentric-pull',
    kind: 'verification',
    subject: 'Section and beam',
    quantity: 'curvature under a pull on the line of the top',
    inputs: 'the same strip, 460 N on the line y = 0',
    source: 'beam theory: κ = P e/(E I), e = half the height',
    mark: 'calc',
    comparisons: [
      {
        printed: 'P e/(E I)',
        reference: (460 * HEIGHT_MM) / 2 / STIFFNESS,
        unit: '1/mm',
        tolerance: 1e-6,
        why: 'uniform bending: the element carries it exactly; the middle half is away from the ends',
        ours: () => {
          const { xs, line } = strip({ pull: 460 });
          return Math.abs(middleCurvature(xs, line));
        },
      },
    ],
  },
];
