/** How many times larger than life pictures draw the bow: chosen from the bow until a hand sets it. */
import { useId } from 'react';
import { Slider } from '../../../kit/slider/slider.tsx';
import { store, useBackbow } from '../../../state/store.ts';
import { BOW_FACTOR } from '../../../state/bow-factor.ts';
import { drawnBowFactor } from '../../../state/view-slice.ts';
import { PICTURE_WORDS } from '../../../speech/en/workshop/workshop.ts';

export function BowFactor() {
  const id = useId();
  const trueScale = useBackbow((state) => state.trueScale);
  const isByHand = useBackbow((state) => state.bowFactor !== null);
  const drawn = useBackbow(drawnBowFactor);
  return (
    <div className="bow-factor">
      <label htmlFor={id}>{PICTURE_WORDS.enlarged(String(drawn))}</label>
      <Slider
        id={id}
        min={BOW_FACTOR.min}
        max={BOW_FACTOR.max}
        step={1}
        value={drawn}
        aria-valuetext={PICTURE_WORDS.times(String(drawn))}
        slide={(factor) => store.getState().setBowFactor(factor)}
      />
      {isByHand && (
        <button type="button" className="link" onClick={() => store.getState().setBowFactor(null)}>
          {PICTURE_WORDS.chosenFactor}
        </button>
      )}
      <label className="tick">
        <input
          type="checkbox"
          checked={trueScale}
          onChange={(event) => store.getState().setTrueScale(event.currentTarget.checked)}
        />
        {PICTURE_WORDS.trueSize}
      </label>
    </div>
  );
}
