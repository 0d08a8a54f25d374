/** What the control in hand changes, what is usual and where that comes from; always in the same place. */
import type { Parameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { useBackbow } from '../../../state/store.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { displayScale, quantityText, rangeText } from '../../../speech/scale.ts';
import { useHint } from './hint-store.ts';
import { optionName } from '../../../speech/names.ts';

function usual(parameter: Parameter, system: UnitSystem): string {
  switch (parameter.kind) {
    case 'number': {
      const scale = displayScale(parameter, system);
      const range = rangeText(parameter.typical[0], parameter.typical[1], scale, system);
      if (parameter.measured) return CONTROL_WORDS.usual(range);
      return `${CONTROL_WORDS.usual(range)} ${CONTROL_WORDS.standard(quantityText(parameter.default, scale, system))}`;
    }
    case 'choice':
      return CONTROL_WORDS.standard(optionName(parameter.id, parameter.default));
    case 'flag':
      return CONTROL_WORDS.standard(parameter.default ? CONTROL_WORDS.yes : CONTROL_WORDS.no);
  }
}

export function Hint() {
  const parameter = useHint((state) => state.parameter);
  const system = useBackbow((state) => state.unitSystem);
  const words = useHint((state) => state.words);
  if (!parameter)
    return (
      <p className="hint hint-empty quiet" data-messages-here>
        {CONTROL_WORDS.hintEmpty}
      </p>
    );
  const { label, hint, source } = words();
  return (
    <div className="hint" data-messages-here role="note" aria-label={CONTROL_WORDS.hintTitle}>
      <h3>{label}</h3>
      <p>{hint}</p>
      <p className="quiet">
        {usual(parameter, system)} {source === '' ? '' : CONTROL_WORDS.from(source)}
      </p>
    </div>
  );
}
