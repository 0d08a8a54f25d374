/** What the log says of the bite, what that does to the build in hand, and taking it over. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { formatNumber } from '../../speech/quantity.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import type { MethodUncertainty } from '../../mechanics/uncertainty/types.ts';
import { useAnswer, type Asked } from '../../state/answers/use-answer.ts';
import { useMemo } from 'react';
import { biteFactorOf, referenceTo } from '../../mechanics/bench-log/reference.ts';
import { MOST_REFERRED, type BiteReference } from '../../neck/bite-reference.ts';
import { narrowingBite } from '../../mechanics/bench-log/standing.ts';
import { store, useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { bandText } from '../answers/wanted/goal.ts';
import { useChange } from '../answers/wanted/use-change.tsx';
import { StandingLine } from './standing-line.tsx';
import { doubtText } from './doubt-text.ts';
import { BitePicture } from './bite-picture.tsx';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

const STATES = ['fretted', 'strung', 'settled'] as const;
type StateBands = Pick<MethodUncertainty, (typeof STATES)[number]>;

interface Effect {
  readonly without: StateBands;
  readonly with: StateBands;
}

interface BiteSectionProps {
  readonly entries: readonly LogEntry[];
  readonly asked: Asked<BitePosterior>;
  readonly system: UnitSystem;
}

/** The bands of the build without the log and with it. */
function useEffectOnBands(build: Build, posterior: BitePosterior) {
  const { logSpread, necks } = posterior;
  const biteFactor = biteFactorOf(posterior);
  const isAsked = necks > 0 && build.method !== 'glue';
  // The build's own bite factor is not in either column.
  const key = isAsked ? JSON.stringify([{ ...build, biteFactor: 1 }, biteFactor, logSpread]) : null;
  return useAnswer<Effect>(key, async (api) => {
    const bands = async (factor: number, spread: number | undefined): Promise<StateBands | undefined> => {
      const found = await api.estimate({ ...build, biteFactor: factor }, { biteLogSpread: spread });
      return found?.methods[build.method];
    };
    const without = await bands(1, undefined);
    const withLog = without && (await bands(biteFactor, logSpread));
    return without && withLog ? { without, with: withLog } : null;
  });
}

function EffectTable({ effect, system }: { readonly effect: Effect; readonly system: UnitSystem }) {
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="table-scroll" tabIndex={0} aria-label={LOG_WORDS.effect}>
      <table className="answer-table">
        <caption className="quiet">{LOG_WORDS.effectCaption}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">{LOG_WORDS.state}</span>
            </th>
            <th scope="col">{LOG_WORDS.without}</th>
            <th scope="col">{LOG_WORDS.with}</th>
          </tr>
        </thead>
        <tbody>
          {STATES.map((state) => (
            <tr key={state} data-state={state}>
              <th scope="row">{LOG_WORDS.states[state]}</th>
              <td>{bandText(effect.without[state], system)}</td>
              <td>{bandText(effect.with[state], system)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function BiteSection({ entries, asked, system }: BiteSectionProps) {
  const posterior = asked.value;
  return (
    <section aria-labelledby="log-bite" className="log-bite">
      <h3 id="log-bite">{LOG_WORDS.biteTitle}</h3>
      <Asking {...asked} working={LOG_WORDS.posteriorWorking} />
      {posterior && (
        <BiteFound entries={entries} posterior={posterior} isCurrent={asked.status === 'done'} system={system} />
      )}
      <StandingLine />
    </section>
  );
}

interface BiteFoundProps {
  readonly entries: readonly LogEntry[];
  readonly posterior: BitePosterior;
  /** Is it what these entries say, and not what others said before? */
  readonly isCurrent: boolean;
  readonly system: UnitSystem;
}

function BiteFound({ entries, posterior, isCurrent, system }: BiteFoundProps) {
  const { necks, p05, p95, doubts } = posterior;
  const factor = formatNumber(biteFactorOf(posterior), 2);
  const isAnswer = !doubts.some(({ code }) => code === 'end-of-grid');
  return (
    <>
      <p className="bite-says">
        {necks === 0
          ? LOG_WORDS.biteNone
          : isAnswer && LOG_WORDS.biteSays(necks, factor, formatNumber(p05, 2), formatNumber(p95, 2))}{' '}
        {necks === 0 && entries.length > 0 && LOG_WORDS.saysNothing}
      </p>
      {doubts.map((doubt) => (
        <p key={doubt.code} className="bite-doubt">
          {doubtText(doubt, necks)}
        </p>
      ))}
      {isAnswer && <BitePicture posterior={posterior} />}
      {necks > 0 && isAnswer && (
        <BiteEffect entries={entries} posterior={posterior} isCurrent={isCurrent} system={system} />
      )}
    </>
  );
}

function BiteEffect({ entries, posterior, isCurrent, system }: BiteFoundProps) {
  const build = useBackbow((state) => state.build);
  const { studShape, studSoftnessMm } = build;
  const inUse = useBackbow((state) => narrowingBite(state, { ...state.build, method: 'press' })?.hash);
  const asked = useEffectOnBands(build, posterior);
  const { use, said } = useChange();
  const factor = formatNumber(biteFactorOf(posterior), 2);
  const isTooMany = posterior.necks > MOST_REFERRED;
  const reference = useMemo(
    () => (isTooMany || !isCurrent ? null : referenceTo(entries, posterior, { studShape, studSoftnessMm })),
    [entries, posterior, studShape, studSoftnessMm, isTooMany, isCurrent],
  );

  function take(taken: BiteReference): void {
    void store
      .getState()
      .adoptBite(taken)
      .then(() =>
        use({ biteFactor: taken.factor, biteReference: taken, gripReference: undefined }, LOG_WORDS.step(factor)),
      );
  }

  return (
    <>
      {build.method === 'glue' ? <p className="quiet">{LOG_WORDS.glueNoEffect}</p> : <h4>{LOG_WORDS.effect}</h4>}
      <Asking {...asked} />
      {asked.value && <EffectTable effect={asked.value} system={system} />}
      {isTooMany && <p>{LOG_WORDS.tooManyToTake(MOST_REFERRED)}</p>}
      {reference && inUse === reference.hash && <p>{LOG_WORDS.inUse(factor)}</p>}
      {reference && inUse !== reference.hash && (
        <button type="button" onClick={() => take(reference)}>
          {LOG_WORDS.takeBite(factor)}
        </button>
      )}
      {said}
    </>
  );
}
