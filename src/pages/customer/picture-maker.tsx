/** Draws the pictures of the page one after the other in one scene out of sight, and hands each over as a file. */
import { useEffect, useRef, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import { lineOf, type ShownMoment } from './moments.ts';
import { createLineSource, NeckScene, type NeckSceneHandle, type ScenePalette } from '../../scene/index.ts';

export interface PictureTask {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly moment: ShownMoment;
}

interface PictureMakerProps {
  readonly tasks: readonly PictureTask[];
  readonly palette: ScenePalette;
  readonly units: UnitSystem;
  /** How many times larger than life the bow is drawn. */
  readonly factor: number;
  readonly onPicture: (index: number, picture: Blob) => void;
  readonly onUnavailable: () => void;
}

export const PICTURE_SIZE = { widthPx: 960, heightPx: 540 } as const;

const PLAIN = { strings: false, straightedge: false, rod: false, arrows: false } as const;
const STRUNG = { ...PLAIN, strings: true } as const;

/** Mounted for as long as pictures are wanted. */
export function PictureMaker({ tasks, palette, units, factor, onPicture, onUnavailable }: PictureMakerProps) {
  const [index, setIndex] = useState(0);
  const scene = useRef<NeckSceneHandle>(null);
  const [drawn, setDrawn] = useState(-1);
  const task = tasks[index];
  const [source] = useState(() => createLineSource(drawnLine(tasks[0], factor)));
  const say = useRef({ onPicture, onUnavailable });
  useEffect(() => {
    say.current = { onPicture, onUnavailable };
  });

  useEffect(() => {
    if (task) source.set(drawnLine(task, factor));
  }, [task, source, factor]);

  useEffect(() => {
    if (drawn !== index || !scene.current) return undefined;
    let isOver = false;
    scene.current.exportPng(PICTURE_SIZE).then(
      (picture) => {
        if (isOver) return;
        say.current.onPicture(index, picture);
        setIndex(index + 1);
      },
      () => say.current.onUnavailable(),
    );
    return () => {
      isOver = true;
    };
  }, [drawn, index]);

  if (!task) return null;
  return (
    <div className="picture-maker" inert>
      <NeckScene
        ref={scene}
        build={task.build}
        lineSource={source}
        prediction={task.prediction}
        method={task.build.method}
        palette={palette}
        units={units}
        view="neck"
        selectedFret={null}
        reducedMotion
        shows={task.moment === 'fretted' ? PLAIN : STRUNG}
        lift={0}
        liftedFret={null}
        label=""
        onFrame={() => setDrawn(index)}
        onUnavailable={(reason) => {
          if (reason !== null) say.current.onUnavailable();
        }}
      />
    </div>
  );
}

function drawnLine(task: PictureTask, factor: number) {
  return {
    xMm: task.prediction.stationXMm,
    reliefMm: lineOf(task, task.moment).reliefMm,
    factor,
  };
}
