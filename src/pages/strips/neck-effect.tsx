/** What the strips that count say of the grip, with all else that speaks for the neck in hand, and taking it over. */
import { useMemo } from 'react';
import type { Build } from '../../neck/build.ts';
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import type { StripEvidence } from '../../mechanics/try-strip/places.ts';
import { GRIP_STANDING_WORDS } from '../../speech/en/pages/grip-standing.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { stripDoubtText } from '../../speech/measured/strips.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import { useSpokenFor } from '../../state/bench-log/use-grip.ts';
import type { NeckBands } from '../../state/strips/neck-bands.ts';
import { useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { bandText } from '../answers/wanted/goal.ts';
import { GripStandingLine, GripUse } from './grip-use.tsx';
import { StateTable } from './state-table.tsx';

interface NeckEffectProps {
  readonly build: Build;
  readonly strips: readonly StripEvidence[];
}

export function NeckEffect({ build, strips }: NeckEffectProps) {
  const { entries, own } = useSpokenFor();
  const evidence = useMemo((): Evidence => ({ strips, entries, own }), [strips, entries, own]);
  const isGlued = build.method === 'glue';
  // What the neck took over before is in neither column.
  const asIs = { ...build, name: '', notes: '', biteFactor: 1, studShape: 0, gripReference: undefined };
  const isAsked = strips.length > 0 && !isGlued;
  const key = isAsked ? JSON.stringify([{ ...asIs, biteReference: undefined }, evidence]) : null;
  const asked = useAnswer<NeckBands>(key, (api, told) => api.neckBands(build, evidence, told));
  if (strips.length === 0) return <GripStandingLine />;
  const beside = entries.length + own.length;
  return (
    <section className="strip-part" aria-label={STRIP_WORDS.effect}>
      <h3>{STRIP_WORDS.effect}</h3>
      {isGlued && <p>{STRIP_WORDS.glueNoEffect}</p>}
      {!isGlued && beside > 0 && <p className="quiet">{GRIP_STANDING_WORDS.beside(beside)}</p>}
      {key !== null && <Asking {...asked} working={STRIP_WORDS.working} />}
      {asked.value && <Found found={asked.value} />}
      {asked.value && (
        <GripUse
          build={build}
          evidence={evidence}
          found={asked.value}
          isCurrent={asked.status === 'done' && asked.key === key}
        />
      )}
      <GripStandingLine />
    </section>
  );
}

function Found({ found: { posterior, before, after } }: { readonly found: NeckBands }) {
  const system = useBackbow((state) => state.unitSystem);
  const { bite, studShape, doubts } = posterior;
  const number = (of: number) => formatNumber(of, 2);
  return (
    <>
      <p>
        {STRIP_WORDS.says(number(bite.p50), number(bite.p05), number(bite.p95))}{' '}
        {STRIP_WORDS.shape(number(studShape.p50), number(studShape.p05), number(studShape.p95))}
      </p>
      {[...new Set(doubts.map((doubt) => stripDoubtText(doubt, system)))].map((text) => (
        <p key={text} className="bite-doubt">
          {text}
        </p>
      ))}
      <StateTable
        className="strip-bands"
        heads={[STRIP_WORDS.without, STRIP_WORDS.with]}
        cells={(state) => [bandText(before[state], system), bandText(after[state], system)]}
      />
    </>
  );
}
