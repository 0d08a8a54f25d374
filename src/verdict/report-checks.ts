/** A check as JSON: its code and its numbers, in the units that it stores them in. Words are for the page. */
import type { Check } from '../fretwork/checks/check-types.ts';
import { rounded } from './report-bands.ts';

/** One digit more than is shown, so that a value and its limit can be told apart. */
const digitsOf = ({ digits }: Check) => Math.max(4, digits + 1);

export function reportCheck(check: Check) {
  const { code, variant, severity, parameter, quantity, limitKind, unit, frets, about } = check;
  return {
    code,
    variant,
    severity,
    parameter,
    quantity,
    value: rounded(check.value, digitsOf(check)),
    limit: rounded(check.limit, digitsOf(check)),
    limitKind,
    unit,
    frets: [...frets],
    about: [...about],
  };
}
