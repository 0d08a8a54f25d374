/** Where a number comes from: what it means, and the equations behind it, from the note beside the library, which is in English. */
import { useState } from 'react';
import { COMPUTED_KEYS, type ComputedKey } from '../../../neck/quantities.ts';
import { QUANTITY_MEANINGS } from '../../../verdict/quantity-meanings.ts';
import { quantityName } from '../../../speech/quantity-names.ts';
import { ORIGIN_WORDS, PROOF_WORDS } from '../../../speech/en/pages/proof.ts';
import { currentBands } from '../../../state/solution-slice.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { driversSentence, figuresOf } from '../../workshop/readouts/figures.ts';
import { noteSection } from '../proof/model-note.ts';
import { ModelPart } from '../proof/model-parts.tsx';
import { useModelNote } from '../proof/use-model-note.ts';
import './origin.css';

/** Those with equations in the note; the others are geometry, told at the head of its file. */
const DERIVED = COMPUTED_KEYS.filter((key) => QUANTITY_MEANINGS[key].model !== undefined);

/** The number as the page has it now, if it is one of the large ones. */
function Now({ of }: { readonly of: ComputedKey }) {
  const solution = useBackbow((state) => state.solution);
  const uncertainty = useBackbow(currentBands);
  const system = useBackbow((state) => state.unitSystem);
  const figure = figuresOf(solution, uncertainty, system).find(({ key }) => key === of);
  if (figure?.value === undefined) return null;
  const { label, value, unit, word, detail, band, drivers } = figure;
  return (
    <p>
      {label}:{' '}
      <strong>
        {value}
        {unit ? `\u00a0${unit}` : ''}
      </strong>
      {[word, detail, band].map((text) => (text ? `, ${text}` : ''))}. {drivers && driversSentence(drivers)}
    </p>
  );
}

export function OriginDialog() {
  const asked = useBackbow((state) => state.originOf);
  const [key, setKey] = useState<ComputedKey>(asked);
  const note = useModelNote();
  const { meaning, model = '' } = QUANTITY_MEANINGS[key];
  return (
    <Dialog title={ORIGIN_WORDS.title} onClose={store.getState().closeDialog} className="origin">
      <label className="field">
        {ORIGIN_WORDS.number}
        <select value={key} onChange={(event) => setKey(event.currentTarget.value as ComputedKey)}>
          {DERIVED.map((each) => (
            <option key={each} value={each}>
              {quantityName(each)}
            </option>
          ))}
        </select>
      </label>
      <Now of={key} />
      <p lang="en">
        <code>{key}</code>: {meaning}
      </p>
      {note === null && <p className="refusal">{PROOF_WORDS.noModel}</p>}
      {note != null && <ModelPart title={ORIGIN_WORDS.equations(model)} blocks={noteSection(note, model)} />}
      <p>
        <button type="button" className="link" onClick={() => store.getState().openDialog('proof')}>
          {ORIGIN_WORDS.proof}
        </button>
      </p>
    </Dialog>
  );
}
