/** The compared necks in one picture: one camera, one light, the bow of all enlarged alike. */
import { lazy, Suspense, useMemo, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import type { LineSource, SceneShows, SceneView } from '../../scene/types.ts';
import { createNeckLine } from '../../state/compare/neck-line.ts';
import { store, useBackbow } from '../../state/store.ts';
import { drawnBowFactor } from '../../state/view-slice.ts';
import { Boundary } from '../../kit/boundary.tsx';
import { BowFactor } from '../workshop/picture/bow-factor.tsx';
import { hasWebGl } from '../workshop/picture/web-gl.ts';
import { useMedia } from '../../kit/use-media.ts';
import { VIEW_WORDS } from '../../speech/en/workshop/workshop.ts';
import { usePalette } from './use-palette.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';

const NeckScene = lazy(async () => ({ default: (await import('../../scene/index.ts')).NeckScene }));

/** Views that show all of them; the cut ones look at one slot. */
const VIEWS: readonly SceneView[] = ['neck', 'edge', 'back'];

export interface PicturedNeck {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly label: string;
  /** What the neck does now, in words. */
  readonly says: string;
}

interface Standing {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly label: string;
  readonly lineSource: LineSource;
}

function stand(necks: readonly PicturedNeck[]): { readonly first: Standing; readonly others: readonly Standing[] } {
  const [first, ...others] = necks.map(({ build, prediction, label }) => ({
    build,
    prediction,
    label,
    lineSource: createNeckLine(store, build, prediction),
  }));
  return { first: first, others };
}

/** Necks with lines that stay the same while builds and predictions do, so that scrubbing leaves the scene alone. */
function useStanding(necks: readonly PicturedNeck[]) {
  const [standing, setStanding] = useState(() => stand(necks));
  const before = [standing.first, ...standing.others];
  const isSame =
    before.length === necks.length &&
    before.every((old, index) => {
      const { build, prediction, label } = necks[index];
      return old.build === build && old.prediction === prediction && old.label === label;
    });
  if (!isSame) setStanding(stand(necks));
  return standing;
}

function Views({ view, setView }: { readonly view: SceneView; readonly setView: (view: SceneView) => void }) {
  return (
    <div className="compare-view">
      <fieldset className="button-row">
        <legend className="visually-hidden">{COMPARE_WORDS.views}</legend>
        {VIEWS.map((each) => (
          <button key={each} type="button" aria-pressed={each === view} onClick={() => setView(each)}>
            {VIEW_WORDS[each].label}
          </button>
        ))}
      </fieldset>
      <BowFactor />
    </div>
  );
}

function Scene({ necks, view, onUnavailable }: SceneProps) {
  const palette = usePalette();
  const units = useBackbow((state) => state.unitSystem);
  const factor = useBackbow(drawnBowFactor);
  const hoveredFret = useBackbow((state) => state.hoveredFret);
  const strung = useBackbow((state) => state.rail.phase !== 'bare' && state.rail.phase !== 'frets');
  const reducedMotion = useMedia('(prefers-reduced-motion: reduce)');
  const { first, others } = useStanding(necks);
  const shows = useMemo<SceneShows>(
    () => ({ strings: strung, straightedge: false, rod: false, arrows: false }),
    [strung],
  );
  return (
    <NeckScene
      build={first.build}
      lineSource={first.lineSource}
      prediction={first.prediction}
      method={first.build.method}
      name={first.label}
      compare={others}
      palette={palette}
      units={units}
      view={view}
      selectedFret={null}
      hoveredFret={hoveredFret}
      onHoverFret={store.getState().hoverFret}
      reducedMotion={reducedMotion}
      shows={shows}
      lift={0}
      liftedFret={null}
      label={COMPARE_WORDS.description(necks.map(({ label, says }) => `${label}: ${says}`).join('; '), String(factor))}
      onUnavailable={onUnavailable}
    />
  );
}

interface SceneProps {
  readonly necks: readonly PicturedNeck[];
  readonly view: SceneView;
  readonly onUnavailable: (reason: string | null) => void;
}

/** @param necks null while the first predictions are being computed */
export function ComparePicture({ necks }: { readonly necks: readonly PicturedNeck[] | null }) {
  const [view, setView] = useState<SceneView>('edge');
  const [canDraw] = useState(hasWebGl);
  const [isLost, setLost] = useState(false);
  const without = <p className="quiet">{COMPARE_WORDS.noPicture}</p>;
  return (
    <section className="compare-sight" aria-label={COMPARE_WORDS.picture}>
      {canDraw && !isLost ? (
        <Boundary fallback={() => without}>
          <Views view={view} setView={setView} />
          <div className="compare-picture">
            {necks ? (
              <Suspense fallback={<p className="quiet">{COMPARE_WORDS.drawing}</p>}>
                <Scene necks={necks} view={view} onUnavailable={(reason) => setLost(reason !== null)} />
              </Suspense>
            ) : (
              <p className="quiet">{COMPARE_WORDS.drawing}</p>
            )}
          </div>
        </Boundary>
      ) : (
        without
      )}
    </section>
  );
}
