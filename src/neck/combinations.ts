/** Combinations of values, each in its own range, that cannot exist together. Unwise ones are not here: see fretwork/checks. */
import { bindingInUse, type Build } from './build.ts';
import {
  areLaminatesConstant,
  boardEndMm,
  boardRadiusMm,
  boardWidthMm,
  channelDepthMm,
  channelsReachMm,
  fretPositionMm,
  laminateJoints,
  lastFretMm,
  sagittaMm,
  stringPlacesMm,
  totalThicknessMm,
} from './neck-shape.ts';
import { parameterById, type ParameterId } from './parameters.ts';
import { areInCourses } from './strings.ts';
import type { ImpossibleReason, Problem, Quantity } from './problems.ts';
import type { Unit } from './units.ts';

/** Least wood that must stay under a slot anywhere, mm. */
export const LEAST_BOARD_LEFT_MM = 0.3;
/** Least board between the crowns of the last two frets, mm. */
const LEAST_BETWEEN_CROWNS_MM = 1;
/** Least wood between the shoulder and the bottom of the back, mm. */
const LEAST_BACK_MM = 1;
/** Least difference of a wound string's diameter and its core's, mm. */
const LEAST_WRAP_MM = 0.1;
/** Least room inside a tube, and beside the web of a T, mm. */
const LEAST_INSIDE_MM = 0.2;
/** Least depth of a channel at its shallow ends, mm. */
const LEAST_CHANNEL_MM = 1;
/** Least wood between two channels, and under one, mm. */
const LEAST_BETWEEN_RODS_MM = 1.5;
const LEAST_UNDER_CHANNEL_MM = 1.5;
/** Least of the outermost pieces together that is left beside laminates of constant width, mm. */
const LEAST_OUTER_MM = 2;
/** Least wood under a stiff bar, mm. */
const LEAST_UNDER_BAR_MM = 2;

type Rule = (build: Build) => Problem | undefined;

const mm = (value: number): Quantity => ({ value, unit: 'mm' });
const count = (value: number): Quantity => ({ value, unit: '' });

/** `id` must be at least / at most `value` in this build, for a reason. */
function limit(
  build: Build,
  id: ParameterId,
  kind: 'min' | 'max',
  value: number,
  reason: ImpossibleReason,
  quantities: readonly Quantity[] = [],
): Problem | undefined {
  const given = build[id] as number;
  if (kind === 'min' ? given >= value - 1e-9 : given <= value + 1e-9) return undefined;
  const parameter = parameterById(id);
  const unit: Unit = parameter.kind === 'number' ? parameter.unit : '';
  return { code: 'impossible', parameter: id, value: given, [kind]: value, unit, reason, quantities };
}

function list(id: string, value: unknown, reason: ImpossibleReason, quantities: readonly Quantity[]): Problem {
  return { code: 'impossible', parameter: id, value, reason, quantities };
}

/** Least radius at the last fret of a conical board, mm, so that at its end it is still as large as the board is wide. */
function leastLastRadiusMm(b: Build): number {
  const beyond = boardEndMm(b) / lastFretMm(b);
  return (boardWidthMm(b, boardEndMm(b)) + b.radiusNutMm * (beyond - 1)) / beyond;
}

function pinches(b: Build): boolean {
  return b.boardShape === 'cone' && b.radiusLastFretMm < leastLastRadiusMm(b) - 1e-9;
}

const RULES: readonly Rule[] = [
  (b) => (pinches(b) ? limit(b, 'radiusLastFretMm', 'min', leastLastRadiusMm(b), 'cone-narrows') : undefined),
  (b) => limit(b, 'bodyJointFret', 'max', b.fretCount, 'frets-on-board', [count(b.fretCount)]),
  (b) => {
    const spacing = fretPositionMm(b.scaleLengthMm, b.fretCount) - fretPositionMm(b.scaleLengthMm, b.fretCount - 1);
    if (spacing >= b.crownWidthMm + LEAST_BETWEEN_CROWNS_MM) return undefined;
    let most = b.fretCount;
    const room = (n: number) => fretPositionMm(b.scaleLengthMm, n) - fretPositionMm(b.scaleLengthMm, n - 1);
    while (most > 1 && room(most) < b.crownWidthMm + LEAST_BETWEEN_CROWNS_MM) most -= 1;
    return limit(b, 'fretCount', 'max', most, 'crowns-too-close', [mm(LEAST_BETWEEN_CROWNS_MM)]);
  },
  (b) => {
    if (pinches(b)) return undefined;
    // What is left under the slot at its thinnest place: the edge where the slot follows the radius, the centre where it is flat.
    const thinnest = Math.min(
      ...[0, boardEndMm(b)].map((x) =>
        b.slotBottom === 'flat'
          ? b.boardThicknessMm
          : b.boardThicknessMm - sagittaMm(boardRadiusMm(b, x), boardWidthMm(b, x) / 2),
      ),
    );
    return limit(b, 'slotDepthMm', 'max', thinnest - LEAST_BOARD_LEFT_MM, 'board-under-slot', [
      mm(thinnest),
      mm(LEAST_BOARD_LEFT_MM),
    ]);
  },
  (b) => {
    if (b.slotBottom !== 'flat' || pinches(b)) return undefined;
    const drop = Math.max(...[0, boardEndMm(b)].map((x) => sagittaMm(boardRadiusMm(b, x), boardWidthMm(b, x) / 2)));
    return limit(b, 'slotDepthMm', 'min', drop + 0.1, 'flat-slot-at-edge', [mm(drop)]);
  },
  (b) => limit(b, 'kerfMm', 'max', b.crownWidthMm - 0.2, 'crown-covers-slot'),
  (b) => limit(b, 'studWidthMm', 'min', b.tangWidthMm, 'studs-stand-out'),
  (b) => limit(b, 'studWidthMm', 'max', b.crownWidthMm, 'crown-covers-studs'),
  (b) => {
    const ends: readonly [ParameterId, number][] = [
      ['thicknessFret1Mm', 0],
      ['thicknessFret12Mm', boardEndMm(b)],
    ];
    for (const [id, x] of ends) {
      const lack = b.boardThicknessMm + b.backShoulderMm + LEAST_BACK_MM - totalThicknessMm(b, x);
      if (lack > 0) return limit(b, id, 'min', (b[id] as number) + lack, 'back-all-along');
    }
    return undefined;
  },
  (b) => limit(b, 'linesSawnThrough', 'max', b.bindingLineCount, 'lines-of-binding', [count(b.bindingLineCount)]),
  (b) => {
    const total = bindingInUse(b).reduce((sum, line) => sum + line.thicknessMm, 0);
    const most = b.widthNutMm / 4;
    if (total <= most) return undefined;
    return list('binding', total, 'binding-at-nut', [mm(total), mm(most)]);
  },
  // On the lower side too.
  (b) =>
    limit(
      b,
      'stringHeightFret12Mm',
      'min',
      b.crownHeightMm + 0.1 + (b.strings.length > 1 ? Math.abs(b.bassHigherMm) / 2 : 0),
      'strings-clear-frets',
    ),
  (b) =>
    b.fallAwayMm === 0
      ? undefined
      : limit(b, 'fallAwayFromFret', 'max', b.fretCount - 1, 'fall-away-beyond', [count(b.fretCount)]),
  (b) => (b.rodKind === 'none' ? undefined : limit(b, 'rodEndMm', 'max', boardEndMm(b) - 5, 'rod-under-board')),
  (b) => (b.rodKind === 'one-way' ? limit(b, 'rodSettingPercent', 'min', 0, 'one-way-rod') : undefined),
  (b) => {
    if (b.barCount === 0) return undefined;
    const depth = totalThicknessMm(b, 0) - b.boardThicknessMm - LEAST_UNDER_BAR_MM;
    return limit(b, 'barDepthMm', 'max', depth, 'wood-under-bar', [mm(LEAST_UNDER_BAR_MM)]);
  },
  (b) => {
    if (b.barCount === 0) return undefined;
    return limit(
      b,
      'barWidthMm',
      'max',
      (0.6 * b.widthNutMm - 2 * channelsReachMm(b)) / b.barCount,
      'bars-and-channel',
    );
  },
  (b) => {
    if (b.barCount === 0 || b.barKind === 'solid' || b.barKind === 'steel') return undefined;
    const most =
      b.barKind === 'steel-tube' ? Math.min(b.barWidthMm, b.barDepthMm) / 2 : Math.min(b.barWidthMm, b.barDepthMm);
    return limit(b, 'barWallMm', 'max', most - LEAST_INSIDE_MM, 'wall-of-bar', [mm(b.barWidthMm), mm(b.barDepthMm)]);
  },
  (b) =>
    b.rodKind === 'none' || b.rodCount === 1
      ? undefined
      : limit(b, 'rodsApartMm', 'min', b.channelWidthMm + LEAST_BETWEEN_RODS_MM, 'rods-apart', [
          mm(LEAST_BETWEEN_RODS_MM),
        ]),
  (b) => {
    const most = 0.7 * b.widthNutMm;
    return b.rodKind === 'none' || b.rodCount === 1
      ? undefined
      : limit(b, 'rodsApartMm', 'max', most - b.channelWidthMm, 'rods-in-neck', [mm(most)]);
  },
  (b) => {
    if (b.rodKind === 'none' || b.channelCut === 'tapered' || b.channelWidthMm === 0) return undefined;
    const run = [Math.max(0, b.rodStartMm), Math.min(b.rodEndMm, boardEndMm(b))];
    const places = [run[0], (run[0] + run[1]) / 2, run[1]];
    const under = places.map((x) => totalThicknessMm(b, x) - b.boardThicknessMm - channelDepthMm(b, x));
    const lack = LEAST_UNDER_CHANNEL_MM - Math.min(...under);
    return lack <= 1e-9
      ? undefined
      : limit(b, 'channelDepthMm', 'max', b.channelDepthMm - lack, 'wood-under-channel', [mm(LEAST_UNDER_CHANNEL_MM)]);
  },
  (b) =>
    b.rodKind === 'one-way' && b.channelCut === 'straight' && b.channelFollowsRod
      ? limit(b, 'channelDepthMm', 'min', b.rodCurveMm + LEAST_CHANNEL_MM, 'channel-at-ends', [
          mm(b.rodCurveMm),
          mm(LEAST_CHANNEL_MM),
        ])
      : undefined,
  (b) => {
    if (!areLaminatesConstant(b)) return undefined;
    const index = b.laminates.findIndex(
      ({ widthMm }, at) => (widthMm === undefined) !== (at === b.laminates.length - 1),
    );
    if (index < 0) return undefined;
    return list(`laminates.${index}.widthMm`, b.laminates[index].widthMm ?? null, 'width-of-piece', [count(index + 1)]);
  },
  (b) => {
    if (!areLaminatesConstant(b)) return undefined;
    const sum = 2 * (laminateJoints(b).at(-1) ?? 0);
    const most = b.widthNutMm - LEAST_OUTER_MM;
    return sum <= most + 1e-9 ? undefined : list('laminates', sum, 'widths-at-nut', [mm(sum), mm(most)]);
  },
  (b) => {
    const index = b.regions.findIndex((region) => region.fromFret > region.toFret || region.toFret > b.fretCount);
    const region = b.regions[index];
    if (!region) return undefined;
    return list(`regions.${index}`, region, 'region-order', [
      count(index + 1),
      count(region.fromFret),
      count(region.toFret),
      count(b.fretCount),
    ]);
  },
  (b) => {
    const index = b.regions.findIndex((region) => region.studWidthMm < region.tangWidthMm);
    const region = b.regions[index];
    if (!region) return undefined;
    return list(`regions.${index}.studWidthMm`, region.studWidthMm, 'region-studs', [
      count(index + 1),
      mm(region.studWidthMm),
      mm(region.tangWidthMm),
    ]);
  },
  (b) => {
    const widest = Math.max(0, ...b.regions.map((region) => Math.max(region.kerfMm + 0.2, region.studWidthMm)));
    return widest <= b.crownWidthMm ? undefined : limit(b, 'crownWidthMm', 'min', widest, 'crown-covers-regions');
  },
  (b) => {
    if (b.startingReliefMm.length === 0 || b.startingReliefMm.length === b.fretCount) return undefined;
    return list('startingReliefMm', b.startingReliefMm.length, 'reliefs-per-fret', [
      count(b.startingReliefMm.length),
      count(b.fretCount),
    ]);
  },
  (b) => {
    const sum = b.laminates.reduce((total, laminate) => total + laminate.share, 0);
    if (Math.abs(sum - 1) < 1e-6) return undefined;
    return list('laminates', sum, 'shares-sum', [count(sum)]);
  },
  (b) => {
    const index = b.strings.findIndex(
      (s) => s.construction.endsWith('-wound') && s.coreMm > s.diameterMm - LEAST_WRAP_MM,
    );
    const string = b.strings[index];
    if (!string) return undefined;
    return list(`strings.${index}.coreMm`, string.coreMm, 'core-in-string', [
      count(index + 1),
      mm(string.coreMm),
      mm(string.diameterMm),
      mm(LEAST_WRAP_MM),
    ]);
  },
  (b) => {
    const beside = b.strings[0].besidePreviousMm;
    return beside === undefined ? undefined : list('strings.0.besidePreviousMm', beside, 'course-of-first', []);
  },
  (b) => {
    const room = (index: number) => (b.strings[index - 1].diameterMm + b.strings[index].diameterMm) / 2;
    const index = b.strings.findIndex(
      ({ besidePreviousMm }, at) => at > 0 && besidePreviousMm !== undefined && besidePreviousMm <= room(at),
    );
    if (index < 0) return undefined;
    const { besidePreviousMm } = b.strings[index];
    return list(`strings.${index}.besidePreviousMm`, besidePreviousMm, 'strings-of-course', [
      count(index + 1),
      mm(besidePreviousMm ?? 0),
      mm(room(index)),
    ]);
  },
  (b) => {
    if (!areInCourses(b.strings)) return undefined;
    const places = stringPlacesMm(b, 0);
    const inOrder = places.every((place, index) => index === 0 || place > places[index - 1]);
    const onNut = places.every((place) => Math.abs(place) < b.widthNutMm / 2);
    return inOrder && onNut ? undefined : list('strings', b.strings.length, 'courses-at-nut', [mm(b.widthNutMm)]);
  },
];

/** Every impossible combination in a build whose values are each in range. */
export function findImpossible(build: Build): Problem[] {
  return RULES.flatMap((rule) => rule(build) ?? []);
}
