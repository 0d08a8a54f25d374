/**
 * Where dimension lines, callouts and their words stand in a picture, in its pixels. No words lie over other words, nor over
 * the corner that tells the factor of the bow:
 *
 *   callouts    stand in a margin, in the order of their places, pushed apart; where the margin is full the minor ones go
 *   distances   have their words beside the dimension line, away from what is measured; where those would lie over others
 *               they move along the line, outwards or to its other side, the least way that is free; where nothing near is
 *               free a minor one is left out, and another becomes a callout
 */
import type { Annotations, Callout, Distance, Point3 } from '../section/annotations.ts';
import type { Place } from './ink.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface PlacedCallout {
  readonly text: string;
  readonly margin: Callout['margin'];
  readonly at: Place;
  /** Elbow and end of the leader, from the words to the place. */
  readonly leader: readonly Place[];
  /** Anchor of the words: their outer end, at half their height. */
  readonly place: Place;
  readonly box: Box;
}

export interface PlacedDistance {
  /** Feet of the extension lines, and ends of the dimension line. */
  readonly feet: readonly [Place, Place];
  readonly ends: readonly [Place, Place];
  readonly text: string;
  /** Middle of the words. */
  readonly place: Place;
  readonly box: Box;
}

export interface LabelLayout {
  readonly distances: readonly PlacedDistance[];
  readonly callouts: readonly PlacedCallout[];
}

export interface LayoutFrame {
  readonly width: number;
  readonly height: number;
  /** Width of a text, px. */
  readonly measure: (text: string) => number;
  /** Straight place → pixels; null behind the camera. */
  readonly place: (point: Point3) => Place | null;
}

/** Pictures narrower than this are drawn with fewer words. */
const NARROW_PX = 560;
/** Distance of callouts, and the least when the picture is low. */
const LINE = 21;
const LEAST_LINE = 17;
/** Height of words with the ground around them. */
const TALL = 16;
const PAD = 3;
const EDGE = 6;
/** Above the corner that tells the factor of the bow. */
const CORNER = { width: 290, height: 84 } as const;
const LEAST_DIMENSION = 3;

const plus = (a: Point3, b: Point3): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

export function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

function boxAround([x, y]: Place, wide: number): Box {
  return { left: x - wide / 2 - PAD, right: x + wide / 2 + PAD, top: y - TALL / 2, bottom: y + TALL / 2 };
}

/** Does a line run through a box? By clipping (Liang & Barsky 1984). */
function crosses([from, to]: readonly [Place, Place], { left, top, right, bottom }: Box): boolean {
  let [enter, leave] = [0, 1];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  for (const [step, room] of [
    [-dx, from[0] - left],
    [dx, right - from[0]],
    [-dy, from[1] - top],
    [dy, bottom - from[1]],
  ] as const) {
    if (step === 0) {
      if (room < 0) return false;
    } else if (step < 0) enter = Math.max(enter, room / step);
    else leave = Math.min(leave, room / step);
  }
  return enter < leave;
}

function placeCallouts(frame: LayoutFrame, items: readonly Callout[], margin: Callout['margin']): PlacedCallout[] {
  const { width, height, measure, place } = frame;
  const top = LINE;
  const bottom = Math.max(top, height - CORNER.height);
  const room = Math.floor((bottom - top) / LEAST_LINE) + 1;
  const seen = items.flatMap((item) => {
    const at = place(item.at);
    return at ? [{ item, at, y: at[1] }] : [];
  });
  // Where not all find room the minor ones go first, the last of them before the others.
  const kept = new Set(
    [...seen.filter(({ item }) => !item.minor), ...seen.filter(({ item }) => item.minor)].slice(0, room),
  );
  const placed = seen.filter((entry) => kept.has(entry)).toSorted((p, q) => p.at[1] - q.at[1]);
  const line = Math.min(LINE, placed.length > 1 ? (bottom - top) / (placed.length - 1) : LINE);
  // Push apart downwards, then back up from the bottom.
  placed.forEach((entry, i) => {
    entry.y = Math.max(entry.y, i === 0 ? top : placed[i - 1].y + line);
  });
  for (let i = placed.length - 1; i >= 0; i -= 1) {
    placed[i].y = Math.min(placed[i].y, i === placed.length - 1 ? bottom : placed[i + 1].y - line);
  }
  const inset = width < NARROW_PX ? 8 : Math.min(40, width * 0.03);
  const [outer, inwards] = margin === 'left' ? [inset, 1] : [width - inset, -1];
  return placed.map(({ item, at, y }) => {
    const wide = measure(item.text);
    const edge = outer + inwards * (wide + 6);
    return {
      text: item.text,
      margin,
      at,
      leader: [[edge, y], [edge + inwards * 14, y], at],
      place: [outer, y],
      box: boxAround([outer + (inwards * wide) / 2, y], wide),
    };
  });
}

/** Places for the words of a distance, the natural one first and then by how far they are from it. */
function candidates(ends: readonly [Place, Place], feet: readonly [Place, Place], wide: number): Place[] {
  const [from, to] = ends;
  const middle: Place = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const measured: Place = [(feet[0][0] + feet[1][0]) / 2, (feet[0][1] + feet[1][1]) / 2];
  const dx = Math.abs(to[0] - from[0]);
  const found: { readonly place: Place; readonly cost: number }[] = [];
  if (isUpright({ ends })) {
    const away = middle[0] < measured[0] ? -1 : 1;
    for (const side of [away, -away]) {
      for (let step = 0; step <= 16; step += 1) {
        for (const shift of step === 0 ? [0] : [-5 * step, 5 * step]) {
          found.push({
            place: [middle[0] + side * (8 + wide / 2), middle[1] + shift],
            cost: Math.abs(shift) + (side === away ? 0 : 30),
          });
        }
      }
    }
  } else {
    const away = middle[1] > measured[1] ? 1 : -1;
    const beside = dx / 2 + wide / 2 + 26;
    for (const side of [away, -away]) {
      for (let step = 0; step <= 14; step += 1) {
        for (const across of [0, -wide / 2, wide / 2, -beside, beside]) {
          const out = across === beside || across === -beside ? 5 * step : 8 + TALL / 2 + 5 * step;
          found.push({
            place: [middle[0] + across, middle[1] + side * out],
            cost: 5 * step + Math.abs(across) / 3 + (side === away ? 0 : 30),
          });
        }
      }
    }
  }
  return found.toSorted((a, b) => a.cost - b.cost).map(({ place }) => place);
}

interface Drawn {
  readonly item: Distance;
  readonly feet: readonly [Place, Place];
  readonly ends: readonly [Place, Place];
}

function isUpright({ ends: [from, to] }: Pick<Drawn, 'ends'>): boolean {
  return Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]);
}

/** Distances long enough to carry a dimension line. */
function drawnDistances({ place }: LayoutFrame, items: readonly Distance[]): Drawn[] {
  return items.flatMap((item) => {
    const [a, b] = [place(item.from), place(item.to)];
    const [from, to] = [place(plus(item.from, item.beside)), place(plus(item.to, item.beside))];
    if (!a || !b || !from || !to) return [];
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < LEAST_DIMENSION) return [];
    return [{ item, feet: [a, b] as const, ends: [from, to] as const }];
  });
}

const segments = (points: readonly Place[]): (readonly [Place, Place])[] =>
  points.slice(1).map((point, index) => [points[index], point] as const);

export function layOutLabels(frame: LayoutFrame, { items, narrowMargin }: Annotations): LabelLayout {
  const { width, height, measure } = frame;
  const narrow = width < NARROW_PX;
  const shown = narrow ? items.filter(({ minor }) => !minor) : items;
  const distances = drawnDistances(
    frame,
    shown.filter((item) => item.kind === 'distance'),
  );
  let callouts = shown.filter((item) => item.kind === 'callout');
  const marginOf = ({ margin }: Callout) => (narrow ? (narrowMargin ?? margin) : margin);
  const corner: Box = { left: 0, right: CORNER.width, top: height - CORNER.height + LINE / 2, bottom: height };

  // Each pass turns at most one distance into a callout, which may push others away.
  for (let pass = 0; ; pass += 1) {
    const placedCallouts = (['left', 'right'] as const).flatMap((margin) =>
      placeCallouts(
        frame,
        callouts.filter((item) => marginOf(item) === margin),
        margin,
      ),
    );
    const taken: Box[] = [corner, ...placedCallouts.map(({ box }) => box)];
    const lines = [
      ...placedCallouts.flatMap(({ leader }) => segments(leader)),
      ...distances.flatMap(({ ends }) => segments(ends)),
    ];
    const placed: PlacedDistance[] = [];
    let crowded: Drawn | undefined;
    // The chief ones choose first, and of them those that lie: their words have one place, beside the middle.
    const inTurn = distances.toSorted(
      (p, q) =>
        Number(p.item.minor ?? false) - Number(q.item.minor ?? false) || Number(isUpright(p)) - Number(isUpright(q)),
    );
    for (const drawn of inTurn) {
      const { item, feet, ends } = drawn;
      if (callouts.some(({ text }) => text === item.text)) continue;
      const wide = measure(item.text);
      const free = candidates(ends, feet, wide).flatMap((place) => {
        const box = boxAround(place, wide);
        const isInside = box.left >= EDGE && box.right <= width - EDGE && box.top >= 2 && box.bottom <= height - 2;
        return isInside && !taken.some((other) => overlap(box, other)) ? [{ place, box }] : [];
      });
      // Better a little farther than with a line through it.
      const found = free.find(({ box }) => !lines.some((line) => crosses(line, box))) ?? free[0];
      if (found) {
        placed.push({ feet, ends, text: item.text, ...found });
        taken.push(found.box);
      } else if (!item.minor) crowded ??= drawn;
    }
    if (!crowded || pass === distances.length) return { distances: placed, callouts: placedCallouts };
    const { item, ends } = crowded;
    const middle = (ends[0][0] + ends[1][0]) / 2;
    const halfway = plus(item.from, item.to).map((value) => value / 2) as unknown as Point3;
    callouts = [
      ...callouts,
      {
        kind: 'callout',
        at: plus(halfway, item.beside),
        margin: middle < width / 2 ? 'left' : 'right',
        text: item.text,
      },
    ];
  }
}
