/** Will it buzz? Every note of every string, with the room that it has and the fret that it would hit. */
import { useMemo, useState } from 'react';
import { buzzForceText, noteText, roomSummary, stringName } from '../../../speech/playing/string-room.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import { stringRoom } from '../../../verdict/string-room.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { OwnStrength } from './own-strength.tsx';
import { RoomAim } from './room-aim.tsx';
import { RoomGrid } from './room-grid.tsx';
import { SwingTools } from './swing-tools.tsx';
import { useSwing } from './use-swing.ts';
import type { NotePlace } from './note-place.ts';
import './room.css';

export function RoomChart({ solution }: { readonly solution: Solution }) {
  const { build } = solution;
  const system = useBackbow((state) => state.unitSystem);
  const hand = useBackbow((state) => state.hand);
  const room = useMemo(() => stringRoom(solution, hand), [solution, hand]);
  const [looked, setLooked] = useState<NotePlace | null>(null);
  // Another neck may lack the note that was looked at.
  const at = looked && room.strings[looked.string]?.[looked.note] ? looked : room.least;
  const swing = useSwing(solution, room, hand);
  const note = room.strings[at.string][at.note];
  const { forceN, pluckMm } = room.playing;
  return (
    <div className="room" data-system={system}>
      <p className="room-says">
        <strong aria-live="polite">{roomSummary(room)}</strong>{' '}
        <span data-note={`${at.string} ${at.note}`}>
          {noteText(stringName(build.strings, at.string), at.note, note, system)} {buzzForceText(note, system)}
        </span>
      </p>
      <RoomGrid
        solution={solution}
        room={room}
        at={at}
        lookAt={setLooked}
        swung={swing.place}
        choose={swing.choose}
        system={system}
      />
      <SwingTools swing={swing} solution={solution} />
      <RoomAim solution={solution} hand={hand} system={system} />
      <OwnStrength solution={solution} at={at} touchedFret={note.atFret} hand={hand} system={system} />
      <p className="room-foot quiet">
        <span className="room-unit">{ROOM_WORDS.numbers(unitLabel('mm', system))}</span> {ROOM_WORDS.signs}{' '}
        {ROOM_WORDS.state}{' '}
        {ROOM_WORDS.assumed(textOf('pluckForceN', forceN, system), textOf('pluckFromSaddleMm', pluckMm, system))}
      </p>
    </div>
  );
}
