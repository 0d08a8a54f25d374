/** Woods of the maker's own that a part of the neck is made of: a name, and the numbers that a table would have. */
import type { OwnWood } from '../../../neck/materials/own-woods.ts';
import { MOST_WOOD_NAME, OWN_WOOD_IDS } from '../../../neck/materials/own-woods.ts';
import type { BlankPart } from '../../../neck/parameters.ts';
import { WOODS } from '../../../neck/woods.ts';
import { woodProperties } from '../../../mechanics/elements/materials.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { woodName } from '../../../speech/names.ts';
import { formatQuantity } from '../../../speech/quantity.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { LabelledSelect } from '../../../kit/labelled-select.tsx';
import { ListEditor, useListEdit, type ListEdit } from '../../../kit/list-editor.tsx';
import { ListNumber } from '../../../kit/list-number.tsx';

const STRENGTHS = ['density', 'own'] as const;

function OwnWoodFields({ index, edit }: { readonly index: number; readonly edit: ListEdit }) {
  const build = useBackbow((state) => state.build);
  const words = LIST_WORDS.ownWoods;
  const { ownWoods } = build;
  const wood = ownWoods[index];
  const id = OWN_WOOD_IDS[index];
  const { beginGesture, endGesture } = store.getState();
  const set = (change: Partial<OwnWood>) => edit.change({ ownWoods: withEntry(ownWoods, index, change) }, woodName(id));
  const fields = ['modulusGPa', 'densityKgM3'] as const;
  const byDensityMPa = woodProperties(id, { ...build, ownWoods: withEntry(ownWoods, index, { crushingMPa: null }) });
  const strengthText = formatQuantity(byDensityMPa.crushingMPa, 'MPa', 0, edit.system);
  return (
    <div className="list-entry">
      <label className="own-wood-name">
        {words.name(woodName(id))}
        <input
          type="text"
          maxLength={MOST_WOOD_NAME}
          placeholder={woodName(id)}
          value={wood.name}
          onFocus={() => beginGesture(words.name(woodName(id)))}
          onChange={(event) => set({ name: event.currentTarget.value })}
          onBlur={endGesture}
        />
      </label>
      {fields.map((kind) => (
        <label key={kind}>
          {words[kind]}
          <ListNumber
            kind={kind}
            name={`${woodName(id)}, ${words[kind]}`}
            value={wood[kind]}
            system={edit.system}
            change={(value) => set({ [kind]: value })}
          />
        </label>
      ))}
      <LabelledSelect
        label={words.strength}
        value={wood.crushingMPa === null ? 'density' : 'own'}
        options={STRENGTHS.map((value) => ({ value, label: words.strengths[value](strengthText) }))}
        choose={(value) => set({ crushingMPa: value === 'own' ? Math.round(byDensityMPa.crushingMPa) : null })}
      />
      {wood.crushingMPa !== null && (
        <label>
          {words.crushingMPa}
          <ListNumber
            kind="crushingMPa"
            name={`${woodName(id)}, ${words.crushingMPa}`}
            value={wood.crushingMPa}
            system={edit.system}
            change={(crushingMPa) => set({ crushingMPa })}
          />
        </label>
      )}
      <LabelledSelect
        label={words.like}
        value={wood.like}
        options={WOODS.map((row) => ({ value: row.id as string, label: woodName(row.id) }))}
        choose={(like) => set({ like })}
      />
    </div>
  );
}

/** Nothing where the part is made of woods of the table alone. */
export function OwnWoodsEditor({ part }: { readonly part: BlankPart }) {
  const used = useBackbow(({ build }): string => {
    const ids = part === 'board' ? [build.boardWood] : build.laminates.map(({ wood }) => wood);
    return OWN_WOOD_IDS.filter((id) => ids.includes(id)).join(' ');
  });
  const edit = useListEdit(LIST_WORDS.ownWoods.title);
  if (used === '') return null;
  return (
    <ListEditor edit={edit}>
      {used.split(' ').map((id) => (
        <OwnWoodFields key={id} index={(OWN_WOOD_IDS as readonly string[]).indexOf(id)} edit={edit} />
      ))}
      <p className="quiet">{LIST_WORDS.ownWoods.hint}</p>
    </ListEditor>
  );
}
