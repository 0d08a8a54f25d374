/** Stretches of frets whose slot or tang differs from the rest. */
import { MAX_REGIONS, type FretRegion } from '../../../neck/build.ts';
import { useBackbow } from '../../../state/store.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListEditor, ListTable, useListEdit, type ListEdit } from '../../../kit/list-editor.tsx';
import { ListNumber } from '../../../kit/list-number.tsx';

const COLUMNS = ['fromFret', 'toFret', 'kerfMm', 'tangWidthMm', 'studWidthMm'] as const;

interface RegionRowProps {
  readonly regions: readonly FretRegion[];
  readonly index: number;
  readonly edit: ListEdit;
}

function RegionRow({ regions, index, edit: { system, change } }: RegionRowProps) {
  const name = LIST_WORDS.regions.region(index + 1);
  const remove = LIST_WORDS.regions.remove(index + 1);
  return (
    <tr>
      {COLUMNS.map((column) => (
        <td key={column}>
          <ListNumber
            kind={column}
            name={`${name}, ${LIST_WORDS.regions.columns[column]}`}
            value={regions[index][column]}
            system={system}
            change={(value) => change({ regions: withEntry(regions, index, { [column]: value }) }, name)}
          />
        </td>
      ))}
      <td>
        <button
          type="button"
          className="link"
          aria-label={remove}
          onClick={() => change({ regions: regions.toSpliced(index, 1) }, remove)}
        >
          {LIST_WORDS.regions.removeShort}
        </button>
      </td>
    </tr>
  );
}

export function RegionsEditor() {
  const build = useBackbow((state) => state.build);
  const edit = useListEdit(LIST_WORDS.regions.title);
  const { regions } = build;

  function add() {
    const { fretCount, kerfMm, tangWidthMm, studWidthMm } = build;
    const region = { fromFret: 1, toFret: fretCount, kerfMm, tangWidthMm, studWidthMm };
    edit.change({ regions: [...regions, region] }, LIST_WORDS.regions.add);
  }

  return (
    <ListEditor edit={edit} titled>
      {regions.length === 0 ? (
        <p className="quiet">{LIST_WORDS.regions.none}</p>
      ) : (
        <ListTable
          caption={LIST_WORDS.regions.caption}
          heads={[
            ...COLUMNS.map((column) => LIST_WORDS.regions.columns[column]),
            { hidden: LIST_WORDS.regions.removeShort },
          ]}
        >
          {regions.map((_region, index) => (
            <RegionRow key={index} regions={regions} index={index} edit={edit} />
          ))}
        </ListTable>
      )}
      <div className="button-row">
        <button type="button" disabled={regions.length >= MAX_REGIONS} onClick={add}>
          {LIST_WORDS.regions.add}
        </button>
      </div>
    </ListEditor>
  );
}
