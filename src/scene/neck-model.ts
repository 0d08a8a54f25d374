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

function createParts(materials: Materials): Record<PartId, Part> {
  return {
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
}

/** Makes the shapes anew that a change of the build concerns; some of them only when they are next seen. */
function createShapes(parts: Readonly<Record<PartId, Part>>) {
  const stale = new Set<PartId>();
  return {
    rebuild(before: Build | null, build: Build): void {
      for (const id of PART_IDS) {
        if (before !== null && !partChanged(id, before, build)) continue;
        if (OFTEN_HIDDEN.has(id)) stale.add(id);
        else parts[id].setShape(PARTS[id].make(build));
      }
      parts.binding.object.visible = build.bindingLineCount > 0;
    },
    /** The part is about to be seen. */
    show(id: PartId, build: Build): void {
      if (stale.delete(id)) parts[id].setShape(PARTS[id].make(build));
    },
  };
}

/** Heights of the frets in their slots and of those out of them, mm: each fret is in one of the two shapes. */
function createLifts() {
  const lifts = {
    seated: new Float64Array(0),
    loose: new Float64Array(0),
    /** Parts the seated from the loose. @param elsewhere index of a fret that is in neither @returns is any loose? */
    part(lift: ArrayLike<number> | undefined, elsewhere: number, fretCount: number): boolean {
      if (lifts.seated.length !== fretCount) {
        lifts.seated = new Float64Array(fretCount);
        lifts.loose = new Float64Array(fretCount);
      }
      let anyLoose = false;
      for (let fret = 0; fret < fretCount; fret++) {
        const raised = lift?.[fret] ?? 0;
        const loose = raised > 0 && raised !== Infinity && fret !== elsewhere;
        anyLoose ||= loose;
        lifts.seated[fret] = raised > 0 || fret === elsewhere ? OUT_OF_SIGHT : 0;
        lifts.loose[fret] = loose ? raised : OUT_OF_SIGHT;
      }
      return anyLoose;
    },
  };
  return lifts;
}

export function createNeckModel(grain: DataTexture, first: Build): NeckModel {
  const group = new Group();
  group.matrixAutoUpdate = false;
  const materials = createMaterials(grain);
  const shadow = createBenchShadow(materials.shadow);
  const reader = createBowReader();
  const parts = createParts(materials);
  group.add(shadow.object, ...PART_IDS.map((id) => parts[id].object));
  let build = first;
  const shapes = createShapes(parts);
  const lifts = createLifts();
  const followers: ((reader: BowReader, lift: ArrayLike<number> | undefined) => void)[] = [];
  let elsewhere = -1;
  let lift: ArrayLike<number> | undefined;
  let bowIsStale = false;
  const times = { bendMs: 0, rebuildMs: 0 };

  const rebuild = (before: Build | null): void => {
    const start = performance.now();
    shapes.rebuild(before, build);
    materials.setBuild(build);
    times.rebuildMs = performance.now() - start;
  };
  rebuild(null);

  const bow = (): void => {
    if (!bowIsStale) return;
    bowIsStale = false;
    const start = performance.now();
    parts.looseFrets.object.visible = lifts.part(lift, elsewhere, build.fretCount);
    for (const id of PART_IDS) {
      if (!parts[id].object.visible) continue;
      shapes.show(id, build);
      if (id === 'frets') parts[id].bend(reader, lifts.seated);
      else if (id === 'looseFrets') parts[id].bend(reader, lifts.loose);
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
