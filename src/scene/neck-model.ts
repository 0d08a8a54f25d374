/**
 * One neck in the picture: owns its parts, rebuilds those that a change concerns, bows all of them along a line.
 * Nothing in `setLine` and `bow` allocates, except when a part is seen for the first time since it changed.
 */
import { Group, type DataTexture, type Vector4 } from 'three';
import type { Build } from '../neck/build.ts';
import { createBowReader, type BowReader } from '../geometry/bend.ts';
import { PART_IDS, PARTS, partChanged, type PartId } from '../geometry/parts.ts';
import { createBenchShadow, type BenchShadow } from './bench-shadow.ts';
import { createMaterials, type Materials } from './materials.ts';
import { createPart, type Part } from './part.ts';
import type { DrawnLine, ScenePalette, SceneShows } from './types.ts';

export interface NeckModel {
  readonly group: Group;
  readonly materials: Materials;
  readonly shadow: BenchShadow;
  /** Reader of the line drawn now. */
  readonly reader: BowReader;
  part(id: PartId): Part;
  build(): Build;
  setBuild(build: Build): void;
  /** Takes a line: the reader reads it at once, the parts are bowed along it by `bow`. */
  setLine(line: DrawnLine, lift: ArrayLike<number> | undefined): void;
  /** Bows every part that is visible, before a picture is drawn: a picture may follow several lines. */
  bow(): void;
  setShows(shows: Pick<SceneShows, 'strings' | 'rod'>): void;
  setPalette(palette: ScenePalette): void;
  setCut(planes: readonly Vector4[]): void;
  /** Bows along with the neck whatever is given: it is called with every `bow` after a change of the line. */
  follow(follower: (reader: BowReader, lift: ArrayLike<number> | undefined) => void): void;
  /** A fret that somebody else draws (cut open); null = none. This and `setShows` show with the next `setLine` and `bow`. */
  setElsewhere(fret: number | null): void;
  readonly times: { bendMs: number; rebuildMs: number };
  dispose(): void;
}

const OUT_OF_SIGHT = Infinity;

/** Parts that are made when they are next seen; of the others cuts need the shape at once. */
const OFTEN_HIDDEN: ReadonlySet<PartId> = new Set(['rod', 'strings', 'looseFrets']);

export function createNeckModel(grain: DataTexture, first: Build): NeckModel {
  const group = new Group();
  group.matrixAutoUpdate = false;
  const materials = createMaterials(grain);
  const shadow = createBenchShadow(materials.shadow);
  const reader = createBowReader();
  const parts: Record<PartId, Part> = {
    neck: createPart(materials.neck),
    board: createPart(materials.board),
    binding: createPart(materials.binding),
    nut: createPart(materials.plain),
    frets: createPart(materials.wire),
    looseFrets: createPart(materials.wire),
    strings: createPart(materials.strings),
    rod: createPart(materials.strings),
    markers: createPart(materials.plain),
  };
  group.add(shadow.object, ...PART_IDS.map((id) => parts[id].object));
  let build = first;
  const stale = new Set<PartId>();
  let seatedLift = new Float64Array(0);
  let looseLift = new Float64Array(0);
  const followers: ((reader: BowReader, lift: ArrayLike<number> | undefined) => void)[] = [];
  let elsewhere = -1;
  let lift: ArrayLike<number> | undefined;
  let bowIsStale = false;
  const times = { bendMs: 0, rebuildMs: 0 };

  const rebuild = (before: Build | null): void => {
    const start = performance.now();
    for (const id of PART_IDS) {
      if (before !== null && !partChanged(id, before, build)) continue;
      if (OFTEN_HIDDEN.has(id)) stale.add(id);
      else parts[id].setShape(PARTS[id].make(build));
    }
    parts.binding.object.visible = build.bindingLineCount > 0;
    if (seatedLift.length !== build.fretCount) {
      seatedLift = new Float64Array(build.fretCount);
      looseLift = new Float64Array(build.fretCount).fill(OUT_OF_SIGHT);
    }
    materials.setBuild(build);
    times.rebuildMs = performance.now() - start;
  };
  rebuild(null);

  const bow = (): void => {
    if (!bowIsStale) return;
    bowIsStale = false;
    const start = performance.now();
    let anyLoose = false;
    for (let fret = 0; fret < build.fretCount; fret++) {
      const raised = lift?.[fret] ?? 0;
      const loose = raised > 0 && raised !== Infinity && fret !== elsewhere;
      anyLoose ||= loose;
      seatedLift[fret] = raised > 0 || fret === elsewhere ? OUT_OF_SIGHT : 0;
      looseLift[fret] = loose ? raised : OUT_OF_SIGHT;
    }
    parts.looseFrets.object.visible = anyLoose;
    for (const id of PART_IDS) {
      if (!parts[id].object.visible) continue;
      if (stale.delete(id)) parts[id].setShape(PARTS[id].make(build));
      if (id === 'frets') parts[id].bend(reader, seatedLift);
      else if (id === 'looseFrets') parts[id].bend(reader, looseLift);
      else parts[id].bend(reader);
    }
    parts.board.setSeated(lift);
    if (build.bindingLineCount > 0) parts.binding.setSeated(lift);
    shadow.update(build, reader);
    for (const follower of followers) follower(reader, lift);
    times.bendMs = performance.now() - start;
  };

  return {
    group,
    materials,
    shadow,
    reader,
    times,
    part: (id) => parts[id],
    build: () => build,
    setBuild(next) {
      const before = build;
      build = next;
      rebuild(before);
    },
    setLine(line, next) {
      reader.load(line);
      lift = next;
      bowIsStale = true;
    },
    bow,
    follow(follower) {
      followers.push(follower);
    },
    setElsewhere(fret) {
      elsewhere = fret === null ? -1 : fret - 1;
    },
    setShows({ strings, rod }) {
      parts.strings.object.visible = strings;
      parts.rod.object.visible = rod;
      materials.setSeeThrough(rod);
    },
    setPalette: (palette) => materials.setPalette(palette),
    setCut: (planes) => materials.setCut(planes),
    dispose() {
      for (const id of PART_IDS) parts[id].dispose();
      shadow.dispose();
      materials.dispose();
    },
  };
}
