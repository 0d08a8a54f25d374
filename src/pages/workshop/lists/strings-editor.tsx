/** The strings: a set, a tuning, and every string by itself. */
import {
  CONSTRUCTION_LABELS,
  pitchName,
  STRING_SETS,
  TUNINGS,
  type StringConstruction,
  type StringSpec,
} from '../../../neck/strings.ts';
import { withinSentence } from '../../../speech/language.ts';
import { LIST_NUMBERS } from '../../../neck/schema.ts';
import { displayUnit, formatQuantity } from '../../../neck/units.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { refusalText } from '../controls/refusal.ts';
import { LIST_WORDS } from '../../../speech/en/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListNumber } from '../../../kit/list-number.tsx';
import { LabelledSelect } from '../../../kit/labelled-select.tsx';
import { lowerString, setOf, tuningOf, withSet, withTuning } from './string-choices.ts';
import { useRefusal } from '../controls/use-refusal.ts';

const WORDS = LIST_WORDS.strings;
const CONSTRUCTIONS = Object.keys(CONSTRUCTION_LABELS) as StringConstruction[];
const { min: LOWEST, max: HIGHEST } = LIST_NUMBERS['pitch']!;
const PITCHES = Array.from({ length: HIGHEST - LOWEST + 1 }, (_, index) => HIGHEST - index);
const MOST_STRINGS = 12;

/** By itself: it is computed anew with every change of the neck, and the rest of the table is not. */
function Pull({ index }: { readonly index: number }) {
  const text = useBackbow(({ build, solution, unitSystem }) => {
    const pull = solution?.build.strings === build.strings ? solution.prediction.strings[index] : undefined;
    return pull ? formatQuantity(pull.tensionN, 'N', 0, unitSystem) : '…';
  });
  return <td className="number">{text}</td>;
}

export function StringsEditor() {
  const strings = useBackbow((state) => state.build.strings);
  const system = useBackbow((state) => state.unitSystem);
  const [message, setMessage] = useRefusal();
  const tunings = TUNINGS.filter((tuning) => tuning.pitches.length === strings.length);

  function change(wanted: readonly StringSpec[], label: string) {
    const outcome = store.getState().change({ strings: wanted }, label);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, WORDS.title, system));
    return outcome;
  }

  const unit = displayUnit('mm', system).label;
  return (
    <div className="list-editor">
      <LabelledSelect
        label={WORDS.set}
        value={setOf(strings)?.id ?? ''}
        options={STRING_SETS.map((set) => ({ value: set.id, label: set.label }))}
        other={WORDS.own}
        choose={(id) => change(withSet(strings, id), WORDS.set)}
      />
      <LabelledSelect
        label={WORDS.tuning}
        value={tuningOf(strings)?.id ?? ''}
        options={tunings.map((tuning) => ({ value: tuning.id, label: tuning.label }))}
        other={WORDS.own}
        choose={(id) => change(withTuning(strings, id), WORDS.tuning)}
      />
      <div className="table-scroll">
        <table className="list-table">
          <caption className="visually-hidden">{WORDS.caption}</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="visually-hidden">{WORDS.string}</span>
              </th>
              <th scope="col">{WORDS.construction}</th>
              <th scope="col">
                {WORDS.diameter}, {unit}
              </th>
              <th scope="col">
                {WORDS.core}, {unit}
              </th>
              <th scope="col">{WORDS.pitch}</th>
              <th scope="col">{WORDS.pull}</th>
            </tr>
          </thead>
          <tbody>
            {strings.map((string, index) => {
              const name = (what: string) => `${WORDS.string} ${index + 1}, ${withinSentence(what)}`;
              const edit = (part: Partial<StringSpec>) =>
                change(withEntry(strings, index, part), WORDS.changed(String(index + 1)));
              return (
                <tr key={index}>
                  <th scope="row">{index + 1}</th>
                  <td>
                    <select
                      aria-label={name(WORDS.construction)}
                      value={string.construction}
                      onChange={(event) => edit({ construction: event.currentTarget.value as StringConstruction })}
                    >
                      {CONSTRUCTIONS.map((construction) => (
                        <option key={construction} value={construction}>
                          {CONSTRUCTION_LABELS[construction]}
                        </option>
                      ))}
                    </select>
                  </td>
                  <td>
                    <ListNumber
                      kind="diameterMm"
                      name={name(WORDS.diameter)}
                      value={string.diameterMm}
                      system={system}
                      change={(diameterMm) => edit({ diameterMm })}
                    />
                  </td>
                  <td>
                    {string.construction.endsWith('-wound') ? (
                      <ListNumber
                        kind="coreMm"
                        name={name(WORDS.core)}
                        value={string.coreMm}
                        system={system}
                        change={(coreMm) => edit({ coreMm })}
                      />
                    ) : (
                      '–'
                    )}
                  </td>
                  <td>
                    <select
                      aria-label={name(WORDS.pitch)}
                      value={string.pitch}
                      onChange={(event) => edit({ pitch: Number(event.currentTarget.value) })}
                    >
                      {PITCHES.map((pitch) => (
                        <option key={pitch} value={pitch}>
                          {pitchName(pitch)}
                        </option>
                      ))}
                    </select>
                  </td>
                  <Pull index={index} />
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <div className="button-row">
        <button
          type="button"
          disabled={strings.length >= MOST_STRINGS}
          onClick={() => change([...strings, lowerString(strings)], WORDS.add)}
        >
          {WORDS.add}
        </button>
        <button type="button" disabled={strings.length <= 1} onClick={() => change(strings.slice(0, -1), WORDS.remove)}>
          {WORDS.remove}
        </button>
      </div>
      <p className="refusal" role="alert">
        {message}
      </p>
    </div>
  );
}
