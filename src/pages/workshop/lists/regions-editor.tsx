/** Stretches of frets whose slot or tang differs from the rest. */
import { MAX_REGIONS, type FretRegion } from '../../../neck/build.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { refusalText } from '../../../speech/refusal.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListNumber } from '../../../kit/list-number.tsx';
import { useRefusal } from '../../../kit/use-refusal.ts';

const COLUMNS = ['fromFret', 'toFret', 'kerfMm', 'tangWidthMm', 'studWidthMm'] as const;

export function RegionsEditor() {
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const [message, setMessage] = useRefusal();
  const { regions } = build;

  function change(wanted: readonly FretRegion[], label: string) {
    const outcome = store.getState().change({ regions: wanted }, label);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, LIST_WORDS.regions.title, system));
    return outcome;
  }

  const unit = unitLabel('mm', system);
  return (
    <fieldset className="list-editor">
      <legend>
        {LIST_WORDS.regions.title}, {unit}
      </legend>
      {regions.length === 0 ? (
        <p className="quiet">{LIST_WORDS.regions.none}</p>
      ) : (
        <div className="table-scroll">
          <table className="list-table">
            <caption className="visually-hidden">{LIST_WORDS.regions.caption}</caption>
            <thead>
              <tr>
                {COLUMNS.map((column) => (
                  <th key={column} scope="col">
                    {LIST_WORDS.regions.columns[column]}
                  </th>
                ))}
                <th scope="col">
                  <span className="visually-hidden">{LIST_WORDS.regions.removeShort}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {regions.map((region, index) => (
                <tr key={index}>
                  {COLUMNS.map((column) => (
                    <td key={column}>
                      <ListNumber
                        kind={column}
                        name={`${LIST_WORDS.regions.region(index + 1)}, ${LIST_WORDS.regions.columns[column]}`}
                        value={region[column]}
                        system={system}
                        change={(value) =>
                          change(withEntry(regions, index, { [column]: value }), LIST_WORDS.regions.region(index + 1))
                        }
                      />
                    </td>
                  ))}
                  <td>
                    <button
                      type="button"
                      className="link"
                      aria-label={LIST_WORDS.regions.remove(index + 1)}
                      onClick={() => change(regions.toSpliced(index, 1), LIST_WORDS.regions.remove(index + 1))}
                    >
                      {LIST_WORDS.regions.removeShort}
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <div className="button-row">
        <button
          type="button"
          disabled={regions.length >= MAX_REGIONS}
          onClick={() => {
            const { fretCount, kerfMm, tangWidthMm, studWidthMm } = build;
            change(
              [...regions, { fromFret: 1, toFret: fretCount, kerfMm, tangWidthMm, studWidthMm }],
              LIST_WORDS.regions.add,
            );
          }}
        >
          {LIST_WORDS.regions.add}
        </button>
      </div>
      <p className="refusal" role="alert">
        {message}
      </p>
    </fieldset>
  );
}
