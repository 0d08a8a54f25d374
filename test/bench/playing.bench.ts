/** What the player feels: the chart moves with the slider. */
import { defaultBuild } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { actionChangeMm, bestRelief } from '../../src/playing/aim.ts';
import { roomChart } from '../../src/playing/room.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { stringRoom } from '../../src/verdict/string-room.ts';
import { measure, type BenchRow } from './measure.ts';

export default async function bench(): Promise<BenchRow[]> {
  const build = { ...defaultBuild(), fretCount: 24 };
  const prediction = createPredictor().predict(build);
  const { stationXMm, methods } = prediction;
  const { settled, basis } = methods.press;
  const line = { stationXMm, reliefMm: settled.reliefMm };
  const playing = { forceN: 1, pluckMm: 130, direction: 'away' } as const;
  const lines = { stationXMm, baseMm: settled.reliefMm, turnMm: basis.rodMm, least: -1, most: 1 };
  return [
    await measure('room of six strings over 24 frets, whole chart', () => roomChart(setUp(build, line), playing), {
      aimMs: 5,
    }),
    await measure(
      'the same as the page shows it, with what buzzes and where it does first',
      () => stringRoom({ build, prediction }, { strength: 'hard', direction: 'along' }),
      { aimMs: 5 },
    ),
    await measure('lowest action for a line', () => actionChangeMm(setUp(build, line), playing)),
    await measure('best relief for an action', () => bestRelief(build, lines, playing)),
    await measure('best relief and fall-away', () =>
      bestRelief(build, lines, playing, { fromFret: 14, atLastFretMm: 0.3 }),
    ),
  ];
}
