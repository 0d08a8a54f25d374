/** Plain sentences about a choice, made from its facts and from nothing else. */
import type { UnitSystem } from '../../neck/units.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { bowKind, bowSize, enteredBowText } from '../../speech/bow.ts';
import { STRENGTHS, type Strength } from '../../verdict/string-room.ts';
import type { ChoiceFacts } from '../../verdict/choice-facts.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import { metalShortName } from '../../speech/names.ts';

/** Thickness of a sheet of writing paper, mm (80 g/m², from memory). */
const PAPER_MM = 0.1;
/** Ratios of hardness that a player may notice; typical hardnesses do not bear finer steps. */
const SOFTER = 0.9;
const HARDER = 1.15;
const MUCH_HARDER = 1.4;
/** Chances above this are said as nearly every. */
const NEARLY_ALL = 0.985;

export interface ChoiceSentences {
  /** What is done, what the neck does, and what the strings make of it. */
  readonly story: readonly string[];
  readonly time: string;
  readonly risk: string;
  readonly months: string;
  readonly strings: string;
  readonly skin: string;
  readonly wear: string;
  readonly refret: string;
}

function likePaper(reliefMm: number): string {
  const sheets = Math.abs(reliefMm) / PAPER_MM;
  if (sheets < 0.75) return CUSTOMER_WORDS.lessThanPaper;
  return CUSTOMER_WORDS.paper(CUSTOMER_WORDS.sheets(Math.round(sheets)));
}

function bending({ frettedMm, frettedBand }: ChoiceFacts, system: UnitSystem): string {
  const kind = bowKind(frettedMm, system);
  if (kind === 'flat') return CUSTOMER_WORDS.bendsNot;
  const say = kind === 'back-bow' ? CUSTOMER_WORDS.bends : CUSTOMER_WORDS.bendsForward;
  const sentence = say(bowSize(frettedMm, system), likePaper(frettedMm));
  if (!frettedBand) return sentence;
  const [low, high] = [frettedBand.p05, frettedBand.p95].map(Math.abs).sort((a, b) => a - b);
  return `${sentence} ${CUSTOMER_WORDS.between(bowSize(low, system), bowSize(high, system))}`;
}

function stringing({ strungMm }: ChoiceFacts, system: UnitSystem): string {
  switch (bowKind(strungMm, system)) {
    case 'flat':
      return CUSTOMER_WORDS.stringsFlat;
    case 'relief':
      return CUSTOMER_WORDS.stringsHollow(bowSize(strungMm, system));
    case 'back-bow':
      return CUSTOMER_WORDS.stringsHump(bowSize(strungMm, system));
  }
}

/** 1 → "one day", 2.5 → "2.5 days", 0 → "the same day". */
export function daysText(days: number): string {
  if (days < 0.05) return CUSTOMER_WORDS.atOnce;
  return CUSTOMER_WORDS.days(String(Number(days.toFixed(1))));
}

function timeSentence({ waitDays, glueHours }: ChoiceFacts): string {
  return glueHours > 0
    ? CUSTOMER_WORDS.waitGlue(daysText(waitDays), CUSTOMER_WORDS.hours(formatNumber(glueHours, 0)))
    : CUSTOMER_WORDS.wait(daysText(waitDays));
}

function riskSentence({ rodTask, rodChance }: ChoiceFacts): string {
  const task = CUSTOMER_WORDS.rodTasks[rodTask];
  if (rodTask === 'none' || rodChance === null) return task;
  return `${task} ${rodChance >= NEARLY_ALL ? CUSTOMER_WORDS.chanceAll : CUSTOMER_WORDS.chance(Math.round(100 * rodChance))}`;
}

/** As hard as the maker plays, where that was measured. */
function measuredHand({ own }: ChoiceFacts, system: UnitSystem): string {
  if (!own) return CUSTOMER_WORDS.handAssumed;
  const [force, low, high] = [own.own.forceN, own.own.p05N, own.own.p95N].map((n) => textOf('ownForceN', n, system));
  const is = own.buzzing > 0 ? 'buzzes' : own.buzzingAtMost > 0 ? 'mostly' : 'clean';
  return `${CUSTOMER_WORDS.handMeasured(force, low, high)} ${CUSTOMER_WORDS.handSays[is]}`;
}

/** The bend of the neck with which the strings have the most room, and how far that depends on the player. */
function mostRoomSentences({ mostRoom, own }: ChoiceFacts, system: UnitSystem): readonly string[] {
  const { rooms, roomBand, roomBandMeasured } = CUSTOMER_WORDS;
  if (mostRoom.status !== 'better') return mostRoom.status === 'as-is' ? [rooms.asSet] : [];
  const { reliefMm, band } = mostRoom;
  const said = rooms[bowKind(reliefMm, system)](bowSize(reliefMm, system));
  const [low, high] = [band.lowMm, band.highMm].map((mm) => enteredBowText(mm, system));
  return low === high ? [said] : [said, (own ? roomBandMeasured : roomBand)(low, high)];
}

function stringsSentence(facts: ChoiceFacts, system: UnitSystem): string {
  const { action, cleans } = CUSTOMER_WORDS;
  const height = action(textOf('actionMm', facts.actionMm, system));
  const played = [cleans[facts.cleanTo ?? 'none'], measuredHand(facts, system)];
  return [height, ...mostRoomSentences(facts, system), ...played].join(' ');
}

/** How low and how clean the strings are after the first months, where nothing is set again. */
function changeSentence({ overMonths: { strung, settled } }: ChoiceFacts, system: UnitSystem): string {
  const { strings, clean } = CUSTOMER_WORDS.changes;
  const rises = settled.actionMm - strung.actionMm;
  const size = textOf('actionChangeMm', Math.abs(rises), system);
  const isFelt = size !== textOf('actionChangeMm', 0, system);
  const height = isFelt ? (rises > 0 ? strings.rise(size) : strings.sink(size)) : strings.stay;
  const rank = (strength: Strength | null) => (strength ? STRENGTHS.indexOf(strength) : -1);
  const change = Math.sign(rank(settled.cleanTo) - rank(strung.cleanTo));
  return `${height} ${change === 0 ? clean.same : change > 0 ? clean.more : clean.less}`;
}

export function wearSentence(wearRatio: number): string {
  const { wears } = CUSTOMER_WORDS;
  if (wearRatio < SOFTER) return wears.softer;
  if (wearRatio < HARDER) return wears.common;
  return wearRatio < MUCH_HARDER ? wears.harder : wears.muchHarder;
}

export function sizeText(mm: number, system: UnitSystem): string {
  return textOf('settlingMoveMm', Math.abs(mm), system);
}

export function choiceSentences(facts: ChoiceFacts, system: UnitSystem): ChoiceSentences {
  const { method, movement, movesMm, rodTask, nickel, nickelStrings, wire, wearRatio, refret } = facts;
  const ofWire = CUSTOMER_WORDS.nickels[nickel](metalShortName(wire));
  const months = CUSTOMER_WORDS.movements[movement](sizeText(movesMm, system));
  return {
    story: [CUSTOMER_WORDS.held[method], bending(facts, system), stringing(facts, system)],
    time: timeSentence(facts),
    risk: riskSentence(facts),
    months: [months, changeSentence(facts, system), ...(rodTask === 'none' ? [CUSTOMER_WORDS.noRodMonths] : [])].join(
      ' ',
    ),
    strings: stringsSentence(facts, system),
    skin: nickelStrings.length === 0 ? ofWire : `${ofWire} ${CUSTOMER_WORDS.nickelStrings}`,
    wear: wearSentence(wearRatio),
    refret: CUSTOMER_WORDS.refrets[refret],
  };
}

export type MeansId = 'months' | 'strings' | 'skin' | 'wear' | 'refret';
export const MEANS: readonly MeansId[] = ['months', 'strings', 'skin', 'wear', 'refret'];

/** What is the same with every choice is said once. */
export function sharedMeans(choices: readonly ChoiceSentences[]): MeansId[] {
  return choices.length < 2 ? [] : MEANS.filter((id) => choices.every((choice) => choice[id] === choices[0][id]));
}
