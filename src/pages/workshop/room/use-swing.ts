/**
 * The note whose swing is in the picture. The chart speaks of the neck as it is played, so choosing a note takes the rail
 * there; away from that stop the picture shows no swing, and after the chart closes neither.
 */
import { useEffect, useMemo, useState } from 'react';
import { swingLine } from '../../../playing/swing-line.ts';
import { setUp } from '../../../playing/set-up.ts';
import type { DrawnSwing } from '../../../scene/types.ts';
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { useMedia } from '../../../kit/use-media.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { isCutOpen } from '../../../state/stress-view.ts';
import { playedStop, railStops, stopIndex } from '../../../verdict/rail.ts';
import { buzzVerdict, playedLine, type Hand, type StringRoom } from '../../../verdict/string-room.ts';
import type { NotePlace } from './note-place.ts';

export interface Swing {
  /** Null while none was chosen, or the neck has no such note. */
  readonly place: NotePlace | null;
  /** Is it in the picture, or is the rail elsewhere? */
  readonly isShown: boolean;
  readonly moves: boolean;
  readonly choose: (place: NotePlace) => void;
  readonly setMoves: (moves: boolean) => void;
  readonly hide: () => void;
}

/** To where the neck is played, seen whole. */
function goToPlayed({ build }: Pick<Solution, 'build'>): void {
  const state = store.getState();
  state.setPlaying(false);
  state.setRail(playedStop(build));
  if (isCutOpen(state.view)) state.setView('neck');
}

export function useSwing(solution: Solution, room: StringRoom, hand: Hand): Swing {
  const { build } = solution;
  const system = useBackbow((state) => state.unitSystem);
  const rail = useBackbow((state) => state.rail);
  const isStill = useMedia('(prefers-reduced-motion: reduce)');
  const chosen = useBackbow((state) => state.swungNote);
  const { setSwungNote } = store.getState();
  const [asked, setMoves] = useState<boolean | null>(null);
  // Whoever wants no motion gets it on request.
  const moves = asked ?? !isStill;
  const stops = railStops(build);
  const isPlayed = stopIndex(stops, rail) === stopIndex(stops, playedStop(build));
  const place = chosen && room.strings[chosen.string]?.[chosen.note] ? chosen : null;
  const drawn = useMemo((): DrawnSwing | null => {
    if (!place || !isPlayed) return null;
    const { string, note } = place;
    const of = room.strings[string][note];
    return {
      line: swingLine(build, setUp(build, playedLine(solution)), room.playing, string, note),
      direction: hand.direction,
      note,
      touchedFret: of.atFret,
      buzzes: buzzVerdict(of) === 'buzzes',
      label: ROOM_WORDS.atFret(of.atFret, textOf('stringRoomMm', of.leastMm, system)),
      moves,
    };
  }, [build, solution, room, hand, place, isPlayed, moves, system]);
  useEffect(() => {
    store.getState().setSwing(drawn);
    return () => store.getState().setSwing(null);
  }, [drawn]);
  return {
    place,
    isShown: drawn !== null,
    moves,
    choose(next) {
      setSwungNote(next);
      goToPlayed(solution);
    },
    setMoves,
    hide: () => setSwungNote(null),
  };
}
