/** Readings while frets go in, and what they mean for the rest, in words. */
import { CLOSE_MM } from '../../mechanics/while-fretting/advice.ts';
import type { RestChange } from '../../mechanics/while-fretting/job.ts';
import type { FrettingQuestion } from '../../mechanics/while-fretting/question.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { AdvisedOutcome, FrettingAdvice } from '../../verdict/fretting-advice.ts';
import { bowBandText, bowSize, bowText, enteredBowText } from '../bow.ts';
import { BENCH_ADVICE_WORDS, BENCH_READING_WORDS } from '../en/bench/bench.ts';
import { formatShort } from '../quantity.ts';
import { textOf } from '../quantity-text.ts';

/** What the workshop calls a blade or a wire; empty where it has no name for it. */
export type StockName = (change: RestChange) => string;

const bandText = ({ p05, p95 }: Band, system: UnitSystem): string => bowBandText(p05, p95, system);

/** Times a bite: "1.6", "0.45". */
const timesText = (times: number): string => formatShort(times, times < 1 ? 2 : 1);

export function frettingQuestionText(question: FrettingQuestion, system: UnitSystem): string {
  const { measuredMm, expectedMm, biteTimes } = question;
  const measured = enteredBowText(measuredMm, system);
  const band = bandText(expectedMm, system);
  return biteTimes === null
    ? BENCH_READING_WORDS.askNoBite(measured, band)
    : BENCH_READING_WORDS.askBite(measured, band, timesText(biteTimes));
}

/** What a change takes: a kerf with its blade, a wire with its name. */
function tool(change: RestChange, system: UnitSystem, nameOf: StockName): string {
  const name = nameOf(change);
  if (change.code === 'kerf') {
    const kerf = textOf('kerfMm', change.kerfMm, system);
    return name === '' ? kerf : BENCH_ADVICE_WORDS.blade(kerf, name);
  }
  if (change.code !== 'wire') return '';
  const tang = textOf('tangWidthMm', change.tangWidthMm, system);
  return BENCH_ADVICE_WORDS.wire(name, tang, textOf('studWidthMm', change.studWidthMm, system));
}

/** "Open the rest to 0.64 mm (pull saw)". */
export function choiceText(change: RestChange, system: UnitSystem, nameOf: StockName): string {
  const { choice } = BENCH_ADVICE_WORDS;
  const of = tool(change, system, nameOf);
  return change.code === 'go-on' || change.code === 'glue' ? choice[change.code] : choice[change.code](of);
}

/** The share from which something is more likely than not. */
const MORE_LIKELY = 0.5;

/** The answer in a line: go on, or stop and what. */
export function verdictText({ outcomes, advised }: FrettingAdvice, system: UnitSystem, nameOf: StockName): string {
  const { change, within, withinByRod } = outcomes[advised];
  const { what } = BENCH_ADVICE_WORDS;
  if (change.code === 'go-on') {
    if (within >= MORE_LIKELY || outcomes.length === 1) return BENCH_ADVICE_WORDS.goOn;
    return withinByRod >= MORE_LIKELY ? BENCH_ADVICE_WORDS.letRod : BENCH_ADVICE_WORDS.noBetter;
  }
  const of = tool(change, system, nameOf);
  return BENCH_ADVICE_WORDS.stop(change.code === 'glue' ? what.glue : what[change.code](of));
}

/** From which share on each of the words for it holds. */
const SURE_FROM = [0, 0.15, 0.4, 0.6, 0.8, 0.95] as const;

function howSure(share: number): string {
  return BENCH_ADVICE_WORDS.how[SURE_FROM.findLastIndex((from) => share >= from)];
}

type ForOutcome = Pick<Build, 'rodKind'>;

/** What a choice leads to, a sentence each. */
export function outcomeTexts(
  { settledMm, frettedMm, within, withinByRod }: AdvisedOutcome,
  { rodKind }: ForOutcome,
  wantedMm: number,
  system: UnitSystem,
): string[] {
  const { rod, sure, sureNoRod } = BENCH_ADVICE_WORDS;
  const hasRod = rodKind !== 'none';
  const reach = !hasRod ? 'no-rod' : within >= MORE_LIKELY ? 'third' : withinByRod >= MORE_LIKELY ? 'all' : 'none';
  const said = hasRod ? sure : sureNoRod;
  return [
    BENCH_ADVICE_WORDS.settled(bowText(settledMm.p50, system), bandText(settledMm, system)),
    rod[reach],
    said(howSure(within), Math.round(within * 100), bowSize(CLOSE_MM, system), bowText(wantedMm, system)),
    BENCH_ADVICE_WORDS.fretted(bowText(frettedMm.p50, system)),
  ];
}

export function biteText({ p05, p50, p95 }: Band): string {
  return BENCH_ADVICE_WORDS.bite(timesText(p05), timesText(p50), timesText(p95));
}
