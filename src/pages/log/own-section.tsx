/** What was read on the neck in hand itself, and what each of it leaves of its bands. */
import { useState } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import { othersIn } from '../../mechanics/neck-readings/grip-reference.ts';
import { hasFurther } from '../../mechanics/neck-readings/readings.ts';
import { GRIP_STANDING_WORDS } from '../../speech/en/pages/grip-standing.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { useSpokenFor } from '../../state/bench-log/use-grip.ts';
import type { NeckBands } from '../../state/strips/neck-bands.ts';
import { BAND_STATES } from '../../state/strips/states.ts';
import { useBackbow } from '../../state/store.ts';
import { GripAnswer, GripDoubts } from '../strips/grip-answer.tsx';
import { GripStandingLine } from '../strips/grip-use.tsx';
import { bandText } from '../answers/wanted/goal.ts';

/** Half of a tenth of what the model says: less is not worth a word. */
const LEAST_OFF = 0.05;

interface FoundProps {
  readonly found: NeckBands;
  /** Is anything heard that was not read on the neck itself? */
  readonly isBeside: boolean;
  readonly system: UnitSystem;
}

function BandsTable({ found, isBeside, system }: FoundProps) {
  const isOne = found.kinds.length === 1 && !isBeside;
  const rows = [
    { label: LOG_WORDS.ownBefore, bands: found.before },
    ...found.each.map(({ kind, bands }) => ({ label: LOG_WORDS.ownKinds[kind], bands })),
    { label: isOne ? LOG_WORDS.ownKinds[found.kinds[0]] : LOG_WORDS.ownAll, bands: found.after },
  ];
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="table-scroll log-own-bands" tabIndex={0} aria-label={LOG_WORDS.effectCaption}>
      <table className="answer-table">
        <caption className="quiet">{LOG_WORDS.effectCaption}</caption>
        <thead>
          <tr>
            <th scope="col">{LOG_WORDS.ownRead}</th>
            {BAND_STATES.map((state) => (
              <th key={state} scope="col">
                {LOG_WORDS.states[state]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ label, bands }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {BAND_STATES.map((state) => (
                <td key={state}>{bandText(bands[state], system)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function OwnFound({ found, isBeside, system }: FoundProps) {
  const { rodTimes, quarterGrips, doubts } = found.posterior;
  const isOff = rodTimes !== undefined && Math.abs(rodTimes - 1) > LEAST_OFF;
  return (
    <>
      <BandsTable found={found} isBeside={isBeside} system={system} />
      {isOff && <p>{LOG_WORDS.rodSays(formatNumber(rodTimes, 2))}</p>}
      {quarterGrips && <p>{LOG_WORDS.quartersSay(quarterGrips.map(({ p50 }) => formatNumber(p50, 2)).join(' · '))}</p>}
      <GripDoubts doubts={doubts} />
    </>
  );
}

interface OwnSectionProps {
  readonly entries: readonly LogEntry[];
  readonly system: UnitSystem;
}

/** Nothing where nothing was read that speaks of one neck alone. */
export function OwnSection({ entries, system }: OwnSectionProps) {
  const build = useBackbow((state) => state.build);
  const [chosen, setChosen] = useState<ReadonlySet<string> | null>(null);
  const offered = entries.filter(hasFurther);
  const spoken = useSpokenFor();
  const spokenIds = new Set(spoken.own.map(({ id }) => id));
  /** Before anybody says otherwise: those that the neck refers to, or that have its name. */
  const counting =
    chosen ?? new Set(offered.filter(({ neck, id }) => spokenIds.has(id) || neck === build.name).map(({ id }) => id));
  const own = offered.filter(({ id }) => counting.has(id));
  const evidence: Evidence = { strips: spoken.strips, entries: othersIn(spoken.entries, own), own };
  const isAsked = own.length > 0;
  if (offered.length === 0) return null;
  const beside = evidence.strips.length + evidence.entries.length;
  const toggled = (id: string) =>
    new Set(counting.has(id) ? [...counting].filter((one) => one !== id) : [...counting, id]);
  return (
    <section aria-labelledby="log-own" className="log-bite">
      <h3 id="log-own">{LOG_WORDS.ownTitle}</h3>
      <p className="quiet">{LOG_WORDS.ownIntro}</p>
      <fieldset className="log-own">
        <legend>{LOG_WORDS.ownCounts}</legend>
        {offered.map(({ id, neck, date }) => (
          <label key={id}>
            <input type="checkbox" checked={counting.has(id)} onChange={() => setChosen(toggled(id))} />{' '}
            {LOG_WORDS.ownName(neck, date)}
          </label>
        ))}
      </fieldset>
      {isAsked && beside > 0 && <p className="quiet">{GRIP_STANDING_WORDS.beside(beside)}</p>}
      <GripAnswer build={build} evidence={evidence} isAsked={isAsked} working={LOG_WORDS.ownWorking}>
        {(found) => <OwnFound found={found} isBeside={beside > 0} system={system} />}
      </GripAnswer>
      <GripStandingLine />
    </section>
  );
}
