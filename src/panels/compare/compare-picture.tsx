/** The compared necks in one picture: one camera, one light, the bow of all enlarged alike. */
import { Component, lazy, Suspense, useEffect, useMemo, useState, type ReactNode } from 'react';
import type { Build } from '../../build/build.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import type { LineSource, SceneShows, SceneView } from '../../scene/types.ts';
import { createNeckLine } from '../../state/compare/neck-line.ts';
import { store, useBackbow } from '../../state/store.ts';
import { BOW_FACTOR, drawnBowFactor } from '../../state/view-slice.ts';
import { PICTURE_WORDS, VIEW_WORDS } from '../words/panels.ts';
import { usePalette } from './use-palette.ts';
import { COMPARE_WORDS } from './words.ts';

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

/** A scene that breaks leaves the table and the chart alone. */
class Boundary extends Component<{ readonly children: ReactNode; readonly onBroken: () => void }, { broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError(): { broken: boolean } {
    return { broken: true };
  }

  override componentDidCatch(): void {
    this.props.onBroken();
  }

  override render(): ReactNode {
    return this.state.broken ? null : this.props.children;
  }
}

function hasWebGl(): boolean {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null;
  } catch {
    return false;
  }
}

function useReducedMotion(): boolean {
  const [reduced, setReduced] = useState(() => matchMedia('(prefers-reduced-motion: reduce)').matches);
  useEffect(() => {
    const query = matchMedia('(prefers-reduced-motion: reduce)');
    const look = () => setReduced(query.matches);
    query.addEventListener('change', look);
    return () => query.removeEventListener('change', look);
  }, []);
  return reduced;
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
  return { first: first!, others };
}

/** Necks with lines that stay the same while builds and predictions do, so that scrubbing leaves the scene alone. */
function useStanding(necks: readonly PicturedNeck[]) {
  const [standing, setStanding] = useState(() => stand(necks));
  const before = [standing.first, ...standing.others];
  const isSame =
    before.length === necks.length &&
    before.every((old, index) => {
      const { build, prediction, label } = necks[index]!;
      return old.build === build && old.prediction === prediction && old.label === label;
    });
  if (!isSame) setStanding(stand(necks));
  return standing;
}

function Views({ view, setView }: { readonly view: SceneView; readonly setView: (view: SceneView) => void }) {
  const trueScale = useBackbow((state) => state.trueScale);
  const drawn = useBackbow(drawnBowFactor);
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
      <label className="compare-factor">
        <span>{PICTURE_WORDS.enlarged(String(drawn))}</span>
        <input
          type="range"
          min={BOW_FACTOR.min}
          max={BOW_FACTOR.max}
          step={1}
          value={drawn}
          aria-valuetext={PICTURE_WORDS.times(String(drawn))}
          onChange={(event) => store.getState().setBowFactor(event.currentTarget.valueAsNumber)}
        />
      </label>
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

function Scene({ necks, view, onUnavailable }: SceneProps) {
  const palette = usePalette();
  const units = useBackbow((state) => state.unitSystem);
  const factor = useBackbow(drawnBowFactor);
  const hoveredFret = useBackbow((state) => state.hoveredFret);
  const strung = useBackbow((state) => state.rail.phase !== 'bare' && state.rail.phase !== 'frets');
  const reducedMotion = useReducedMotion();
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
  const [isBroken, setBroken] = useState(false);
  const isShown = canDraw && !isBroken;
  return (
    <section aria-label={COMPARE_WORDS.picture}>
      {isShown ? (
        <>
          <Views view={view} setView={setView} />
          <div className="compare-picture">
            {necks ? (
              <Boundary onBroken={() => setBroken(true)}>
                <Suspense fallback={<p className="quiet">{COMPARE_WORDS.drawing}</p>}>
                  <Scene necks={necks} view={view} onUnavailable={(reason) => setBroken(reason !== null)} />
                </Suspense>
              </Boundary>
            ) : (
              <p className="quiet">{COMPARE_WORDS.drawing}</p>
            )}
          </div>
        </>
      ) : (
        <p className="quiet">{COMPARE_WORDS.noPicture}</p>
      )}
    </section>
  );
}
