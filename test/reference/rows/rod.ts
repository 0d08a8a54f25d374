import { predictRod, proofLoadN } from '../../../src/mechanics/rod.ts';
import { defaultBuild } from '../../../src/neck/build.ts';
import { rowFromCheck, type ValueRow } from '../row.ts';

export const ROD_ROWS: readonly ValueRow[] = [
  ...(['M5', 'M6'] as const).map((thread) =>
    rowFromCheck(
      `proof-${thread.toLowerCase()}`,
      'Rod',
      [() => proofLoadN(thread, '4.8'), () => proofLoadN(thread, '8.8')],
      { labels: ['class 4.8', 'class 8.8'] },
    ),
  ),
  {
    id: 'wrench',
    kind: 'verification',
    subject: 'Rod',
    quantity: 'pull of a rod at a wrench torque',
    inputs: 'M5; 2 N·m; K = 0.2',
    source: 'Shigley, Mechanical Engineering Design: T = K·F·d, K = 0.2 for nuts as received',
    mark: 'mem',
    comparisons: [
      {
        printed: '2000',
        reference: 2000,
        unit: 'N',
        tolerance: 1e-9,
        why: 'a product of three numbers',
        ours: () => predictRod({ ...defaultBuild(), rodKind: 'two-way', rodThread: 'M5', rodClass: '8.8', wrenchTorqueNm: 2 }).limitN,
      },
    ],
  },
];
