/** What the neck does, in large numbers. */
import { currentBands } from '../../../state/solution-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import type { Phase, RailPosition } from '../../../verdict/rail.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { READOUT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { shortGripStandingText, shortStandingText } from '../../../speech/measured/bite-notice.ts';
import { useGripStanding } from '../../../state/bench-log/use-grip-standing.ts';
import { useStanding } from '../../../state/bench-log/use-standing.ts';
import { Figure } from './figure.tsx';
import { driversSentence, figuresOf, type FigureText } from './figures.ts';
import './readouts.css';

/** What makes the band of the number that the rail stands at. */
function Drivers({ figures, phase }: { readonly figures: readonly FigureText[]; readonly phase: Phase }) {
  const wanted = phase === 'bare' ? 'frets' : phase;
  const drivers = figures.find((figure) => figure.phase === wanted)?.drivers;
  return (
    <p className="drivers quiet">
      {READOUT_WORDS.bandMeans} {driversSentence(drivers)}
    </p>
  );
}

/** That the band is not narrowed by the measurements that the build refers to. */
function BiteNotice() {
  const bite = useStanding();
  const grip = useGripStanding();
  const text = grip ? shortGripStandingText(grip) : shortStandingText(bite);
  return <output className="bite-notice">{text}</output>;
}

/** Is the moment on the rail one that the large numbers speak of? Only then is its number marked. */
function isSpokenOf(rail: RailPosition, settleDays: number): boolean {
  if (rail.phase === 'frets') return rail.fretsIn === 'all';
  return rail.phase !== 'weeks' || rail.days === settleDays;
}

export function Readouts() {
  const solution = useBackbow((state) => state.solution);
  const system = useBackbow((state) => state.unitSystem);
  const rail = useBackbow((state) => state.rail);
  const settleDays = useBackbow((state) => state.build.settleDays);
  const isRefret = useBackbow((state) => state.build.job === 'refret');
  const stale = useBackbow((state) => state.solution !== null && state.solution.build !== state.build);
  const uncertainty = useBackbow(currentBands);
  const missing = useBackbow((state) => state.notComputed?.what ?? 'nothing');
  const figures = figuresOf(solution, uncertainty, system);
  return (
    <section className="readouts" aria-label={READOUT_WORDS.title} data-stale={stale || undefined}>
      <dl className="figures" data-keep-clear>
        {figures.map((figure) => (
          <Figure
            key={figure.id}
            figure={figure}
            isNow={figure.phase === rail.phase && isSpokenOf(rail, settleDays)}
            missing={missing}
          />
        ))}
      </dl>
      <div className="readouts-foot">
        <Drivers figures={figures} phase={rail.phase} />
        <BiteNotice />
        <p className="readout-actions">
          <ActionButton id="wanted" />
          <ActionButton id="bench-log" />
          {isRefret && <ActionButton id="refret" />}
        </p>
      </div>
    </section>
  );
}
