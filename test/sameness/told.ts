/** The customer's page and the comparison: sentences and cells made of the same numbers. */
import { choiceFacts } from '../../src/verdict/choice-facts.ts';
import { neckNumbers, type NeckNumbers } from '../../src/verdict/compared-numbers.ts';
import type { StringAim } from '../../src/verdict/string-aim.ts';
import type { Surface } from './hold.ts';
import type { Truth } from './truth.ts';
import type { House } from './house.ts';
import type { UnitSystem } from '../../src/neck/units.ts';

/** What `predict` has of the relief with the most room, and the band that its chart gives it. */
function mostRoomTexts(truth: Truth, aim: StringAim['relief'], house: House, system: UnitSystem) {
  const told = truth.report.playing.strengths.find(({ strength }) => strength === 'medium')!.mostRoom;
  if (!told || aim.status !== 'better') return { told: null, band: [] };
  return { told, band: [aim.band.lowMm, aim.band.highMm].map((mm) => house.bowSize(mm, system)) };
}

export const customer: Surface = (truth, house, system, notes) => {
  const { build, prediction, uncertainty, chosen, report } = truth;
  const facts = choiceFacts(build, prediction, uncertainty);
  const sentences = house.choiceSentences(facts, system);
  const { frettedReliefMm: fretted, strungReliefMm: strung } = chosen;
  const size = (mm: number) => house.bowSize(mm, system);
  const isFlat = (mm: number) => house.bowKind(mm, system) === 'flat';
  for (const of of [fretted, strung, chosen.settledReliefMm])
    notes.sentence(
      'customer',
      'reliefMm',
      house.liesSentence(of.value, system),
      isFlat(of.value) ? [] : [size(of.value)],
    );
  const [p05, p95] = uncertainty ? [fretted.p05!, fretted.p95!] : [0, 0];
  const band = isFlat(p05) && isFlat(p95) ? [] : [size(p05), size(p95)];
  notes.sentence('customer', 'frettedReliefMm band', sentences.sure, band);
  const { actionMm, strengths } = report.playing;
  const moves = house.textOf('settlingMoveMm', Math.abs(chosen.settlingMoveMm), system);
  notes.sentence(
    'customer',
    'settlingMoveMm',
    sentences.care,
    [moves],
    [house.textOf('actionChangeMm', Math.abs(report.playing.overMonths.actionChangeMm), system)],
  );
  const action = house.textOf('actionMm', actionMm, system);
  notes.sentence('customer', 'actionMm', sentences.strings, [action]);
  const clean = strengths.findLast(({ notesBuzzing }) => notesBuzzing === 0)?.strength ?? 'none';
  const said = house.CUSTOMER_WORDS.cleans[clean];
  notes.same('customer', 'notesBuzzing', sentences.strings.includes(said) ? said : sentences.strings, said);
  const chance = chosen.rodForTarget.rodSettingPercent.withinReachPercent;
  if (chance !== undefined && chance !== null && facts.rodTask !== 'none') {
    const said = chance >= 98.5 ? house.CUSTOMER_WORDS.chanceAll : house.CUSTOMER_WORDS.chance(Math.round(chance));
    notes.same('customer', 'withinReachPercent', sentences.sure.endsWith(said) ? said : sentences.sure, said);
  }
};

const MOMENT = { strung: true, days: 0, rodPercent: 0 } as const;

const numbersOf = ({ build, prediction, uncertainty }: Truth): NeckNumbers =>
  neckNumbers(build, MOMENT, prediction, uncertainty);

/** What reasons may say of a neck with a unit behind it. */
function sayable({ build, chosen, report, sheet }: Truth, numbers: NeckNumbers, house: House, system: UnitSystem) {
  const size = (mm: number) => house.bowSize(mm, system);
  return [
    house.textOf('meanWedgeForceN', chosen.meanWedgeForceN.value, system),
    house.textOf('meanPullOutForceN', chosen.meanPullOutForceN, system),
    house.textOf('stringPullN', report.stringPullN, system),
    house.textOf('studBiteMm', numbers.biteMm, system),
    house.textOf('kerfMm', chosen.kerfMm, system),
    house.textOf('slotDepthMm', build.slotDepthMm, system),
    house.textOf('boardThicknessMm', build.boardThicknessMm, system),
    house.textOf('chamferMm', build.chamferMm, system),
    house.textOf('targetReliefMm', report.targetReliefMm, system),
    house.textOf('settlingMoveMm', Math.abs(chosen.settlingMoveMm), system),
    // Parts of a sum, which no file holds by themselves.
    house.textOf('pullOutForceN', numbers.frictionN, system),
    house.textOf('pullOutForceN', numbers.pullOutN - numbers.frictionN, system),
    ...[numbers.startingMm, numbers.stringsMm, numbers.rod?.reachMm ?? 0].map(size),
    size(numbers.settled.mm - numbers.targetMm),
    house.textOf('glueTotalMm3', sheet.plan.glue.totalMm3, system),
  ];
}

/** Compared with the same neck seated another way. */
export function comparison(first: Truth, second: Truth): Surface {
  const truths = [first, second];
  const necks = truths.map(numbersOf);
  return (_truth, house, system, notes) => {
    const rows = house.differenceRows(necks, 'now', system);
    const others = [
      ...necks.flatMap((numbers, index) => sayable(truths[index], numbers, house, system)),
      house.bowSize(second.chosen.frettedReliefMm.value - first.chosen.frettedReliefMm.value, system),
      house.bowSize(necks[1].fretted.mm - necks[0].fretted.mm, system),
    ];
    for (const [index, { chosen, report, sheet, uncertainty }] of truths.entries()) {
      const cell = (id: string) => rows.find((row) => row.id === id)!.cells[index];
      for (const id of ['fretted', 'strung', 'settled'] as const) {
        const of = chosen[`${id}ReliefMm`];
        notes.same('comparison', `${id}ReliefMm`, cell(id).value, house.bowText(of.value, system));
        if (uncertainty) {
          notes.same('comparison', `${id}ReliefMm band`, cell(id).band, house.bowBandText(of.p05!, of.p95!, system));
        }
      }
      notes.same(
        'comparison',
        'meanPullOutForceN',
        cell('pullOut').value,
        house.textOf('meanPullOutForceN', chosen.meanPullOutForceN, system),
      );
      notes.same(
        'comparison',
        'meanSeatingForceN',
        cell('seating').value,
        house.textOf('meanSeatingForceN', chosen.meanSeatingForceN, system),
      );
      const glue = sheet.plan.steps.flatMap(({ quantities }) => quantities).find(({ key }) => key === 'glueTotalMm3');
      notes.same(
        'comparison',
        'glueTotalMm3',
        cell('glue').value,
        glue ? house.textOf('glueTotalMm3', glue.value, system) : house.CELL_WORDS.dry,
      );
      const most = mostRoomTexts(truths[index], necks[index].mostRoom, house, system);
      if (most.told)
        notes.same('comparison', 'mostRoom', cell('mostRoom').value, house.bowText(most.told.targetReliefMm, system));
      const percent = house.textOf('extraFlexibilityPercent', Math.abs(chosen.extraFlexibilityPercent), system);
      if (percent !== house.textOf('extraFlexibilityPercent', 0, system)) {
        notes.sentence('comparison', 'extraFlexibilityPercent', cell('flexibility').value, [percent]);
      }
      const { status, turnsOfNut, nutWay, rodSettingPercent } = chosen.rodForTarget;
      if (report.rod.kind !== 'none' && status === 'reached') {
        const nut = {
          ...necks[index].rod!.needed.nut,
          turns: turnsOfNut,
          way: nutWay,
          percent: rodSettingPercent.value,
        };
        notes.same('comparison', 'turnsOfNut', cell('rod').value, house.settingText(nut));
      }
    }
    for (const { id, why } of rows) {
      for (const { text } of why) notes.sentence('comparison', `why: ${id}`, lengthsOnly(text), [], others);
    }
  };
}

/** Shares are ratios of two numbers, which no file holds. */
const lengthsOnly = (text: string): string => text.replace(/[\d.,]+\u00a0%/g, '');
