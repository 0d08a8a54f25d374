/** The three ways of seating: which one is chosen, how its line is drawn, and how far it bows now. */
import { useId } from 'react';
import { METHODS } from '../../../mechanics/prediction-types.ts';
import type { Lines } from '../../../state/lines.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { bowText } from '../../../speech/bow.ts';
import { CHART_WORDS, METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';

interface MethodLegendProps {
  /** Null before the first prediction. */
  readonly lines: Lines | null;
}

export function MethodLegend({ lines }: MethodLegendProps) {
  const chosen = useBackbow((state) => state.build.method);
  const system = useBackbow((state) => state.unitSystem);
  const name = useId();
  return (
    <div className="legend">
      <fieldset className="methods" data-keep-clear>
        <legend className="visually-hidden">{CHART_WORDS.method}</legend>
        {METHODS.map((method) => (
          <label
            key={method}
            className="method"
            title={METHOD_WORDS[method].says}
            data-chosen={method === chosen || undefined}
          >
            <input
              type="radio"
              name={name}
              value={method}
              checked={method === chosen}
              onChange={() => store.getState().change({ method }, METHOD_WORDS[method].label)}
            />
            <svg className="swatch" viewBox="0 0 24 6" aria-hidden="true">
              <line x1="0" y1="3" x2="24" y2="3" className={`line-${method}`} />
            </svg>
            {METHOD_WORDS[method].label}{' '}
            {lines && <span className="method-bow">{bowText(lines[method].extremeMm, system)}</span>}
          </label>
        ))}
      </fieldset>
    </div>
  );
}
