/** The neck from the side, its bow far larger than life. */
import type { SidePart } from '../terms.ts';
import { Dimension, Drawing, mark } from './parts.tsx';

const LEFT = 8;
const RIGHT = 112;
const JOINT = 86;
const TOP = 40;

/** Line of the fret tops: a parabola between nut and joint; plus is a hollow. */
function topAt(x: number, bow: number): number {
  const share = (x - LEFT) / (JOINT - LEFT);
  return share < 1 ? TOP + 4 * bow * share * (1 - share) : TOP + ((x - JOINT) / (JOINT - LEFT)) * -4 * bow;
}

function line(from: number, to: number, bow: number, below: (x: number) => number): string {
  const steps = 20;
  return Array.from({ length: steps + 1 }, (_, index) => {
    const x = from + ((to - from) * index) / steps;
    return `${index === 0 ? '' : 'L'}${x.toFixed(1)} ${(topAt(x, bow) + below(x)).toFixed(1)}`;
  }).join('');
}

const BOWS: Partial<Record<SidePart, number>> = { relief: 7, settling: 5, 'back-bow': -7, straightedge: -6 };

export function SideDrawing({ part }: { readonly part: SidePart }) {
  const bow = BOWS[part] ?? 0;
  const isHeel = part === 'heel';
  const back = (x: number) => (x > 78 ? 9 + Math.min(1, (x - 78) / 8) * 14 : 9);
  const frets = Array.from({ length: 13 }, (_, index) => LEFT + 8 + index * 7.6);
  const isTall = part === 'levelling';
  const height = (index: number) => (isTall ? [4, 5.5, 3.5, 4.5, 5, 3.8][index % 6] : 3.5);
  const stringsAt = part === 'action' || part === 'scale' || part === 'settling' ? 12 : 0;
  return (
    <Drawing>
      <path
        className="wood"
        d={`M${line(LEFT, RIGHT, bow, () => 4)}L${RIGHT} ${topAt(RIGHT, bow) + back(RIGHT)}L${line(RIGHT, LEFT, bow, back)}Z`}
      />
      {isHeel && <path className="marked" d={`M78 ${TOP + 9}L86 ${TOP + 23}H${RIGHT}V${TOP + 9}Z`} />}
      <path
        className={mark(part === 'board')}
        d={`M${line(LEFT, RIGHT, bow, () => 0)}L${line(RIGHT, LEFT, bow, () => 4)}Z`}
      />
      {frets.map((x, index) => (
        <path key={x} className="wire" d={`M${x} ${topAt(x, bow)}v${-height(index)}`} />
      ))}
      {stringsAt > 0 && (
        <path
          className={part === 'scale' || part === 'action' ? 'thin' : 'thin'}
          d={`M${LEFT} ${topAt(LEFT, bow) - 5}L${RIGHT + 8} ${TOP - stringsAt}`}
        />
      )}
      {part === 'scale' && <Dimension from={[LEFT, 18]} to={[RIGHT + 6, 18]} />}
      {part === 'action' && <Dimension from={[70, TOP - 10]} to={[70, TOP - 4]} />}
      {(part === 'straightedge' || part === 'relief' || part === 'back-bow') && (
        <path
          className={mark(part === 'straightedge')}
          d={`M${LEFT + 8} ${Math.min(topAt(LEFT + 8, bow), topAt(47, bow)) - 4}h70v-7h-70Z`}
        />
      )}
      {(part === 'relief' || part === 'back-bow') && (
        <path className="marked-line" d={`M${line(LEFT, JOINT, bow, () => -4)}`} />
      )}
      {part === 'rod' && <path className="marked-line" d={`M14 ${TOP + 7}H84m0 -2.5v5M14 ${TOP + 4.5}v5`} />}
      {part === 'levelling' && <path className="marked-line" d={`M${LEFT + 4} ${TOP - 3.6}H${RIGHT}`} />}
      {part === 'settling' && (
        <path className="marked-line dashed" d={`M${line(LEFT, JOINT, bow + 4, () => -4)}m-38 2v8m-3 -4l3 4l3 -4`} />
      )}
    </Drawing>
  );
}
