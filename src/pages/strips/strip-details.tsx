/** A strip that is kept: its drawing, its readings, the next reading, its end. */
import type { Build } from '../../neck/build.ts';
import { signedMm, type TryStrip } from '../../mechanics/try-strip/document.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { stripBowText } from '../../speech/measured/strips.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { useBackbow } from '../../state/store.ts';
import { Stiffness } from './stiffness-form.tsx';
import { overText, ReadingForm } from './reading-form.tsx';
import { StripCard } from './strip-card.tsx';
import { CuttingList, StripDrawing } from './strip-drawing.tsx';

interface StripDetailsProps {
  readonly build: Build;
  readonly strip: TryStrip;
  readonly ownBoard: boolean;
  readonly change: (changed: TryStrip) => void;
  readonly remove: () => void;
}

export function StripDetails({ build, strip, ownBoard, change, remove }: StripDetailsProps) {
  const system = useBackbow((state) => state.unitSystem);
  const { readings } = strip;
  return (
    <section className="strip-part" aria-label={STRIP_WORDS.readings}>
      <StripDrawing strip={strip} system={system} />
      <CuttingList strip={strip} system={system} />
      <h3>{STRIP_WORDS.readings}</h3>
      {readings.length === 0 ? (
        <p>{STRIP_WORDS.noReadings}</p>
      ) : (
        <ul className="strip-readings">
          {readings.map((reading, index) => {
            const bow = stripBowText(signedMm(reading), system);
            return (
              // oxlint-disable-next-line react/no-array-index-key -- two readings may be the same
              <li key={index}>
                <span>
                  {formatQuantity(reading.days, 'day', 0, system)}: <strong>{bow}</strong>, {overText(reading.over)}
                </span>
                <button
                  type="button"
                  aria-label={STRIP_WORDS.removeReading(bow)}
                  onClick={() => change({ ...strip, readings: readings.filter((_, at) => at !== index) })}
                >
                  {STRIP_WORDS.remove}
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <ReadingForm
        build={build}
        strip={strip}
        ownBoard={ownBoard}
        add={(reading) => change({ ...strip, readings: [...readings, reading] })}
      />
      <Stiffness
        key={strip.offcut.stiffness.test}
        build={build}
        strip={strip}
        ownBoard={ownBoard}
        change={(stiffness) => change({ ...strip, offcut: { ...strip.offcut, stiffness } })}
      />
      <StripCard strip={strip} />
      <div className="button-row">
        <button type="button" onClick={() => window.print()}>
          {STRIP_WORDS.printCard}
        </button>
        <button type="button" onClick={remove}>
          {STRIP_WORDS.delete}
        </button>
      </div>
    </section>
  );
}
