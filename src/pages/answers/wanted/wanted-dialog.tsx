/** Aiming for a relief: from the relief wanted to what leads there. */
import { useState } from 'react';
import { goalOf } from '../../../mechanics/inversion/goal.ts';
import type { ReliefGoal } from '../../../mechanics/inversion/goal.ts';
import { useAnswer } from '../../../state/answers/use-answer.ts';
import { useNarrowing } from '../../../state/bench-log/use-narrowing.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { bowText } from '../../../speech/bow.ts';
import { Asking } from './asking.tsx';
import { bandText, missText } from './goal.ts';
import { GoalForm } from './goal-form.tsx';
import { KerfAnswers } from './kerf-answers.tsx';
import { MethodAnswers } from './method-answers.tsx';
import { PlayerAim } from './player-aim.tsx';
import { PlaningAnswer } from './planing-answer.tsx';
import { RodAnswerSection } from './rod-answer.tsx';
import { WhatMovesIt } from './what-moves-it.tsx';
import { WhatToMeasureNext } from './what-to-measure-next.tsx';
import { useChange } from './use-change.tsx';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';
import './wanted.css';

/** The goal as the rod of the build allows it: without a rod it is neutral. */
function possibleGoal(goal: ReliefGoal, rodKind: 'none' | 'one-way' | 'two-way'): ReliefGoal {
  if (rodKind === 'none' || (rodKind === 'one-way' && goal.rodPercent < 0)) return { ...goal, rodPercent: 0 };
  return goal;
}

export function WantedDialog() {
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const narrowing = useNarrowing();
  const [wish, setGoal] = useState<ReliefGoal>(() => goalOf(build));
  const goal = possibleGoal(wish, build.rodKind);
  const key = JSON.stringify([build, goal, narrowing]);
  const asked = useAnswer(key, (api, told) => api.wanted(build, goal, narrowing, told));
  const { use, said } = useChange();
  const answer = asked.value;
  const isStale = asked.key !== key;
  const parts = answer && { build, answer, system, isStale, use };
  return (
    <Dialog title={WANTED_WORDS.title} onClose={store.getState().closeDialog} className="wanted under-picture">
      <p className="quiet">{WANTED_WORDS.intro}</p>
      <GoalForm goal={goal} setGoal={setGoal} withRod />
      <PlayerAim system={system} aimFor={(reliefMm) => setGoal({ ...goal, reliefMm })} />
      <Asking {...asked} />
      {said}
      {parts && (
        <div className="answers" data-stale={isStale || undefined}>
          <section aria-labelledby="wanted-now" data-answer="now">
            <h3 id="wanted-now">{WANTED_WORDS.asItIs}</h3>
            <p>
              {WANTED_WORDS.now(
                bowText(parts.answer.reliefMm, system),
                missText(parts.answer.reliefMm - parts.answer.goal.reliefMm, system),
              )}{' '}
              <span className="quiet">{WANTED_WORDS.band(bandText(parts.answer.bandMm, system))}</span>
            </p>
          </section>
          <KerfAnswers {...parts} />
          <MethodAnswers {...parts} />
          <RodAnswerSection {...parts} />
          <PlaningAnswer {...parts} />
        </div>
      )}
      <WhatMovesIt build={build} system={system} narrowing={narrowing} use={use} />
      <WhatToMeasureNext build={build} system={system} narrowing={narrowing} />
    </Dialog>
  );
}
