/** Pictures of the choices as addresses, and what draws them; it is loaded only when there is something to draw. */
import { lazy, Suspense, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { ScenePalette } from '../../scene/types.ts';
import type { Solved } from '../../state/share/solve-choices.ts';
import type { PictureTask } from './picture-maker.tsx';

const PictureMaker = lazy(async () => ({ default: (await import('./picture-maker.tsx')).PictureMaker }));

export interface Pictures {
  /** By choice; undefined while it is being drawn. */
  readonly addresses: readonly (string | undefined)[];
  readonly unavailable: boolean;
  /** To be put anywhere on the page. */
  readonly maker: ReactNode;
}

interface Wanted {
  readonly builds: readonly Build[];
  readonly choices: readonly Solved[];
  readonly palette: ScenePalette;
  readonly units: UnitSystem;
  readonly factor: number;
}

export function usePictures({ builds, choices, palette, units, factor }: Wanted): Pictures {
  const [addresses, setAddresses] = useState<readonly (string | undefined)[]>([]);
  const [unavailable, setUnavailable] = useState(false);
  const made = useRef<string[]>([]);
  const predictions = choices.map(({ prediction }) => prediction);
  const isReady = predictions.length === builds.length && predictions.every((prediction) => prediction !== null);
  const tasks = useMemo(
    () => (isReady ? builds.map((build, index): PictureTask => ({ build, prediction: predictions[index] })) : null),
    // The predictions of a build do not change; only when all are there matters.
    // oxlint-disable-next-line react/exhaustive-deps
    [builds, isReady],
  );
  useEffect(
    () => () => {
      for (const address of made.current) URL.revokeObjectURL(address);
      made.current = [];
    },
    [],
  );
  const isDone = tasks !== null && tasks.every((_, index) => addresses[index] !== undefined);
  const maker =
    tasks && !unavailable && !isDone ? (
      <Suspense>
        <PictureMaker
          tasks={tasks}
          palette={palette}
          units={units}
          factor={factor}
          onPicture={(index, picture) => {
            const address = URL.createObjectURL(picture);
            made.current.push(address);
            setAddresses((old) => tasks.map((_, at) => (at === index ? address : old[at])));
          }}
          onUnavailable={() => setUnavailable(true)}
        />
      </Suspense>
    ) : null;
  return { addresses, unavailable, maker };
}
