/** The checks, worst first, each with what to do. */
import type { UnitSystem } from '../../../neck/units.ts';
import type { Check, CheckCode } from '../../../fretwork/checks/check-types.ts';
import type { Table } from '../../../fretwork/plan/tables.ts';
import { checkFacts, labelOf } from '../../workshop/checks/check-text.ts';
import { CHECK_WORDS } from '../../../speech/en/workshop.ts';
import { PLAN_WORDS } from '../../../speech/en/papers.ts';
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
      {serious === 0 && <p>{PLAN_WORDS.checks.none}</p>}
      <ul className="sheet-checks">
        {checks.map((check, index) => (
          <li key={`${check.code} ${index}`} data-severity={check.severity}>
            <strong>{CHECK_WORDS.severities[check.severity]}</strong>
            <p>
              <b>{labelOf(check.parameter)}.</b> {check.reason} {check.remedy}
              {checkFacts(check, system).map((fact) => ` ${fact[0]!.toUpperCase()}${fact.slice(1)}.`)}{' '}
              <small>{PLAN_WORDS.checks.source(check.source)}</small>
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
