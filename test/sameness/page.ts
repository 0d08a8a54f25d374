/** The page: its large numbers and the card of a fret. */
import { USUAL_DIRECTION } from '../../src/verdict/set-up-figures.ts';
import { feelOf, verdictOf } from '../../src/verdict/in-short/verdict.ts';
import { measuresIn, type Surface } from './hold.ts';
import { csvNumbers } from './truth.ts';

export const readouts: Surface = ({ build, prediction, uncertainty, report, chosen }, house, system, notes) => {
  const figures = house.figuresOf({ build, prediction, version: 1 }, uncertainty, system);
  const figure = (id: string) => figures.find((found) => found.id === id);
  const whole = (id: string) => {
    const { value, unit } = figure(id)!;
    return unit ? `${value}\u00a0${unit}` : value;
  };
  for (const id of ['fretted', 'strung', 'settled'] as const) {
    const line = chosen[`${id}ReliefMm`];
    notes.same('page', `${id}ReliefMm`, whole(id), house.bowSize(line.value, system));
    notes.same('page', `${id}ReliefMm`, figure(id)!.word, house.BOW_WORDS[house.bowKind(line.value, system)]);
    if (uncertainty) {
      notes.same('page', `${id}ReliefMm band`, figure(id)!.band, house.bowBandText(line.p05!, line.p95!, system));
    }
  }
  const forces = chosen.wedgeForceN;
  const force = (value: number) => house.textOf('wedgeForceN', value, system);
  notes.same(
    'page',
    'meanWedgeForceN',
    whole('force'),
    house.textOf('meanWedgeForceN', chosen.meanWedgeForceN.value, system),
  );
  if (force(Math.max(...forces)) !== force(0)) {
    const [low, high] = [Math.min(...forces), Math.max(...forces)];
    const ends = [house.numberOf('wedgeForceN', low, system), house.numberOf('wedgeForceN', high, system)] as const;
    notes.same('page', 'wedgeForceN', figure('force')!.detail, house.READOUT_WORDS.perFret(...ends));
  }
  notes.same('page', 'stringPullN', whole('pull'), house.textOf('stringPullN', report.stringPullN, system));
  const rod = figure('rod');
  notes.same('page', 'rodForTarget', rod === undefined, report.rod.kind === 'none');
  if (!rod) return;
  const { status, turnsOfNut, rodSettingPercent } = chosen.rodForTarget;
  if (status === 'reached') notes.same('page', 'turnsOfNut', whole('rod'), house.turnsNumber(turnsOfNut));
  const target = house.textOf('targetReliefMm', report.targetReliefMm, system);
  notes.same('page', 'targetReliefMm', rod.label, house.READOUT_WORDS.rodFor(target));
  const percent = house.rodPercentText(rodSettingPercent.value);
  notes.same('page', 'rodRangePercent', rod.detail, house.READOUT_WORDS.ofRange(percent));
};

export const fretCard: Surface = (truth, house, system, notes) => {
  const { build, prediction, chosen, report, csv } = truth;
  const fret = 1 + (build.fretCount >> 1);
  const facts = house.fretFacts(build, fret, prediction, build.method, system).map(([, value]) => value);
  const field = (table: string, key: 'boardWidthMm' | 'nipMm') =>
    Number(csv.get(table)!.get(key)![fret - (build.zeroFret ? 0 : 1)]);
  const wanted = [
    house.textOf('fretXMm', report.fretXMm[fret - 1], system),
    house.textOf('boardWidthMm', field('slots', 'boardWidthMm'), system),
    house.textOf('wedgeForceN', chosen.wedgeForceN[fret - 1], system),
  ];
  notes.same('card of a fret', 'fretXMm', facts[0], wanted[0]);
  notes.same('card of a fret', 'boardWidthMm', facts[1], wanted[1]);
  notes.same('card of a fret', 'wedgeForceN', facts[3], wanted[2]);
  // Nothing to nip is said in a word.
  const nipMm = field('wire', 'nipMm');
  if (csv.get('slots')!.get('slotEnds')![fret - 1] === 'stopped' && nipMm !== 0) {
    notes.same('card of a fret', 'nipMm', facts[4], house.textOf('nipMm', nipMm, system));
  }
};

/** The verdict over the picture, and the same at the head of the sheet. */
export const verdict: Surface = (truth, house, system, notes) => {
  const { build, prediction, uncertainty, chosen, report, sheet } = truth;
  const reckoned = { build, prediction };
  const feel = feelOf(reckoned, { strength: 'medium', direction: USUAL_DIRECTION });
  const clauses = house.verdictClauses(verdictOf(reckoned, uncertainty), feel, system);
  const said = (id: string) => clauses.find((clause) => clause.id === id)?.text ?? '';
  const size = (mm: number) => house.bowSize(mm, system);
  const bows = (...all: readonly number[]) => all.filter((mm) => house.bowKind(mm, system) !== 'flat').map(size);
  const depth = report.verdict.slotsAreSawn ? [house.textOf('slotDepthMm', build.slotDepthMm, system)] : [];
  notes.sentence('verdict', 'kerfMm', said('saw'), [house.textOf('kerfMm', chosen.kerfMm, system), ...depth]);
  const force = house.textOf('meanSeatingForceN', chosen.meanSeatingForceN, system);
  const isByHand = force === house.textOf('meanSeatingForceN', 0, system);
  notes.sentence('verdict', 'meanSeatingForceN', said('seat'), isByHand ? [] : [force]);
  const nips = csvNumbers(truth, 'wire', 'nipMm');
  const most = Math.max(...nips);
  notes.sentence('verdict', 'nipMm', said('nip'), most === 0 ? [] : [house.textOf('nipMm', most, system)]);
  notes.same('verdict', 'nipMm', report.verdict.nipMm, { least: Math.min(...nips), most });
  const { frettedReliefMm: fretted, settledReliefMm: settled } = chosen;
  const band = uncertainty ? [settled.p05!, settled.p95!] : [];
  const inBand = uncertainty ? measuresIn(house.bowBandText(settled.p05!, settled.p95!, system)) : [];
  notes.sentence('verdict', 'settledReliefMm', said('expect'), bows(fretted.value, settled.value), [
    ...inBand,
    ...band.map(size),
  ]);
  if (said('rod') !== '') {
    notes.sentence('verdict', 'rodSetReliefMm', said('rod'), bows(chosen.rodForTarget.rodSetReliefMm));
  }
  notes.same('verdict', 'comesOutAsWanted', said('not') === '', report.verdict.comesOutAsWanted);
  notes.sentence('verdict', 'actionMm', said('feel'), [house.textOf('actionMm', report.playing.actionMm, system)]);
  const onSheet = house.sheetVerdict(sheet.verdict, system);
  for (const { id, text } of clauses)
    if (id !== 'feel') notes.same('verdict', id, onSheet.includes(text) ? text : onSheet, text);
};
