/** Stretches of frets whose slot or tang differs from the rest. */
import { MAX_REGIONS, type FretRegion } from '../../../neck/build.ts';
import { displayUnit } from '../../../neck/units.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { refusalText } from '../controls/refusal.ts';
import { LIST_WORDS } from '../../../speech/en/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListNumber } from '../../../kit/list-number.tsx';
import { useRefusal } from '../controls/use-refusal.ts';

const WORDS = LIST_WORDS.regions;
const COLUMNS = Object.keys(WORDS.columns) as (keyof FretRegion)[];

export function RegionsEditor() {
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const [message, setMessage] = useRefusal();
  const { regions } = build;

  function change(wanted: readonly FretRegion[], label: string) {
    const outcome = store.getState().change({ regions: wanted }, label);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, WORDS.title, system));
    return outcome;
  }

  const unit = displayUnit('mm', system).label;
  return (
    <fieldset className="list-editor">
      <legend>
        {WORDS.title}, {unit}
      </legend>
      {regions.length === 0 ? (
        <p className="quiet">{WORDS.none}</p>
      ) : (
        <div className="table-scroll">
          <table className="list-table">
            <caption className="visually-hidden">{WORDS.caption}</caption>
            <thead>
              <tr>
                {COLUMNS.map((column) => (
                  <th key={column} scope="col">
                    {WORDS.columns[column]}
                  </th>
                ))}
                <th scope="col">
                  <span className="visually-hidden">{WORDS.removeShort}</span>
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
                        name={`${WORDS.region(index + 1)}, ${WORDS.columns[column]}`}
                        value={region[column]}
                        system={system}
                        change={(value) =>
                          change(withEntry(regions, index, { [column]: value }), WORDS.region(index + 1))
                        }
                      />
                    </td>
                  ))}
                  <td>
                    <button
                      type="button"
                      className="link"
                      aria-label={WORDS.remove(index + 1)}
                      onClick={() => change(regions.toSpliced(index, 1), WORDS.remove(index + 1))}
                    >
                      {WORDS.removeShort}
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
            change([...regions, { fromFret: 1, toFret: fretCount, kerfMm, tangWidthMm, studWidthMm }], WORDS.add);
          }}
        >
          {WORDS.add}
        </button>
      </div>
      <p className="refusal" role="alert">
        {message}
      </p>
    </fieldset>
  );
}
