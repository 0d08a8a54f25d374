/** Planning a strip: the offcut at hand, the kerfs and their frets; what it will bow and what it will tell, before it is sawn. */
import { useMemo, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { newId } from '../../mechanics/bench-log/identity.ts';
import type { StripDesign, StripPlan as Plan } from '../../mechanics/try-strip/design.ts';
import { MOST_GROUPS, type TryStrip } from '../../mechanics/try-strip/document.ts';
import { withEntry } from '../../kit/edit-list.ts';
import { LabelledSelect } from '../../kit/labelled-select.tsx';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { humpBandText, instrumentText, sizeText, stripProblemText } from '../../speech/measured/strips.ts';
import { woodNameIn } from '../../speech/names.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { shortTextOf } from '../../speech/quantity-text.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import { useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { TextField } from '../log/form-fields.tsx';
import { isoDate } from '../papers/date.ts';
import { documentOf, firstDraft, planOf, type StripDraft } from './plan-of.ts';
import { CuttingList, StripDrawing } from './strip-drawing.tsx';
import { StateTable } from './state-table.tsx';
import { StripField } from './strip-field.tsx';

function Groups({ draft, set }: { readonly draft: StripDraft; readonly set: (change: Partial<StripDraft>) => void }) {
  const { groups } = draft;
  return (
    <>
      {groups.map((group, index) => (
        // oxlint-disable-next-line react/no-array-index-key -- a group is its place
        <fieldset key={index} className="strip-fields">
          <legend>{STRIP_WORDS.group(index + 1)}</legend>
          <TextField
            label={STRIP_WORDS.blade}
            value={group.blade}
            change={(blade) => set({ groups: withEntry(groups, index, { blade }) })}
          />
          <StripField
            name="kerfMm"
            value={group.kerfMm}
            set={(kerfMm) => set({ groups: withEntry(groups, index, { kerfMm }) })}
          />
          <StripField
            name="frets"
            value={group.frets}
            set={(frets) => set({ groups: withEntry(groups, index, { frets }) })}
          />
          {groups.length > 1 && (
            <button
              type="button"
              aria-label={STRIP_WORDS.removeGroupName(index + 1)}
              onClick={() => set({ groups: groups.filter((_, at) => at !== index) })}
            >
              {STRIP_WORDS.removeGroup}
            </button>
          )}
        </fieldset>
      ))}
      <div className="button-row">
        <button
          type="button"
          disabled={groups.length >= MOST_GROUPS}
          onClick={() => set({ groups: [...groups, { blade: '', kerfMm: null, frets: groups.at(-1)!.frets }] })}
        >
          {STRIP_WORDS.addGroup}
        </button>
      </div>
      {groups.length === 1 && <p className="quiet">{STRIP_WORDS.twoKerfs}</p>}
      <StripField name="kerfErrorMm" value={draft.kerfErrorMm} set={(kerfErrorMm) => set({ kerfErrorMm })} />
    </>
  );
}

function Warnings({ design: { warnings } }: { readonly design: StripDesign }) {
  const system = useBackbow((state) => state.unitSystem);
  return warnings.map((warning) => {
    const text =
      warning.code === 'hump-too-small'
        ? STRIP_WORDS.tooSmall(sizeText(warning.humpMm, system), sizeText(warning.leastMm, system))
        : STRIP_WORDS.crushes(
            warning.group + 1,
            formatQuantity(warning.stressMPa, 'MPa', 0, system),
            formatQuantity(warning.mostMPa, 'MPa', 0, system),
          );
    return (
      <p key={text} className="bite-doubt">
        {text}
      </p>
    );
  });
}

function Ahead({ build, plan }: { readonly build: Build; readonly plan: Plan }) {
  const system = useBackbow((state) => state.unitSystem);
  const { strip, ...read } = plan;
  const key = JSON.stringify([{ ...build, name: '' }, { ...strip, id: '', name: '' }, read]);
  const asked = useAnswer<StripDesign>(key, (api, told) => api.stripAhead(build, plan, told));
  const design = asked.value;
  return (
    <section aria-label={STRIP_WORDS.aheadTitle}>
      <h3>{STRIP_WORDS.aheadTitle}</h3>
      <Asking {...asked} working={STRIP_WORDS.working} />
      {design && (
        <>
          <p>{humpBandText(design.prediction.spans[0].bandMm, system)}</p>
          <Warnings design={design} />
          {build.method === 'glue' ? (
            <p>{STRIP_WORDS.glueNoEffect}</p>
          ) : (
            <StateTable
              caption={STRIP_WORDS.aheadTable}
              heads={[STRIP_WORDS.now, STRIP_WORDS.after]}
              cells={(state) => [
                sizeText(design.before[state].p95 - design.before[state].p05, system),
                sizeText(design.widthAfter[state].p50, system),
              ]}
            />
          )}
        </>
      )}
    </section>
  );
}

export function StripPlan({ build, keep }: { readonly build: Build; readonly keep: (strip: TryStrip) => void }) {
  const system = useBackbow((state) => state.unitSystem);
  const [draft, setDraft] = useState<StripDraft>(() => firstDraft(build));
  const [[id, date]] = useState(() => [newId(), isoDate(new Date())] as const);
  const set = (change: Partial<StripDraft>) => setDraft({ ...draft, ...change });
  const checked = useMemo(() => documentOf(draft, build, id, date), [draft, build, id, date]);
  const asGiven = (id: 'tangWidthMm' | 'studWidthMm' | 'slotDepthMm') => shortTextOf(id, build[id], system);
  return (
    <section className="strip-part" aria-label={STRIP_WORDS.plan}>
      <h3>{STRIP_WORDS.plan}</h3>
      <p className="quiet">
        {STRIP_WORDS.asNeck(
          woodNameIn(build, build.boardWood),
          asGiven('tangWidthMm'),
          asGiven('studWidthMm'),
          asGiven('slotDepthMm'),
        )}
      </p>
      <div className="strip-fields">
        <TextField label={STRIP_WORDS.name} value={draft.name} change={(name) => set({ name })} />
        <StripField name="lengthMm" value={draft.lengthMm} set={(lengthMm) => set({ lengthMm })} />
        <StripField name="widthMm" value={draft.widthMm} set={(widthMm) => set({ widthMm })} />
        <StripField name="thicknessMm" value={draft.thicknessMm} set={(thicknessMm) => set({ thicknessMm })} />
      </div>
      <label>
        <input
          type="checkbox"
          checked={draft.ownBoard}
          disabled={build.name === ''}
          onChange={(event) => set({ ownBoard: event.currentTarget.checked })}
        />{' '}
        {STRIP_WORDS.ownBoard}
      </label>
      <Groups draft={draft} set={set} />
      <LabelledSelect
        label={STRIP_WORDS.instrument}
        value={draft.instrument}
        options={(['feelers', 'ruler'] as const).map((value) => ({ value, label: instrumentText(value, system) }))}
        choose={(instrument) => set({ instrument })}
      />
      <LabelledSelect
        label={STRIP_WORDS.stiffness}
        value={draft.test}
        options={(['none', 'weight', 'tap'] as const).map((value) => ({ value, label: STRIP_WORDS.tests[value] }))}
        choose={(test) => set({ test })}
      />
      {checked === undefined && <p>{STRIP_WORDS.needsSizes}</p>}
      {checked?.ok === false &&
        checked.problems.map((problem) => (
          <p key={`${problem.at} ${problem.code}`} className="refusal" role="alert">
            {stripProblemText(problem, system)}
          </p>
        ))}
      {checked?.ok && (
        <>
          <StripDrawing strip={checked.strip} system={system} />
          <CuttingList strip={checked.strip} system={system} />
          <Ahead build={build} plan={planOf(checked, draft)} />
          <div className="button-row">
            <button type="button" onClick={() => keep(checked.strip)}>
              {STRIP_WORDS.keep}
            </button>
          </div>
        </>
      )}
    </section>
  );
}
