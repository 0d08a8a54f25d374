/** The moment of the job that all necks are shown at: the same as on the rail. */
import { railStops, stopIndex } from '../../verdict/rail.ts';
import { Slider } from '../../kit/slider/slider.tsx';
import { store, useBackbow } from '../../state/store.ts';
import { ActionButton } from '../workshop/actions/action-button.tsx';
import { railText } from '../workshop/rail/rail-text.ts';
import { RAIL_WORDS } from '../../speech/en/workshop/workshop.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';

export function MomentControl() {
  const build = useBackbow((state) => state.build);
  const prediction = useBackbow((state) => state.solution?.prediction);
  const rail = useBackbow((state) => state.rail);
  const stops = railStops(build);
  const index = stopIndex(stops, rail);
  const { setPlaying, setRail } = store.getState();
  return (
    <section className="compare-moment" aria-label={RAIL_WORDS.title}>
      <div className="button-row">
        <ActionButton id="play" />
        <ActionButton id="step-back" />
        <ActionButton id="step-on" />
      </div>
      <Slider
        aria-label={COMPARE_WORDS.moment}
        aria-valuetext={railText(build, stops[index], prediction)}
        min={0}
        max={stops.length - 1}
        step={1}
        value={index}
        slide={(stop) => {
          setPlaying(false);
          setRail(stops[stop]);
        }}
      />
      <strong>{railText(build, rail, prediction)}</strong>
    </section>
  );
}
