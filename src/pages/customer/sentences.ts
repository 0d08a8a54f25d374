/** Plain sentences about a choice, made from its facts and from nothing else. */
import type { UnitSystem } from '../../neck/units.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { bowKind, bowSize } from '../../speech/bow.ts';
import { STRENGTHS, type Strength } from '../../verdict/string-room.ts';
import type { BuiltFacts, ChoiceFacts } from '../../verdict/choice-facts.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import { metalShortName } from '../../speech/names.ts';

/** Thickness of a sheet of writing paper, mm (80 g/m², from memory). */
const PAPER_MM = 0.1;
/** Ratios of hardness that a player may notice; typical hardnesses do not bear finer steps. */
const SOFTER = 0.9;
const HARDER = 1.15;
const MUCH_HARDER = 1.4;
/** Chances above this are said as nearly every. */
const NEARLY_ALL = 0.985;

/** What is known as soon as the neck is. */
export interface BuiltSentences {
  readonly held: string;
  readonly time: string;
  readonly skin: string;
  readonly wear: string;
  readonly refret: string;
}

export interface ChoiceSentences extends BuiltSentences {
  readonly care: string;
  readonly strings: string;
  readonly sure: string;
}

function likePaper(reliefMm: number): string {
  const sheets = Math.abs(reliefMm) / PAPER_MM;
  if (sheets < 0.75) return CUSTOMER_WORDS.lessThanPaper;
  return CUSTOMER_WORDS.paper(CUSTOMER_WORDS.sheets(Math.round(sheets)));
}

/** How the neck lies at a moment, with what is as thick as that. */
export function liesSentence(reliefMm: number, system: UnitSystem): string {
  const kind = bowKind(reliefMm, system);
  if (kind === 'flat') return CUSTOMER_WORDS.lies.flat;
  return CUSTOMER_WORDS.lies[kind](bowSize(reliefMm, system), likePaper(reliefMm));
}

/** Between which bends nine of ten such necks lie, and how many of them can be set right. */
function sureSentence({ frettedBand, rodTask, rodChance }: ChoiceFacts, system: UnitSystem): string {
  return [...(frettedBand ? bandSentence(frettedBand, system) : []), ...chanceSentence(rodTask, rodChance)].join(' ');
}

function bandSentence({ p05, p95 }: Band, system: UnitSystem): readonly string[] {
  // Frets that wedge nothing leave every neck straight.
  if ([p05, p95].every((mm) => bowKind(mm, system) === 'flat')) return [];
  const isEitherWay = bowKind(p05, system) === 'back-bow' && bowKind(p95, system) === 'relief';
  if (isEitherWay) return [CUSTOMER_WORDS.bentEitherWay(bowSize(p05, system), bowSize(p95, system))];
  const [low, high] = [p05, p95].toSorted((a, b) => Math.abs(a) - Math.abs(b));
  return [CUSTOMER_WORDS.between(bowSize(low, system), bowSize(high, system))];
}

function chanceSentence(rodTask: ChoiceFacts['rodTask'], rodChance: number | null): readonly string[] {
  if (rodTask === 'none' || rodChance === null) return [];
  return [rodChance >= NEARLY_ALL ? CUSTOMER_WORDS.chanceAll : CUSTOMER_WORDS.chance(Math.round(100 * rodChance))];
}

/** 1 → "one day", 2.5 → "2.5 days", 0 → "the same day". */
export function daysText(days: number): string {
  if (days < 0.05) return CUSTOMER_WORDS.atOnce;
  return CUSTOMER_WORDS.days(String(Number(days.toFixed(1))));
}

function timeSentence({ waitDays, glueHours }: BuiltFacts): string {
  return glueHours > 0
    ? CUSTOMER_WORDS.waitGlue(daysText(waitDays), CUSTOMER_WORDS.hours(formatNumber(glueHours, 0)))
    : CUSTOMER_WORDS.wait(daysText(waitDays));
}

/** As hard as the maker plays, where that was measured. */
function measuredHand({ own }: ChoiceFacts, system: UnitSystem): string {
  if (!own) return CUSTOMER_WORDS.handAssumed;
  const [force, low, high] = [own.own.forceN, own.own.p05N, own.own.p95N].map((n) => textOf('ownForceN', n, system));
  const is = own.buzzing > 0 ? 'buzzes' : own.buzzingAtMost > 0 ? 'mostly' : 'clean';
  return `${CUSTOMER_WORDS.handMeasured(force, low, high)} ${CUSTOMER_WORDS.handSays[is]}`;
}

function stringsSentence(facts: ChoiceFacts, system: UnitSystem): string {
  const { action, cleans } = CUSTOMER_WORDS;
  const height = action(textOf('actionMm', facts.actionMm, system));
  return [height, cleans[facts.cleanTo ?? 'none'], measuredHand(facts, system)].join(' ');
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

export function builtSentences(facts: BuiltFacts): BuiltSentences {
  const { method, nickel, nickelStrings, wire, wearRatio, refret } = facts;
  const ofWire = CUSTOMER_WORDS.nickels[nickel](metalShortName(wire));
  return {
    held: CUSTOMER_WORDS.holds[method],
    time: timeSentence(facts),
    skin: nickelStrings.length === 0 ? ofWire : `${ofWire} ${CUSTOMER_WORDS.nickelStrings}`,
    wear: wearSentence(wearRatio),
    refret: CUSTOMER_WORDS.refrets[refret],
  };
}

export function choiceSentences(facts: ChoiceFacts, system: UnitSystem): ChoiceSentences {
  const { movement, movesMm, rodTask } = facts;
  const moves = CUSTOMER_WORDS.movements[movement](textOf('settlingMoveMm', Math.abs(movesMm), system));
  return {
    ...builtSentences(facts),
    care: [moves, changeSentence(facts, system), CUSTOMER_WORDS.rodTasks[rodTask]].join(' '),
    strings: stringsSentence(facts, system),
    sure: sureSentence(facts, system),
  };
}

export type MeansId = keyof ChoiceSentences;
/** In the order in which they matter to somebody who chooses. */
export const MEANS: readonly MeansId[] = ['held', 'strings', 'care', 'time', 'refret', 'skin', 'wear', 'sure'];

/** What is the same with every choice is said once. */
export function sharedMeans(choices: readonly Partial<ChoiceSentences>[]): MeansId[] {
  const [first, ...others] = choices;
  return others.length === 0 ? [] : MEANS.filter((id) => others.every((choice) => choice[id] === first[id]));
}
