/** Drag the line of the fret tops to where it is expected; the computed one is drawn over it. */
import { useMemo } from 'react';
import { Stepper } from '../../kit/steppers/stepper.tsx';
import { useCoarse } from '../../kit/use-coarse.ts';
import type { ReliefLine } from '../../mechanics/prediction-types.ts';
import { useBackbow } from '../../state/store.ts';
import { nearestFret } from '../workshop/readouts/figures.ts';
import { bowBandText, bowText } from '../../speech/bow.ts';
import { CHART_WORDS } from '../../speech/en/workshop/workshop.ts';
import { guess as makeGuess, useGuesses, type LineGuess } from './guesses.ts';
import { bandPath, bowedThrough, BOX, extremeOf, guessPath, HANDLES, lineScales, truthPath } from './line-curve.ts';
import { lineOfTops, type Bench } from './quantities.ts';
import type { Ask } from './types.ts';
import { useBand, useComing } from './use-bench.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import { useLineGrip } from './use-line-grip.ts';

type Band = NonNullable<ReturnType<typeof useBand>>;
type LineScales = ReturnType<typeof lineScales>;
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

/** A line that is guessed: where its handles are, and how they are moved. */
interface GuessedLine {
  readonly ask: LineAsk;
  readonly bench: Bench | null;
  /** What was guessed; null before. */
  readonly made: LineGuess | null;
  readonly shown: LineGuess;
  readonly setHandle: (index: number, wantedMm: number) => void;
}

function useGuessedLine({ ask, step, bench }: Omit<AskLineProps, 'asking'>): GuessedLine {
  const made = useGuess(step);
  function setHandle(index: number, wanted: number): void {
    const within = Math.max(-ask.rangeMm, Math.min(ask.rangeMm, wanted));
    const round = (height: number) => Math.round(height / STEP_MM) * STEP_MM;
    // The first touch bows the whole line; from then on each handle is its own.
    const mm = made ? made.map((old, at) => (at === index ? within : old)) : bowedThrough(index, within);
    makeGuess(step, { kind: 'line', mm: mm.map(round) as unknown as LineGuess });
  }
  return { ask, bench, made, shown: made ?? FLAT, setHandle };
}

function fretAt(bench: Bench | null, share: number): number {
  if (!bench) return 1;
  const { fretXMm, straightedge } = bench.prediction;
  const [from, to] = [fretXMm[straightedge.fromFret - 1], fretXMm[straightedge.toFret - 1]];
  return nearestFret(fretXMm, from + share * (to - from));
}

interface LineDrawingProps {
  readonly line: GuessedLine;
  readonly asking: boolean;
  readonly truth: ReliefLine | null;
  readonly band: Band | null;
  readonly scales: LineScales;
  readonly grip: ReturnType<typeof useLineGrip>;
}

function LineDrawing({ line, asking, truth, band, scales, grip }: LineDrawingProps) {
  const { bench, made, shown } = line;
  const { drawing, chosen, handlers } = grip;
  const level = scales.y(0);
  return (
    // oxlint-disable-next-line jsx-a11y/click-events-have-key-events, jsx-a11y/no-static-element-interactions -- the keys have the sliders below
    <div ref={drawing} className="line-drawing" data-asking={asking || undefined} {...handlers}>
      <svg viewBox={`0 0 ${BOX.width} ${BOX.height}`} aria-hidden="true">
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
              data-chosen={chosen === index || undefined}
              cx={scales.x(share)}
              cy={scales.y(shown[index])}
              r={9}
            />
          ))}
      </svg>
      {asking &&
        HANDLES.map((share, index) => (
          <span
            key={share}
            className="grip"
            data-handle={index}
            data-chosen={chosen === index || undefined}
            style={{
              insetInlineStart: `${(100 * scales.x(share)) / BOX.width}%`,
              insetBlockStart: `${(100 * scales.y(shown[index])) / BOX.height}%`,
            }}
          />
        ))}
    </div>
  );
}

/** What the pointer does in the drawing, keys do here, and steppers for a finger; up is a hump, as it is drawn. */
function HandleControls({ line, grip }: { readonly line: GuessedLine; readonly grip: ReturnType<typeof useLineGrip> }) {
  const isCoarse = useCoarse();
  const system = useBackbow((state) => state.unitSystem);
  const { ask, bench, shown, setHandle } = line;
  const { chosen, setChosen } = grip;
  /** A press raises or lowers a handle by a hundredth. */
  const stepOf = (index: number) => ({
    atEnd: false,
    step: (direction: -1 | 1) => setHandle(index, shown[index] - direction * STEP_MM),
    begin: () => undefined,
    end: () => undefined,
  });
  const fret = chosen === null ? 1 : fretAt(bench, HANDLES[chosen]);
  return (
    <>
      {HANDLES.map((share, index) => (
        <input
          key={share}
          type="range"
          className="visually-hidden"
          aria-label={LESSON_WORDS.handle(fretAt(bench, share))}
          aria-valuetext={bowText(shown[index], system)}
          min={-ask.rangeMm}
          max={ask.rangeMm}
          step={STEP_MM}
          value={-shown[index]}
          onFocus={() => setChosen(index)}
          onChange={(event) => setHandle(index, -event.currentTarget.valueAsNumber)}
        />
      ))}
      {isCoarse && chosen !== null && (
        <p className="handle-steps">
          <Stepper {...stepOf(chosen)} direction={-1} name={LESSON_WORDS.lower(fret)} />
          <span>{LESSON_WORDS.handleNow(fret, bowText(shown[chosen], system))}</span>
          <Stepper {...stepOf(chosen)} direction={1} name={LESSON_WORDS.higher(fret)} />
        </p>
      )}
      <p className="quiet">{isCoarse ? LESSON_WORDS.lineHintTouch : LESSON_WORDS.lineHint}</p>
    </>
  );
}

interface LineAnswerProps {
  readonly made: LineGuess | null;
  readonly truth: ReliefLine | null;
  readonly band: Band | null;
}

function LineAnswer({ made, truth, band }: LineAnswerProps) {
  const system = useBackbow((state) => state.unitSystem);
  const coming = useComing();
  const truthText = truth && bowText(truth.extremeMm, system);
  return (
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
          <span className="quiet">{LESSON_WORDS.band(bowBandText(band.extreme.p05, band.extreme.p95, system))}</span>
        )}
      </output>
    </>
  );
}

export function AskLine({ ask, step, bench, asking }: AskLineProps) {
  const line = useGuessedLine({ ask, step, bench });
  const scales = useMemo(() => lineScales(ask.rangeMm), [ask.rangeMm]);
  const band = useBand(asking ? null : ask.at, ask.method);
  const grip = useLineGrip(asking, scales, line.setHandle);

  const truth = useMemo(() => {
    if (!bench || asking) return null;
    return lineOfTops(bench, ask.at, ask.method);
  }, [bench, asking, ask]);

  return (
    <div className="ask-line">
      <LineDrawing line={line} asking={asking} truth={truth} band={band} scales={scales} grip={grip} />
      {asking ? <HandleControls line={line} grip={grip} /> : <LineAnswer made={line.made} truth={truth} band={band} />}
    </div>
  );
}
