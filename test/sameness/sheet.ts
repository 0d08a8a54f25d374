/** The bench sheet and the CSV files beside it. */
import { workingValue } from '../../src/neck/kerf.ts';
import type { QuantityKey } from '../../src/neck/quantities.ts';
import { filedValue, quantityOf } from '../../src/neck/quantities.ts';
import { isCodeColumn, planTables, type ColumnKey } from '../../src/fretwork/plan/tables.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { MORE_RELIEF_MM, stringAim } from '../../src/verdict/string-aim.ts';
import { stringRoom } from '../../src/verdict/string-room.ts';
import type { Surface } from './hold.ts';
import { csvNumbers } from './truth.ts';

/** Every cell of a table is the text of what the CSV file holds there. */
export const tables: Surface = ({ sheet, csv }, house, system, notes) => {
  for (const table of planTables(sheet.plan)) {
    if (table.id === 'checks') continue;
    const { rows } = house.shownTable(table, system);
    const textsOf = (field: string, key: ColumnKey) =>
      field
        .split(' ')
        .map((part) =>
          isCodeColumn(key) || part === '' || Number.isNaN(Number(part))
            ? null
            : house.numberOf(key, Number(part), system),
        );
    for (const [index, key] of table.columns.entries()) {
      const fields = csv.get(table.id)!.get(key)!;
      for (const [row, field] of fields.entries()) {
        const texts = textsOf(field, key);
        if (texts.every((text) => text !== null)) notes.same('tables', key, rows[row][index], texts.join(' '));
      }
    }
  }
};

/** CSV and `predict` hold the same number of the same quantity. */
export const files: Surface = (truth, _house, _system, notes) => {
  const { chosen, report, build, sheet } = truth;
  const same = (table: string, key: QuantityKey, values: readonly number[]) =>
    notes.same('csv', key, csvNumbers(truth, table, key), values);
  // The slot of a zero fret is sawn with the others.
  const slotXMm = build.zeroFret ? [0, ...report.fretXMm] : report.fretXMm;
  same('slots', 'fretXMm', slotXMm);
  same('seating', 'wedgeForceN', chosen.wedgeForceN);
  same('seating', 'seatingForceN', chosen.seatingForceN);
  same('seating', 'pullOutForceN', chosen.pullOutForceN);
  if (build.regions.length === 0)
    same(
      'slots',
      'kerfMm',
      slotXMm.map(() => chosen.kerfMm),
    );
  notes.same('csv', 'frettedReliefMm', csvNumbers(truth, 'quarters', 'reliefMm').at(-1), chosen.frettedReliefMm.value);
  const [low, high] = (['reliefP05Mm', 'reliefP95Mm'] as const).map((key) => csvNumbers(truth, 'quarters', key).at(-1));
  if (truth.uncertainty) {
    notes.same('csv', 'frettedReliefMm band', [low, high], [chosen.frettedReliefMm.p05, chosen.frettedReliefMm.p95]);
  }
  const held = (key: 'value' | 'limit') =>
    truth.csv
      .get('checks')!
      .get(key)!
      .map((field) => (field === '' ? null : Number(field)));
  notes.same(
    'csv',
    'checks',
    held('value'),
    report.checks.map(({ value }) => value),
  );
  notes.same(
    'csv',
    'checks',
    held('limit'),
    report.checks.map(({ limit }) => limit),
  );
  for (const { code, value, limit } of report.checks) {
    notes.same('csv', `${code} breaks its limit`, value === null || value !== limit, true);
  }
  notes.same('csv', 'stringTensionN', report.strings.length, sheet.build.strings.length);
};

/** The set-up: the table's worst notes are those of `predict`, and its sentence has the same action. */
export const setUp: Surface = (truth, house, system, notes) => {
  const { sheet, report } = truth;
  const { strengths, actionMm, pluckFromSaddleMm } = report.playing;
  const keys = [
    'pluckForceN',
    'notesBuzzing',
    'notesMayBuzz',
    'stringRoomMm',
    'string',
    'frettedAt',
    'touchedFret',
    'lowestActionMm',
  ] as const;
  for (const key of keys)
    notes.same(
      'set-up',
      key,
      csvNumbers(truth, 'playing', key),
      strengths.map((of) => of[key]),
    );
  const heights = ['stringActionMm', 'stringReliefMm', 'nutOverFret1Mm', 'saddleOverFretsMm'] as const;
  for (const key of heights)
    notes.same(
      'set-up',
      key,
      csvNumbers(truth, 'setUp', key),
      report.playing.strings.map((of) => of[key]),
    );
  const { actionPerTurnMm } = report.playing;
  if (actionPerTurnMm === null) notes.same('set-up', 'no rod', house.turnText(sheet, system), '');
  else
    notes.sentence('set-up', 'actionPerTurnMm', house.turnText(sheet, system), [
      house.textOf('actionPerTurnMm', Math.abs(actionPerTurnMm), system),
    ]);
  notes.sentence('set-up', 'actionMm', house.playedText(sheet, system), [
    house.textOf('actionMm', actionMm, system),
    house.textOf('pluckFromSaddleMm', pluckFromSaddleMm, system),
  ]);
};

/** The chart of where it buzzes, note by note, and what it says of the way back. */
export const roomChart: Surface = ({ build, prediction, report }, house, system, notes) => {
  for (const { strength, rooms, string, frettedAt, stringRoomMm, ...of } of report.playing.strengths) {
    const hand = { strength, direction: report.playing.pluckDirection };
    const room = stringRoom({ build, prediction }, hand);
    const shown = room.strings.map((all) => all.map(({ leastMm }) => house.numberOf('stringRoomMm', leastMm, system)));
    notes.same(
      'room',
      'stringRoomMm',
      shown,
      rooms.map((all) => all.map((value) => house.numberOf('stringRoomMm', value, system))),
    );
    const size = house.textOf('stringRoomMm', Math.abs(stringRoomMm), system);
    const bound = house.textOf('stringRoomBoundMm', Math.abs(of.stringRoomBoundMm), system);
    const said = house.noteText(house.stringName(build.strings, string - 1), frettedAt, room.least, system);
    // What rounds to nothing is said in words.
    const isNothing = size === house.textOf('stringRoomMm', 0, system);
    notes.sentence('room', 'stringRoomMm', said, isNothing ? [] : [size], [bound]);
    const aim = stringAim({ build, prediction }, hand);
    const texts = [
      house.textOf('lowestActionMm', of.lowestActionMm, system),
      house.textOf('actionMm', report.playing.actionMm, system),
      ...(of.mostRoom
        ? [house.textOf('bestRoomMm', Math.abs(of.mostRoom.bestRoomMm), system)].filter(
            (text) => text !== house.textOf('bestRoomMm', 0, system),
          )
        : []),
    ];
    const more = [
      house.textOf('moreReliefMm', MORE_RELIEF_MM, system),
      ...(of.mostRoom ? [house.bowSize(of.mostRoom.targetReliefMm, system)] : []),
      ...(aim.relief.status === 'better'
        ? [
            house.textOf('roomCostMm', aim.relief.costMm ?? 0, system),
            house.textOf('pluckForceN', aim.relief.band.fromN, system),
            house.textOf('pluckForceN', aim.relief.band.toN, system),
            house.bowSize(aim.relief.band.lowMm, system),
            house.bowSize(aim.relief.band.highMm, system),
          ]
        : []),
    ];
    notes.sentence('room', 'lowestActionMm', house.aimText(aim, system), texts, more);
  }
};

export const expected: Surface = ({ sheet, chosen, uncertainty, build }, house, system, notes) => {
  const held = {
    fretted: chosen.frettedReliefMm,
    strung: chosen.strungReliefMm,
    settled: chosen.settledReliefMm,
  };
  for (const { id, line, band } of sheet.states) {
    if (!(id in held)) continue;
    const of = held[id as keyof typeof held];
    notes.same('sheet', `${id}ReliefMm`, house.bowText(line.extremeMm, system), house.bowText(of.value, system));
    if (uncertainty) {
      const said = house.bowBandText(band!.p05, band!.p95, system);
      notes.same('sheet', `${id}ReliefMm band`, said, house.bowBandText(of.p05!, of.p95!, system));
    }
  }
  const { rod } = sheet;
  if (!rod) return;
  const { status, turnsOfNut, nutWay, rodSettingPercent, nutTorqueNm, quarterTurnReliefMm, rodSetReliefMm } =
    chosen.rodForTarget;
  const wanted = sheet.states.find(({ id }) => id === 'rodWanted');
  if (wanted) notes.same('sheet', 'rodSetReliefMm', filedValue(wanted.line.extremeMm, 'mm'), rodSetReliefMm);
  notes.same('sheet', 'rod status', rod.status, status);
  if (status !== 'reached') return;
  const nut = { ...rod.nut, turns: turnsOfNut, way: nutWay, percent: rodSettingPercent.value, torqueNm: nutTorqueNm };
  const texts = [house.settingText(nut), house.changeText(quarterTurnReliefMm, system)].filter(Boolean);
  const more = [house.torqueText(nut)];
  notes.sentence('sheet', 'rodForTarget', house.rodText(rod, build.targetReliefMm, system), texts, more);
};

/** The numbers of the steps are those of the tables and of the build. */
export const steps: Surface = (truth, house, system, notes) => {
  const { sheet, build } = truth;
  const inTables: Partial<Record<QuantityKey, string>> = {
    slotDepthNeededMm: 'slots',
    boardLeftLeastMm: 'slots',
    chamferLimitMm: 'slots',
    cutLengthMm: 'wire',
    bevelLossMm: 'wire',
    glueBeadMm: 'seating',
  };
  for (const { quantities } of sheet.plan.steps) {
    for (const quantity of quantities) {
      const { key, value, which } = quantity;
      const { text } = house.stepQuantityText(quantity, system);
      const shown = key === 'bendToRadiusMm' ? Math.abs(value) : value;
      const wanted =
        quantityOf(key).unit === 'day' && value > 0 ? house.timeText(value) : house.textOf(key, shown, system);
      notes.same('steps', key, text, wanted);
      if (key in build && !['kerfMm', 'tangWidthMm', 'studWidthMm'].includes(key)) {
        notes.same('steps', key, value, build[key as keyof typeof build]);
      }
      const table = inTables[key];
      if (!table) continue;
      const values = csvNumbers(truth, table, key);
      const end = which === 'least' || key === 'chamferLimitMm' || key === 'boardLeftLeastMm' ? 'min' : 'max';
      notes.same('steps', key, text, house.textOf(key, Math[end](...values), system));
    }
  }
};

/** Numbers of the build: list of values, record for the next repairer, closed groups, differing settings. */
export const given: Surface = ({ build, sheet, chosen }, house, system, notes) => {
  const rows = house.valueRows(build, system).flatMap((group) => group.rows);
  const text = (key: QuantityKey, value: number) => house.textOf(key, value, system);
  const other = { ...build, ...Object.fromEntries(PARAMETERS.map(({ id }) => [id, null])) } as typeof build;
  const settings = house.differingSettings([build, other], system).flatMap((group) => group.settings);
  for (const parameter of PARAMETERS) {
    // The kerf is that of the way of seating.
    const value = workingValue(build, parameter.id);
    if (parameter.kind !== 'number' || value === null) continue;
    const wanted = text(parameter.id, value as number);
    const setting = settings.find(({ id }) => id === parameter.id);
    notes.same('comparison', parameter.id, setting?.texts[0], wanted);
  }
  const lengths = [
    'crownWidthMm',
    'crownHeightMm',
    'tangWidthMm',
    'studWidthMm',
    'tangDepthMm',
    'slotDepthMm',
    'chamferMm',
  ] as const;
  const known = [
    ...lengths.map((key) => text(key, build[key])),
    ...sheet.plan.slots.map(({ kerfMm }) => text('kerfMm', kerfMm)),
    text('kerfMm', chosen.kerfMm),
    ...build.binding.map(({ thicknessMm }) => house.textOf('bindingThicknessMm', thicknessMm, system)),
    ...rows.map((row) => row.text),
  ];
  for (const [, said] of house.recordRows(build, sheet.plan, system)) {
    notes.sentence('record', 'numbers of the build', said, [], [...known, house.groupSummary('board', build, system)]);
  }
};

export const checks: Surface = ({ sheet, report }, house, system, notes) => {
  for (const [index, check] of sheet.plan.checks.entries()) {
    const { value, limit, quantity } = report.checks[index];
    if (value === null || limit === null || quantity === null) continue;
    const shown = house.shownApart(quantity, value, limit, system);
    notes.sentence('checks', check.code, house.checkNumbers(check, system), [shown.value, shown.limit]);
    notes.same('checks', check.code, shown.value !== shown.limit, true);
  }
};
