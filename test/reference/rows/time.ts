import { creep, wedgeForceLeft, wedgeLineLeft } from '../../../src/mechanics/time.ts';
import { boltzmannLineLeft } from '../../mechanics/elements/boltzmann.ts';
import { rowFromCheck, type ValueRow } from '../row.ts';

const DAYS = [1, 90, 3650];

export const TIME_ROWS: readonly ValueRow[] = [
  rowFromCheck('creep-toratti', 'Time', [() => creep(7), () => creep(365), () => creep(3650)], {
    labels: ['a week', 'a year', 'ten years'],
  }),
  {
    id: 'creep-k-def',
    kind: 'verification',
    subject: 'Time',
    quantity: 'creep of solid timber indoors at the end of a long load',
    inputs: 'dry indoor climate (service class 1); ten years',
    source: 'EN 1995-1-1 Table 3.2, k_def',
    mark: 'mem',
    comparisons: [
      {
        printed: '0.60',
        reference: 0.6,
        unit: '',
        tolerance: 0.1,
        why: 'two rules for the same creep; the code rounds to a tenth and means ten years and more',
        ours: () => creep(3650),
      },
    ],
  },
  {
    id: 'relaxation',
    kind: 'verification',
    subject: 'Time',
    quantity: 'stress left at fixed deformation after a few months',
    inputs: 'a = 0.5; 90 days',
    source: 'Wood Handbook FPL-GTR-190 ch. 5: falls to 60–70 % within a few months',
    mark: 'mem',
    note: 'The constant a was set by this sentence: the row holds the formula to it, no more.',
    comparisons: [
      { printed: '0.60–0.70', reference: [0.6, 0.7], unit: '', tolerance: 0, why: 'inside the range', ours: () => wedgeForceLeft(90, 0.5) },
    ],
  },
  {
    id: 'boltzmann',
    kind: 'verification',
    subject: 'Time',
    quantity: 'bow of relaxing wedges on creeping wood, over that at seating',
    inputs: 'a = 0.5',
    source: 'Boltzmann superposition integral, by tanh–sinh quadrature apart from the library',
    mark: 'calc',
    comparisons: DAYS.map((days) => ({
      label: days === 1 ? 'a day' : days === 90 ? '90 days' : 'ten years',
      printed: boltzmannLineLeft(days, 0.5).toFixed(5),
      reference: boltzmannLineLeft(days, 0.5),
      unit: '',
      tolerance: 1e-4,
      why: 'the library sums 64 steps, good to 1e-4',
      ours: () => wedgeLineLeft(days, 0.5),
    })),
  },
];
