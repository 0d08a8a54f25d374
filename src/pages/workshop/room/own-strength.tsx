/** A maker's own strength: readings of necks that just buzz, kept by this device, joined, and played with once accepted. */
import { useState } from 'react';
import type { UnitSystem } from '../../../neck/units.ts';
import { newId } from '../../../mechanics/bench-log/identity.ts';
import { geometryOf, MATCH_NUMBER_IDS, USUAL_ERRORS, type BuzzMatch } from '../../../playing/buzz-match.ts';
import { matchForce } from '../../../playing/own-strength.ts';
import { MATCH_WORDS } from '../../../speech/en/workshop/matches.ts';
import { matchRefusalText, ownStrengthText } from '../../../speech/playing/matches.ts';
import { noteName } from '../../../speech/playing/string-room.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { strengthOf } from '../../../state/matches/kept-strength.ts';
import {
  acceptedAs,
  keepMatches,
  MOST_MATCHES,
  readableMatches,
  standingMatches,
  withMatch,
  withoutMatch,
  type MatchRecord,
} from '../../../state/matches/match-store.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { store } from '../../../state/store.ts';
import { stringLineHeights } from '../../../verdict/set-up-heights.ts';
import { pluckFromSaddleMm, type Hand } from '../../../verdict/string-room.ts';
import { MatchField, MatchPlace } from './match-field.tsx';
import type { NotePlace } from './note-place.ts';
import { useMatches } from './use-matches.ts';

type Reading = Omit<BuzzMatch, 'id' | 'date'>;

interface ReadingFormProps {
  readonly first: Reading;
  readonly record: MatchRecord;
  readonly system: UnitSystem;
}

/** What the reading says of the pluck, or why it cannot be. */
function answerText(reading: Reading, system: UnitSystem): { readonly ok: boolean; readonly text: string } {
  const answer = matchForce({ ...reading, id: 'new', date: '' }, pluckFromSaddleMm(reading.neck));
  if (!answer.ok) return { ok: false, text: matchRefusalText(answer.refusal, system) };
  const force = (value: number) => textOf('ownForceN', value, system);
  const { forceN, errorN, fromReliefN, fromActionN, fromFretsN } = answer;
  const parts = MATCH_WORDS.parts(force(fromReliefN), force(fromActionN), force(fromFretsN));
  return { ok: true, text: `${MATCH_WORDS.says(force(forceN), force(errorN))} ${parts}` };
}

function ReadingForm({ first, record, system }: ReadingFormProps) {
  const [reading, setReading] = useState(first);
  const [lasts, setLasts] = useState(true);
  const change = (part: Partial<Reading>) => setReading({ ...reading, ...part });
  const { ok, text } = answerText(reading, system);
  const isFull = record.matches.length >= MOST_MATCHES;
  return (
    <div className="match-form">
      <MatchPlace reading={reading} change={change} />
      {MATCH_NUMBER_IDS.map((name) => (
        <MatchField
          key={name}
          name={name}
          value={reading[name]}
          system={system}
          set={(value) => change({ [name]: value })}
        />
      ))}
      <p className="quiet">{MATCH_WORDS.errors}</p>
      <p aria-live="polite" className={ok ? '' : 'refusal'}>
        {text}
      </p>
      <button
        type="button"
        disabled={!ok || isFull}
        onClick={() => {
          const match = { ...reading, id: newId(), date: new Date().toISOString().slice(0, 10) };
          setLasts(keepMatches(withMatch(record, match)));
        }}
      >
        {MATCH_WORDS.keep}
      </button>
      {isFull && <p>{MATCH_WORDS.full(MOST_MATCHES)}</p>}
      {!lasts && <p role="alert">{MATCH_WORDS.notKept}</p>}
    </div>
  );
}

function Readings({ record, system }: { readonly record: MatchRecord; readonly system: UnitSystem }) {
  const matches = readableMatches(record);
  const force = (value: number) => textOf('ownForceN', value, system);
  const own = strengthOf(matches);
  if (matches.length === 0 || !own) return null;
  // Others that came in since are not in it yet.
  const stands = standingMatches(record).length === matches.length;
  return (
    <>
      <ul className="match-list">
        {matches.map((match) => {
          const answer = matchForce(match, pluckFromSaddleMm(match.neck));
          const text = MATCH_WORDS.kept(
            match.name === '' ? MATCH_WORDS.unnamed : match.name,
            noteName(match.neck.strings, match.string, match.note),
            match.fret,
            answer.ok ? force(answer.forceN) : matchRefusalText(answer.refusal, system),
          );
          return (
            <li key={match.id}>
              {text}{' '}
              <button
                type="button"
                aria-label={MATCH_WORDS.removeName(text)}
                onClick={() => keepMatches(withoutMatch(record, match.id))}
              >
                {MATCH_WORDS.remove}
              </button>
            </li>
          );
        })}
      </ul>
      <p>
        <strong>{ownStrengthText(own, system)}</strong> {stands && `${MATCH_WORDS.accepted} `}
        <button
          type="button"
          onClick={() => {
            store.getState().setHand({ ownForceN: stands ? null : undefined });
            keepMatches(acceptedAs(record, !stands));
          }}
        >
          {stands ? MATCH_WORDS.release : MATCH_WORDS.accept}
        </button>
      </p>
    </>
  );
}

interface OwnStrengthProps {
  readonly solution: Solution;
  /** The note that is looked at: a reading starts from it. */
  readonly at: NotePlace;
  /** Where that note would buzz first. */
  readonly touchedFret: number;
  readonly hand: Hand;
  readonly system: UnitSystem;
}

export function OwnStrength({ solution, at, touchedFret, hand, system }: OwnStrengthProps) {
  const { build } = solution;
  const record = useMatches();
  const [isOpen, setIsOpen] = useState(false);
  const first = (): Reading => ({
    name: build.name,
    neck: geometryOf(build),
    ...at,
    fret: touchedFret,
    direction: hand.direction,
    ...stringLineHeights(solution, at.string),
    ...USUAL_ERRORS,
  });
  return (
    <details className="own-strength" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{MATCH_WORDS.title}</summary>
      {isOpen &&
        (record ? (
          <>
            <p>{MATCH_WORDS.how}</p>
            <ReadingForm key={build.name + build.fretCount} first={first()} record={record} system={system} />
            <Readings record={record} system={system} />
          </>
        ) : (
          <p>{MATCH_WORDS.newer}</p>
        ))}
    </details>
  );
}
