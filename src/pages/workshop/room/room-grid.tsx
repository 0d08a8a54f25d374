/**
 * The notes as a grid, strings down and frets across, walked with the arrow keys: one note is the stop of the Tab key.
 * Colour, sign and weight of a note say the same.
 */
import { useRef, type KeyboardEvent } from 'react';
import type { UnitSystem } from '../../../neck/units.ts';
import type { NoteRoom } from '../../../playing/room.ts';
import { buzzVerdict, type StringRoom } from '../../../verdict/string-room.ts';
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import { pitchName } from '../../../speech/names.ts';
import { numberOf } from '../../../speech/quantity-text.ts';
import { BUZZ_SIGNS, noteText, stringName } from '../../../speech/playing/string-room.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { store } from '../../../state/store.ts';
import { stepTo, type NotePlace } from './note-place.ts';

interface NoteProps {
  readonly name: string;
  readonly place: NotePlace;
  readonly room: NoteRoom;
  readonly isStop: boolean;
  readonly system: UnitSystem;
  readonly lookAt: (place: NotePlace) => void;
  readonly choose: (place: NotePlace) => void;
  readonly isSwung: boolean;
  readonly walk: (event: KeyboardEvent, from: NotePlace) => void;
}

/** Under the pointer the fret that would be hit lights up in the picture. */
const hover = (fret: number | null) => store.getState().hoverFret(fret);

function Note({ name, place, room, isStop, isSwung, system, lookAt, choose, walk }: NoteProps) {
  const verdict = buzzVerdict(room);
  return (
    <td>
      <button
        type="button"
        tabIndex={isStop ? 0 : -1}
        data-string={place.string}
        data-note={place.note}
        data-verdict={verdict}
        data-looked={isStop || undefined}
        aria-pressed={isSwung}
        aria-label={noteText(name, place.note, room, system)}
        onFocus={() => lookAt(place)}
        onClick={() => choose(place)}
        onPointerEnter={() => {
          lookAt(place);
          hover(room.atFret);
        }}
        onPointerLeave={() => hover(null)}
        onKeyDown={(event) => walk(event, place)}
      >
        <span className="room-number">{numberOf('stringRoomMm', room.leastMm, system)}</span>
        <span className="room-sign">{BUZZ_SIGNS[verdict]}</span>
      </button>
    </td>
  );
}

interface RoomGridProps {
  readonly solution: Solution;
  readonly room: StringRoom;
  readonly at: NotePlace;
  readonly lookAt: (place: NotePlace) => void;
  /** The note whose swing is in the picture. */
  readonly swung: NotePlace | null;
  readonly choose: (place: NotePlace) => void;
  readonly system: UnitSystem;
}

export function RoomGrid({ solution, room, at, lookAt, swung, choose, system }: RoomGridProps) {
  const table = useRef<HTMLTableElement>(null);
  const { strings } = solution.build;
  const notes = room.strings[0].length;
  const walk = (event: KeyboardEvent, from: NotePlace) => {
    const to = stepTo(event, from, { strings: strings.length, notes });
    if (!to) return;
    event.preventDefault();
    // Its own; the page's keys shall not take it as well.
    event.stopPropagation();
    table.current!.querySelector<HTMLElement>(`[data-string="${to.string}"][data-note="${to.note}"]`)!.focus();
  };
  return (
    <div className="room-box">
      <table ref={table} className="room-grid" aria-label={ROOM_WORDS.grid}>
        <thead>
          <tr>
            <th scope="col">{ROOM_WORDS.string}</th>
            {Array.from({ length: notes }, (_, note) => (
              <th key={note} scope="col">
                {note === 0 ? ROOM_WORDS.open : note}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {room.strings.map((ofString, string) => (
            <tr key={string}>
              <th scope="row">
                {string + 1} <span className="room-pitch">{pitchName(strings[string].pitch)}</span>
              </th>
              {ofString.map((one, note) => (
                <Note
                  key={note}
                  name={stringName(strings, string)}
                  place={{ string, note }}
                  room={one}
                  isStop={string === at.string && note === at.note}
                  isSwung={swung?.string === string && swung.note === note}
                  choose={choose}
                  system={system}
                  lookAt={lookAt}
                  walk={walk}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
