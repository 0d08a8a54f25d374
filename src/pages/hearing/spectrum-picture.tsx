/**
 * The spectrum of the taps with the chosen tone as a line that can be moved: by a sideways drag or a tap, which catch on the
 * tones that were heard, and by the arrow keys.
 */
import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { scaleLinear, scaleLog } from 'd3-scale';
import { area } from 'd3-shape';
import type { Expected } from '../../mechanics/hearing/expected.ts';
import type { Overview } from '../../mechanics/hearing/overview.ts';
import { stepsOfKey } from '../../kit/step-keys.ts';
import { useMedia } from '../../kit/use-media.ts';
import { HEARING_WORDS } from '../../speech/en/pages/hearing.ts';
import { hertz } from '../../speech/measured/hearing.ts';
import { formatNumber } from '../../speech/quantity.ts';

const HEIGHT = 200;
const MARGIN = { top: 22, right: 10, bottom: 42, left: 10 };
const LOWEST_DB = -60;
const TICKS = [20, 50, 100, 200, 500, 1000, 2000, 4000];
const STEP_HZ = 0.5;
/** How near a finger or a pointer has to be to a tone to mean it, in the picture's own units. */
const CATCH = 8;
const DRAG = 4;

interface SpectrumPictureProps {
  readonly overview: Overview;
  readonly expected: Expected | undefined;
  readonly tonesHz: readonly number[];
  /** Undefined while none is chosen. */
  readonly chosenHz: number | undefined;
  readonly choose: (frequencyHz: number) => void;
}

function Ground({
  overview,
  expected,
  width,
}: Pick<SpectrumPictureProps, 'overview' | 'expected'> & { width: number }) {
  const { lowHz, highHz, levelsDb } = overview;
  const x = scaleLog([lowHz, highHz], [MARGIN.left, width - MARGIN.right]);
  const base = HEIGHT - MARGIN.bottom;
  const y = scaleLinear([LOWEST_DB, 0], [base, MARGIN.top]).clamp(true);
  const at = (step: number) => MARGIN.left + ((step + 0.5) / levelsDb.length) * (width - MARGIN.left - MARGIN.right);
  const fill = area<number>()
    .x((_level, step) => at(step))
    .y0(base)
    .y1((level) => y(level));
  return (
    <g>
      {expected && (
        <>
          <rect
            className="spectrum-expected"
            x={x(Math.max(lowHz, expected.lowHz))}
            width={Math.max(0, x(Math.min(highHz, expected.highHz)) - x(Math.max(lowHz, expected.lowHz)))}
            y={MARGIN.top}
            height={base - MARGIN.top}
          />
          <text x={x(Math.min(highHz, expected.firstHz))} y={MARGIN.top - 7} textAnchor="middle">
            {HEARING_WORDS.expectedShort}
          </text>
        </>
      )}
      <path className="spectrum-area" d={fill([...levelsDb]) ?? ''} />
      <line className="spectrum-axis" x1={MARGIN.left} x2={width - MARGIN.right} y1={base} y2={base} />
      {TICKS.map((tick) => (
        <g key={tick} transform={`translate(${x(tick)} ${base})`}>
          <line className="spectrum-axis" y2={4} />
          <text y={17} textAnchor={tick === lowHz ? 'start' : tick === highHz ? 'end' : 'middle'}>
            {formatNumber(tick, 0)}
          </text>
        </g>
      ))}
      <text x={width / 2} y={HEIGHT - 6} textAnchor="middle">
        {HEARING_WORDS.axis}
      </text>
    </g>
  );
}

export function SpectrumPicture(props: SpectrumPictureProps) {
  const { overview, expected, tonesHz, chosenHz, choose } = props;
  const { lowHz, highHz } = overview;
  const width = useMedia('(max-width: 40rem)') ? 360 : 680;
  const x = scaleLog([lowHz, highHz], [MARGIN.left, width - MARGIN.right]).clamp(true);
  const box = useRef<HTMLDivElement>(null);
  const slider = useRef<HTMLInputElement>(null);
  const from = useRef<{ readonly x: number; dragged: boolean }>(undefined);
  const start = chosenHz ?? tonesHz[0] ?? expected?.firstHz ?? Math.sqrt(lowHz * highHz);

  function chooseAt(event: PointerEvent): void {
    const { left, width: shown } = box.current!.getBoundingClientRect();
    const place = ((event.clientX - left) / shown) * width;
    const caught = tonesHz
      .filter((tone) => Math.abs(x(tone) - place) < CATCH)
      .toSorted((a, b) => Math.abs(x(a) - place) - Math.abs(x(b) - place))[0];
    choose(caught ?? Number(x.invert(place).toFixed(1)));
  }

  function onPointerMove(event: PointerEvent): void {
    const began = from.current;
    if (!began) return;
    began.dragged ||= Math.abs(event.clientX - began.x) > DRAG;
    if (began.dragged) chooseAt(event);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const steps = stepsOfKey(event);
    if (steps === undefined) return;
    event.preventDefault();
    const wanted = Number.isFinite(steps) ? start + steps * STEP_HZ : steps < 0 ? lowHz : highHz;
    choose(Number(Math.min(highHz, Math.max(lowHz, wanted)).toFixed(2)));
  }

  return (
    <div
      ref={box}
      className="spectrum"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = { x: event.clientX, dragged: false };
      }}
      onPointerMove={onPointerMove}
      onPointerUp={(event) => {
        // Also after a drag: its last stretch may have come as no move of its own.
        if (from.current) chooseAt(event);
        from.current = undefined;
        slider.current?.focus();
      }}
      onPointerCancel={() => {
        from.current = undefined;
      }}
    >
      <input
        ref={slider}
        type="range"
        className="visually-hidden"
        aria-label={HEARING_WORDS.line}
        aria-valuetext={hertz(start)}
        min={lowHz}
        max={highHz}
        step="any"
        value={start}
        onChange={(event) => choose(event.currentTarget.valueAsNumber)}
        onKeyDown={onKeyDown}
      />
      <svg viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
        <Ground overview={overview} expected={expected} width={width} />
        {chosenHz !== undefined && (
          <>
            <line
              className="spectrum-chosen"
              x1={x(chosenHz)}
              x2={x(chosenHz)}
              y1={MARGIN.top}
              y2={HEIGHT - MARGIN.bottom}
            />
            <path className="spectrum-grip" d={`M${x(chosenHz)} ${HEIGHT - MARGIN.bottom}l-6 9h12z`} />
          </>
        )}
      </svg>
    </div>
  );
}
