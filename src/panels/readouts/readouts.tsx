/** What the neck does, in large numbers. */
import { useId } from 'react';
import { METHODS } from '../../mechanics/prediction-types.ts';
import { currentBands } from '../../state/solution-slice.ts';
import { store, useBackbow } from '../../state/store.ts';
import type { Phase } from '../../state/rail.ts';
import { METHOD_WORDS, READOUT_WORDS } from '../words/panels.ts';
import { Figure } from './figure.tsx';
import { driversText, figuresOf, type FigureText } from './figures.ts';
import './readouts.css';

function MethodSwitch() {
  const method = useBackbow((state) => state.build.method);
  const name = useId();
  return (
    <fieldset className="methods">
      <legend>{READOUT_WORDS.method}</legend>
      {METHODS.map((option) => (
        <label key={option} className={`method method-${option}`} title={METHOD_WORDS[option].says}>
          <input
            type="radio"
            name={name}
            value={option}
            checked={option === method}
            onChange={() => store.getState().change({ method: option }, METHOD_WORDS[option].label)}
          />
          <svg className="swatch" viewBox="0 0 24 6" aria-hidden="true">
            <line x1="0" y1="3" x2="24" y2="3" className={`line-${option}`} />
          </svg>
          {METHOD_WORDS[option].label}
        </label>
      ))}
    </fieldset>
  );
}

/** What makes the band of the number that the rail stands at. */
function Drivers({ figures, phase }: { readonly figures: readonly FigureText[]; readonly phase: Phase }) {
  const wanted = phase === 'bare' ? 'frets' : phase;
  const drivers = figures.find((figure) => figure.phase === wanted)?.drivers;
  return (
    <p className="drivers quiet">
      {READOUT_WORDS.bandMeans} {drivers ? READOUT_WORDS.drivers(driversText(drivers)) : READOUT_WORDS.bandComing}
    </p>
  );
}

export function Readouts() {
  const solution = useBackbow((state) => state.solution);
  const system = useBackbow((state) => state.unitSystem);
  const phase = useBackbow((state) => state.rail.phase);
  const stale = useBackbow((state) => state.solution !== null && state.solution.build !== state.build);
  const uncertainty = useBackbow(currentBands);
  const figures = figuresOf(solution, uncertainty, system);
  return (
    <section className="readouts" aria-label={READOUT_WORDS.title} data-stale={stale || undefined}>
      <MethodSwitch />
      <dl className="figures">
        {figures.map((figure) => (
          <Figure key={figure.id} figure={figure} isNow={figure.phase === phase} />
        ))}
      </dl>
      <Drivers figures={figures} phase={phase} />
    </section>
  );
}
