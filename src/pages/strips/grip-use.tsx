/** Taking over what strips and readings say into the neck in hand, and what its grip rests on. */
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import { gripReferenceTo } from '../../mechanics/neck-readings/grip-reference.ts';
import type { Build } from '../../neck/build.ts';
import { MOST_REFERRED } from '../../neck/bite-reference.ts';
import { GRIP_STANDING_WORDS } from '../../speech/en/pages/grip-standing.ts';
import { gripStandingText } from '../../speech/measured/grip-standing.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { useGripStanding } from '../../state/bench-log/use-grip-standing.ts';
import type { NeckBands } from '../../state/strips/neck-bands.ts';
import { store, useBackbow } from '../../state/store.ts';
import { useChange } from '../answers/wanted/use-change.tsx';

/** What nothing explains must not be taken over. */
const REFUSED: ReadonlySet<string> = new Set(['far-on-neck', 'far-reading', 'contradicting']);

interface GripUseProps {
  readonly build: Build;
  readonly evidence: Evidence;
  readonly found: NeckBands;
  /** Is it what this evidence says, and not what other evidence said before? */
  readonly isCurrent: boolean;
}

export function GripUse({ build, evidence, found, isCurrent }: GripUseProps) {
  const { use, said } = useChange();
  const inUse = useBackbow((state) => state.build.gripReference?.hash);
  const standing = useGripStanding();
  const { doubts } = found.posterior;
  if (doubts.some(({ code }) => REFUSED.has(code))) return <p>{GRIP_STANDING_WORDS.refused}</p>;
  if (!isCurrent) return null;
  const reference = gripReferenceTo(build, evidence, found);
  const factor = formatNumber(found.taken.biteFactor, 2);
  const isInUse = inUse === reference.hash && standing?.code === 'in-use' && !standing.isOther;

  function take(): void {
    void store
      .getState()
      .acceptGrip(reference)
      .then(() =>
        use({ ...found.taken, gripReference: reference, biteReference: undefined }, GRIP_STANDING_WORDS.step(factor)),
      );
  }

  return (
    <>
      {isInUse && <p>{GRIP_STANDING_WORDS.inUse(factor)}</p>}
      {!isInUse && reference.documents.length <= MOST_REFERRED && (
        <button type="button" onClick={take}>
          {GRIP_STANDING_WORDS.use}
        </button>
      )}
      {said}
    </>
  );
}

/** What the grip of the neck in hand rests on, where strips or its own readings speak; accepting what came with it. */
export function GripStandingLine() {
  const standing = useGripStanding();
  const reference = useBackbow((state) => state.build.gripReference);
  const text = standing && reference && gripStandingText(standing, reference);
  if (!text) return null;
  return (
    <div className="bite-standing">
      <output>{text}</output>
      {standing.code === 'not-accepted' && (
        <button type="button" onClick={() => void store.getState().acceptGrip(reference)}>
          {GRIP_STANDING_WORDS.accept}
        </button>
      )}
    </div>
  );
}
