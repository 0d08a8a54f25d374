/** What the neck does, in large numbers. */
import { currentBands } from '../../state/solution-slice.ts';
import { useBackbow } from '../../state/store.ts';
import type { Phase } from '../../state/rail.ts';
import { READOUT_WORDS } from '../words/panels.ts';
import { Figure } from './figure.tsx';
import { driversText, figuresOf, type FigureText } from './figures.ts';
import './readouts.css';

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
      <dl className="figures">
        {figures.map((figure) => (
          <Figure key={figure.id} figure={figure} isNow={figure.phase === phase} />
        ))}
      </dl>
      <Drivers figures={figures} phase={phase} />
    </section>
  );
}
