/** The other way round: the relief that leaves the most room, taken over by a button, and the lowest action. */
import { useDeferredValue, useMemo } from 'react';
import type { UnitSystem } from '../../../neck/units.ts';
import { bowText } from '../../../speech/bow.ts';
import { aimText, fallText } from '../../../speech/playing/string-room.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { store } from '../../../state/store.ts';
import { isOffered } from '../../../verdict/raised-by.ts';
import { stringAim } from '../../../verdict/string-aim.ts';
import type { Hand } from '../../../verdict/string-room.ts';
import { Raised } from '../checks/raised.tsx';

interface RoomAimProps {
  readonly solution: Solution;
  readonly hand: Hand;
  readonly system: UnitSystem;
}

export function RoomAim({ solution, hand, system }: RoomAimProps) {
  // It follows a slider when there is time.
  const asked = useDeferredValue(solution);
  const aim = useMemo(() => stringAim(asked, hand), [asked, hand]);
  const { relief, fall } = aim;
  const depth = fall ? textOf('fallAwayMm', fall.fallAwayMm, system) : '';
  const advice = relief.status === 'better' ? relief : null;
  return (
    <div className="room-aim">
      <p>
        {aimText(aim, system)}{' '}
        {advice && isOffered(advice.raised) && (
          <button
            type="button"
            onClick={() => store.getState().change(advice.change, ROOM_WORDS.step(bowText(advice.reliefMm, system)))}
          >
            {ROOM_WORDS.take(bowText(advice.reliefMm, system))}
          </button>
        )}
      </p>
      {advice && <Raised checks={advice.raised} system={system} />}
      {fall && (
        <p data-aim="fall">
          {fallText(fall, system)}{' '}
          {isOffered(fall.raised) && (
            <button type="button" onClick={() => store.getState().change(fall.change, ROOM_WORDS.stepFall(depth))}>
              {ROOM_WORDS.takeFall(depth)}
            </button>
          )}
        </p>
      )}
      {fall && <Raised checks={fall.raised} system={system} />}
    </div>
  );
}
