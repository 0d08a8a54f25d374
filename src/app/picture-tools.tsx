/** The bar under the picture: its views, the factor of the bow, what else is shown, and the fret in view. */
import { SCENE_VIEWS } from '../scene/types.ts';
import { store, useBackbow } from '../state/store.ts';
import { isCutOpen } from '../state/stress-view.ts';
import { ActionButton } from '../pages/workshop/actions/action-button.tsx';
import { BowFactor } from '../pages/workshop/picture/bow-factor.tsx';
import { PICTURE_WORDS } from '../speech/en/workshop/workshop.ts';

function FretInView() {
  const fret = useBackbow((state) => Math.min(state.selectedFret, state.build.fretCount));
  const count = useBackbow((state) => state.build.fretCount);
  return (
    <div className="fret-in-view button-row">
      <ActionButton id="previous-fret">‹ {PICTURE_WORDS.nutwards}</ActionButton>
      <label>
        <span>{PICTURE_WORDS.fret}</span>{' '}
        <select value={fret} onChange={(event) => store.getState().selectFret(Number(event.currentTarget.value))}>
          {Array.from({ length: count }, (_, index) => (
            <option key={index} value={index + 1}>
              {index + 1}
            </option>
          ))}
        </select>
      </label>
      <ActionButton id="next-fret">{PICTURE_WORDS.bodywards} ›</ActionButton>
    </div>
  );
}

/** Which view of the neck the picture shows. */
function PictureViews() {
  return (
    <fieldset className="views">
      <legend className="visually-hidden">{PICTURE_WORDS.views}</legend>
      {SCENE_VIEWS.map((view) => (
        <ActionButton key={view} id={`view-${view}`} />
      ))}
    </fieldset>
  );
}

/** Nothing of it lies over the picture. */
export function PictureBar() {
  const view = useBackbow((state) => state.view);
  return (
    <section className="picture-bar" data-keep-clear aria-label={PICTURE_WORDS.shownGroup}>
      <PictureViews />
      <BowFactor />
      <fieldset className="shown button-row">
        <legend className="visually-hidden">{PICTURE_WORDS.shownGroup}</legend>
        <ActionButton id="lift">{PICTURE_WORDS.lift}</ActionButton>
        {!isCutOpen(view) && (
          <>
            <ActionButton id="rod">{PICTURE_WORDS.rod}</ActionButton>
            <ActionButton id="arrows">{PICTURE_WORDS.forces}</ActionButton>
          </>
        )}
        {view === 'slot' && <ActionButton id="stress">{PICTURE_WORDS.stress}</ActionButton>}
      </fieldset>
      <FretInView />
    </section>
  );
}
