/** Stresses for the section picture, beside beam theory and statics. */
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { UNCUT } from '../../../src/mechanics/description.ts';
import { createNeckModel } from '../../../src/mechanics/influence.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import {
  STRESS_WINDOW_MM,
  stressAround,
  stressDepthMm,
  type StressField,
} from '../../../src/mechanics/elements/stress.ts';
import { expectNear, expectNothing } from '../../expect-near.ts';
import { ISOTROPIC, rectangularNeck } from './rectangular.ts';

const HEIGHT = 20;
const WIDTH = 50;
const STRIP = rectangularNeck({
  lengthMm: 400,
  widthMm: WIDTH,
  boardThicknessMm: 6,
  neckThicknessMm: HEIGHT - 6,
  board: { modulusMPa: 12_000, ...ISOTROPIC },
  neck: { modulusMPa: 12_000, ...ISOTROPIC },
  fretXMm: [200],
  slotDepthMm: 3,
});

interface Element {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly along: number;
  readonly across: number;
}

function elements(field: StressField): Element[] {
  return Array.from(field.alongMPa, (along, i) => {
    const c = field.cornersMm.subarray(8 * i, 8 * i + 8);
    return {
      x: (c[0] + c[2]) / 2,
      y: (c[1] + c[3] + c[5] + c[7]) / 4,
      width: c[2] - c[0],
      height: (c[5] + c[7] - c[1] - c[3]) / 2,
      along,
      across: field.acrossMPa[i],
    };
  });
}

/** Elements of a neck, column by column. */
function columns(list: readonly Element[]): Element[][] {
  const byX = new Map<number, Element[]>();
  for (const element of list) byX.set(element.x, [...(byX.get(element.x) ?? []), element]);
  return [...byX.values()];
}

describe('a strip without its slot', () => {
  it('in uniform bending: σ = M·y/I', () => {
    const moment = 5000;
    const field = stressAround(
      createNeckModel(STRIP),
      { wedgeN: [0], cases: { couple: moment } },
      1,
      60,
      HEIGHT,
      UNCUT,
    );
    const list = elements(field);
    expect(list.length).toBeGreaterThan(100);
    const inertia = (WIDTH * HEIGHT ** 3) / 12;
    const most = (moment * (HEIGHT / 2)) / inertia;
    for (const { y, along, across } of list) {
      expectNothing(
        Math.abs(along) - (moment * Math.abs(y - HEIGHT / 2)) / inertia,
        most,
        1e-6,
        'the element contains uniform bending',
      );
      expectNothing(across, most, 1e-6, 'no stress through the depth');
    }
    // The couple stretches one side and presses the other.
    expect(list.find(({ y }) => y < 3)!.along * list.find(({ y }) => y > 17)!.along).toBeLessThan(0);
  });
});

describe('a strip with a wedge in its slot', () => {
  const force = 500;
  const field = stressAround(createNeckModel(STRIP), { wedgeN: [force] }, 1, 40, HEIGHT);
  const list = elements(field);

  it('every section carries the force of the wedge or nothing', () => {
    const sections = columns(list);
    const held = sections.map((column) => column.reduce((sum, e) => sum + e.along * e.height * WIDTH, 0));
    const moments = sections.map((column) => column.reduce((sum, e) => sum + e.along * e.height * WIDTH * e.y, 0));
    const inKerf = sections.map((column) => Math.abs(column[0].x - 200) < 0.3);
    // Under the slot the wedge's own pull, in balance with its push on the walls above: tension of its size.
    const below = held[inKerf.indexOf(true)];
    expectNear(below, force, 0.1, 'one stress for each of a few elements under a notch');
    // Beside the slot nothing is left.
    held
      .filter((_, i) => Math.abs(sections[i][0].x - 200) > 25)
      .forEach((sum) => expectNothing(sum, force, 0.02, 'Saint-Venant, a height away'));
    moments
      .filter((_, i) => Math.abs(sections[i][0].x - 200) > 25)
      .forEach((sum) => expectNothing(sum, force * HEIGHT, 0.02, 'Saint-Venant, a height away'));
  });

  it('presses the walls and stretches the floor of the slot', () => {
    const walls = list.filter(({ x, y }) => Math.abs(Math.abs(x - 200) - 0.5) < 0.25 && y < 2);
    expect(walls.length).toBeGreaterThan(2);
    for (const { along } of walls) expect(along).toBeLessThan(0);
    const mean = walls.reduce((sum, e) => sum + e.along * e.height, 0) / walls.reduce((sum, e) => sum + e.height, 0);
    expectNear(mean, -force / (2 * WIDTH), 0.35, 'pressure on a wall, spread a little at the edge of the contact');
    const floor = list.filter(({ x, y }) => Math.abs(x - 200) < 0.3 && y < 4);
    for (const { along } of floor) expect(along).toBeGreaterThan(0);
  });

  it('is the same on both sides of the slot', () => {
    const left = list.filter(({ x }) => x < 199);
    const most = Math.max(...list.map(({ along }) => Math.abs(along)));
    for (const one of left) {
      const twin = list.find(({ x, y }) => Math.abs(x + one.x - 400) < 1e-6 && Math.abs(y - one.y) < 1e-9)!;
      expectNothing(twin.along - one.along, most, 1e-6, 'symmetry');
    }
  });

  it('has no elements in the slot, and refuses frets that are none', () => {
    expect(list.some(({ x, y }) => Math.abs(x - 200) < 0.3 && y < 3)).toBe(false);
    expect(() => stressAround(createNeckModel(STRIP), { wedgeN: [1] }, 2, 8, 10)).toThrow(
      'fret-not-there, fret 2, frets 1',
    );
  });
});

describe('of a build', () => {
  it('shows its window, and nothing for a glue fit', () => {
    const predictor = createPredictor();
    const build = defaultBuild();
    const field = predictor.stress(build, 7);
    const list = elements(field);
    const x = 648 * (1 - 2 ** (-7 / 12));
    expect(list.every((e) => Math.abs(e.x - x) <= STRESS_WINDOW_MM && e.y <= stressDepthMm(build))).toBe(true);
    expect(list.some((e) => e.along < -4)).toBe(true);
    expect(list.every((e) => Number.isFinite(e.along) && Number.isFinite(e.across))).toBe(true);
    const glued = predictor.stress({ ...build, method: 'glue' }, 7);
    expect([...glued.alongMPa].every((stress) => stress === 0)).toBe(true);
  });
});
