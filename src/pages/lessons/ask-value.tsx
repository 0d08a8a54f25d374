/** Pick a number; the computed one is shown beside it on the same scale. */
import { Slider } from '../../kit/slider/slider.tsx';
import { useBackbow } from '../../state/store.ts';
import { bowBandText } from '../../speech/bow.ts';
import { guess as makeGuess, useGuesses } from './guesses.ts';
import { formOf, measure, measureText, type Bench } from './quantities.ts';
import type { Ask } from './types.ts';
import { useBand, useComing } from './use-bench.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';

type ValueAsk = Extract<Ask, { kind: 'value' }>;

interface AskValueProps {
  readonly ask: ValueAsk;
  readonly step: string;
  readonly bench: Bench | null;
  readonly asking: boolean;
}

const SCALE = { width: 360, height: 64, margin: 10, level: 32 } as const;

interface ScaleDrawingProps {
  readonly ask: ValueAsk;
  readonly made: number | null;
  readonly truth: number;
}

/** Guess above the line, answer below it. An answer beyond the end of the scale stands at its end with an arrow. */
function ScaleDrawing({ ask, made, truth }: ScaleDrawingProps) {
  const { width, height, margin, level } = SCALE;
  const place = (value: number): number => {
    const share = (value - ask.min) / (ask.max - ask.min);
    return margin + Math.max(0, Math.min(1, share)) * (width - 2 * margin);
  };
  const beyond = truth > ask.max ? ' →' : truth < ask.min ? '← ' : '';
  const anchor = (px: number) => (px < width * 0.2 ? 'start' : px > width * 0.8 ? 'end' : 'middle');
  const at = place(truth);
  return (
    <svg className="scale" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <line className="edge" x1={margin} x2={width - margin} y1={level} y2={level} />
      {ask.min < 0 && ask.max > 0 && (
        <line className="edge" x1={place(0)} x2={place(0)} y1={level - 5} y2={level + 5} />
      )}
      {made !== null && (
        <>
          <line className="guess" x1={place(made)} x2={place(made)} y1={level - 14} y2={level} />
          <text x={place(made)} y={level - 18} textAnchor={anchor(place(made))}>
            {LESSON_WORDS.yourGuess}
          </text>
        </>
      )}
      <line className="truth" x1={at} x2={at} y1={level} y2={level + 14} />
      <text x={at} y={level + 28} textAnchor={anchor(at)}>
        {beyond === '← ' ? beyond : ''}
        {LESSON_WORDS.computed}
        {beyond === ' →' ? beyond : ''}
      </text>
    </svg>
  );
}

export function AskValue({ ask, step, bench, asking }: AskValueProps) {
  const system = useBackbow((state) => state.unitSystem);
  const coming = useComing();
  const made = useGuesses(({ guesses }) => {
    const one = guesses[step];
    return one?.kind === 'value' ? one.value : null;
  });
  const { of } = ask;
  const band = useBand(!asking && of.q === 'relief' ? of.at : null, of.q === 'relief' ? of.method : undefined);
  const computed = bench ? measure(of, bench) : null;
  const middle = ask.min < 0 ? 0 : ask.min;
  const say = (value: number): string => measureText({ ...formOf(of), value }, system);
  if (asking) {
    return (
      <div className="ask-value">
        <p className="value">{say(made ?? middle)}</p>
        <Slider
          aria-label={LESSON_WORDS.valueLabel}
          aria-valuetext={say(made ?? middle)}
          min={ask.min}
          max={ask.max}
          step={ask.step}
          value={made ?? middle}
          slide={(value) => makeGuess(step, { kind: 'value', value })}
        />
      </div>
    );
  }
  return (
    <div className="ask-value">
      {computed && <ScaleDrawing ask={ask} made={made} truth={computed.value} />}
      <output className="answer">
        {computed === null
          ? coming
          : made === null
            ? LESSON_WORDS.answerOnly(say(computed.value))
            : LESSON_WORDS.valueAnswer(say(made), say(computed.value))}{' '}
        {band && (
          <span className="quiet">{LESSON_WORDS.band(bowBandText(band.extreme.p05, band.extreme.p95, system))}</span>
        )}
      </output>
    </div>
  );
}
