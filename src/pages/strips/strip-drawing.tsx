/** The strip from above with its slots, each group with its kerf, and the list to saw by. */
import type { UnitSystem } from '../../neck/units.ts';
import { groupOfSlot, slotXMm } from '../../mechanics/try-strip/layout.ts';
import type { StripContent } from '../../mechanics/try-strip/document.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { formatQuantity, shownNumber, unitLabel } from '../../speech/quantity.ts';
import { numberOf, textOf } from '../../speech/quantity-text.ts';

const WIDTH = 640;
const MARGIN = 12;
/** Room for a line of text on a phone, where the drawing is half as large. */
const ABOVE = 34;
const LEAST_TALL = 40;
const MOST_TALL = 130;

interface StripDrawingProps {
  readonly strip: StripContent;
  readonly system: UnitSystem;
}

export function StripDrawing({ strip, system }: StripDrawingProps) {
  const { lengthMm, widthMm } = strip.offcut;
  const scale = (WIDTH - 2 * MARGIN) / lengthMm;
  const tall = Math.min(MOST_TALL, Math.max(LEAST_TALL, widthMm * scale));
  const foot = ABOVE + tall;
  const slots = slotXMm(strip);
  const groups = groupOfSlot(strip);
  const x = (mm: number) => MARGIN + mm * scale;
  const length = formatQuantity(lengthMm, 'mm', 0, system);
  return (
    <svg
      className="strip-drawing"
      viewBox={`0 0 ${WIDTH} ${foot + 46}`}
      role="img"
      aria-label={STRIP_WORDS.drawing(slots.length, length)}
    >
      <g aria-hidden="true">
        <rect className="strip-wood" x={x(0)} y={ABOVE} width={lengthMm * scale} height={tall} />
        {slots.map((mm, slot) => (
          <line key={mm} className="strip-slot" data-group={groups[slot]} x1={x(mm)} x2={x(mm)} y1={ABOVE} y2={foot} />
        ))}
        {strip.groups.map(({ kerfMm }, group) => {
          const own = slots.filter((_, slot) => groups[slot] === group);
          return (
            // oxlint-disable-next-line react/no-array-index-key -- a group is its place
            <text key={group} x={x((own[0] + own.at(-1)!) / 2)} y={ABOVE - 8} textAnchor="middle">
              {textOf('kerfMm', kerfMm, system)}
            </text>
          );
        })}
        <line className="strip-measure" x1={x(0)} x2={x(lengthMm)} y1={foot + 14} y2={foot + 14} />
        <line className="strip-measure" x1={x(0)} x2={x(0)} y1={foot + 8} y2={foot + 20} />
        <line className="strip-measure" x1={x(lengthMm)} x2={x(lengthMm)} y1={foot + 8} y2={foot + 20} />
        <text x={WIDTH / 2} y={foot + 40} textAnchor="middle">
          {length}
        </text>
      </g>
    </svg>
  );
}

export function CuttingList(props: StripDrawingProps) {
  return (
    <details>
      <summary>{STRIP_WORDS.cuttingList}</summary>
      <CuttingTable {...props} />
    </details>
  );
}

export function CuttingTable({ strip, system }: StripDrawingProps) {
  const groups = groupOfSlot(strip);
  const unit = unitLabel('mm', system);
  return (
    <table className="answer-table">
      <thead>
        <tr>
          <th scope="col">{STRIP_WORDS.slot}</th>
          <th scope="col">{STRIP_WORDS.fromEnd(unit)}</th>
          <th scope="col">{STRIP_WORDS.kerfColumn(unit)}</th>
          <th scope="col">{STRIP_WORDS.blade}</th>
        </tr>
      </thead>
      <tbody>
        {slotXMm(strip).map((mm, slot) => (
          <tr key={mm}>
            <th scope="row">{slot + 1}</th>
            <td className="number">{shownNumber(mm, 'mm', 1, system)}</td>
            <td className="number">{numberOf('kerfMm', strip.groups[groups[slot]].kerfMm, system)}</td>
            <td>{strip.groups[groups[slot]].blade}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
