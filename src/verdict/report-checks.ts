/** A check as JSON: its code and its numbers, in the units that it stores them in. Words are for the page. */
import type { Check } from '../fretwork/checks/check-types.ts';
import { filedExactly } from '../neck/quantities.ts';

const filed = (value: number | null) => (value === null ? null : filedExactly(value));

export function reportCheck(check: Check) {
  const { code, variant, severity, parameter, quantity, limitKind, unit, frets, about } = check;
  return {
    code,
    variant,
    severity,
    parameter,
    quantity,
    value: filed(check.value),
    limit: filed(check.limit),
    limitKind,
    unit,
    frets: [...frets],
    about: [...about],
  };
}
