/** Combinations of values, each in its own range, that cannot exist together. Unwise ones are not here: see fretwork/checks. */
import { say } from '../speech/language.ts';
import { bindingInUse, type Build } from './build.ts';
import {
  boardEndMm,
  boardRadiusMm,
  boardWidthMm,
  fretPositionMm,
  lastFretMm,
  sagittaMm,
  totalThicknessMm,
} from './neck-shape.ts';
import { parameterById, type ParameterId } from './parameters.ts';
import type { Problem } from './problems.ts';
import { unitLabel } from '../speech/quantity.ts';

/** Least wood that must stay under a slot anywhere, mm. */
export const LEAST_BOARD_LEFT_MM = 0.3;
/** Least board between the crowns of the last two frets, mm. */
const LEAST_BETWEEN_CROWNS_MM = 1;
/** Least wood between the shoulder and the bottom of the back, mm. */
const LEAST_BACK_MM = 1;
/** Least wood under a stiff bar, mm. */
const LEAST_UNDER_BAR_MM = 2;

type Rule = (build: Build) => Problem | undefined;

function round(value: number, digits = 2): string {
  return String(Number(value.toFixed(digits)));
}

/** A limit as text, rounded to the safe side so that the printed value is itself allowed. */
function roundLimit(value: number, kind: 'min' | 'max'): string {
  return String((kind === 'min' ? Math.ceil(value * 1000 - 1e-6) : Math.floor(value * 1000 + 1e-6)) / 1000);
}

/** `id` must be at least / at most `limit` in this build, because of `reason`. */
function limit(build: Build, id: ParameterId, kind: 'min' | 'max', value: number, reason: string): Problem | undefined {
  const given = build[id] as number;
  if (kind === 'min' ? given >= value - 1e-9 : given <= value + 1e-9) return undefined;
  const parameter = parameterById(id);
  const unit = parameter.kind === 'number' ? parameter.unit : '';
  const unitText = unit === '' ? '' : ` ${unitLabel(unit, 'metric')}`;
  return {
    code: 'impossible',
    parameter: id,
    label: parameter.label,
    value: given,
    [kind]: value,
    unit,
    message: say`${parameter.label} is ${round(given, 3)}${unitText}; here it can be ${kind === 'min' ? say`at least` : say`at most`} ${roundLimit(value, kind)}${unitText}: ${reason}.`,
  };
}

function list(id: string, label: string, value: unknown, message: string): Problem {
  return { code: 'impossible', parameter: id, label, value, message };
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
  (b) =>
    pinches(b)
      ? limit(
          b,
          'radiusLastFretMm',
          'min',
          leastLastRadiusMm(b),
          say`the cone goes on narrowing to the end of the board, where its radius must still be as large as the board is wide`,
        )
      : undefined,
  (b) => limit(b, 'bodyJointFret', 'max', b.fretCount, say`the board has only ${b.fretCount} frets`),
  (b) => {
    const spacing = fretPositionMm(b.scaleLengthMm, b.fretCount) - fretPositionMm(b.scaleLengthMm, b.fretCount - 1);
    if (spacing >= b.crownWidthMm + LEAST_BETWEEN_CROWNS_MM) return undefined;
    let most = b.fretCount;
    const room = (n: number) => fretPositionMm(b.scaleLengthMm, n) - fretPositionMm(b.scaleLengthMm, n - 1);
    while (most > 1 && room(most) < b.crownWidthMm + LEAST_BETWEEN_CROWNS_MM) most -= 1;
    return limit(
      b,
      'fretCount',
      'max',
      most,
      say`with this scale the last two crowns would stand closer than ${LEAST_BETWEEN_CROWNS_MM} mm on the board`,
    );
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
    return limit(
      b,
      'slotDepthMm',
      'max',
      thinnest - LEAST_BOARD_LEFT_MM,
      say`the board is ${round(thinnest)} mm thick under the slot at its thinnest, and ${LEAST_BOARD_LEFT_MM} mm must stay`,
    );
  },
  (b) => {
    if (b.slotBottom !== 'flat' || pinches(b)) return undefined;
    const drop = Math.max(...[0, boardEndMm(b)].map((x) => sagittaMm(boardRadiusMm(b, x), boardWidthMm(b, x) / 2)));
    return limit(
      b,
      'slotDepthMm',
      'min',
      drop + 0.1,
      say`a flat cut must still be a slot at the edge of the board, which lies ${round(drop)} mm lower`,
    );
  },
  (b) => limit(b, 'kerfMm', 'max', b.crownWidthMm - 0.2, say`the crown must cover the slot`),
  (b) =>
    limit(b, 'studWidthMm', 'min', b.tangWidthMm, say`studs stand out from the tang, so they are at least as wide`),
  (b) => limit(b, 'studWidthMm', 'max', b.crownWidthMm, say`the crown must cover the studs`),
  (b) => {
    const ends: readonly [ParameterId, number][] = [
      ['thicknessFret1Mm', 0],
      ['thicknessFret12Mm', boardEndMm(b)],
    ];
    for (const [id, x] of ends) {
      const lack = b.boardThicknessMm + b.backShoulderMm + LEAST_BACK_MM - totalThicknessMm(b, x);
      if (lack > 0)
        return limit(
          b,
          id,
          'min',
          (b[id] as number) + lack,
          say`board, shoulder and back must fit into it all along the neck`,
        );
    }
    return undefined;
  },
  (b) =>
    limit(b, 'linesSawnThrough', 'max', b.bindingLineCount, say`there are only ${b.bindingLineCount} lines of binding`),
  (b) => {
    const total = bindingInUse(b).reduce((sum, line) => sum + line.thicknessMm, 0);
    const most = b.widthNutMm / 4;
    if (total <= most) return undefined;
    return list(
      'binding',
      say`Binding lines`,
      total,
      say`The binding lines are ${round(total)} mm thick together; at this nut they can be at most ${round(most)} mm per side.`,
    );
  },
  (b) => limit(b, 'stringHeightFret12Mm', 'min', b.crownHeightMm + 0.1, say`the strings must clear the frets`),
  (b) =>
    b.rodKind === 'none'
      ? undefined
      : limit(b, 'rodEndMm', 'max', boardEndMm(b) - 5, say`the rod must end under the board`),
  (b) =>
    b.rodKind === 'one-way'
      ? limit(b, 'rodSettingPercent', 'min', 0, say`a one-way rod can only be tightened`)
      : undefined,
  (b) => {
    if (b.barCount === 0) return undefined;
    const depth = totalThicknessMm(b, 0) - b.boardThicknessMm - LEAST_UNDER_BAR_MM;
    return limit(
      b,
      'barDepthMm',
      'max',
      depth,
      say`${LEAST_UNDER_BAR_MM} mm of wood must stay under the bar at the nut`,
    );
  },
  (b) => {
    if (b.barCount === 0) return undefined;
    const channel = b.rodKind === 'none' ? 0 : b.channelWidthMm;
    return limit(
      b,
      'barWidthMm',
      'max',
      (0.6 * b.widthNutMm - channel) / b.barCount,
      say`bars and channel can take at most 0.6 of the width at the nut`,
    );
  },
  (b) => {
    const index = b.regions.findIndex((region) => region.fromFret > region.toFret || region.toFret > b.fretCount);
    const region = b.regions[index];
    if (!region) return undefined;
    return list(
      `regions.${index}`,
      say`Region of frets`,
      region,
      say`Region ${index + 1} runs from fret ${region.fromFret} to fret ${region.toFret}; on this neck it can run from a fret to a later one, up to ${b.fretCount}.`,
    );
  },
  (b) => {
    const index = b.regions.findIndex((region) => region.studWidthMm < region.tangWidthMm);
    const region = b.regions[index];
    if (!region) return undefined;
    return list(
      `regions.${index}.studWidthMm`,
      say`Width over the studs in the region`,
      region.studWidthMm,
      say`Region ${index + 1} has studs ${round(region.studWidthMm, 3)} mm wide on a tang of ${round(region.tangWidthMm, 3)} mm; over the studs it is at least as wide as the tang.`,
    );
  },
  (b) => {
    const widest = Math.max(0, ...b.regions.map((region) => Math.max(region.kerfMm + 0.2, region.studWidthMm)));
    return widest <= b.crownWidthMm
      ? undefined
      : limit(b, 'crownWidthMm', 'min', widest, say`the crown must cover the slots and studs of every region`);
  },
  (b) => {
    if (b.startingReliefMm.length === 0 || b.startingReliefMm.length === b.fretCount) return undefined;
    return list(
      'startingReliefMm',
      say`Measured relief per fret`,
      b.startingReliefMm.length,
      say`${b.startingReliefMm.length} reliefs are listed for ${b.fretCount} frets; list one for each fret, or none.`,
    );
  },
  (b) => {
    const sum = b.laminates.reduce((total, laminate) => total + laminate.share, 0);
    if (Math.abs(sum - 1) < 1e-6) return undefined;
    return list(
      'laminates',
      say`Neck laminates`,
      sum,
      say`The shares of the neck’s laminates sum to ${round(sum, 4)}; they must sum to 1.`,
    );
  },
  (b) => {
    const index = b.strings.findIndex((s) => s.construction.endsWith('-wound') && s.coreMm > s.diameterMm - 0.1);
    const string = b.strings[index];
    if (!string) return undefined;
    return list(
      `strings.${index}.coreMm`,
      say`String core diameter`,
      string.coreMm,
      say`String ${index + 1} has a core of ${round(string.coreMm, 3)} mm in a diameter of ${round(string.diameterMm, 3)} mm; the core must be at least 0.1 mm less.`,
    );
  },
];

/** Every impossible combination in a build whose values are each in range. */
export function findImpossible(build: Build): Problem[] {
  return RULES.flatMap((rule) => rule(build) ?? []);
}
