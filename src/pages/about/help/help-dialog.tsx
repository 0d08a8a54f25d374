/** What the program is, and every key, from the table of actions. */
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { store, useBackbow } from '../../../state/store.ts';
import { comboText } from '../../workshop/actions/keys.ts';
import { isMac } from '../../workshop/actions/platform.ts';
import { ACTIONS } from '../../workshop/actions/table.ts';
import { ACTION_GROUPS } from '../../workshop/actions/types.ts';
import { ACTION_GROUP_WORDS, HELP_WORDS } from '../../../speech/en/workshop/actions.ts';
import { ThisProgram } from './this-program.tsx';
import './help.css';

function Keys() {
  const state = useBackbow((current) => current);
  const mac = isMac();
  return (
    <table className="keys">
      <thead>
        <tr>
          <th scope="col">{HELP_WORDS.action}</th>
          <th scope="col">{HELP_WORDS.combos}</th>
        </tr>
      </thead>
      {ACTION_GROUPS.map((group) => (
        <tbody key={group}>
          <tr>
            <th scope="rowgroup" colSpan={2}>
              {ACTION_GROUP_WORDS[group]}
            </th>
          </tr>
          {ACTIONS.filter((action) => action.group === group && action.keys.length > 0).map((action) => (
            <tr key={action.id}>
              <td>
                {action.label(state)}
                {action.changesBuild && action.group !== 'edit' ? (
                  <span className="quiet"> – {HELP_WORDS.undoable}</span>
                ) : null}
              </td>
              <td>
                {action.keys.map((combo) => (
                  <kbd key={combo}>{comboText(combo, mac)}</kbd>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** Open for as long as it is mounted. */
export function HelpDialog() {
  const singleKeys = useBackbow((state) => state.singleKeys);
  const { setHelpOpen, setSingleKeys } = store.getState();
  return (
    <Dialog title={HELP_WORDS.title} className="help" onClose={() => setHelpOpen(false)}>
      {HELP_WORDS.intro.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <h3>{HELP_WORDS.keys}</h3>
      <p>{HELP_WORDS.numbers}</p>
      <p>{HELP_WORDS.typed}</p>
      <label className="tick">
        <input type="checkbox" checked={singleKeys} onChange={(event) => setSingleKeys(event.currentTarget.checked)} />
        {HELP_WORDS.singleKeys}
      </label>
      <Keys />
      <ThisProgram />
    </Dialog>
  );
}
