/** The strings: a set, a tuning, and every string by itself. */
import {
  CONSTRUCTION_IDS,
  STRING_SETS,
  TUNINGS,
  type StringConstruction,
  type StringSpec,
} from '../../../neck/strings.ts';
import { withinSentence } from '../../../speech/language.ts';
import { LIST_NUMBERS } from '../../../neck/schema.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { refusalText } from '../../../speech/refusal.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListNumber } from '../../../kit/list-number.tsx';
import { LabelledSelect } from '../../../kit/labelled-select.tsx';
import { lowerString, setOf, tuningOf, withSet, withTuning } from './string-choices.ts';
import { useRefusal } from '../../../kit/use-refusal.ts';
import { CONSTRUCTION_WORDS, STRING_SET_WORDS, TUNING_WORDS } from '../../../speech/en/neck/necks.ts';
import { pitchName } from '../../../speech/names.ts';

const { min: LOWEST, max: HIGHEST } = LIST_NUMBERS.pitch;
const PITCHES = Array.from({ length: HIGHEST - LOWEST + 1 }, (_, index) => HIGHEST - index);
const MOST_STRINGS = 12;

/** By itself: it is computed anew with every change of the neck, and the rest of the table is not. */
function Pull({ index }: { readonly index: number }) {
  const text = useBackbow(({ build, solution, unitSystem, notComputed }) => {
    const pull = solution?.build.strings === build.strings ? solution.prediction.strings[index] : undefined;
    return pull ? textOf('stringTensionN', pull.tensionN, unitSystem) : notComputed ? '–' : '…';
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
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, LIST_WORDS.strings.title, system));
    return outcome;
  }

  const unit = unitLabel('mm', system);
  return (
    <div className="list-editor">
      <LabelledSelect
        label={LIST_WORDS.strings.set}
        value={setOf(strings)?.id ?? ''}
        options={STRING_SETS.map((set) => ({ value: set.id, label: STRING_SET_WORDS[set.id] }))}
        other={LIST_WORDS.strings.own}
        choose={(id) => change(withSet(strings, id), LIST_WORDS.strings.set)}
      />
      <LabelledSelect
        label={LIST_WORDS.strings.tuning}
        value={tuningOf(strings)?.id ?? ''}
        options={tunings.map((tuning) => ({ value: tuning.id, label: TUNING_WORDS[tuning.id] }))}
        other={LIST_WORDS.strings.own}
        choose={(id) => change(withTuning(strings, id), LIST_WORDS.strings.tuning)}
      />
      <div className="table-scroll">
        <table className="list-table">
          <caption className="visually-hidden">{LIST_WORDS.strings.caption}</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="visually-hidden">{LIST_WORDS.strings.string}</span>
              </th>
              <th scope="col">{LIST_WORDS.strings.construction}</th>
              <th scope="col">
                {LIST_WORDS.strings.diameter}, {unit}
              </th>
              <th scope="col">
                {LIST_WORDS.strings.core}, {unit}
              </th>
              <th scope="col">{LIST_WORDS.strings.pitch}</th>
              <th scope="col">{LIST_WORDS.strings.pull}</th>
            </tr>
          </thead>
          <tbody>
            {strings.map((string, index) => {
              const name = (what: string) => `${LIST_WORDS.strings.string} ${index + 1}, ${withinSentence(what)}`;
              const edit = (part: Partial<StringSpec>) =>
                change(withEntry(strings, index, part), LIST_WORDS.strings.changed(String(index + 1)));
              return (
                <tr key={index}>
                  <th scope="row">{index + 1}</th>
                  <td>
                    <select
                      aria-label={name(LIST_WORDS.strings.construction)}
                      value={string.construction}
                      onChange={(event) => edit({ construction: event.currentTarget.value as StringConstruction })}
                    >
                      {CONSTRUCTION_IDS.map((construction) => (
                        <option key={construction} value={construction}>
                          {CONSTRUCTION_WORDS[construction]}
                        </option>
                      ))}
                    </select>
                  </td>
                  <td>
                    <ListNumber
                      kind="diameterMm"
                      name={name(LIST_WORDS.strings.diameter)}
                      value={string.diameterMm}
                      system={system}
                      change={(diameterMm) => edit({ diameterMm })}
                    />
                  </td>
                  <td>
                    {string.construction.endsWith('-wound') ? (
                      <ListNumber
                        kind="coreMm"
                        name={name(LIST_WORDS.strings.core)}
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
                      aria-label={name(LIST_WORDS.strings.pitch)}
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
          onClick={() => change([...strings, lowerString(strings)], LIST_WORDS.strings.add)}
        >
          {LIST_WORDS.strings.add}
        </button>
        <button
          type="button"
          disabled={strings.length <= 1}
          onClick={() => change(strings.slice(0, -1), LIST_WORDS.strings.remove)}
        >
          {LIST_WORDS.strings.remove}
        </button>
      </div>
      <p className="refusal" role="alert">
        {message}
      </p>
    </div>
  );
}
