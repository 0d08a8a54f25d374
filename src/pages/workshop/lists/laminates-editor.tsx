/** What the neck is glued up of: one piece, or three, five or seven laminates, alike on both sides of the centre. */
import type { Laminate } from '../../../neck/build.ts';
import { areLaminatesConstant, laminateShares } from '../../../neck/neck-shape.ts';
import { WOOD_IDS } from '../../../neck/woods.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { NumberControl } from '../controls/number-control.tsx';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { withEntry } from '../../../kit/edit-list.ts';
import { ListEditor, useListEdit } from '../../../kit/list-editor.tsx';
import { ListNumber } from '../../../kit/list-number.tsx';
import { LabelledSelect } from '../../../kit/labelled-select.tsx';
import { percentText, shareParameter, withoutWidths, withPieces, withShare, withWidths } from './laminate-shares.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import { woodNameIn } from '../../../speech/names.ts';

const WIDTHS_BY = ['share', 'mm'] as const;

function placeOf(index: number, count: number): string {
  if (count === 1) return LIST_WORDS.laminates.places.one;
  if (index === 0) return LIST_WORDS.laminates.places.centre;
  if (index === count - 1) return LIST_WORDS.laminates.places.outer;
  return count === 4 ? `${LIST_WORDS.laminates.places.next} ${index}` : LIST_WORDS.laminates.places.next;
}

export function LaminatesEditor() {
  const laminates = useBackbow((state) => state.build.laminates);
  const ownWoods = useBackbow((state) => state.build.ownWoods);
  const { beginGesture, endGesture } = store.getState();
  const restShare = useBackbow((state) => laminateShares(state.build).at(-1) ?? 1);
  const isConstant = areLaminatesConstant({ laminates });
  const edit = useListEdit(LIST_WORDS.laminates.title);

  const change = (wanted: readonly Laminate[]) => edit.change({ laminates: wanted }, edit.title);

  return (
    <ListEditor edit={edit}>
      <LabelledSelect
        label={LIST_WORDS.laminates.make}
        value={String(laminates.length)}
        options={LIST_WORDS.laminates.pieces.map((label, index) => ({ value: String(index + 1), label }))}
        choose={(count) => change(withPieces(laminates, Number(count)))}
      />
      {laminates.length > 1 && (
        <LabelledSelect
          label={LIST_WORDS.laminates.widths}
          value={isConstant ? 'mm' : 'share'}
          options={WIDTHS_BY.map((value) => ({ value, label: LIST_WORDS.laminates.widthsBy[value] }))}
          choose={(by) => change(by === 'mm' ? withWidths(store.getState().build) : withoutWidths(laminates))}
        />
      )}
      {laminates.map((laminate, index) => {
        const place = placeOf(index, laminates.length);
        const isRest = index === laminates.length - 1;
        return (
          <div key={index} className="list-entry">
            <LabelledSelect
              label={LIST_WORDS.laminates.wood(place)}
              value={laminate.wood}
              options={WOOD_IDS.map((id) => ({ value: id, label: woodNameIn({ ownWoods }, id) }))}
              choose={(wood) => change(withEntry(laminates, index, { wood }))}
            />
            {isRest ? (
              laminates.length > 1 && <p className="quiet">{LIST_WORDS.laminates.rest(percentText(restShare))}</p>
            ) : laminate.widthMm !== undefined ? (
              <label>
                {LIST_WORDS.laminates.width(place)}, {unitLabel('mm', edit.system)}
                <ListNumber
                  kind="widthMm"
                  name={LIST_WORDS.laminates.width(place)}
                  value={laminate.widthMm}
                  system={edit.system}
                  change={(widthMm) => change(withEntry(laminates, index, { widthMm }))}
                />
              </label>
            ) : (
              <NumberControl
                parameter={shareParameter(laminates, index)}
                words={() => ({
                  label: LIST_WORDS.laminates.share(place),
                  hint: LIST_WORDS.laminates.shareHint,
                  source: '',
                })}
                value={Number((laminate.share * 100).toFixed(6))}
                system={edit.system}
                change={(percent) => change(withShare(laminates, index, percent / 100))}
                begin={() => beginGesture(LIST_WORDS.laminates.title)}
                end={endGesture}
              />
            )}
          </div>
        );
      })}
    </ListEditor>
  );
}
