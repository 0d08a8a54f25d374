/** What was read on the neck in hand itself, and what each of it leaves of its bands. */
import { useState } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { NO_EVIDENCE } from '../../mechanics/neck-readings/evidence.ts';
import { hasFurther } from '../../mechanics/neck-readings/readings.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { stripDoubtText } from '../../speech/measured/strips.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import type { NeckBands } from '../../state/strips/neck-bands.ts';
import { BAND_STATES } from '../../state/strips/states.ts';
import { useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { bandText } from '../answers/wanted/goal.ts';

/** Half of a tenth of what the model says: less is not worth a word. */
const LEAST_OFF = 0.05;

function BandsTable({ found, system }: { readonly found: NeckBands; readonly system: UnitSystem }) {
  const rows = [
    { label: LOG_WORDS.ownBefore, bands: found.before },
    ...found.each.map(({ kind, bands }) => ({ label: LOG_WORDS.ownKinds[kind], bands })),
    { label: LOG_WORDS.ownAll, bands: found.after },
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

function OwnFound({ found, system }: { readonly found: NeckBands; readonly system: UnitSystem }) {
  const { rodTimes, quarterGrips, doubts } = found.posterior;
  const isOff = rodTimes !== undefined && Math.abs(rodTimes - 1) > LEAST_OFF;
  return (
    <>
      <BandsTable found={found} system={system} />
      {isOff && <p>{LOG_WORDS.rodSays(formatNumber(rodTimes, 2))}</p>}
      {quarterGrips && <p>{LOG_WORDS.quartersSay(quarterGrips.map(({ p50 }) => formatNumber(p50, 2)).join(' · '))}</p>}
      {[...new Set(doubts.map((doubt) => stripDoubtText(doubt, system)))].map((text) => (
        <p key={text} className="bite-doubt">
          {text}
        </p>
      ))}
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
  /** Before anybody says otherwise: those that have the neck's name. */
  const counting = chosen ?? new Set(offered.filter(({ neck }) => neck === build.name).map(({ id }) => id));
  const own = offered.filter(({ id }) => counting.has(id));
  const evidence = { ...NO_EVIDENCE, own };
  const key = own.length === 0 ? null : JSON.stringify([{ ...build, name: '', biteFactor: 1 }, own]);
  const asked = useAnswer<NeckBands>(key, (api, told) => api.neckBands(build, evidence, told));
  if (offered.length === 0) return null;
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
      {key !== null && <Asking {...asked} working={LOG_WORDS.ownWorking} />}
      {asked.value && <OwnFound found={asked.value} system={system} />}
    </section>
  );
}
