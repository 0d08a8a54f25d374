/** The end of a fret on a bound board, cut along the fret. */
import type { EndPart } from '../terms.ts';
import { Dimension, Drawing, HEIGHT, mark } from './parts.tsx';

const SURFACE = 34;
/** Wood, then a line that is sawn through, then one that is left whole. */
const WOOD = 62;
const SAWN = 72;
const EDGE = 94;
const FLOOR = 64;
const FOOT = 56;
const NIPPED = 66;

export function EndDrawing({ part }: { readonly part: EndPart }) {
  const isCut = part !== 'oversize';
  const top = 18;
  const crownEnd = isCut ? EDGE - 1 : EDGE + 16;
  const slope = isCut ? 10 : 0;
  return (
    <Drawing>
      <path className="wood" d={`M0 ${FLOOR}H${SAWN}V${SURFACE + 1}H${WOOD}V${HEIGHT}H0Z`} />
      <path className="wood" d={`M0 ${FLOOR}H${WOOD}V${HEIGHT}H0Z`} />
      <path className={mark(part === 'binding')} d={`M${WOOD} ${FLOOR}H${SAWN}V${HEIGHT}H${WOOD}Z`} />
      <path
        className={mark(part === 'binding' || part === 'shelf')}
        d={`M${SAWN} ${SURFACE}H${EDGE}V${HEIGHT}H${SAWN}Z`}
      />
      <path className="plain" d={`M0 ${SURFACE}H${NIPPED}V${FOOT}H0Z`} />
      <path
        className={part === 'bevel' ? 'plain' : 'plain'}
        d={`M0 ${SURFACE}H${crownEnd}L${crownEnd - slope} ${top}H0Z`}
      />
      {part === 'bevel' && (
        <path className="marked-line" d={`M${crownEnd + 3} ${SURFACE + 5}L${crownEnd - slope - 3} ${top - 5}`} />
      )}
      {part === 'nip' && <path className="marked dashed" d={`M${NIPPED} ${SURFACE}H${EDGE + 12}V${FOOT}H${NIPPED}Z`} />}
      {part === 'shelf' && <Dimension from={[SAWN, 11]} to={[EDGE - 1, 11]} />}
      {part === 'oversize' && <Dimension from={[EDGE, 11]} to={[crownEnd, 11]} />}
    </Drawing>
  );
}
