/** The binding lines in use: how thick, what colour, and which of them the saw passes through. */
import { fretEnd } from '../../../fretwork/ends.ts';
import { BINDING_MATERIAL_IDS } from '../../../neck/materials/binding.ts';
import { bindingInUse, type BindingLine } from '../../../neck/build.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { bindingMaterialName } from '../../../speech/names.ts';
import { ListEditor, useListEdit } from '../../../kit/list-editor.tsx';
import { ListNumber } from '../../../kit/list-number.tsx';

const AS_BOARD = 'board';

export function BindingEditor() {
  const build = useBackbow((state) => state.build);
  const edit = useListEdit(LIST_WORDS.binding.title);
  const { beginGesture, endGesture } = store.getState();

  const change = (index: number, part: Partial<BindingLine>) =>
    edit.change({ binding: withEntry(build.binding, index, part) }, LIST_WORDS.binding.line(index + 1));

  const setMaterial = (index: number, chosen: string) => {
    const { material: _, ...line } = build.binding[index];
    const changed: BindingLine = chosen === AS_BOARD ? line : { ...line, material: chosen };
    edit.change({ binding: build.binding.toSpliced(index, 1, changed) }, LIST_WORDS.binding.line(index + 1));
  };

  const lines = bindingInUse(build);
  const end = lines.length > 0 ? fretEnd(build, 1) : undefined;
  if (lines.length === 0) return <p className="quiet list-editor">{LIST_WORDS.binding.none}</p>;
  return (
    <ListEditor edit={edit} titled>
      <ol className="binding-lines">
        {lines.map((line, index) => (
          <li key={index}>
            <span>{LIST_WORDS.binding.line(index + 1)}</span>
            <ListNumber
              kind="thicknessMm"
              name={LIST_WORDS.binding.thickness(index + 1)}
              value={line.thicknessMm}
              system={edit.system}
              change={(thicknessMm) => change(index, { thicknessMm })}
            />
            <select
              aria-label={LIST_WORDS.binding.material(index + 1)}
              value={line.material ?? AS_BOARD}
              onChange={(event) => setMaterial(index, event.currentTarget.value)}
            >
              <option value={AS_BOARD}>{bindingMaterialName(undefined)}</option>
              {BINDING_MATERIAL_IDS.map((id) => (
                <option key={id} value={id}>
                  {bindingMaterialName(id)}
                </option>
              ))}
            </select>
            <input
              type="color"
              aria-label={LIST_WORDS.binding.colour(index + 1)}
              value={line.colour}
              // The picker reports every colour passed over: all of them until it is left are one step.
              onFocus={() => beginGesture(LIST_WORDS.binding.colour(index + 1))}
              onChange={(event) => change(index, { colour: event.currentTarget.value })}
              onBlur={endGesture}
            />
            <span className="quiet">
              {end?.lines[index]?.sawn ? LIST_WORDS.binding.sawn : LIST_WORDS.binding.whole}
            </span>
          </li>
        ))}
      </ol>
    </ListEditor>
  );
}
