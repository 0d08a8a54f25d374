/** What strips and readings say of the neck in hand: asked, shown, and offered to be taken over. */
import type { ReactNode } from 'react';
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import type { GripDoubt } from '../../mechanics/try-strip/grip-posterior.ts';
import type { Build } from '../../neck/build.ts';
import { stripDoubtText } from '../../speech/measured/strips.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import type { NeckBands } from '../../state/strips/neck-bands.ts';
import { useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { GripUse } from './grip-use.tsx';

interface GripAnswerProps {
  readonly build: Build;
  readonly evidence: Evidence;
  /** Is there anything to ask? */
  readonly isAsked: boolean;
  /** What it says while it works. */
  readonly working: string;
  readonly children: (found: NeckBands) => ReactNode;
}

/** What the neck took over before changes nothing of the answer. */
function questionOf(build: Build, evidence: Evidence): string {
  const studShape = evidence.strips.length > 0 ? 0 : build.studShape;
  const asIs = { ...build, name: '', notes: '', biteFactor: 1, studShape, gripReference: 0, biteReference: 0 };
  return JSON.stringify([asIs, evidence]);
}

export function GripAnswer({ build, evidence, isAsked, working, children }: GripAnswerProps) {
  const key = isAsked ? questionOf(build, evidence) : null;
  const asked = useAnswer<NeckBands>(key, (api, told) => api.neckBands(build, evidence, told));
  return (
    <>
      {isAsked && <Asking {...asked} working={working} />}
      {asked.value && children(asked.value)}
      {asked.value && (
        <GripUse
          build={build}
          evidence={evidence}
          found={asked.value}
          isCurrent={asked.status === 'done' && asked.key === key}
        />
      )}
    </>
  );
}

export function GripDoubts({ doubts }: { readonly doubts: readonly GripDoubt[] }) {
  const system = useBackbow((state) => state.unitSystem);
  return [...new Set(doubts.map((doubt) => stripDoubtText(doubt, system)))].map((text) => (
    <p key={text} className="bite-doubt">
      {text}
    </p>
  ));
}
