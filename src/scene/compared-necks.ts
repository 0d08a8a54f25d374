/** Further necks in the same picture: same light, same camera, same exaggeration, each with its own line. */
import { Group, type DataTexture } from 'three';
import { boardWidthMm, lastFretMm } from '../neck/neck-shape.ts';
import type { Build } from '../neck/build.ts';
import { createNeckModel, type NeckModel } from './neck-model.ts';
import type { ComparedNeck, ScenePalette, SceneShows, SceneView } from './types.ts';

export interface StandingModel {
  readonly model: NeckModel;
  readonly neck: ComparedNeck;
  offset: [number, number, number];
}

export interface ComparedNecks {
  readonly group: Group;
  list(): readonly StandingModel[];
  /** Takes the necks of this render; those that stay are kept. @returns true when something has to be drawn anew */
  setNecks(necks: readonly ComparedNeck[]): boolean;
  /** Places all of them beside the first neck: behind it, or below it when seen edge-on. */
  arrange(first: Build, view: SceneView): void;
  setLook(palette: ScenePalette, shows: Pick<SceneShows, 'strings' | 'rod'>, visible: boolean): void;
  dispose(): void;
}

const GAP = 1.55;
const BELOW_MM = 78;

export function createComparedNecks(grain: DataTexture, onLine: () => void): ComparedNecks {
  const group = new Group();
  group.matrixAutoUpdate = false;
  let standing: (StandingModel & { stop: () => void })[] = [];
  const remove = (entry: (typeof standing)[number]): void => {
    entry.stop();
    group.remove(entry.model.group);
    entry.model.dispose();
  };
  const readLine = (model: NeckModel, neck: ComparedNeck): void => {
    const line = neck.lineSource.read();
    model.setLine(line, line.liftMm);
  };
  return {
    group,
    list: () => standing,
    setNecks(necks) {
      const unchanged = necks.length === standing.length && necks.every((neck, i) => standing[i].neck === neck);
      if (unchanged) return false;
      const before = standing;
      standing = necks.map((neck, i) => {
        const old = before[i];
        const model = old?.model ?? createNeckModel(grain, neck.build);
        old?.stop();
        if (old && old.neck.build !== neck.build) model.setBuild(neck.build);
        if (!old) group.add(model.group);
        const stop = neck.lineSource.subscribe(() => {
          readLine(model, neck);
          onLine();
        });
        return { model, neck, offset: [0, 0, 0], stop };
      });
      for (const extra of before.slice(necks.length)) remove(extra);
      return true;
    },
    arrange(first, view) {
      let behind = boardWidthMm(first, lastFretMm(first)) / 2;
      standing.forEach((entry, i) => {
        const { build } = entry.neck;
        const half = boardWidthMm(build, lastFretMm(build)) / 2;
        // The first neck stands nearest to the viewer, the others behind it (z < 0).
        const z = -(behind + half * GAP);
        behind += 2 * half * GAP;
        entry.offset = view === 'edge' ? [0, -BELOW_MM * (i + 1), 0] : [0, 0, z];
        entry.model.group.matrix.makeTranslation(...entry.offset);
        entry.model.group.matrixWorldNeedsUpdate = true;
      });
    },
    setLook(palette, shows, visible) {
      group.visible = visible;
      for (const { model, neck } of standing) {
        model.setPalette(palette);
        model.setShows(shows);
        readLine(model, neck);
      }
    },
    dispose() {
      for (const entry of standing) remove(entry);
      standing = [];
    },
  };
}
