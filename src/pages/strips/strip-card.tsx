/** What goes to the bench: the strip with its slots, what to saw, and blanks for what is read. Only paper shows it. */
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { stripName } from '../../speech/measured/strips.ts';
import { formatQuantity, unitLabel } from '../../speech/quantity.ts';
import { useBackbow } from '../../state/store.ts';
import { CuttingTable, StripDrawing } from './strip-drawing.tsx';

/** Readings that there is room for: the same day, a week, a month, and one more. */
const BLANKS = 4;

function Blank({ unit }: { readonly unit: string }) {
  return (
    <>
      <span className="strip-blank" /> {unit}
    </>
  );
}

export function StripCard({ strip }: { readonly strip: TryStrip }) {
  const system = useBackbow((state) => state.unitSystem);
  const { offcut, slotDepthMm } = strip;
  const mm = (value: number, digits: number) => formatQuantity(value, 'mm', digits, system);
  const [small, load] = [unitLabel('mm', system), unitLabel('g', system)];
  return (
    <article className="strip-card" aria-label={STRIP_WORDS.card}>
      <h2>
        {STRIP_WORDS.card}: {stripName(strip)}
      </h2>
      <p>
        {STRIP_WORDS.cardSizes(
          mm(offcut.lengthMm, 0),
          mm(offcut.widthMm, 1),
          mm(offcut.thicknessMm, 1),
          mm(slotDepthMm, 1),
        )}
      </p>
      <p>{STRIP_WORDS.cardCaution}</p>
      <StripDrawing strip={strip} system={system} />
      <CuttingTable strip={strip} system={system} />
      <h3>{STRIP_WORDS.stiffness}</h3>
      <p>
        {STRIP_WORDS.loadG} <Blank unit={load} /> {STRIP_WORDS.spanMm} <Blank unit={small} /> {STRIP_WORDS.sagMm}{' '}
        <Blank unit={small} />
      </p>
      <h3>{STRIP_WORDS.readings}</h3>
      <ol>
        {Array.from({ length: BLANKS }, (_, row) => (
          <li key={row}>
            {STRIP_WORDS.days} <Blank unit="" /> {STRIP_WORDS.cardWay} <Blank unit={small} />
          </li>
        ))}
      </ol>
    </article>
  );
}
