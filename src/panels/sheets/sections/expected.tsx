/** What the neck should do in each state, with room for what it did. */
import { formatQuantity, type UnitSystem } from '../../../build/units.ts';
import { bowText } from '../../words/bow.ts';
import { METHOD_WORDS } from '../../words/panels.ts';
import { PLAN_WORDS } from '../../words/sheets.ts';
import { timeText } from '../../words/times.ts';
import { SheetTable } from '../data-table.tsx';
import { LineFigure } from '../line-figure.tsx';
import type { SheetPlan, StateId } from '../plan-data.ts';
import { Section } from '../section.tsx';

const WORDS = PLAN_WORDS.expected;

export function stateText(id: StateId, { build }: Pick<SheetPlan, 'build'>): string {
  if (id === 'settled') return WORDS.states.settled(timeText(build.settleDays));
  if (id === 'rodSet') return WORDS.states.rodSet(formatQuantity(build.rodSettingPercent, '%', 0, 'metric'));
  return WORDS.states[id];
}

export function Expected({ sheet, system }: { readonly sheet: SheetPlan; readonly system: UnitSystem }) {
  const { build, prediction, states } = sheet;
  const { fromFret, toFret } = prediction.straightedge;
  const columns = [
    { id: 'state', header: WORDS.state, kind: 'words' },
    { id: 'predicted', header: WORDS.predicted, kind: 'words' },
    { id: 'measured', header: WORDS.measured, kind: 'blank' },
    { id: 'date', header: WORDS.date, kind: 'blank' },
    { id: 'gauge', header: WORDS.gauge, kind: 'blank' },
  ] as const;
  const rows = states.map(({ id, line }) => [
    stateText(id, sheet),
    <b key={id}>{bowText(line.extremeMm, system)}</b>,
    '',
    '',
    '',
  ]);
  return (
    <Section id="expected" title={WORDS.title} whole>
      <p>
        {WORDS.method(METHOD_WORDS[build.method].label)}{' '}
        {WORDS.targetLine(formatQuantity(build.targetReliefMm, 'mm', 2, system))} {WORDS.note(fromFret, toFret)}
      </p>
      <SheetTable caption={WORDS.caption} columns={columns} rows={rows} className="table-expected" />
      <p className="sheet-small">{WORDS.noBand}</p>
      <LineFigure
        title={WORDS.lineTitle}
        prediction={prediction}
        system={system}
        lines={states.filter(({ id }) => id !== 'bare').map(({ id, line }) => ({ name: stateText(id, sheet), line }))}
      />
    </Section>
  );
}
