/** The way through the job: bare board, frets in one by one, strung, settling, rod set. Scrub it, step it, play it. */
import { useEffect, useId, type CSSProperties, type KeyboardEvent } from 'react';
import { textOf } from '../../../speech/quantity-text.ts';
import { seatingSequence } from '../../../fretwork/plan/seating-order.ts';
import { useLines } from '../../../state/lines.ts';
import { lineAt } from '../../../mechanics/states.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { fretsInAt, momentOf, railStops, stopIndex, type Phase, type RailPosition } from '../../../verdict/rail.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { Slider } from '../../../kit/slider/slider.tsx';
import { stepsOfKey } from '../../../kit/step-keys.ts';
import { bowText, changeText } from '../../../speech/bow.ts';
import { PHASE_WORDS, RAIL_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { useNotComputed } from '../not-computed.tsx';
import { SOLVER_WORDS } from '../../../speech/en/workshop/solver.ts';
import { railText } from './rail-text.ts';
import { nearestStop, phaseSpans, stopPlaces } from './track.ts';
import './rail.css';

/** How long each stop stays while playing, ms: time enough to see one fret go in, longer where more happens. */
const DWELL_MS: Readonly<Record<Phase, number>> = { bare: 700, frets: 220, strung: 1200, weeks: 650, rod: 1200 };

function usePlaying(): void {
  const playing = useBackbow((state) => state.playing);
  const rail = useBackbow((state) => state.rail);
  useEffect(() => {
    if (!playing) return undefined;
    const timer = setTimeout(() => {
      if (!store.getState().stepRail(1)) store.getState().setPlaying(false);
    }, DWELL_MS[rail.phase]);
    return () => clearTimeout(timer);
  }, [playing, rail]);
}

/** What going in one by one did last: the fret, the force that pressed it in, and what it added to the bow. */
export interface GoneIn {
  readonly fret: number;
  readonly count: number;
  /** Of the last fret alone; 0 where it slides in. */
  readonly seatingForceN: number;
  /** Relief with it less relief without it, both computed, mm. */
  readonly stepMm: number;
}

/** Null unless some frets are in and others are not yet. */
export function lastGoneIn({ build, prediction }: Solution, rail: RailPosition): GoneIn | null {
  if (rail.phase !== 'frets' || rail.fretsIn === 'all') return null;
  const count = fretsInAt(build, rail);
  const fret = seatingSequence(build)[count - 1];
  if (fret === undefined || count === build.fretCount) return null;
  const reliefAt = (position: RailPosition) =>
    lineAt(prediction, build.method, momentOf({ build, prediction }, position)).extremeMm;
  const before: RailPosition = count === 1 ? { phase: 'bare' } : { phase: 'frets', fretsIn: count - 1 };
  return {
    fret,
    count,
    seatingForceN: prediction.methods[build.method].seatingForceN[fret - 1],
    stepMm: reliefAt(rail) - reliefAt(before),
  };
}

function Now() {
  const build = useBackbow((state) => state.build);
  const rail = useBackbow((state) => state.rail);
  const solution = useBackbow((state) => state.solution);
  const system = useBackbow((state) => state.unitSystem);
  const lines = useLines();
  const isMissing = useNotComputed() !== null;
  const gone = solution ? lastGoneIn(solution, rail) : null;
  return (
    <p className="rail-now">
      {gone ? (
        <span>
          {RAIL_WORDS.count(gone.count, build.fretCount)}
          <em data-fret={gone.fret}>
            {RAIL_WORDS.seated(
              gone.fret,
              gone.seatingForceN === 0
                ? RAIL_WORDS.byHand
                : RAIL_WORDS.push(textOf('seatingForceN', gone.seatingForceN, system)),
            )}
          </em>
        </span>
      ) : (
        <span>{railText(build, rail, solution?.prediction)}</span>
      )}
      {lines && <strong>{bowText(lines[build.method].extremeMm, system)}</strong>}
      {isMissing && <small>{SOLVER_WORDS.notComputed}</small>}
      {gone && <small title={RAIL_WORDS.stepMeans}>{changeText(gone.stepMm, system)}</small>}
    </p>
  );
}

function Track({ stops, index }: { readonly stops: readonly RailPosition[]; readonly index: number }) {
  const id = useId();
  const build = useBackbow((state) => state.build);
  const prediction = useBackbow((state) => state.solution?.prediction);
  const { setRail, setPlaying } = store.getState();
  const places = stopPlaces(stops);
  const last = stops.length - 1;

  function go(to: number): void {
    setPlaying(false);
    setRail(stops[Math.max(0, Math.min(last, to))]);
  }

  /** Where the name of a phase leads: to the moments that the large numbers speak of. */
  function aim(phase: Phase): number | undefined {
    if (phase === 'frets') return stopIndex(stops, { phase, fretsIn: 'all' });
    if (phase === 'weeks') return stopIndex(stops, { phase, days: build.settleDays });
    return undefined;
  }

  function onKeyDown(event: KeyboardEvent): void {
    const steps = stepsOfKey(event);
    if (steps === undefined) return;
    event.preventDefault();
    go(Number.isFinite(steps) ? index + Math.sign(steps) * Math.max(1, Math.abs(steps)) : steps > 0 ? last : 0);
  }

  return (
    <div className="rail-track">
      <Slider
        aria-label={RAIL_WORDS.slider}
        aria-valuetext={railText(build, stops[index], prediction)}
        aria-describedby={id}
        min={0}
        max={1}
        value={places[index]}
        slide={(place) => go(nearestStop(places, place))}
        onKeyDown={onKeyDown}
      />
      <ol id={id} className="rail-phases">
        {phaseSpans(stops).map(({ phase, first, from, to }) => (
          <li
            key={phase}
            data-now={stops[index].phase === phase || undefined}
            data-place={to === 0 ? 'start' : from === 1 ? 'end' : undefined}
            style={{ '--from': from, '--long': to - from } as CSSProperties}
          >
            <button type="button" onClick={() => go(aim(phase) ?? first)}>
              {PHASE_WORDS[phase]}
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}

export function Rail() {
  const build = useBackbow((state) => state.build);
  const rail = useBackbow((state) => state.rail);
  usePlaying();
  const stops = railStops(build);
  return (
    <section className="rail" data-keep-clear aria-label={RAIL_WORDS.title}>
      <div className="rail-buttons button-row">
        <ActionButton id="play" />
        <ActionButton id="step-back" />
        <ActionButton id="step-on" />
      </div>
      <Track stops={stops} index={stopIndex(stops, rail)} />
      <Now />
    </section>
  );
}
