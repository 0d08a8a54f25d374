/** Lines of the fret tops in several states over the frets, drawn with ink: told apart by dash and by name. */
import type { UnitSystem } from '../../neck/units.ts';
import type { ReliefLine, Prediction } from '../../mechanics/prediction-types.ts';
import { bowText } from '../../speech/bow.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';

export interface NamedLine {
  readonly name: string;
  readonly line: Pick<ReliefLine, 'reliefMm' | 'extremeMm'>;
}

interface LineFigureProps {
  readonly title: string;
  readonly lines: readonly NamedLine[];
  readonly prediction: Prediction;
  readonly system: UnitSystem;
}

/** Sizes of the drawing in its own units, which are about a millimetre on paper. */
const WIDTH = 180;
const LEFT = 3;
const RIGHT = 177;
const HALF = 17;
const TOP = 3;
const AXIS = TOP + 2 * HALF + 5;
const DASHES = ['none', '3 1', '1 1', '5 1 1 1', '7 2'];
const WIDTHS = [0.7, 0.55, 0.55, 0.45, 0.35];
const strokeOf = (index: number) => ({
  strokeDasharray: DASHES[index % DASHES.length],
  strokeWidth: WIDTHS[index % WIDTHS.length],
});
/** Frets that keep their number where there is little room: those with a mark on most boards, and the octave. */
const MARKED = new Set([0, 3, 5, 7, 9]);
/** Factors that heights are drawn with. */
const FACTORS = [1, 2, 5, 10, 20, 50, 100, 200, 500];

export function LineFigure({ title, lines, prediction, system }: LineFigureProps) {
  const { stationXMm, fretXMm, straightedge } = prediction;
  const end = stationXMm.at(-1)!;
  const scale = (RIGHT - LEFT) / end;
  const most = Math.max(...lines.flatMap(({ line }) => Array.from(line.reliefMm, Math.abs)), 1e-6);
  const factor = FACTORS.findLast((candidate) => most * scale * candidate <= HALF) ?? 1;
  const middle = TOP + HALF;
  const x = (xMm: number) => LEFT + xMm * scale;
  const y = (reliefMm: number) => middle + reliefMm * scale * factor;
  const path = (reliefMm: ArrayLike<number>) =>
    Array.from(stationXMm, (at, i) => `${i === 0 ? 'M' : 'L'}${x(at).toFixed(2)} ${y(reliefMm[i]).toFixed(2)}`).join(
      '',
    );
  const [from, to] = [fretXMm[straightedge.fromFret - 1], fretXMm[straightedge.toFret - 1]];
  const says = lines.map(({ name, line }) => `${name}: ${bowText(line.extremeMm, system)}`).join('; ');
  return (
    <figure className="line-figure">
      <figcaption>
        <b>{title}</b>, {PLAN_WORDS.expected.heights(String(factor))}
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${AXIS}`} role="img" aria-label={`${title}. ${says}.`}>
        {fretXMm.map((at, index) => (
          <g key={index} className="figure-fret" data-marked={MARKED.has((index + 1) % 12) || undefined}>
            <line x1={x(at)} x2={x(at)} y1={TOP} y2={TOP + 2 * HALF} />
            <text x={x(at)} y={AXIS - 1.2}>
              {index + 1}
            </text>
          </g>
        ))}
        <line className="figure-edge" x1={x(from)} x2={x(to)} y1={middle} y2={middle} />
        {lines.map(({ name, line }, index) => (
          <path key={name} d={path(line.reliefMm)} {...strokeOf(index)} />
        ))}
      </svg>
      <ul className="figure-key">
        {lines.map(({ name, line }, index) => (
          <li key={name}>
            <svg viewBox="0 0 14 2" aria-hidden="true">
              <path d="M0 1h14" {...strokeOf(index)} />
            </svg>
            <span>
              {name}: <b>{bowText(line.extremeMm, system)}</b>
            </span>
          </li>
        ))}
      </ul>
    </figure>
  );
}
