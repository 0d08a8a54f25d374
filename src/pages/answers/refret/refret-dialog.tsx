/** Which tang in which stretch takes an old bow out of a neck. */
import { useId, useState } from 'react';
import type { Build } from '../../../neck/build.ts';
import { parameterById } from '../../../neck/parameters.ts';
import { goalOf } from '../../../mechanics/inversion/goal.ts';
import type { ReliefGoal } from '../../../mechanics/inversion/goal.ts';
import type { TangChoice } from '../../../mechanics/seating/refret.ts';
import type { TangWish } from '../../../mechanics/seating/refret-answers.ts';
import { useAnswer } from '../../../state/answers/use-answer.ts';
import { useNarrowing } from '../../../state/bench-log/use-narrowing.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { Asking } from '../wanted/asking.tsx';
import { GoalForm } from '../wanted/goal-form.tsx';
import { useChange } from '../wanted/use-change.tsx';
import { bowText } from '../../../speech/bow.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { PlanCard } from './plan-card.tsx';
import { TangList } from './tang-list.tsx';
import { REFRET_WORDS } from '../../../speech/en/pages/refret.ts';
import '../wanted/wanted.css';
import './refret.css';

const STRETCHES = [1, 2, 3, 4, 5] as const;

/** Body sizes beside the one in hand, against the kerf, mm: a thousandth of an inch is what repairers wedge with. */
const BESIDE_KERF_MM = [-0.05, 0, 0.025, 0.05] as const;

/** Tangs to begin with: the one of the build, and some about the width of its kerf with studs as proud as its own. */
export function usualTangs(build: Pick<Build, 'kerfMm' | 'tangWidthMm' | 'studWidthMm'>): TangChoice[] {
  const { kerfMm, tangWidthMm, studWidthMm } = build;
  const round = (value: number) => Math.round(value * 1000) / 1000;
  const limits = (id: 'tangWidthMm' | 'studWidthMm', value: number) => {
    const parameter = parameterById(id);
    return parameter.kind === 'number' && value >= parameter.min && value <= parameter.max;
  };
  const beside = BESIDE_KERF_MM.map((off) => ({
    tangWidthMm: round(kerfMm + off),
    studWidthMm: round(kerfMm + off + studWidthMm - tangWidthMm),
  }));
  const others = beside.filter(
    (tang) =>
      tang.tangWidthMm !== tangWidthMm &&
      limits('tangWidthMm', tang.tangWidthMm) &&
      limits('studWidthMm', tang.studWidthMm),
  );
  return [{ tangWidthMm, studWidthMm }, ...others];
}

function NotARefret() {
  return (
    <>
      <p>{REFRET_WORDS.isNew}</p>
      <div className="button-row">
        <button type="button" onClick={() => store.getState().change({ job: 'refret' }, REFRET_WORDS.stepRefret)}>
          {REFRET_WORDS.makeRefret}
        </button>
      </div>
    </>
  );
}

function Helper({ build }: { readonly build: Build }) {
  const id = useId();
  const system = useBackbow((state) => state.unitSystem);
  const narrowing = useNarrowing();
  const [goal, setGoal] = useState<ReliefGoal>(() => goalOf(build));
  const [stretches, setStretches] = useState<number>(3);
  const [choices, setChoices] = useState<readonly TangChoice[]>(() => usualTangs(build));
  const [method, setMethod] = useState<TangWish['method']>(build.method === 'both' ? 'both' : 'press');
  const narrow = choices.findIndex(({ tangWidthMm, studWidthMm }) => tangWidthMm > studWidthMm);
  const wish: TangWish = { method, goal, stretches, choices };
  // The tangs that the build has now only matter to the line "as it is"; they are part of it all the same.
  const key = narrow >= 0 ? null : JSON.stringify([build, wish, narrowing]);
  const asked = useAnswer(key, (api, told) => api.tangs(build, wish, narrowing, told));
  const { use, said } = useChange();
  const isStale = asked.key !== key;
  return (
    <>
      {build.method === 'glue' && <p>{REFRET_WORDS.isGlue}</p>}
      <GoalForm goal={goal} setGoal={setGoal} />
      <div className="goal-form">
        <div className="goal-field">
          <label htmlFor={`${id}-stretches`}>{REFRET_WORDS.stretches}</label>
          <select
            id={`${id}-stretches`}
            value={stretches}
            onChange={(event) => setStretches(Number(event.currentTarget.value))}
          >
            {STRETCHES.map((count) => (
              <option key={count} value={count}>
                {count}
              </option>
            ))}
          </select>
        </div>
        <div className="goal-field">
          <label htmlFor={`${id}-method`}>{REFRET_WORDS.method}</label>
          <select
            id={`${id}-method`}
            value={method}
            onChange={(event) => setMethod(event.currentTarget.value === 'both' ? 'both' : 'press')}
          >
            <option value="press">{METHOD_WORDS.press.label}</option>
            <option value="both">{METHOD_WORDS.both.label}</option>
          </select>
        </div>
      </div>
      <TangList choices={choices} system={system} setChoices={setChoices} />
      {narrow >= 0 && (
        <p className="refusal" role="alert">
          {REFRET_WORDS.narrow(narrow + 1)}
        </p>
      )}
      <Asking {...asked} />
      {said}
      {asked.value && (
        <div className="answers" data-stale={isStale || undefined}>
          <p>{REFRET_WORDS.now(bowText(asked.value.reliefMm, system))}</p>
          <h3>{REFRET_WORDS.plans}</h3>
          <ol className="plans">
            {asked.value.plans.map((plan, at) => (
              <PlanCard
                key={JSON.stringify(plan.regions)}
                index={at + 1}
                build={build}
                plan={plan}
                targetMm={goal.reliefMm}
                system={system}
                isStale={isStale}
                use={(change, label) => use({ ...change, ...(build.method === method ? {} : { method }) }, label)}
              />
            ))}
          </ol>
        </div>
      )}
    </>
  );
}

export function RefretDialog() {
  const build = useBackbow((state) => state.build);
  return (
    <Dialog title={REFRET_WORDS.title} onClose={store.getState().closeDialog} className="refret">
      <p className="quiet">{REFRET_WORDS.intro}</p>
      {build.job === 'refret' ? <Helper build={build} /> : <NotARefret />}
    </Dialog>
  );
}
