/** The rod setting that gives the relief wanted, or plainly why none does. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { nutText, rodPercentText, settingText, torqueText } from '../../../speech/rod.ts';
import { ROD_WORDS } from '../../../speech/en/workshop/rod.ts';
import { isOffered, type AdvisedAnswer } from '../../../verdict/raised-by.ts';
import { rodBends } from '../../../mechanics/inversion/rod.ts';
import { bowSize, bowText, changeText } from '../../../speech/bow.ts';
import { bandText, betweenOf, missText } from './goal.ts';
import { nearerSentence } from '../../../speech/answers/paired.ts';
import { Raised } from '../../workshop/checks/raised.tsx';
import { UseButton } from './use-button.tsx';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface RodAnswerProps {
  readonly build: Build;
  readonly answer: AdvisedAnswer;
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: (change: Partial<Build>, label: string) => void;
}

export function RodAnswerSection({ build, answer, system, isStale, use }: RodAnswerProps) {
  const { rod } = answer;
  const { percent } = rod;
  const said = settingText(rod.nut);
  const between = rod.status === 'between-shapes' ? betweenOf(answer.goal.reliefMm, rod.missMm, system) : undefined;
  const isReached = rod.status === 'reached' || between === 'as-wanted';
  /** Do the first words leave open how close it comes? */
  const isOpen = !isReached && between !== 'flattest';
  const bends = rodBends(rod);
  const way = bends === 'backward' ? WANTED_WORDS.backwards : bends === 'forward' ? WANTED_WORDS.forwards : '';
  return (
    <section aria-labelledby="wanted-rod" data-answer="rod" data-status={rod.status}>
      <h3 id="wanted-rod">{WANTED_WORDS.rodTitle}</h3>
      <p>
        {isReached
          ? WANTED_WORDS.rodReached(said, way)
          : between === 'flattest'
            ? WANTED_WORDS.rodFlattest(said, bowSize(rod.reliefMm, system))
            : WANTED_WORDS.rodStatus[rod.status]}{' '}
        {isOpen && rod.status !== 'no-rod' && `${WANTED_WORDS.rodClosest(said)} `}
        {isOpen && WANTED_WORDS.reaches(bowText(rod.reliefMm, system), missText(rod.missMm, system))}{' '}
        {rod.status === 'too-weak' &&
          rod.wantedPercent !== null &&
          `${WANTED_WORDS.rodBeyond(rodPercentText(rod.wantedPercent))} `}
        {isReached && percent !== 0 && `${torqueText(rod.nut)} `}
        {isReached && ROD_WORDS.quarter(changeText(rod.quarterTurnMm, system))}{' '}
        <span className="quiet">{ROD_WORDS.seen}</span>{' '}
        <span className="quiet">
          {WANTED_WORDS.band(bandText(rod.bandMm, system))}{' '}
          {percent !== answer.goal.rodPercent && nearerSentence(rod.paired)}
        </span>
      </p>
      <Raised checks={answer.advice.rod} system={system} />
      {rod.status !== 'no-rod' &&
        isOffered(answer.advice.rod) &&
        rodPercentText(percent) !== rodPercentText(build.rodSettingPercent) && (
          <UseButton
            words={WANTED_WORDS.takeRod(nutText(rod.nut))}
            isStale={isStale}
            onUse={() => use({ rodSettingPercent: percent }, WANTED_WORDS.stepRod(rodPercentText(percent)))}
          />
        )}
    </section>
  );
}
