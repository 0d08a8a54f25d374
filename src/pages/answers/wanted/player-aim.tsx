/** The relief that plays best at the action of the build: aimed for by a button, while any other stays free to type. */
import { useMemo } from 'react';
import type { UnitSystem } from '../../../neck/units.ts';
import { bowText } from '../../../speech/bow.ts';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';
import { aimText } from '../../../speech/playing/string-room.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { useBackbow } from '../../../state/store.ts';
import { isOffered } from '../../../verdict/raised-by.ts';
import { stringAim } from '../../../verdict/string-aim.ts';
import { playingOf } from '../../../verdict/string-room.ts';
import { Raised } from '../../workshop/checks/raised.tsx';

interface PlayerAimProps {
  readonly system: UnitSystem;
  readonly aimFor: (reliefMm: number) => void;
}

export function PlayerAim({ system, aimFor }: PlayerAimProps) {
  const solution = useBackbow((state) => state.solution);
  const hand = useBackbow((state) => state.hand);
  const aim = useMemo(() => solution && stringAim(solution, hand), [solution, hand]);
  if (!solution || !aim) return null;
  const { relief } = aim;
  const { forceN } = playingOf(solution.build, hand);
  return (
    <section className="player-aim" aria-labelledby="wanted-player" data-answer="player">
      <h3 id="wanted-player">{WANTED_WORDS.player(textOf('pluckForceN', forceN, system))}</h3>
      <p>
        {aimText(aim, system)}{' '}
        {relief.status === 'better' && isOffered(relief.raised) && (
          <button type="button" onClick={() => aimFor(relief.reliefMm)}>
            {WANTED_WORDS.aimFor(bowText(relief.reliefMm, system))}
          </button>
        )}
      </p>
      {relief.status === 'better' && <Raised checks={relief.raised} system={system} />}
    </section>
  );
}
