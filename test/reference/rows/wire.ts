import { springbackRatio } from '../../../src/fretwork/bending.ts';
import { printedCheck, printedNumbers, rowFromCheck, type ValueRow } from '../row.ts';

const XIS = printedNumbers(printedCheck('springback').inputs.replace('xi ', ''));

export const WIRE_ROWS: readonly ValueRow[] = [
  rowFromCheck(
    'springback',
    'Wire',
    XIS.map(
      ({ value }) =>
        () =>
          springbackRatio(value),
    ),
    { labels: XIS.map(({ printed }) => `ξ = ${printed}`) },
  ),
];
