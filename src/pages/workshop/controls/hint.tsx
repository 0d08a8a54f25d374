/** What the control in hand changes, what is usual and where that comes from; always in the same place. */
import type { Parameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { useBackbow } from '../../../state/store.ts';
import { CONTROL_WORDS } from '../../../speech/en/controls.ts';
import { displayScale, quantityText, rangeText } from '../../../speech/scale.ts';
import { useHint } from './hint-store.ts';

function usual(parameter: Parameter, system: UnitSystem): string {
  switch (parameter.kind) {
    case 'number': {
      const scale = displayScale(parameter, system);
      const range = rangeText(parameter.typical[0], parameter.typical[1], scale, system);
      return `${CONTROL_WORDS.usual(range)} ${CONTROL_WORDS.standard(quantityText(parameter.default, scale, system))}`;
    }
    case 'choice': {
      const option = parameter.options.find((candidate) => candidate.value === parameter.default);
      return CONTROL_WORDS.standard(option?.label ?? parameter.default);
    }
    case 'flag':
      return CONTROL_WORDS.standard(parameter.default ? CONTROL_WORDS.yes : CONTROL_WORDS.no);
  }
}

export function Hint() {
  const parameter = useHint((state) => state.parameter);
  const system = useBackbow((state) => state.unitSystem);
  if (!parameter) return <p className="hint hint-empty quiet">{CONTROL_WORDS.hintEmpty}</p>;
  return (
    <div className="hint" role="note" aria-label={CONTROL_WORDS.hintTitle}>
      <h3>{parameter.label}</h3>
      <p>{parameter.hint}</p>
      <p className="quiet">
        {usual(parameter, system)} {parameter.source === '' ? '' : CONTROL_WORDS.from(parameter.source)}
      </p>
    </div>
  );
}
