/** The page: its large numbers and the card of a fret. */
import type { Surface } from './hold.ts';

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
  const field = (table: string, key: 'boardWidthMm' | 'nipMm') => Number(csv.get(table)!.get(key)![fret - 1]);
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
