/** Changing one parameter of the build from a control. */
import { blankPartOf, choosingTest, type BlankTest } from '../../../neck/blanks.ts';
import type { Build } from '../../../neck/build.ts';
import type { Parameter } from '../../../neck/parameter-kinds.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { store } from '../../../state/store.ts';
import { parameterName } from '../../../speech/names.ts';

export function changeParameter(parameter: Parameter, value: number | string | boolean): Outcome {
  const { build, change } = store.getState();
  const part = parameter.id.endsWith('BlankTest') ? blankPartOf(parameter.id) : undefined;
  const wanted = part ? choosingTest(build, part, value as BlankTest) : ({ [parameter.id]: value } as Partial<Build>);
  return change(wanted, parameterName(parameter.id));
}
