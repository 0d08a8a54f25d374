/** The fields of a reading: which note buzzes on which fret, and the numbers that were measured. */
import type { UnitSystem } from '../../../neck/units.ts';
import { MATCH_NUMBERS, type BuzzMatch, type MatchNumber } from '../../../playing/buzz-match.ts';
import { MATCH_WORDS } from '../../../speech/en/workshop/matches.ts';
import { stringName } from '../../../speech/playing/string-room.ts';
import { LabelledNumber } from '../../../kit/labelled-number.tsx';

type Place = Pick<BuzzMatch, 'neck' | 'string' | 'note' | 'fret'>;

function Choice({
  label,
  value,
  options,
  choose,
}: {
  readonly label: string;
  readonly value: number;
  readonly options: readonly (readonly [value: number, label: string])[];
  readonly choose: (value: number) => void;
}) {
  return (
    <label className="match-field">
      {label}
      <select value={value} onChange={(event) => choose(Number(event.currentTarget.value))}>
        {options.map(([each, text]) => (
          <option key={each} value={each}>
            {text}
          </option>
        ))}
      </select>
    </label>
  );
}

export function MatchPlace({
  reading: { neck, string, note, fret },
  change,
}: {
  readonly reading: Place;
  readonly change: (part: Partial<Place>) => void;
}) {
  const frets = Array.from({ length: neck.fretCount }, (_, i) => [i + 1, String(i + 1)] as const);
  return (
    <>
      <Choice
        label={MATCH_WORDS.string}
        value={string}
        options={neck.strings.map((_, i) => [i, stringName(neck.strings, i)] as const)}
        choose={(value) => change({ string: value })}
      />
      <Choice
        label={MATCH_WORDS.note}
        value={note}
        options={[[0, MATCH_WORDS.open] as const, ...frets.slice(0, -1)]}
        choose={(value) => change({ note: value })}
      />
      <Choice label={MATCH_WORDS.fret} value={fret} options={frets} choose={(value) => change({ fret: value })} />
    </>
  );
}

export function MatchField({
  name,
  value,
  system,
  set,
}: {
  readonly name: MatchNumber;
  readonly value: number;
  readonly system: UnitSystem;
  readonly set: (value: number) => void;
}) {
  const parameter = { ...MATCH_NUMBERS[name], step: 0.01, digits: 3, label: MATCH_WORDS.numbers[name] };
  return <LabelledNumber className="match-field" parameter={parameter} value={value} system={system} set={set} />;
}
