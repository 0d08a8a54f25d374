/** Pictures of the choices as addresses, and what draws them; it is loaded only when there is something to draw. */
import { lazy, Suspense, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { ScenePalette } from '../../scene/types.ts';
import { MOMENTS, type KnownChoice, type ShownMoment } from './moments.ts';
import type { PictureTask } from './picture-maker.tsx';

const PictureMaker = lazy(async () => ({ default: (await import('./picture-maker.tsx')).PictureMaker }));

export interface Pictures {
  /** Undefined while it is being drawn. @param place among the choices that are drawn */
  readonly addressOf: (place: number, moment: ShownMoment) => string | undefined;
  readonly unavailable: boolean;
  /** To be put anywhere on the page. */
  readonly maker: ReactNode;
}

interface Wanted {
  /** Those that are drawn; null while one of them is being computed. They stay the same until then. */
  readonly choices: readonly KnownChoice[] | null;
  readonly palette: ScenePalette;
  readonly units: UnitSystem;
  readonly factor: number;
}

export function usePictures({ choices, palette, units, factor }: Wanted): Pictures {
  const [addresses, setAddresses] = useState<readonly (string | undefined)[]>([]);
  const [unavailable, setUnavailable] = useState(false);
  const made = useRef<string[]>([]);
  // The first moment of every choice is in sight first.
  const tasks = useMemo(
    () =>
      choices &&
      MOMENTS.flatMap((moment) => choices.map(({ build, prediction }): PictureTask => ({ build, prediction, moment }))),
    [choices],
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
  const count = choices?.length ?? 0;
  const addressOf: Pictures['addressOf'] = (place, moment) => addresses[MOMENTS.indexOf(moment) * count + place];
  return { addressOf, unavailable, maker };
}
