/** What the bite of the build in hand rests on, and accepting measurements that came with it. */
import { useEffect, useState } from 'react';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import { referenceTo } from '../../mechanics/bench-log/reference.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { standingText } from '../../speech/measured/bite-standing.ts';
import { BITE_STANDING_WORDS } from '../../speech/en/pages/bite-standing.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import type { BiteStanding } from '../../mechanics/bench-log/standing.ts';
import { useStanding } from '../../state/bench-log/use-standing.ts';
import { store, useBackbow } from '../../state/store.ts';
import { useLaw } from './use-posterior.ts';
import { Asking } from '../answers/wanted/asking.tsx';

export function StandingLine() {
  const standing = useStanding();
  const biteFactor = useBackbow((state) => state.build.biteFactor);
  const text = standingText(standing, biteFactor);
  if (text === undefined) return null;
  return (
    <div className="bite-standing">
      <output>{text}</output>
      {standing.code === 'not-accepted' && <Accept key={standing.reference.hash} standing={standing} />}
    </div>
  );
}

function Accept({ standing }: { readonly standing: Extract<BiteStanding, { code: 'not-accepted' }> }) {
  const { reference, entries } = standing;
  const [isWanted, setIsWanted] = useState(false);
  const law = useLaw();
  const key = isWanted ? JSON.stringify([reference.hash, law]) : null;
  const asked = useAnswer<BitePosterior>(key, (api, told) => api.posterior(entries, law, told));
  const found = asked.status === 'done' && asked.value ? referenceTo(entries, asked.value, law) : null;
  const isSame = found?.factor === reference.factor;
  useEffect(() => {
    // What counts is what the measurements give here, not what the build says of them.
    if (found && isSame) void store.getState().adoptBite(found);
    // oxlint-disable-next-line react/exhaustive-deps -- once, when it has been found
  }, [asked.status, isSame]);
  return (
    <>
      {!isWanted && (
        <button type="button" onClick={() => setIsWanted(true)}>
          {BITE_STANDING_WORDS.accept}
        </button>
      )}
      {isWanted && <Asking {...asked} working={LOG_WORDS.posteriorWorking} />}
      {found && !isSame && (
        <p className="refusal" role="alert">
          {BITE_STANDING_WORDS.givesOther(formatNumber(found.factor, 2), formatNumber(reference.factor, 2))}
        </p>
      )}
    </>
  );
}
