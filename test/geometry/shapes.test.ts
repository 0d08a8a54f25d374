/** Sizes and places of the shapes against closed forms and against the fretwork numbers. */
import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import {
  boardEndMm,
  boardRadiusMm,
  boardWidthMm,
  bodyJointMm,
  fretPositionsMm,
  meanSagittaMm,
  stringPlacesMm,
} from '../../src/neck/neck-shape.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { arcMm } from '../../src/fretwork/arc.ts';
import { fretEnd, fretEnds } from '../../src/fretwork/ends.ts';
import { workingKerfMm } from '../../src/neck/kerf.ts';
import { bindingMeshes, boardMeshes } from '../../src/geometry/board.ts';
import { mergeMeshes } from '../../src/geometry/merge.ts';
import { crownAreaMm2 } from './areas.ts';
import { crownMesh, fretsMesh, tangMesh } from '../../src/geometry/frets.ts';
import type { Mesh } from '../../src/geometry/mesh.ts';
import { neckMesh } from '../../src/geometry/neck.ts';
import { PARTS, PART_IDS } from '../../src/geometry/parts.ts';
import { stringHeightMm } from '../../src/geometry/strings.ts';
import { studPlacesMm, studShape } from '../../src/geometry/tang.ts';
import { expectNear } from '../expect-near.ts';
import { commonVolumeMm3, signedVolumeMm3, solidOf } from './solid.ts';

const boardMesh = (build: Build): Mesh => mergeMeshes(boardMeshes(build));

/** Facets against true curves; the issue asks for half a per cent. */
const FACETS = 0.005;
const WHY_FACETS = 'plane facets instead of arcs';
/** A micrometre. */
const MICROMETRE = 1e-3;

function extent(mesh: Mesh, axis: 0 | 1 | 2): [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (let i = axis; i < mesh.positions.length; i += 3) {
    least = Math.min(least, mesh.positions[i]);
    most = Math.max(most, mesh.positions[i]);
  }
  return [least, most];
}

const builds: [string, Build][] = PRESETS.map(({ id, build }) => [id, build]);

describe.each(builds)('%s', (_, build) => {
  test('the board has the volume of its cylinder or cone segment less its slots', () => {
    // Integral over x of width·(thickness − mean sagitta), by Simpson; the bindings belong to the board.
    const end = boardEndMm(build);
    const area = (x: number): number => {
      const width = boardWidthMm(build, x);
      return width * (build.boardThicknessMm - meanSagittaMm(boardRadiusMm(build, x), width));
    };
    const steps = 200;
    let whole = 0;
    for (let i = 0; i <= steps; i++) {
      const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
      whole += (weight * area((end * i) / steps) * end) / steps / 3;
    }
    const kerf = workingKerfMm(build, build.method);
    const { chamferMm: c } = build;
    let slots = 0;
    for (const fret of fretEnds(build)) {
      const length = 2 * fret.slotHalfMm;
      const depth =
        build.slotBottom === 'flat' ? build.slotDepthMm - meanSagittaMm(fret.radiusMm, length) : build.slotDepthMm;
      slots += length * (kerf * depth + c * c);
    }
    const made =
      boardMeshes(build).reduce((sum, mesh) => sum + solidOf(mesh).volumeMm3, 0) +
      bindingMeshes(build).reduce((sum, { mesh }) => sum + solidOf(mesh).volumeMm3, 0);
    expectNear(made, whole - slots, FACETS, WHY_FACETS);
  });

  test('the shaft has the volume of its sections', () => {
    // ∫ w·(s + (D − s)·a(p)) dx with a(p) = Γ(1 + 1/p)²/Γ(1 + 2/p), the area of a quarter superellipse (DLMF 5.12).
    const gamma = (value: number): number => {
      // Stirling's series after shifting the argument up by 8 (Abramowitz & Stegun 6.1.37), good to 1e-12 there.
      let [shifted, product] = [value, 1];
      while (shifted < value + 8) {
        product *= shifted;
        shifted += 1;
      }
      const series = 1 + 1 / (12 * shifted) + 1 / (288 * shifted ** 2) - 139 / (51840 * shifted ** 3);
      return (Math.sqrt((2 * Math.PI) / shifted) * (shifted / Math.E) ** shifted * series) / product;
    };
    const p = build.backExponent;
    const share = gamma(1 + 1 / p) ** 2 / gamma(1 + 2 / p);
    const mesh = neckMesh(build);
    // Signed volume of the part between two sections: clipped with a box by manifold-3d.
    const [from, to] = [20, 120];
    const box = boxMesh([from, -100, -100], [to, 100, 100]);
    const steps = 100;
    let whole = 0;
    for (let i = 0; i < steps; i++) {
      const x = from + ((to - from) * (i + 0.5)) / steps;
      const depth =
        build.thicknessFret1Mm +
        ((build.thicknessFret12Mm - build.thicknessFret1Mm) * (x - fretX(build, 1))) /
          (fretX(build, 12) - fretX(build, 1)) -
        build.boardThicknessMm;
      whole +=
        (boardWidthMm(build, x) * (build.backShoulderMm + (depth - build.backShoulderMm) * share) * (to - from)) /
        steps;
    }
    expectNear(commonVolumeMm3(mesh, box), whole, FACETS, WHY_FACETS);
  });

  test('a square crown has the volume of its profile times its length along the centroid', () => {
    const end = fretEnd(build, 5);
    const area = crownAreaMm2(build.crownWidthMm, build.crownHeightMm);
    const length = 2 * (arcMm(end.radiusMm, end.boardHalfMm) + build.oversizeMm);
    // Pappus: the profile's centroid runs on a circle larger by its height, about 0.45 of the crown's, over the radius.
    const stretch = end.radiusMm === Infinity ? 1 : 1 + (0.45 * build.crownHeightMm) / end.radiusMm;
    expectNear(solidOf(crownMesh(build, end, 'loose')).volumeMm3, area * length * stretch, FACETS, WHY_FACETS);
  });

  test('a plain tang has the volume of a plate bent along the arc', () => {
    const end = fretEnd(build, 5);
    const { tangWidthMm: w, tangDepthMm: t } = build;
    // Area between the two arcs inside |z| ≤ b: ∫(√(R² − z²) − √((R − t)² − z²)) dz; flat: 2·b·t.
    const under = (radius: number): number => {
      const b = end.tangHalfMm;
      return b * Math.sqrt(radius * radius - b * b) + radius * radius * Math.asin(b / radius);
    };
    const area = end.radiusMm === Infinity ? 2 * end.tangHalfMm * t : under(end.radiusMm) - under(end.radiusMm - t);
    expectNear(solidOf(tangMesh(build, end, 'seated')).volumeMm3, area * w, FACETS, WHY_FACETS);
  });

  test('the top of each fret is the surface plus the crown height, within a micrometre', () => {
    for (const end of fretEnds(build)) {
      const [, top] = extent(crownMesh(build, end, 'seated'), 1);
      expect(Math.abs(top - build.crownHeightMm)).toBeLessThan(MICROMETRE);
    }
  });

  test('each fret stands over its slot at the ISO 16 place', () => {
    const places = fretPositionsMm(build.scaleLengthMm, build.fretCount);
    for (const end of fretEnds(build)) {
      const [from, to] = extent(crownMesh(build, end, 'seated'), 0);
      expect(Math.abs((from + to) / 2 - places[end.fret - 1])).toBeLessThan(MICROMETRE);
      expect(Math.abs(to - from - build.crownWidthMm)).toBeLessThan(MICROMETRE);
    }
  });

  test('crown, tang and slot end where the fretwork numbers say', () => {
    for (const end of [fretEnd(build, 1), fretEnd(build, build.fretCount)]) {
      const [, crown] = extent(crownMesh(build, end, 'seated'), 2);
      expectNear(crown, end.crownFootHalfMm, 0.005, 'the easing of the edges, a few hundredths of a millimetre');
      const [, tang] = extent(tangMesh(build, end, 'seated'), 2);
      expect(Math.abs(tang - end.tangHalfMm)).toBeLessThan(MICROMETRE);
      // The board widens by this much from the middle of the slot to its wall on the body side.
      const widening =
        (((build.widthLastFretMm - build.widthNutMm) / 2 / fretX(build, build.fretCount)) *
          workingKerfMm(build, build.method)) /
        2;
      expect(Math.abs(slotEndMm(build, end.xMm) - end.slotHalfMm - widening)).toBeLessThan(MICROMETRE);
    }
  });

  test('the tang lies inside its slot: none of its body is in the wood, only its studs bite', () => {
    const narrow: Build = {
      ...build,
      kerfMm: Math.max(build.kerfMm, build.tangWidthMm + 0.02),
      slotDepthMm: build.tangDepthMm + 0.6,
    };
    const end = fretEnd(narrow, 5);
    const board = boardMesh(narrow);
    // A fortieth of a cubic millimetre is a few micrometres over the faces of the tang: facets of slot and tang differ.
    expect(commonVolumeMm3(tangMesh(narrow, end, 'seated'), board)).toBeLessThan(0.025);
    const biting = commonVolumeMm3(
      tangMesh({ ...narrow, studWidthMm: workingKerfMm(narrow, narrow.method) + 0.2 }, end, 'cut'),
      board,
    );
    expect(biting).toBeGreaterThan(0.3);
  });
});

function fretX(build: Build, fret: number): number {
  return build.scaleLengthMm * (1 - 2 ** (-fret / 12));
}

function boxMesh(low: readonly number[], high: readonly number[]): Mesh {
  const positions: number[] = [];
  for (const x of [low[0], high[0]])
    for (const y of [low[1], high[1]]) for (const z of [low[2], high[2]]) positions.push(x, y, z);
  // Corner number = 4·(x high) + 2·(y high) + (z high).
  const faces = [
    [0, 1, 3, 2],
    [4, 6, 7, 5],
    [0, 4, 5, 1],
    [2, 3, 7, 6],
    [0, 2, 6, 4],
    [1, 5, 7, 3],
  ];
  return {
    positions: Float32Array.from(positions),
    normals: new Float32Array(24),
    indices: Uint32Array.from(faces.flatMap(([a, b, c, d]) => [a, b, c, a, c, d])),
    anchorsMm: Float64Array.of(0),
    anchorOf: new Uint16Array(8),
  };
}

/** Farthest z at which some mesh of board or binding has a corner on a slot wall of the fret at x. */
function slotEndMm(build: Build, x: number): number {
  const half = workingKerfMm(build, build.method) / 2;
  let most = 0;
  for (const mesh of [...boardMeshes(build), ...bindingMeshes(build).map(({ mesh }) => mesh)]) {
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const onWall = Math.abs(Math.abs(mesh.positions[i] - x) - half) < 1e-3;
      // The floor's corners lie deep in the board.
      if (
        onWall &&
        mesh.positions[i + 1] < -build.slotDepthMm * 0.9 &&
        mesh.positions[i + 1] > -build.boardThicknessMm + 0.05
      ) {
        most = Math.max(most, mesh.positions[i + 2]);
      }
    }
  }
  return most;
}

test('the box for clipping is a closed solid', () => {
  expectNear(signedVolumeMm3(boxMesh([0, 0, 0], [2, 3, 4])), 24, 1e-6, 'single precision');
});

test('studs have the area, the width and the pitch of the build', () => {
  const build = defaultBuild();
  const { lengthMm, topMm, bottomMm, heightMm } = studShape(build, 5);
  expectNear(lengthMm * (bottomMm - topMm), build.studAreaMm2, 1e-12, 'rounding');
  expectNear(2 * heightMm + build.tangWidthMm, build.studWidthMm, 1e-12, 'rounding');
  const places = studPlacesMm(build, 5, 25);
  for (let i = 1; i < places.length; i++) expectNear(places[i] - places[i - 1], build.studPitchMm, 1e-12, 'rounding');
  const [from, to] = extent(tangMesh(build, fretEnd(build, 5), 'cut'), 0);
  expect(Math.abs(to - from - build.studWidthMm)).toBeLessThan(MICROMETRE);
});

test('the crown area is that of a fine polygon', () => {
  for (const [width, height] of [
    [2.4, 1.2],
    [1.4, 1.6],
  ] as const) {
    const steps = 20_000;
    let sum = 0;
    const build = { ...defaultBuild(), crownWidthMm: width, crownHeightMm: height, boardShape: 'flat' as const };
    const foot = Math.min(0.12 * height, 0.15);
    const rise = height - foot;
    const half = width / 2;
    for (let i = 0; i < steps; i++) {
      const x = -half + (width * (i + 0.5)) / steps;
      const rho = (half * half + rise * rise) / (2 * rise);
      const arc = rise <= half ? rise - rho + Math.sqrt(rho * rho - x * x) : rise * Math.sqrt(1 - (x / half) ** 2);
      sum += ((foot + arc) * width) / steps;
    }
    expectNear(crownAreaMm2(width, height), sum, 1e-5, 'midpoint rule with 20 000 strips');
    expect(build.crownWidthMm).toBe(width);
  }
});

test('strings lie between the edges with equal gaps, at their heights', () => {
  const build = defaultBuild();
  const places = stringPlacesMm(build, 0);
  expect(places).toHaveLength(build.strings.length);
  expectNear(-places[0], build.widthNutMm / 2 - build.stringEdgeMm, 1e-12, 'rounding');
  expectNear(places.at(-1) as number, build.widthNutMm / 2 - build.stringEdgeMm, 1e-12, 'rounding');
  const gaps = places
    .slice(1)
    .map((place, i) => place - places[i] - (build.strings[i].diameterMm + build.strings[i + 1].diameterMm) / 2);
  for (const gap of gaps) expectNear(gap, gaps[0], 1e-9, 'rounding');
  expectNear(stringHeightMm(build, fretX(build, 12)), build.stringHeightFret12Mm, 1e-12, 'rounding');
});

test('a heel ends in the depth that is calculated', () => {
  for (const heelStyle of ['block', 'set'] as const) {
    const build: Build = { ...defaultBuild(), heelStyle };
    const [lowest] = extent(neckMesh(build), 1);
    const joint = bodyJointMm(build);
    const shaft =
      build.thicknessFret1Mm +
      ((build.thicknessFret12Mm - build.thicknessFret1Mm) * (joint - fretX(build, 1))) /
        (fretX(build, 12) - fretX(build, 1));
    expectNear(-lowest, shaft + build.heelThicknessMm, 1e-6, 'single precision');
  }
});

describe('parts', () => {
  test.each(PART_IDS)('%s reads nothing that its list does not name', (id) => {
    for (const { build } of PRESETS) {
      const read = new Set<string>();
      const watched = new Proxy(build, {
        get(target, key) {
          read.add(String(key));
          return target[key as keyof Build];
        },
      });
      PARTS[id].make(watched);
      expect([...read].filter((key) => !(PARTS[id].needs as readonly string[]).includes(key))).toEqual([]);
    }
  });

  test('all frets are in one mesh, each vertex with its number', () => {
    const build = defaultBuild();
    const mesh = fretsMesh(build, 'seated');
    expect(new Set(mesh.fretOf)).toEqual(new Set(Array.from({ length: build.fretCount }, (_, i) => i + 1)));
    expect(mesh.anchorsMm).toHaveLength(build.fretCount);
  });
});
