/** What a careful maker would say of this build: the worst first, the rest on demand, each with what to change. */
import { useMemo, useState } from 'react';
import type { Check } from '../../../fretwork/checks/check-types.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { useFollowed } from '../../../state/follow.ts';
import { useReveal } from '../controls/reveal-store.ts';
import { checkNumbers, checkReason, checkRemedy, checkTitle, isLimit, labelOf } from '../../../speech/checks.ts';
import { CHECK_WORDS } from '../../../speech/en/fretwork/checks.ts';
import { checksOf } from '../../../verdict/checks.ts';
import { NotComputed } from '../not-computed.tsx';
import { SOLVER_WORDS } from '../../../speech/en/workshop/solver.ts';
import { SpokenStops } from './spoken-stops.tsx';
import './checks.css';

/** @param brief its title alone, which keeps to one line while a slider moves */
function CheckItem({
  check,
  system,
  brief,
}: {
  readonly check: Check;
  readonly system: UnitSystem;
  readonly brief: boolean;
}) {
  const reveal = useReveal((state) => state.reveal);
  const numbers = checkNumbers(check, system);
  return (
    <li className={`check check-${check.severity}`} data-check={check.code}>
      <strong>{isLimit(check) ? CHECK_WORDS.limit : CHECK_WORDS.severities[check.severity]}</strong>
      <p>
        {brief ? (
          `${checkTitle(check)}.`
        ) : (
          <>
            {checkReason(check)} <span className="quiet">{checkRemedy(check)}</span>
          </>
        )}
        {numbers !== '' && (
          <>
            {' '}
            <span className="check-facts">{numbers}</span>
          </>
        )}
      </p>
      <button type="button" className="link" onClick={() => reveal(check.parameter)}>
        {CHECK_WORDS.change(labelOf(check.parameter))}
      </button>
    </li>
  );
}

export function ChecksList() {
  const solution = useFollowed((state) => state.solution);
  const system = useFollowed((state) => state.unitSystem);
  const [all, setAll] = useState(false);
  const checks = useMemo(() => (solution ? checksOf(solution) : undefined), [solution]);
  if (!checks)
    return (
      <section className="checks" aria-label={CHECK_WORDS.title}>
        <NotComputed says={SOLVER_WORDS.notChecked} />
      </section>
    );
  const serious = checks.filter((check) => check.severity !== 'note').length;
  const limits = checks.filter(isLimit);
  // The worst of all; where nothing is wrong, what the numbers beside it may be wrong about.
  const first = serious > 0 ? checks.slice(0, 1) : limits.slice(0, 1);
  const shown = all ? checks : first;
  const hiddenLimits = limits.filter((check) => !shown.includes(check)).length;
  const hidden = checks.length - shown.length;
  return (
    <section className="checks" aria-label={CHECK_WORDS.title} data-all={all || undefined}>
      <ul>
        {shown.map((check, index) => (
          <CheckItem key={`${check.code} ${index}`} check={check} system={system} brief={!all} />
        ))}
        {serious === 0 && !all && limits.length === 0 && <li className="check check-none">{CHECK_WORDS.none}</li>}
      </ul>
      <SpokenStops checks={checks} />
      {(all || checks.length > 0) && (
        <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? CHECK_WORDS.fewer : CHECK_WORDS.more(hidden, Math.max(0, serious - shown.length), hiddenLimits)}
        </button>
      )}
    </section>
  );
}
