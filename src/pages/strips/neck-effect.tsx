/** What the strips that count say of the grip, with all else that speaks for the neck in hand, and taking it over. */
import type { Build } from '../../neck/build.ts';
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import type { StripEvidence } from '../../mechanics/try-strip/places.ts';
import { GRIP_STANDING_WORDS } from '../../speech/en/pages/grip-standing.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { useSpokenFor } from '../../state/bench-log/use-grip.ts';
import type { NeckBands } from '../../state/strips/neck-bands.ts';
import { useBackbow } from '../../state/store.ts';
import { bandText } from '../answers/wanted/goal.ts';
import { GripAnswer, GripDoubts } from './grip-answer.tsx';
import { GripStandingLine } from './grip-use.tsx';
import { StateTable } from './state-table.tsx';

interface NeckEffectProps {
  readonly build: Build;
  readonly strips: readonly StripEvidence[];
}

export function NeckEffect({ build, strips }: NeckEffectProps) {
  const { entries, own } = useSpokenFor();
  const evidence: Evidence = { strips, entries, own };
  const isGlued = build.method === 'glue';
  if (strips.length === 0) return <GripStandingLine />;
  const beside = entries.length + own.length;
  return (
    <section className="strip-part" aria-label={STRIP_WORDS.effect}>
      <h3>{STRIP_WORDS.effect}</h3>
      {isGlued && <p>{STRIP_WORDS.glueNoEffect}</p>}
      {!isGlued && beside > 0 && <p className="quiet">{GRIP_STANDING_WORDS.beside(beside)}</p>}
      <GripAnswer build={build} evidence={evidence} isAsked={!isGlued} working={STRIP_WORDS.working}>
        {(found) => <Found found={found} />}
      </GripAnswer>
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
      <GripDoubts doubts={doubts} />
      <StateTable
        className="strip-bands"
        heads={[STRIP_WORDS.without, STRIP_WORDS.with]}
        cells={(state) => [bandText(before[state], system), bandText(after[state], system)]}
      />
    </>
  );
}
