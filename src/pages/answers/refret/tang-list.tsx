/** The tangs to hand: a list to type in. */
import type { UnitSystem } from '../../../neck/units.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import type { TangChoice } from '../../../mechanics/seating/refret.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListNumber } from '../../../kit/list-number.tsx';
import { REFRET_WORDS } from '../../../speech/en/pages/refret.ts';

/** With more there would be too many combinations to try. */
const MOST_TANGS = 8;

interface TangListProps {
  readonly choices: readonly TangChoice[];
  readonly system: UnitSystem;
  readonly setChoices: (choices: readonly TangChoice[]) => void;
}

const columns = () =>
  [
    ['tangWidthMm', REFRET_WORDS.body],
    ['studWidthMm', REFRET_WORDS.studs],
  ] as const;

export function TangList({ choices, system, setChoices }: TangListProps) {
  return (
    <fieldset className="tang-list">
      <legend>
        {REFRET_WORDS.tangs}, {unitLabel('mm', system)}
      </legend>
      <table className="list-table">
        <caption className="visually-hidden">{REFRET_WORDS.tangsCaption}</caption>
        <thead>
          <tr>
            {columns().map(([id, label]) => (
              <th key={id} scope="col">
                {label}
              </th>
            ))}
            <th scope="col">
              <span className="visually-hidden">{REFRET_WORDS.remove}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {choices.map((choice, index) => (
            <tr key={index}>
              {columns().map(([id, label]) => (
                <td key={id}>
                  <ListNumber
                    kind={id}
                    name={`${REFRET_WORDS.tang(index + 1)}, ${label}`}
                    value={choice[id]}
                    system={system}
                    change={(value) => {
                      setChoices(withEntry(choices, index, { [id]: value }));
                      return { ok: true };
                    }}
                  />
                </td>
              ))}
              <td>
                <button
                  type="button"
                  className="link"
                  disabled={choices.length === 1}
                  aria-label={REFRET_WORDS.removeName(index + 1)}
                  onClick={() => setChoices(choices.toSpliced(index, 1))}
                >
                  {REFRET_WORDS.remove}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="button-row">
        <button
          type="button"
          disabled={choices.length >= MOST_TANGS}
          onClick={() => setChoices([...choices, choices.at(-1)!])}
        >
          {REFRET_WORDS.add}
        </button>
      </div>
    </fieldset>
  );
}
