/** The checks, worst first, each with what to do. */
import type { UnitSystem } from '../../../neck/units.ts';
import type { Check, CheckCode } from '../../../fretwork/checks/check-types.ts';
import type { Table } from '../../../fretwork/plan/tables.ts';
import { checkNumbers, checkReason, checkRemedy, checkSource, checkTitle, isLimit } from '../../../speech/checks.ts';
import { CHECK_WORDS } from '../../../speech/en/fretwork/checks.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { Section } from '../section.tsx';

interface ChecksProps {
  readonly checks: readonly Check[];
  readonly table: Table | undefined;
  readonly onSave: (table: Table) => void;
  readonly system: UnitSystem;
}

/** Reminders that stand as cautions at their steps. */
const AT_STEPS: ReadonlySet<CheckCode> = new Set(['dust', 'dust-sensitising', 'glue', 'listed-wood']);

export function ChecksSection({ checks: all, table, onSave, system }: ChecksProps) {
  const checks = all.filter(({ code }) => !AT_STEPS.has(code));
  const serious = checks.filter((check) => check.severity !== 'note').length;
  return (
    <Section id="checks" title={PLAN_WORDS.checks.title} table={table} onSave={onSave}>
      {serious === 0 && <p>{CHECK_WORDS.none}</p>}
      <ul className="sheet-checks">
        {checks.map((check, index) => (
          <li key={`${check.code} ${index}`} data-severity={check.severity}>
            <strong>{isLimit(check) ? CHECK_WORDS.limit : CHECK_WORDS.severities[check.severity]}</strong>
            <p>
              <b>{checkTitle(check)}.</b> {checkReason(check)} {checkRemedy(check)} {checkNumbers(check, system)}{' '}
              <small>{checkSource(check)}</small>
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
