/** What the neck should do in each state, with room for what it did. */
import type { UnitSystem } from '../../../neck/units.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { rodBends, type RodAnswer } from '../../../mechanics/inversion/rod.ts';
import type { Band } from '../../../mechanics/uncertainty/band.ts';
import type { Build } from '../../../neck/build.ts';
import { narrowing } from '../../../mechanics/bench-log/standing.ts';
import { useBackbow } from '../../../state/store.ts';
import { driversText } from '../../workshop/readouts/figures.ts';
import { betweenOf } from '../../answers/wanted/goal.ts';
import { nutTurn } from '../../../mechanics/rod.ts';
import { settingText, torqueText } from '../../../speech/rod.ts';
import { ROD_WORDS } from '../../../speech/en/workshop/rod.ts';
import { bowBandText, bowKind, bowSize, bowText, changeText } from '../../../speech/bow.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { timeText } from '../../../speech/times.ts';
import { SheetTable } from '../data-table.tsx';
import type { ShownColumn } from '../folded-table.ts';
import { LineFigure } from '../line-figure.tsx';
import type { SheetPlan, StateId } from '../../../verdict/sheet-plan.ts';
import { Section } from '../section.tsx';

export function stateText(
  id: StateId,
  { build, prediction, rod }: Pick<SheetPlan, 'build' | 'prediction' | 'rod'>,
): string {
  switch (id) {
    case 'settled':
      return PLAN_WORDS.expected.states.settled(timeText(build.settleDays));
    case 'rodNow':
      return PLAN_WORDS.expected.states.rodNow(settingText(nutTurn(prediction, build.method, build.rodSettingPercent)));
    case 'rodWanted':
      return PLAN_WORDS.expected.states[rod?.status === 'reached' ? 'rodWanted' : 'rodNearest'](
        rod ? settingText(rod.nut) : '',
      );
    default:
      return PLAN_WORDS.expected.states[id];
  }
}

/** What the rod has to do, or that it cannot. */
export function rodText(rod: RodAnswer, targetMm: number, system: UnitSystem): string {
  const nearest = bowText(rod.reliefMm, system);
  const between = rod.status === 'between-shapes' ? betweenOf(targetMm, rod.missMm, system) : undefined;
  if (between === 'flattest') return PLAN_WORDS.expected.rod.flattest(bowSize(rod.reliefMm, system));
  const status = between === 'as-wanted' ? 'reached' : rod.status;
  switch (status) {
    case 'reached':
      return PLAN_WORDS.expected.rod.reached(
        settingText(rod.nut),
        [
          torqueText(rod.nut),
          ROD_WORDS.quarter(changeText(rod.quarterTurnMm, system)),
          // A rod that is tightened and bends forward is told from the relief itself.
          rod.percent > 0 && rodBends(rod) === 'forward' ? PLAN_WORDS.expected.rod.tightForward : '',
          ROD_WORDS.seen,
        ]
          .filter(Boolean)
          .join(' '),
      );
    case 'no-rod':
      return PLAN_WORDS.expected.rod.none;
    default:
      return PLAN_WORDS.expected.rod[status](nearest);
  }
}

/** Nothing where nothing bows. */
function bandText(band: Band | undefined, system: UnitSystem): string {
  if (!band || (bowKind(band.p05, system) === 'flat' && bowKind(band.p95, system) === 'flat')) return '';
  return bowBandText(band.p05, band.p95, system);
}

/** By what this device measured the bands are narrower than elsewhere; nothing where they are not. */
function useNarrowedBy(build: Build): string | undefined {
  const of = useBackbow((state) => narrowing(state, build)?.of);
  const measured = useBackbow((state) => narrowing(state, build)?.measured ?? 0);
  if (of === undefined) return undefined;
  return of === 'log' ? PLAN_WORDS.expected.fromLog(measured) : PLAN_WORDS.expected.fromGrip(measured);
}

export function Expected({ sheet, system }: { readonly sheet: SheetPlan; readonly system: UnitSystem }) {
  const { build, prediction, states, rod, drivers } = sheet;
  const { fromFret, toFret } = prediction.straightedge;
  const narrowedBy = useNarrowedBy(build);
  const isMissing = useBackbow((state) => state.notComputed !== null);
  const banded = states.some(({ band }) => band);
  const columns: ShownColumn[] = [
    { id: 'state', header: PLAN_WORDS.expected.state, kind: 'words' },
    { id: 'predicted', header: PLAN_WORDS.expected.predicted, kind: 'words' },
    ...(banded ? [{ id: 'band', header: PLAN_WORDS.expected.band, kind: 'words' } as const] : []),
    { id: 'measured', header: PLAN_WORDS.expected.measured, kind: 'blank' },
    { id: 'date', header: PLAN_WORDS.expected.date, kind: 'blank' },
    { id: 'gauge', header: PLAN_WORDS.expected.gauge, kind: 'blank' },
  ];
  const rows = states.map(({ id, line, band }) => [
    stateText(id, sheet),
    <b key={id}>{bowText(line.extremeMm, system)}</b>,
    ...(banded ? [bandText(band, system)] : []),
    '',
    '',
    '',
  ]);
  return (
    <Section id="expected" title={PLAN_WORDS.expected.title} whole>
      <p>
        {PLAN_WORDS.expected.method(METHOD_WORDS[build.method].label)}{' '}
        {PLAN_WORDS.expected.targetLine(textOf('targetReliefMm', build.targetReliefMm, system))}{' '}
        {PLAN_WORDS.expected.note(fromFret, toFret)}
      </p>
      <SheetTable caption={PLAN_WORDS.expected.caption} columns={columns} rows={rows} className="table-expected" />
      {rod && <p>{rodText(rod, build.targetReliefMm, system)}</p>}
      {drivers ? (
        <p className="sheet-small">
          {PLAN_WORDS.expected.bandFrom(driversText(drivers))} {narrowedBy}
        </p>
      ) : (
        <>
          {!isMissing && <p className="sheet-small screen-only">{PLAN_WORDS.expected.bandComing}</p>}
          <p className={`sheet-small${isMissing ? '' : ' paper-only'}`}>{PLAN_WORDS.expected.noBand}</p>
        </>
      )}
      <LineFigure
        title={PLAN_WORDS.expected.lineTitle}
        prediction={prediction}
        system={system}
        lines={states.filter(({ id }) => id !== 'bare').map(({ id, line }) => ({ name: stateText(id, sheet), line }))}
      />
    </Section>
  );
}
