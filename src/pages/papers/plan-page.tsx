/** The fretwork plan: read on the screen, printed as the bench sheet. */
import { useMemo } from 'react';
import { isolated } from '../../speech/isolate.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { PROGRAM_VERSION } from '../../neck/version.ts';
import { checkTable, type Table } from '../../fretwork/plan/tables.ts';
import { useKeptStrength } from '../../state/matches/use-kept-strength.ts';
import { currentBands, type Solution } from '../../state/solution-slice.ts';
import { useBackbow } from '../../state/store.ts';
import { SHEETS_WORDS } from '../../speech/en/pages/sheets.ts';
import { PLAN_WORDS, STAMP_WORDS } from '../../speech/en/pages/papers.ts';
import { Contents } from './contents.tsx';
import { saveTable } from './downloads.ts';
import { sheetPageRules, usePageRules } from './page-rules.ts';
import { sheetPlan } from '../../verdict/sheet-plan.ts';
import { ChecksSection } from './sections/checks.tsx';
import { Expected } from './sections/expected.tsx';
import { SheetHeading } from './sections/heading.tsx';
import { Quarters } from './sections/quarters.tsx';
import { RepairRecord } from './sections/record.tsx';
import { Steps } from './sections/steps.tsx';
import { Heights, Levelling, Played, Seating, Slots } from './sections/tables.tsx';
import { Values } from './sections/values.tsx';
import { Metals, Wire } from './sections/wire.tsx';
import { CheckStamp } from './stamp/check-stamp.tsx';
import { useStamp } from './stamp/use-stamp.ts';
import { useToday } from './use-today.ts';

interface PlanPageProps {
  readonly solution: Solution;
  readonly system: UnitSystem;
}

export function PlanPage({ solution, system }: PlanPageProps) {
  const uncertainty = useBackbow(currentBands);
  const own = useKeptStrength();
  const sheet = useMemo(() => sheetPlan(solution, uncertainty, own), [solution, uncertainty, own]);
  const { build, plan } = sheet;
  const date = useToday();
  const stamp = useStamp(build);
  const onSave = (table: Table) => saveTable(build, table);
  usePageRules(
    sheetPageRules(
      `${isolated(build.name)} – ${PLAN_WORDS.title}`,
      `${SHEETS_WORDS.version(PROGRAM_VERSION)}, ${date}, ${STAMP_WORDS.stamp(stamp)}`,
    ),
  );
  const shared = { sheet, system, onSave };
  return (
    <article className="sheet" aria-labelledby="sheet-title">
      <SheetHeading verdict={sheet.verdict} build={build} system={system} date={date} stamp={stamp} />
      <CheckStamp build={build} system={system} stamp={stamp} />
      <Contents />
      <Expected sheet={sheet} system={system} />
      <ChecksSection checks={plan.checks} table={checkTable(plan)} onSave={onSave} system={system} />
      <Steps steps={plan.steps} cautions={plan.cautions} system={system} />
      <Quarters {...shared} />
      <Slots {...shared} />
      <Wire plan={plan} system={system} onSave={onSave} />
      <Seating {...shared} />
      <Levelling {...shared} />
      <Heights {...shared} />
      <Played {...shared} />
      <Metals plan={plan} system={system} onSave={onSave} />
      <RepairRecord build={build} plan={plan} system={system} />
      <Values build={build} system={system} />
    </article>
  );
}
