/** Messages of the bench log in the reader's units. */
import { expect, test } from 'vitest';
import { inReadersUnits } from '../../src/speech/log-messages.ts';

test.each([
  ['Slot depth is 6 mm; at most 4.865 mm.', 'Slot depth is 0.24 in; at most 0.19154 in.'],
  ['relief is 3; it takes 0.3 to 1.2 mm.', 'relief is 3; it takes 0.012 to 0.047 in.'],
  ['Pull is 10 N here.', 'Pull is 2.2 lbf here.'],
  ['Hardness 500 N/mm³ and 2 N·m stay, and 3 frets.', 'Hardness 500 N/mm³ and 2 N·m stay, and 3 frets.'],
])('%s', (metric, inch) => {
  expect(inReadersUnits(metric, 'metric')).toBe(metric);
  expect(inReadersUnits(metric, 'inch')).toBe(inch);
});
