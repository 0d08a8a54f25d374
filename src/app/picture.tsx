/** The picture of the neck with what belongs to it: the view, the factor of the bow, the fret in view. */
import { lazy, memo, Suspense, useEffect, useState, type ReactNode } from 'react';
import type { ScenePalette, SceneShows, Unavailable } from '../scene/types.ts';
import { createFretDrop } from '../state/fret-drop.ts';
import { useDrawnSolution } from '../state/follow.ts';
import { store, useBackbow } from '../state/store.ts';
import { currentStress } from '../state/stress-view.ts';
import { Boundary } from '../kit/boundary.tsx';
import { keepPicture } from '../pages/papers/picture-source.ts';
import { hasWebGl } from '../pages/workshop/picture/web-gl.ts';
import { useMedia } from '../kit/use-media.ts';
import { SCENE_WORDS } from '../speech/en/workshop/scene.ts';
import { PICTURE_WORDS } from '../speech/en/workshop/workshop.ts';
import { NotComputed } from '../pages/workshop/not-computed.tsx';
import { probe } from './probe.ts';
import { useDescription } from './use-description.ts';

const NeckScene = lazy(async () => ({ default: (await import('../scene/index.ts')).NeckScene }));

const drawnLine = createFretDrop(store);

function Placeholder({ children }: { readonly children: ReactNode }) {
  return <div className="picture-placeholder">{children}</div>;
}

interface SceneProps {
  readonly palette: ScenePalette;
  readonly unavailable: (reason: Unavailable | null) => void;
}

/** The scene by itself: nothing of the rail is read here, so that scrubbing renders none of it. */
const Scene = memo(function Scene({ palette, unavailable }: SceneProps) {
  const solution = useDrawnSolution();
  const fallbackBuild = useBackbow((state) => (state.solution ? null : state.build));
  const units = useBackbow((state) => state.unitSystem);
  const view = useBackbow((state) => state.view);
  const selectedFret = useBackbow((state) => state.selectedFret);
  const hoveredFret = useBackbow((state) => state.hoveredFret);
  const lifted = useBackbow((state) => state.lifted);
  const strung = useBackbow((state) => state.rail.phase !== 'bare' && state.rail.phase !== 'frets');
  const showRod = useBackbow((state) => state.showRod);
  const showArrows = useBackbow((state) => state.showArrows);
  const stress = useBackbow(currentStress);
  const swing = useBackbow((state) => state.swing);
  const reducedMotion = useMedia('(prefers-reduced-motion: reduce)');
  const label = useDescription();
  useEffect(() => {
    probe.sceneRenders += 1;
  });
  const build = solution?.build ?? fallbackBuild!;
  const shows: SceneShows = { strings: strung, straightedge: view === 'edge', rod: showRod, arrows: showArrows };
  return (
    <NeckScene
      ref={keepPicture}
      build={build}
      lineSource={drawnLine}
      prediction={solution?.prediction ?? null}
      method={build.method}
      palette={palette}
      units={units}
      view={view}
      selectedFret={Math.min(selectedFret, build.fretCount)}
      hoveredFret={hoveredFret}
      onHoverFret={store.getState().hoverFret}
      onPickFret={store.getState().selectFret}
      reducedMotion={reducedMotion}
      shows={shows}
      lift={lifted ? 1 : 0}
      liftedFret={selectedFret}
      stress={stress}
      swing={swing}
      label={label}
      onFrame={(frames) => {
        probe.frames = frames;
      }}
      onUnavailable={unavailable}
    />
  );
});

export function Picture({ palette }: { readonly palette: ScenePalette }) {
  const [reason, setReason] = useState<Unavailable | null>(() => (hasWebGl() ? null : 'noWebGl'));
  // Without WebGL there is nothing to mount; a lost context may come back, so the scene stays mounted under the notice.
  const [canDraw] = useState(reason === null);
  return (
    <section className="picture" data-keep-clear aria-label={PICTURE_WORDS.title}>
      <div className="picture-frame">
        {canDraw && (
          <Boundary
            fallback={(retry) => (
              <Placeholder>
                <p>{PICTURE_WORDS.unavailableWhy(PICTURE_WORDS.broke)}</p>
                <button type="button" onClick={retry}>
                  {PICTURE_WORDS.retry}
                </button>
              </Placeholder>
            )}
          >
            <Suspense
              fallback={
                <Placeholder>
                  <p className="quiet">{PICTURE_WORDS.loading}</p>
                </Placeholder>
              }
            >
              <Scene palette={palette} unavailable={setReason} />
            </Suspense>
          </Boundary>
        )}
        <NotComputed says={PICTURE_WORDS.straight} />
        {reason !== null && (
          <Placeholder>
            <output>
              <strong>{PICTURE_WORDS.unavailable}.</strong> {PICTURE_WORDS.unavailableWhy(SCENE_WORDS[reason])}
            </output>
          </Placeholder>
        )}
      </div>
    </section>
  );
}
