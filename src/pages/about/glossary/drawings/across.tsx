/** Neck and board cut across. */
import type { AcrossPart } from '../terms.ts';
import { Drawing, mark } from './parts.tsx';

const LEFT = 24;
const RIGHT = 96;
const EDGE = 28;
const UNDER = 36;

export function AcrossDrawing({ part }: { readonly part: AcrossPart }) {
  const isSawn = part === 'flat-sawn' || part === 'quarter-sawn';
  const board = `M${LEFT} ${EDGE}Q60 ${isSawn ? EDGE : 18} ${RIGHT} ${EDGE}V${UNDER}H${LEFT}Z`;
  const back = `M${LEFT} ${UNDER}V39Q${LEFT + 2} 68 60 68Q${RIGHT - 2} 68 ${RIGHT} 39V${UNDER}Z`;
  return (
    <Drawing>
      {!isSawn && <path className={mark(part === 'profile')} d={back} />}
      {part === 'laminates' && <path className="marked" d={`M50 ${UNDER}V67Q60 68.5 70 67V${UNDER}Z`} />}
      <path className={isSawn ? 'wood' : mark(false)} d={isSawn ? `M${LEFT} 22H${RIGHT}V54H${LEFT}Z` : board} />
      {part === 'radius' && (
        <>
          <path className="marked-line" d={`M${LEFT} ${EDGE}Q60 18 ${RIGHT} ${EDGE}`} />
          <path className="dimension" d="M60 72L60 23m-3 4l3 -4l3 4" />
        </>
      )}
      {part === 'cone' && (
        <path
          className="marked-line"
          d={`M${LEFT} ${EDGE}Q60 18 ${RIGHT} ${EDGE}M8 14Q60 8 112 14M${LEFT} ${EDGE}L8 14M${RIGHT} ${EDGE}L112 14`}
        />
      )}
      {part === 'flat-sawn' &&
        [0, 8, 16, 24].map((down) => (
          <path key={down} className="marked-line" d={`M${LEFT} ${28 + down}Q60 ${22 + down} ${RIGHT} ${28 + down}`} />
        ))}
      {part === 'quarter-sawn' &&
        Array.from({ length: 9 }, (_, index) => (
          <path key={index} className="marked-line" d={`M${28 + index * 8} 22L${30 + index * 8} 54`} />
        ))}
    </Drawing>
  );
}
