import { airDryDensityKgM3, longitudinalModulusMPa, woodById } from '../../../src/neck/woods.ts';
import { modulusFromSagMPa, modulusFromTapMPa } from '../../../src/mechanics/elements/materials.ts';
import type { ValueRow } from '../row.ts';

/** First root of cos β cosh β = 1, the free–free bar (Rayleigh; any vibrations textbook). */
const FREE_FREE_ROOT = 4.730040744862704;

export const WOOD_ROWS: readonly ValueRow[] = [
  {
    id: 'tap',
    kind: 'verification',
    subject: 'Woods',
    quantity: 'modulus from the bending frequency of a free bar',
    inputs: 'a slender bar, t/L = 1/1000',
    source: 'ASTM E1876: constant 0.9465 (from memory); Euler–Bernoulli bar: 48 π²/β⁴, β = 4.730041',
    mark: 'calc',
    comparisons: [
      {
        printed: '48 π²/β⁴',
        reference: (48 * Math.PI ** 2) / FREE_FREE_ROOT ** 4,
        unit: '',
        tolerance: 1e-4,
        why: 'the standard prints four digits; 6.6e-6 is its correction for shear at this slenderness',
        // m 1 g, f 1 Hz, b 1 mm, L/t = 1000: E = constant · 1e9 · T₁ Pa.
        ours: () => (modulusFromTapMPa(1, 1, 1000, 1, 1) * 1e6) / 1e9,
      },
    ],
  },
  {
    id: 'sag',
    kind: 'verification',
    subject: 'Woods',
    quantity: 'modulus of a bar that sinks under a weight at mid-span',
    inputs: 'δ = F L³/(48 E I) solved for E: F 50 N, L 600 mm, b 90 mm, h 25 mm, δ 0.192 mm',
    source: 'beam tables (Gere & Goodno; Roark Table 8.1)',
    mark: 'mem',
    comparisons: [
      {
        printed: '10 000',
        reference: 10_000,
        unit: 'MPa',
        tolerance: 1e-9,
        why: 'worked by hand to an exact decimal',
        ours: () => modulusFromSagMPa(50, 600, 90, 25, 0.192),
      },
    ],
  },
  {
    id: 'modulus',
    kind: 'verification',
    subject: 'Woods',
    quantity: 'longitudinal modulus from the tabulated one',
    inputs: 'sugar maple, MOE 12 600 MPa',
    source: 'Wood Handbook FPL-GTR-190 ch. 5: E_L is 1.10 × the static-bending MOE, which includes shear',
    mark: 'src',
    comparisons: [
      {
        printed: '13 860',
        reference: 13_860,
        unit: 'MPa',
        tolerance: 1e-9,
        why: 'a product of two numbers',
        ours: () => longitudinalModulusMPa(woodById('sugar-maple')),
      },
    ],
  },
  {
    id: 'air-dry-density',
    kind: 'verification',
    subject: 'Woods',
    quantity: 'density at 12 % from a specific gravity on the green basis, beside a density printed in the same sheet',
    inputs: 'African padauk, 0.61 on the green basis',
    source: 'AH 607 (Chudnoff 1984): 745 kg/m³ air-dry',
    mark: 'src',
    note: 'For ebony (0.82) the same rule gives 1056 beside the 1010 that is printed and used: dense, resinous woods shrink less than the rule supposes.',
    comparisons: [
      {
        printed: '745',
        reference: 745,
        unit: 'kg/m³',
        tolerance: 0.03,
        why: 'the sheet’s own rounding to pounds per cubic foot, and a mean over samples',
        ours: () => {
          const { airDensityKgM3: _printed, ...padauk } = woodById('african-padauk');
          return airDryDensityKgM3(padauk);
        },
      },
    ],
  },
];
