/** Why a neck differs from the first one, in words made from the numbers of both. */
import { stepTitle } from '../../speech/steps.ts';
import { withinSentence } from '../../speech/language.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { LEAST_CHAMFER_MM } from '../../fretwork/checks/limits.ts';
import { bowSize, bowText } from '../../speech/bow.ts';
import { timeText } from '../../speech/times.ts';
import type { NeckNumbers } from '../../verdict/compared-numbers.ts';
import { CELL_WORDS, ORDER_WORDS, REASON_WORDS as SAY, SLOT_WORDS } from '../../speech/en/pages/compare.ts';
import { glueWords } from '../../speech/names.ts';

export type Reason = (neck: NeckNumbers, first: NeckNumbers, system: UnitSystem) => string[];

/** Ratios nearer to 1 than this explain nothing that is seen. */
const LEAST_RATIO = 0.03;
/** Force that counts as none, N. */
const NO_FORCE_N = 0.5;
/** Bows nearer than this are printed alike, mm. */
const LEAST_MM = 0.005;

const NBSP = '\u00a0';

export function percentText(share: number): string {
  return `${formatNumber(100 * share, 0)}${NBSP}%`;
}

/** "34 % more flexible", "2 % stiffer", or "as stiff as unsawn". */
export function flexibleText(extraFlexibility: number): string {
  const text = (share: number) => textOf('extraFlexibilityPercent', 100 * share, 'metric');
  const percent = text(Math.abs(extraFlexibility));
  if (percent === text(0)) return CELL_WORDS.asUnsawn;
  return extraFlexibility > 0 ? CELL_WORDS.flexible(percent) : CELL_WORDS.stiffer(percent);
}

const forceText = (newtons: number, system: UnitSystem) => textOf('wedgeForceN', newtons, system);

/** "48 % less", "12 % more". */
function moreOrLess(ratio: number): string {
  return ratio >= 1 ? SAY.more(percentText(ratio - 1)) : SAY.less(percentText(1 - ratio));
}

const differs = (one: number, other: number) => Math.abs(one / other - 1) >= LEAST_RATIO;
const isWedged = ({ wedgeForceN }: NeckNumbers) => wedgeForceN >= NO_FORCE_N;

function wedging(neck: NeckNumbers, first: NeckNumbers, system: UnitSystem): string[] {
  const [force, other] = [forceText(neck.wedgeForceN, system), forceText(first.wedgeForceN, system)];
  if (!isWedged(neck) && !isWedged(first)) return [];
  if (!isWedged(neck)) return [SAY.noWedge(textOf('kerfMm', neck.kerfMm, system)), SAY.whereOther(other)];
  if (!isWedged(first)) return [SAY.wedgeOnlyHere(force)];
  const parts: string[] = [];
  if (differs(neck.wedgeForceN, first.wedgeForceN)) {
    parts.push(SAY.wedge(force, other, moreOrLess(neck.wedgeForceN / first.wedgeForceN)));
    const bite = (mm: number) => textOf('studBiteMm', mm, system);
    if (differs(neck.biteMm, first.biteMm)) parts.push(SAY.bite(bite(neck.biteMm), bite(first.biteMm)));
  }
  const give = ({ wedgesMm, wedgeForceN, fretCount }: NeckNumbers) => wedgesMm / wedgeForceN / fretCount;
  const isGiven = differs(give(neck), give(first));
  if (neck.workOrder !== first.workOrder) {
    // What the board keeps to itself is no give of the neck.
    const percent = moreOrLess(give(neck) / give(first));
    parts.push(neck.workOrder === 'board-first' ? SAY.boardFirst(percent) : SAY.neckFirst(percent));
  } else if (isGiven) parts.push(SAY.give(moreOrLess(give(neck) / give(first))));
  return parts;
}

/** How much the neck itself, with unsawn slots, gives to a pull. */
const ownGive = ({ stringsMm, stringPullN, extraFlexibility }: NeckNumbers) =>
  stringsMm / stringPullN / (1 + extraFlexibility);

export const fretted: Reason = (neck, first, system) => {
  const parts = wedging(neck, first, system);
  if (neck.fretCount !== first.fretCount && (isWedged(neck) || isWedged(first))) {
    parts.push(SAY.frets(neck.fretCount, first.fretCount));
  }
  if (Math.abs(neck.startingMm - first.startingMm) >= LEAST_MM) {
    parts.push(SAY.starting(bowText(neck.startingMm, system), bowText(first.startingMm, system)));
  }
  return parts;
};

/** What makes the strings' own part differ. */
function underStrings(neck: NeckNumbers, first: NeckNumbers, system: UnitSystem): string[] {
  const parts: string[] = [];
  if (differs(1 + neck.extraFlexibility, 1 + first.extraFlexibility)) {
    parts.push(SAY.flexible(SLOT_WORDS[neck.method], flexibleText(neck.extraFlexibility)));
    parts.push(SAY.flexibleAgainst(SLOT_WORDS[first.method], flexibleText(first.extraFlexibility)));
  }
  if (differs(neck.stringPullN, first.stringPullN)) {
    parts.push(SAY.pull(forceText(neck.stringPullN, system), forceText(first.stringPullN, system)));
  }
  if (differs(ownGive(neck), ownGive(first))) parts.push(SAY.give(moreOrLess(ownGive(neck) / ownGive(first))));
  return parts;
}

export const strung: Reason = (neck, first, system) => {
  const parts: string[] = [];
  const before = neck.fretted.mm - first.fretted.mm;
  if (Math.abs(before) >= LEAST_MM) parts.push(SAY.before(bowSize(before, system)));
  if (Math.abs(neck.stringsMm - first.stringsMm) >= LEAST_MM) {
    parts.push(SAY.stringsAdd(bowSize(neck.stringsMm, system), bowSize(first.stringsMm, system)));
  }
  return [...parts, ...underStrings(neck, first, system)];
};

export const settled: Reason = (neck, first, system) => {
  const moved = ({ settled: after, strung: at }: NeckNumbers) => after.mm - at.mm;
  const parts = [
    SAY.moved(
      bowSize(moved(neck), system),
      timeText(neck.settleDays),
      bowSize(moved(first), system),
      timeText(first.settleDays),
    ),
  ];
  if (isWedged(neck)) parts.push(SAY.wedgesKeep(percentText(neck.wedgesLeft), forceText(neck.wedgeForceN, system)));
  parts.push(SAY.stringsGrow(percentText(neck.stringsGrown - 1)));
  return parts;
};

export const rod: Reason = (neck, _first, system) => {
  const away = bowSize(neck.settled.mm - neck.targetMm, system);
  return neck.rod
    ? [SAY.mustMove(away, textOf('targetReliefMm', neck.targetMm, system), bowSize(neck.rod.reachMm, system))]
    : [SAY.noRod];
};

export const flexibility: Reason = (neck, _first, system) => [
  SAY.flexible(SLOT_WORDS[neck.method], flexibleText(neck.extraFlexibility)),
  SAY.slotSize(
    textOf('slotDepthMm', neck.slotDepthMm, system),
    textOf('boardThicknessMm', neck.boardThicknessMm, system),
    textOf('kerfMm', neck.kerfMm, system),
  ),
];

export const pullOut: Reason = (neck, _first, system) => {
  const [friction, glue] = [forceText(neck.frictionN, system), forceText(neck.pullOutN - neck.frictionN, system)];
  if (neck.method === 'press') return [SAY.heldDry(friction)];
  return isWedged(neck) ? [SAY.held(friction, glue)] : [SAY.heldGlue(glue)];
};

export const seating: Reason = (neck, first, system) => {
  if (neck.biteMm === 0) return [SAY.slidesIn];
  return first.biteMm === 0
    ? [SAY.wedgeOnlyHere(forceText(neck.wedgeForceN, system))]
    : wedging(neck, first, system).slice(0, 2);
};

export const glue: Reason = (neck, _first, system) =>
  neck.method === 'press'
    ? [SAY.pressedDry]
    : [SAY.slotFilled(textOf('kerfMm', neck.kerfMm, system), percentText(neck.glueReachPercent / 100))];

/** Titles of the steps that one has and the other has not. */
function titlesBeyond(one: NeckNumbers, other: NeckNumbers): string {
  const ids = new Set(other.steps.map(({ id }) => id));
  return one.steps
    .filter(({ id }) => !ids.has(id))
    .map((step) => withinSentence(stepTitle(step)))
    .join(', ');
}

export const steps: Reason = (neck, first) => {
  const [extra, missing] = [titlesBeyond(neck, first), titlesBeyond(first, neck)];
  return [
    ...(extra ? [SAY.extraSteps(extra)] : []),
    ...(missing ? [SAY.missingSteps(missing)] : []),
    ...(neck.waitDays === first.waitDays ? [] : [SAY.waits(timeText(neck.waitDays), timeText(first.waitDays))]),
    ...(neck.seatingOrder === first.seatingOrder ? [] : [ORDER_WORDS[neck.seatingOrder]]),
  ];
};

export const refret: Reason = (neck, _first, system) => {
  const chamfer = textOf('chamferMm', neck.chamferMm, system);
  return [
    neck.glue === null
      ? SAY.noGlue
      : glueWords(neck.glue)
          .release.replace(/\.$/, '')
          .replace(/^./, (letter) => letter.toLowerCase()),
    SAY.pulls(forceText(neck.pullOutN, system)),
    neck.chamferMm < LEAST_CHAMFER_MM ? SAY.sharp(chamfer) : SAY.chamfer(chamfer),
  ];
};
