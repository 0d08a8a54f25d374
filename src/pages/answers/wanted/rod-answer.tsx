/** The rod setting that gives the relief wanted, or plainly why none does. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import type { WantedAnswer } from '../../../mechanics/inversion/answers.ts';
import { rodBends } from '../../../mechanics/inversion/rod.ts';
import { bowSize, bowText } from '../../../speech/bow.ts';
import { bandText, betweenOf, missText, rodText, settableRodPercent } from './goal.ts';
import { UseButton } from './use-button.tsx';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface RodAnswerProps {
  readonly build: Build;
  readonly answer: WantedAnswer;
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: (change: Partial<Build>, label: string) => void;
}

function turnsText(turns: number): string {
  const shown = formatNumber(turns, 1);
  return WANTED_WORDS.turns(shown === '1.0' ? WANTED_WORDS.oneTurn : WANTED_WORDS.someTurns(shown));
}

export function RodAnswerSection({ build, answer, system, isStale, use }: RodAnswerProps) {
  const { rod } = answer;
  const percent = settableRodPercent(rod.percent);
  const said = rodText(percent);
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
          `${WANTED_WORDS.rodBeyond(rodText(rod.wantedPercent))} `}
        {isReached && rod.turns !== null && percent !== 0 && `${turnsText(rod.turns)} `}
        <span className="quiet">{WANTED_WORDS.band(bandText(rod.bandMm, system))}</span>
      </p>
      {rod.status !== 'no-rod' && percent !== build.rodSettingPercent && (
        <UseButton
          words={WANTED_WORDS.takeRod(said)}
          isStale={isStale}
          onUse={() => use({ rodSettingPercent: percent }, WANTED_WORDS.stepRod(said))}
        />
      )}
    </section>
  );
}
