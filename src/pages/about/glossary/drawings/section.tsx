/** A slot with its fret, cut along the neck. */
import type { SectionPart } from '../terms.ts';
import { Dimension, Drawing, HEIGHT, mark, WIDTH } from './parts.tsx';

const SURFACE = 32;
const MIDDLE = WIDTH / 2;
const KERF = 5;
const BODY = 4;
const STUDS = 7.5;
const FLOOR = 62;
const FOOT = 54;
const CROWN = 17;
const BEVEL = 7;

export function SectionDrawing({ part }: { readonly part: SectionPart }) {
  const isGlued = part === 'glue';
  const kerf = isGlued ? STUDS : KERF;
  const bevel = part === 'chamfer' ? BEVEL : 1.5;
  const [left, right] = [MIDDLE - kerf, MIDDLE + kerf];
  const slot = `L${left - bevel} ${SURFACE}L${left} ${SURFACE + bevel}V${FLOOR}H${right}V${SURFACE + bevel}L${right + bevel} ${SURFACE}`;
  const tang = `M${MIDDLE - BODY} ${SURFACE}V${FOOT}H${MIDDLE + BODY}V${SURFACE}Z`;
  const stud = (sign: 1 | -1) =>
    `M${MIDDLE + sign * BODY} ${SURFACE + 7}L${MIDDLE + sign * STUDS} ${SURFACE + 10}V${SURFACE + 14}L${MIDDLE + sign * BODY} ${SURFACE + 17}Z`;
  return (
    <Drawing>
      <path className="wood" d={`M0 ${SURFACE}${slot}H${WIDTH}V${HEIGHT}H0Z`} />
      {isGlued && <path className="marked" d={`M${left} ${SURFACE + 2}H${right}V${FLOOR}H${left}Z`} />}
      {part === 'slot' && <path className="marked" d={`M${left} ${SURFACE + 2}H${right}V${FLOOR}H${left}Z`} />}
      {part !== 'slot' && part !== 'kerf' && part !== 'chamfer' && (
        <>
          <path className={mark(part === 'tang' || part === 'fret')} d={tang} />
          <path className={mark(part === 'studs' || part === 'fret' || part === 'bite')} d={stud(1) + stud(-1)} />
          <path
            className={mark(part === 'crown' || part === 'fret')}
            d={`M${MIDDLE - CROWN} ${SURFACE}A${CROWN} 15 0 0 1 ${MIDDLE + CROWN} ${SURFACE}Z`}
          />
        </>
      )}
      {part === 'chamfer' && (
        <path
          className="marked-line"
          d={`M${left - bevel} ${SURFACE}L${left} ${SURFACE + bevel}M${right + bevel} ${SURFACE}L${right} ${SURFACE + bevel}`}
        />
      )}
      {part === 'kerf' && <Dimension from={[left, 24]} to={[right, 24]} />}
      {part === 'bite' && (
        <path
          className="marked-line"
          d={`M${MIDDLE + 12} ${SURFACE + 12}H${MIDDLE + 30}m-5 -4l5 4l-5 4M${MIDDLE - 12} ${SURFACE + 12}H${MIDDLE - 30}m5 -4l-5 4l5 4`}
        />
      )}
    </Drawing>
  );
}
