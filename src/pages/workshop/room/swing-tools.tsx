/** Plays, holds and hides the swing that the picture shows. */
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import { noteName } from '../../../speech/playing/string-room.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { drawnBowFactor } from '../../../state/view-slice.ts';
import type { Swing } from './use-swing.ts';

interface SwingToolsProps {
  readonly swing: Swing;
  readonly solution: Solution;
}

export function SwingTools({ swing, solution }: SwingToolsProps) {
  const factor = useBackbow(drawnBowFactor);
  const { place, isShown, moves, choose, setMoves, hide } = swing;
  if (!place) return <p className="room-swing quiet">{ROOM_WORDS.pick}</p>;
  return (
    <p className="room-swing">
      {ROOM_WORDS.swingOf(noteName(solution.build.strings, place.string, place.note), String(factor))}{' '}
      {isShown ? (
        <button type="button" onClick={() => setMoves(!moves)}>
          {moves ? ROOM_WORDS.pause : ROOM_WORDS.play}
        </button>
      ) : (
        <button type="button" onClick={() => choose(place)}>
          {ROOM_WORDS.showAgain}
        </button>
      )}{' '}
      <button
        type="button"
        className="room-see"
        onClick={() => document.querySelector('.picture')?.scrollIntoView({ block: 'start' })}
      >
        {ROOM_WORDS.see}
      </button>{' '}
      <button type="button" onClick={hide}>
        {ROOM_WORDS.hide}
      </button>
    </p>
  );
}
