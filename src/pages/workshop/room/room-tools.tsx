/** How the neck is played: how hard, and which way the string is plucked. */
import { STRENGTHS_N } from '../../../playing/room.ts';
import { PLUCK_DIRECTIONS, STRENGTHS, type Hand } from '../../../verdict/string-room.ts';
import { ROOM_WORDS } from '../../../speech/en/workshop/room.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { MATCH_WORDS } from '../../../speech/en/workshop/matches.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { useOwnStrength } from './use-matches.ts';

/** Stands in the list for the maker's own strength. */
const OWN = 'own';

export function RoomTools() {
  const { strength, direction, ownForceN } = useBackbow((state) => state.hand);
  const own = useOwnStrength();
  const system = useBackbow((state) => state.unitSystem);
  const { setHand } = store.getState();
  return (
    <div className="room-tools">
      <label>
        {ROOM_WORDS.strength}
        <select
          value={own && typeof ownForceN === 'number' ? OWN : strength}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            if (chosen === OWN) setHand({ ownForceN: own!.forceN, ownBandN: [own!.p05N, own!.p95N] });
            else setHand({ strength: chosen as Hand['strength'], ownForceN: null });
          }}
        >
          {own && (
            <option value={OWN}>
              {ROOM_WORDS.withForce(MATCH_WORDS.own, textOf('ownForceN', own.forceN, system))}
            </option>
          )}
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
