/** What the strips that count say of the grip, and what that does to the ranges of the neck in hand. */
import type { Build } from '../../neck/build.ts';
import type { StripEvidence } from '../../mechanics/try-strip/places.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { stripDoubtText } from '../../speech/measured/strips.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import type { StripBands } from '../../state/strips/strip-answers.ts';
import { useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { bandText } from '../answers/wanted/goal.ts';
import { StateTable } from './state-table.tsx';

export function NeckEffect({
  build,
  evidence,
}: {
  readonly build: Build;
  readonly evidence: readonly StripEvidence[];
}) {
  const system = useBackbow((state) => state.unitSystem);
  const speaking = evidence.filter(({ strip }) => strip.readings.length > 0);
  const key = speaking.length === 0 ? null : JSON.stringify([{ ...build, name: '', biteFactor: 1 }, speaking]);
  const asked = useAnswer<StripBands>(key, (api, told) => api.stripBands(build, speaking, told));
  if (key === null) return null;
  const { value } = asked;
  const number = (of: number) => formatNumber(of, 2);
  return (
    <section className="strip-part" aria-label={STRIP_WORDS.effect}>
      <h3>{STRIP_WORDS.effect}</h3>
      <Asking {...asked} working={STRIP_WORDS.working} />
      {value && (
        <>
          <p>
            {STRIP_WORDS.says(
              number(value.posterior.bite.p50),
              number(value.posterior.bite.p05),
              number(value.posterior.bite.p95),
            )}{' '}
            {STRIP_WORDS.shape(
              number(value.posterior.studShape.p50),
              number(value.posterior.studShape.p05),
              number(value.posterior.studShape.p95),
            )}
          </p>
          {[...new Set(value.posterior.doubts.map((doubt) => stripDoubtText(doubt, system)))].map((text) => (
            <p key={text} className="bite-doubt">
              {text}
            </p>
          ))}
          {value.bands && <p className="quiet">{STRIP_WORDS.onlyHere}</p>}
          {value.bands ? (
            <StateTable
              className="strip-bands"
              heads={[STRIP_WORDS.without, STRIP_WORDS.with]}
              cells={(state) => [
                bandText(value.bands!.without[state], system),
                bandText(value.bands!.with[state], system),
              ]}
            />
          ) : (
            <p>{STRIP_WORDS.glueNoEffect}</p>
          )}
        </>
      )}
    </section>
  );
}
