/** Changing one parameter of the build from a control. */
import type { Build } from '../../../neck/build.ts';
import type { Parameter } from '../../../neck/parameter-kinds.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { store } from '../../../state/store.ts';
import { parameterName } from '../../../speech/names.ts';

export function changeParameter(parameter: Parameter, value: number | string | boolean): Outcome {
  return store.getState().change({ [parameter.id]: value } as Partial<Build>, parameterName(parameter.id));
}
