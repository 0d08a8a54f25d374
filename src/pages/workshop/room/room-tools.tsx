/** How the neck is played: how hard, and which way the string is plucked. */
import { STRENGTHS_N } from '../../../playing/room.ts';
import { PLUCK_DIRECTIONS, STRENGTHS, type Hand } from '../../../verdict/string-room.ts';
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { store, useBackbow } from '../../../state/store.ts';

export function RoomTools() {
  const { strength, direction } = useBackbow((state) => state.hand);
  const system = useBackbow((state) => state.unitSystem);
  const { setHand } = store.getState();
  return (
    <div className="room-tools">
      <label>
        {ROOM_WORDS.strength}
        <select
          value={strength}
          onChange={(event) => setHand({ strength: event.currentTarget.value as Hand['strength'] })}
        >
          {STRENGTHS.map((one) => (
            <option key={one} value={one}>
              {ROOM_WORDS.withForce(ROOM_WORDS.strengths[one], textOf('pluckForceN', STRENGTHS_N[one], system))}
            </option>
          ))}
        </select>
      </label>
      <label>
        {ROOM_WORDS.direction}
        <select
          value={direction}
          onChange={(event) => setHand({ direction: event.currentTarget.value as Hand['direction'] })}
        >
          {PLUCK_DIRECTIONS.map((one) => (
            <option key={one} value={one}>
              {ROOM_WORDS.directions[one]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
