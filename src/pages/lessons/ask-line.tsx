/** Drag the line of the fret tops to where it is expected; the computed one is drawn over it. */
import { useMemo, useRef, useState, type PointerEvent } from 'react';
import { lineAt } from '../../mechanics/states.ts';
import { momentAt } from '../../verdict/rail.ts';
import { useBackbow } from '../../state/store.ts';
import { nearestFret } from '../workshop/readouts/figures.ts';
import { bowBandText, bowText } from '../../speech/bow.ts';
import { CHART_WORDS } from '../../speech/en/workshop/workshop.ts';
import { guess as makeGuess, useGuesses, type LineGuess } from './guesses.ts';
import { bandPath, bowedThrough, BOX, extremeOf, guessPath, HANDLES, lineScales, truthPath } from './line-curve.ts';
import type { Bench } from './quantities.ts';
import type { Ask } from './types.ts';
import { useBand, useComing } from './use-bench.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';

type LineAsk = Extract<Ask, { kind: 'line' }>;

const FLAT: LineGuess = [0, 0, 0];
/** Heights are guessed in steps of this, mm. */
const STEP_MM = 0.01;

interface AskLineProps {
  readonly ask: LineAsk;
  readonly step: string;
  readonly bench: Bench | null;
  readonly asking: boolean;
}

function useGuess(step: string): LineGuess | null {
  return useGuesses(({ guesses }) => {
    const made = guesses[step];
    return made?.kind === 'line' ? made.mm : null;
  });
}

export function AskLine({ ask, step, bench, asking }: AskLineProps) {
  const drawing = useRef<SVGSVGElement>(null);
  const held = useRef<number | null>(null);
  const [focused, setFocused] = useState<number | null>(null);
  const system = useBackbow((state) => state.unitSystem);
  const made = useGuess(step);
  const coming = useComing();
  const shown = made ?? FLAT;
  const scales = useMemo(() => lineScales(ask.rangeMm), [ask.rangeMm]);
  const band = useBand(asking ? null : ask.at, ask.method);

  const truth = useMemo(() => {
    if (!bench || asking) return null;
    return lineAt(bench.prediction, ask.method ?? bench.build.method, momentAt(bench.build, ask.at));
  }, [bench, asking, ask]);

  function setHandle(index: number, wanted: number): void {
    const within = Math.max(-ask.rangeMm, Math.min(ask.rangeMm, wanted));
    const round = (height: number) => Math.round(height / STEP_MM) * STEP_MM;
    // The first touch bows the whole line; from then on each handle is its own.
    const mm = made ? made.map((old, at) => (at === index ? within : old)) : bowedThrough(index, within);
    makeGuess(step, { kind: 'line', mm: mm.map(round) as unknown as LineGuess });
  }

  /** Where the pointer is, in the drawing's own units. */
  function placeOf(event: PointerEvent): readonly [number, number] {
    const box = drawing.current!.getBoundingClientRect();
    return [
      ((event.clientX - box.left) / box.width) * BOX.width,
      ((event.clientY - box.top) / box.height) * BOX.height,
    ];
  }

  function drag(event: PointerEvent): void {
    if (held.current === null) return;
    setHandle(held.current, scales.reliefAt(placeOf(event)[1]));
  }

  function grip(event: PointerEvent<SVGSVGElement>): void {
    if (!asking) return;
    const share = scales.shareAt(placeOf(event)[0]);
    const distances = HANDLES.map((at) => Math.abs(at - share));
    held.current = distances.indexOf(Math.min(...distances));
    event.currentTarget.setPointerCapture(event.pointerId);
    drag(event);
  }

  function fretAt(share: number): number {
    if (!bench) return 1;
    const { fretXMm, straightedge } = bench.prediction;
    const [from, to] = [fretXMm[straightedge.fromFret - 1]!, fretXMm[straightedge.toFret - 1]!];
    return nearestFret(fretXMm, from + share * (to - from));
  }

  const truthText = truth && bowText(truth.extremeMm, system);
  const level = scales.y(0);
  return (
    <div className="ask-line">
      <svg
        ref={drawing}
        viewBox={`0 0 ${BOX.width} ${BOX.height}`}
        aria-hidden="true"
        data-asking={asking || undefined}
        onPointerDown={grip}
        onPointerMove={drag}
        onPointerUp={() => {
          held.current = null;
        }}
        onPointerCancel={() => {
          held.current = null;
        }}
      >
        <g>
          <text className="side" x={BOX.left} y={10}>
            ↑ {CHART_WORDS.above}
          </text>
          <text className="side" x={BOX.left} y={BOX.height - 4}>
            ↓ {CHART_WORDS.below}
          </text>
          <line className="edge" x1={scales.x(0)} x2={scales.x(1)} y1={level} y2={level} />
          {band && bench && <path className="band" d={bandPath(bench.prediction, band, scales)} />}
          {(made || asking) && <path className="guess" d={guessPath(shown, scales)} />}
          {truth && bench && <path className="truth" d={truthPath(bench.prediction, truth, scales)} />}
        </g>
        {asking &&
          HANDLES.map((share, index) => (
            <circle
              key={share}
              className="handle"
              data-focused={focused === index || undefined}
              cx={scales.x(share)}
              cy={scales.y(shown[index]!)}
              r={9}
            />
          ))}
      </svg>
      {asking ? (
        <>
          {HANDLES.map((share, index) => (
            // What the pointer does in the drawing, keys do here; up is a hump, as it is drawn.
            <input
              key={share}
              type="range"
              className="visually-hidden"
              aria-label={LESSON_WORDS.handle(fretAt(share))}
              aria-valuetext={bowText(shown[index]!, system)}
              min={-ask.rangeMm}
              max={ask.rangeMm}
              step={STEP_MM}
              value={-shown[index]!}
              onFocus={() => setFocused(index)}
              onBlur={() => setFocused(null)}
              onChange={(event) => setHandle(index, -event.currentTarget.valueAsNumber)}
            />
          ))}
          <p className="quiet">{LESSON_WORDS.lineHint}</p>
        </>
      ) : (
        <>
          <ul className="key">
            {made && (
              <li>
                <svg viewBox="0 0 24 6" className="swatch" aria-hidden="true">
                  <line className="guess" x2="24" y1="3" y2="3" />
                </svg>
                {LESSON_WORDS.yourGuess}
              </li>
            )}
            <li>
              <svg viewBox="0 0 24 6" className="swatch" aria-hidden="true">
                <line className="truth" x2="24" y1="3" y2="3" />
              </svg>
              {LESSON_WORDS.computed}
            </li>
          </ul>
          <output className="answer">
            {truthText === null
              ? coming
              : made
                ? LESSON_WORDS.lineAnswer(bowText(extremeOf(made), system), truthText)
                : LESSON_WORDS.lineAnswerOnly(truthText)}{' '}
            {band && (
              <span className="quiet">
                {LESSON_WORDS.band(bowBandText(band.extreme.p05, band.extreme.p95, system))}
              </span>
            )}
          </output>
        </>
      )}
    </div>
  );
}
