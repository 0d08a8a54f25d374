/** The strip from above with its slots, each group with its kerf, and the list to saw by. */
import type { UnitSystem } from '../../neck/units.ts';
import { groupOfSlot, slotXMm } from '../../mechanics/try-strip/layout.ts';
import type { StripContent } from '../../mechanics/try-strip/document.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { formatQuantity, shownNumber, unitLabel } from '../../speech/quantity.ts';

const WIDTH = 640;
const MARGIN = 12;
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
  const slots = slotXMm(strip);
  const groups = groupOfSlot(strip);
  const x = (mm: number) => MARGIN + mm * scale;
  const length = formatQuantity(lengthMm, 'mm', 0, system);
  return (
    <svg
      className="strip-drawing"
      viewBox={`0 0 ${WIDTH} ${tall + 66}`}
      role="img"
      aria-label={STRIP_WORDS.drawing(slots.length, length)}
    >
      <g aria-hidden="true">
        <rect className="strip-wood" x={x(0)} y={24} width={lengthMm * scale} height={tall} />
        {slots.map((mm, slot) => (
          <line
            key={mm}
            className="strip-slot"
            data-group={groups[slot]}
            x1={x(mm)}
            x2={x(mm)}
            y1={24}
            y2={24 + tall}
          />
        ))}
        {strip.groups.map(({ kerfMm }, group) => {
          const own = slots.filter((_, slot) => groups[slot] === group);
          return (
            // oxlint-disable-next-line react/no-array-index-key -- a group is its place
            <text key={group} x={x((own[0] + own.at(-1)!) / 2)} y={16} textAnchor="middle">
              {formatQuantity(kerfMm, 'mm', 2, system)}
            </text>
          );
        })}
        <line className="strip-measure" x1={x(0)} x2={x(lengthMm)} y1={tall + 42} y2={tall + 42} />
        <line className="strip-measure" x1={x(0)} x2={x(0)} y1={tall + 36} y2={tall + 48} />
        <line className="strip-measure" x1={x(lengthMm)} x2={x(lengthMm)} y1={tall + 36} y2={tall + 48} />
        <text x={WIDTH / 2} y={tall + 60} textAnchor="middle">
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
            <td className="number">{shownNumber(strip.groups[groups[slot]].kerfMm, 'mm', 2, system)}</td>
            <td>{strip.groups[groups[slot]].blade}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
