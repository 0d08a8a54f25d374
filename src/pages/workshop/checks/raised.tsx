/** What a recommendation would raise among the checks, beside it, worst first. */
import type { Check } from '../../../fretwork/checks/check-types.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { checkNumbers, checkReason } from '../../../speech/checks.ts';
import { CHECK_WORDS } from '../../../speech/en/fretwork/checks.ts';
import './raised.css';

interface RaisedProps {
  readonly checks: readonly Check[];
  readonly system: UnitSystem;
}

export function Raised({ checks, system }: RaisedProps) {
  return checks.map((check, index) => (
    <p key={`${check.code} ${index}`} className={`raised raised-${check.severity}`} data-raised={check.code}>
      {CHECK_WORDS.severities[check.severity]}: {checkReason(check)} {checkNumbers(check, system)}
    </p>
  ));
}
