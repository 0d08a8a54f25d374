/** The binding lines in use: how thick, what colour, and which of them the saw passes through. */
import { bindingInUse, type BindingLine } from '../../../neck/build.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { refusalText } from '../../../speech/refusal.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListNumber } from '../../../kit/list-number.tsx';
import { useRefusal } from '../../../kit/use-refusal.ts';

export function BindingEditor() {
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const [message, setMessage] = useRefusal();
  const { beginGesture, endGesture } = store.getState();

  function change(index: number, part: Partial<BindingLine>) {
    const outcome = store
      .getState()
      .change({ binding: withEntry(build.binding, index, part) }, LIST_WORDS.binding.line(index + 1));
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, LIST_WORDS.binding.title, system));
    return outcome;
  }

  const lines = bindingInUse(build);
  if (lines.length === 0) return <p className="quiet list-editor">{LIST_WORDS.binding.none}</p>;
  return (
    <fieldset className="list-editor">
      <legend>
        {LIST_WORDS.binding.title}, {unitLabel('mm', system)}
      </legend>
      <ol className="binding-lines">
        {lines.map((line, index) => (
          <li key={index}>
            <span>{LIST_WORDS.binding.line(index + 1)}</span>
            <ListNumber
              kind="thicknessMm"
              name={LIST_WORDS.binding.thickness(index + 1)}
              value={line.thicknessMm}
              system={system}
              change={(thicknessMm) => change(index, { thicknessMm })}
            />
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
              {index < build.linesSawnThrough ? LIST_WORDS.binding.sawn : LIST_WORDS.binding.whole}
            </span>
          </li>
        ))}
      </ol>
      <p className="refusal" role="alert">
        {message}
      </p>
    </fieldset>
  );
}
