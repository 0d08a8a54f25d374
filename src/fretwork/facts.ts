/** Where a statement comes from, so that nothing on a sheet looks surer than it is. Words: speech/en/sources.ts. */
import type { Mark } from '../neck/sources.ts';

/** What limits, cautions and facts rest on, each with how well it is known. */
const MARKS = {
  practice: 'practice',
  assumption: 'practice',
  geometry: 'calc',
  prediction: 'calc',
  'prediction-and-margin': 'practice',
  'levelling-budget': 'calc',
  springback: 'calc',
  'wedge-model': 'calc',
  'known-limit': 'practice',
  'wire-strength': 'practice',
  'wood-stiffness': 'calc',
  'wood-tables': 'src',
  'shear-strength': 'mem',
  'large-deflection': 'mem',
  'nickel-rule': 'src',
  'nickel-rule-wording': 'src',
  'nickel-coins': 'src',
  'nickel-steels': 'src',
  'nickel-strings': 'src',
  archard: 'mem',
  'dust-rule': 'mem',
  'toxic-woods': 'mem',
  'listed-species': 'practice',
} as const satisfies Readonly<Record<string, Mark>>;

export type SourceCode = keyof typeof MARKS;

export interface Basis {
  readonly source: SourceCode;
  readonly mark: Mark;
}

export function basedOn(source: SourceCode): Basis {
  return { source, mark: MARKS[source] };
}
