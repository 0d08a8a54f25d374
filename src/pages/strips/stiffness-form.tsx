/** The stiffness of a strip: a weight at its middle, or a tap. A value far from its wood is asked about before it is kept. */
import { useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { LabelledSelect } from '../../kit/labelled-select.tsx';
import { checkStrip } from '../../mechanics/try-strip/document-problems.ts';
import { STIFFNESS_STATES, type StripStiffness, type TryStrip } from '../../mechanics/try-strip/document.ts';
import { farStiffness, type FarStiffness } from '../../mechanics/try-strip/stiffness.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { farStiffnessText, stiffnessText, stripProblemText } from '../../speech/measured/strips.ts';
import { useBackbow } from '../../state/store.ts';
import { StripField } from './strip-field.tsx';

type Test = Exclude<StripStiffness['test'], 'none'>;

interface Draft {
  readonly test: Test;
  readonly state: (typeof STIFFNESS_STATES)[number];
  readonly loadG: number | null;
  readonly spanMm: number | null;
  readonly sagMm: number | null;
  readonly massG: number | null;
  readonly frequencyHz: number | null;
}

const EMPTY: Draft = {
  test: 'weight',
  state: 'slotted',
  loadG: null,
  spanMm: null,
  sagMm: null,
  massG: null,
  frequencyHz: null,
};

/** Nothing while a number is missing. */
function stiffnessOf({ test, state, ...draft }: Draft): StripStiffness | null {
  const { loadG, spanMm, sagMm, massG, frequencyHz } = draft;
  if (test === 'weight')
    return loadG === null || spanMm === null || sagMm === null
      ? null
      : { test, state, loadN: null, loadG, spanMm, sagMm };
  return massG === null || frequencyHz === null ? null : { test, state, massG, frequencyHz };
}

interface StiffnessProps {
  readonly build: Build;
  readonly strip: TryStrip;
  readonly ownBoard: boolean;
  readonly change: (stiffness: StripStiffness) => void;
}

function Fields({ draft, set }: { readonly draft: Draft; readonly set: (change: Partial<Draft>) => void }) {
  const field = (name: 'loadG' | 'spanMm' | 'sagMm' | 'massG' | 'frequencyHz') => (
    <StripField key={name} name={name} value={draft[name]} set={(value) => set({ [name]: value })} />
  );
  return (
    <div className="strip-fields">
      <LabelledSelect
        label={STRIP_WORDS.stiffness}
        value={draft.test}
        options={(['weight', 'tap'] as const).map((value) => ({ value, label: STRIP_WORDS.tests[value] }))}
        choose={(test) => set({ test })}
      />
      <LabelledSelect
        label={STRIP_WORDS.measuredWhen}
        value={draft.state}
        options={STIFFNESS_STATES.map((value) => ({ value, label: STRIP_WORDS.measuredStates[value] }))}
        choose={(state) => set({ state })}
      />
      {(draft.test === 'weight' ? (['loadG', 'spanMm', 'sagMm'] as const) : (['massG', 'frequencyHz'] as const)).map(
        field,
      )}
    </div>
  );
}

function Form({ build, strip, ownBoard, change }: StiffnessProps) {
  const system = useBackbow((state) => state.unitSystem);
  const [draft, setDraft] = useState(EMPTY);
  const [refusals, setRefusals] = useState<readonly string[]>([]);
  const [far, setFar] = useState<FarStiffness | null>(null);
  const set = (changed: Partial<Draft>) => {
    setDraft({ ...draft, ...changed });
    setRefusals([]);
    setFar(null);
  };
  const stiffness = stiffnessOf(draft);

  function propose(): void {
    if (!stiffness) {
      setRefusals([STRIP_WORDS.stiffnessMissing]);
      return;
    }
    const measured = { ...strip, offcut: { ...strip.offcut, stiffness } };
    const checked = checkStrip(measured);
    if (!checked.ok) {
      setRefusals(checked.problems.map((problem) => stripProblemText(problem, system)));
      return;
    }
    const found = farStiffness(measured, build, ownBoard);
    if (found) setFar(found);
    else change(stiffness);
  }

  return (
    <form
      className="strip-part"
      onSubmit={(event) => {
        event.preventDefault();
        propose();
      }}
    >
      <p className="quiet">{STRIP_WORDS.stiffnessHow[draft.test]}</p>
      <Fields draft={draft} set={set} />
      {refusals.map((text) => (
        <p key={text} className="refusal" role="alert">
          {text}
        </p>
      ))}
      {far && stiffness ? (
        <div role="alert" className="strip-question">
          <p>{farStiffnessText(far, strip, system)}</p>
          <div className="button-row">
            <button type="button" onClick={() => setFar(null)}>
              {STRIP_WORDS.correct}
            </button>
            <button type="button" onClick={() => change(stiffness)}>
              {STRIP_WORDS.keepReading}
            </button>
          </div>
        </div>
      ) : (
        <div className="button-row">
          <button type="submit">{STRIP_WORDS.addStiffness}</button>
        </div>
      )}
    </form>
  );
}

/** What was measured, with its end; or how to measure it. */
export function Stiffness(props: StiffnessProps) {
  const { strip, change } = props;
  const system = useBackbow((state) => state.unitSystem);
  const { stiffness } = strip.offcut;
  if (stiffness.test === 'none')
    return (
      <details className="strip-stiffness">
        <summary>{STRIP_WORDS.addStiffnessTitle}</summary>
        <Form {...props} />
      </details>
    );
  const text = stiffnessText(stiffness, system);
  return (
    <ul className="strip-readings">
      <li>
        <span>{text}</span>
        <button type="button" aria-label={STRIP_WORDS.removeReading(text)} onClick={() => change({ test: 'none' })}>
          {STRIP_WORDS.remove}
        </button>
      </li>
    </ul>
  );
}
