/** The strings: a set, a tuning, and every string by itself. */
import {
  areInCourses,
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
import { useBackbow } from '../../../state/store.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListEditor, ListTable, useListEdit, type ListEdit } from '../../../kit/list-editor.tsx';
import { ListNumber } from '../../../kit/list-number.tsx';
import { LabelledSelect } from '../../../kit/labelled-select.tsx';
import { lowerString, setOf, tuningOf, withPairs, withSet, withTuning } from './string-choices.ts';
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

interface StringRowProps {
  readonly strings: readonly StringSpec[];
  readonly index: number;
  readonly edit: ListEdit;
}

function StringRow({ strings, index, edit: { system, change } }: StringRowProps) {
  const string = strings[index];
  const name = (what: string) => `${LIST_WORDS.strings.string} ${index + 1}, ${withinSentence(what)}`;
  const set = (part: Partial<StringSpec>) =>
    change({ strings: withEntry(strings, index, part) }, LIST_WORDS.strings.changed(String(index + 1)));
  return (
    <tr>
      <th scope="row">{index + 1}</th>
      <td>
        <select
          aria-label={name(LIST_WORDS.strings.construction)}
          value={string.construction}
          onChange={(event) => set({ construction: event.currentTarget.value as StringConstruction })}
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
          change={(diameterMm) => set({ diameterMm })}
        />
      </td>
      <td>
        {string.construction.endsWith('-wound') ? (
          <ListNumber
            kind="coreMm"
            name={name(LIST_WORDS.strings.core)}
            value={string.coreMm}
            system={system}
            change={(coreMm) => set({ coreMm })}
          />
        ) : (
          '–'
        )}
      </td>
      <td>
        <select
          aria-label={name(LIST_WORDS.strings.pitch)}
          value={string.pitch}
          onChange={(event) => set({ pitch: Number(event.currentTarget.value) })}
        >
          {PITCHES.map((pitch) => (
            <option key={pitch} value={pitch}>
              {pitchName(pitch)}
            </option>
          ))}
        </select>
      </td>
      <Pull index={index} />
      {areInCourses(strings) && (
        <td>
          {string.besidePreviousMm === undefined ? (
            '–'
          ) : (
            <ListNumber
              kind="besidePreviousMm"
              name={name(LIST_WORDS.strings.beside)}
              value={string.besidePreviousMm}
              system={system}
              change={(besidePreviousMm) => set({ besidePreviousMm })}
            />
          )}
        </td>
      )}
    </tr>
  );
}

function StringTable({ strings, edit }: Pick<StringRowProps, 'strings' | 'edit'>) {
  const unit = unitLabel('mm', edit.system);
  const { string, construction, diameter, core, pitch, pull, caption, beside } = LIST_WORDS.strings;
  return (
    <ListTable
      caption={caption}
      heads={[
        { hidden: string },
        construction,
        `${diameter}, ${unit}`,
        `${core}, ${unit}`,
        pitch,
        pull,
        ...(areInCourses(strings) ? [`${beside}, ${unit}`] : []),
      ]}
    >
      {strings.map((_string, index) => (
        <StringRow key={index} strings={strings} index={index} edit={edit} />
      ))}
    </ListTable>
  );
}

export function StringsEditor() {
  const strings = useBackbow((state) => state.build.strings);
  const edit = useListEdit(LIST_WORDS.strings.title);
  const tunings = TUNINGS.filter((tuning) => tuning.pitches.length === strings.length);
  const change = (wanted: readonly StringSpec[], label: string) => edit.change({ strings: wanted }, label);
  return (
    <ListEditor edit={edit}>
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
      {strings.length > 1 && (
        <label className="tick">
          <input
            type="checkbox"
            checked={areInCourses(strings)}
            onChange={({ currentTarget: { checked } }) =>
              change(withPairs(strings, checked), LIST_WORDS.strings.paired)
            }
          />
          {LIST_WORDS.strings.paired}
        </label>
      )}
      <StringTable strings={strings} edit={edit} />
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
    </ListEditor>
  );
}
