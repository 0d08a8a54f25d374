/** The board from above: which frets are in, which go in now, and which are still to come. */
import { seatingSequence } from '../../fretwork/plan/seating-order.ts';
import { BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { neckOf, type BenchJob } from '../../state/jobs/job-document.ts';

interface BoardMapProps {
  readonly job: BenchJob;
  /** That go in now. */
  readonly frets: readonly number[];
  /** How many are in. */
  readonly before: number;
}

/** Sizes of the drawing in its own units. */
const WIDTH = 360;
const HEIGHT = 64;
const EDGE = 8;
const TOP = 16;
/** How much narrower the board is drawn at the nut, each side. */
const TAPER = 5;

export function BoardMap({ job, frets, before }: BoardMapProps) {
  const { xMm } = job.predicted;
  const end = xMm.at(-1)!;
  const inNow = new Set(frets);
  const isIn = new Set(seatingSequence(neckOf(job)).slice(0, before));
  const x = (mm: number) => EDGE + (mm / end) * (WIDTH - 2 * EDGE);
  const half = (mm: number) => (HEIGHT - TOP - 4) / 2 - TAPER * (1 - mm / end);
  const middle = TOP + (HEIGHT - TOP - 4) / 2;
  const edge = (mm: number, side: 1 | -1) => `${x(mm).toFixed(1)} ${(middle + side * half(mm)).toFixed(1)}`;
  return (
    <svg
      className="bench-board"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={BENCH_WORDS.seatDrawing(frets.length, before)}
    >
      <path className="board" d={`M${edge(0, -1)}L${edge(end, -1)}L${edge(end, 1)}L${edge(0, 1)}Z`} />
      {xMm.slice(1, -1).map((mm, index) => {
        const fret = index + 1;
        const state = inNow.has(fret) ? 'now' : isIn.has(fret) ? 'in' : 'later';
        return (
          <g key={fret} data-state={state}>
            <line x1={x(mm)} x2={x(mm)} y1={middle - half(mm)} y2={middle + half(mm)} />
            {state === 'now' && (
              <text x={x(mm)} y={TOP - 5}>
                {fret}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
