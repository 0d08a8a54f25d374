/** Under the choice of a blank's test: what is still missing, or what the measurement gives beside the wood. */
import { blankPartOf } from '../../../neck/blanks.ts';
import type { ChoiceParameter } from '../../../neck/parameter-kinds.ts';
import { blankStateText } from '../../../speech/measured/blanks.ts';
import { useBackbow } from '../../../state/store.ts';

export function BlankState({ parameter }: { readonly parameter: ChoiceParameter }) {
  const part = blankPartOf(parameter.id);
  const text = useBackbow((state) => (part ? blankStateText(state.build, part, state.unitSystem) : ''));
  if (!part) return null;
  return <output className="blank-state quiet">{text}</output>;
}
