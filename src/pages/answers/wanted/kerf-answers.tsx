/** The kerf that gives the relief wanted, for both ways of pressing. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { sawableKerfMm } from '../../../mechanics/inversion/answers.ts';
import type { KerfAnswer } from '../../../mechanics/inversion/kerf.ts';
import { isOffered, type AdvisedAnswer } from '../../../verdict/raised-by.ts';
import { bowSize, bowText } from '../../../speech/bow.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { bandText, betweenOf, missText } from './goal.ts';
import { nearerSentence } from '../../../speech/answers/paired.ts';
import { Raised } from '../../workshop/checks/raised.tsx';
import { UseButton } from './use-button.tsx';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface KerfAnswersProps {
  readonly build: Build;
  readonly answer: AdvisedAnswer;
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: (change: Partial<Build>, label: string) => void;
}

/** What came of it in words, and whether they leave open how close that is. */
export function kerfStatusText(
  { status, reliefMm, missMm }: Pick<KerfAnswer, 'status' | 'reliefMm' | 'missMm'>,
  goalMm: number,
  kerf: string,
  system: UnitSystem,
): { readonly text: string; readonly isOpen: boolean } {
  const open = (text: string) => ({ text, isOpen: true });
  const whole = (text: string) => ({ text, isOpen: false });
  switch (status) {
    case 'found':
      return whole(WANTED_WORDS.kerfFound(kerf));
    case 'too-hollow':
      return open(WANTED_WORDS.kerfNarrowest(kerf));
    case 'too-humped':
      return open(WANTED_WORDS.kerfWidest(kerf));
    case 'between-shapes':
      return {
        'as-wanted': whole(WANTED_WORDS.kerfFound(kerf)),
        flattest: whole(WANTED_WORDS.kerfFlattest(kerf, bowSize(reliefMm, system))),
        between: open(WANTED_WORDS.kerfBetween(kerf)),
      }[betweenOf(goalMm, missMm, system)];
    case 'no-effect':
      return open(WANTED_WORDS.kerfNoEffect);
  }
}

function Method({ method, ...props }: KerfAnswersProps & { readonly method: 'press' | 'both' }) {
  const { build, answer, system, isStale, use } = props;
  const of = answer.kerf![method];
  const kerfMm = sawableKerfMm(of.kerfMm);
  const kerf = textOf('kerfMm', kerfMm, system);
  const { label } = METHOD_WORDS[method];
  const { text, isOpen } = kerfStatusText(of, answer.goal.reliefMm, kerf, system);
  const { raised, clear } = answer.advice.kerf[method];
  const isInUse = build.method === method && build.kerfMm === kerfMm;
  const takes = (takenMm: number) => {
    const taken = textOf('kerfMm', takenMm, system);
    return (
      <UseButton
        words={WANTED_WORDS.takeKerf(taken, label)}
        isStale={isStale}
        onUse={() => use({ kerfMm: takenMm, method }, WANTED_WORDS.stepKerf(`${taken}, ${label}`))}
      />
    );
  };
  return (
    <div className="answer" data-answer={`kerf-${method}`} data-status={of.status}>
      <h4>{WANTED_WORDS.kerfFor[method]}</h4>
      <p>
        {text} {isOpen && WANTED_WORDS.reaches(bowText(of.reliefMm, system), missText(of.missMm, system))}{' '}
        <span className="quiet">
          {WANTED_WORDS.band(bandText(of.bandMm, system))} {!isInUse && nearerSentence(of.paired)}
        </span>
      </p>
      {of.status !== 'no-effect' && of.bodyInterferenceMm > 0.0005 && (
        <p>{WANTED_WORDS.bodyWedges(textOf('studBiteMm', of.bodyInterferenceMm, system))}</p>
      )}
      {!isInUse && <Raised checks={raised} system={system} />}
      {of.status !== 'no-effect' && !isInUse && isOffered(raised) && takes(kerfMm)}
      {!isInUse && clear && (
        <>
          <p data-clear-kerf={clear.kerfMm}>
            {WANTED_WORDS.kerfClear(
              textOf('kerfMm', clear.kerfMm, system),
              bowText(clear.reliefMm, system),
              missText(clear.missMm, system),
            )}{' '}
            <span className="quiet">{WANTED_WORDS.band(bandText(clear.bandMm, system))}</span>
          </p>
          {takes(clear.kerfMm)}
        </>
      )}
    </div>
  );
}

export function KerfAnswers(props: KerfAnswersProps) {
  const { build, answer, system } = props;
  const { leastMm, mostMm } = answer.kerfRange;
  return (
    <section aria-labelledby="wanted-kerf">
      <h3 id="wanted-kerf">{WANTED_WORDS.kerf}</h3>
      {answer.kerf ? (
        <div className="answer-pair">
          <Method {...props} method="press" />
          <Method {...props} method="both" />
        </div>
      ) : (
        <p>
          {WANTED_WORDS.kerfNone(
            textOf('tangWidthMm', build.tangWidthMm, system),
            textOf('kerfMm', leastMm, system),
            textOf('kerfMm', mostMm, system),
          )}
        </p>
      )}
    </section>
  );
}
