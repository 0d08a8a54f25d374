/** Which way of seating comes closest, with everything else as it is. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { RodAnswer } from '../../../mechanics/inversion/rod.ts';
import type { AdvisedAnswer } from '../../../verdict/raised-by.ts';
import { bowText } from '../../../speech/bow.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { settingText } from '../../../speech/rod.ts';
import { bandText, betweenOf, missText } from './goal.ts';
import { Raised } from '../../workshop/checks/raised.tsx';
import { UseButton } from './use-button.tsx';
import { nearerText } from '../../../speech/answers/paired.ts';
import { PAIRED_WORDS, WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface MethodAnswersProps {
  readonly build: Build;
  readonly answer: AdvisedAnswer;
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: (change: Partial<Build>, label: string) => void;
}

export function MethodAnswers({ build, answer, system, isStale, use }: MethodAnswersProps) {
  /** Is it a setting that gives the relief, as far as that can be told from what is printed? */
  const isRodSetting = ({ status, missMm }: RodAnswer) =>
    status === 'reached' ||
    (status === 'between-shapes' && betweenOf(answer.goal.reliefMm, missMm, system) !== 'between');
  const hasRod = build.rodKind !== 'none';
  return (
    <section aria-labelledby="wanted-methods">
      <h3 id="wanted-methods">{WANTED_WORDS.methods}</h3>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it */}
      <section className="table-scroll" tabIndex={0} aria-label={WANTED_WORDS.methodsCaption}>
        <table className="answer-table">
          <caption className="quiet">{WANTED_WORDS.methodsCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{WANTED_WORDS.method}</th>
              <th scope="col">{WANTED_WORDS.reached}</th>
              <th scope="col">{WANTED_WORDS.off}</th>
              <th scope="col">{WANTED_WORDS.spread}</th>
              <th scope="col">{PAIRED_WORDS.nearer}</th>
              {hasRod && <th scope="col">{WANTED_WORDS.rodWould}</th>}
              <th scope="col">
                <span className="visually-hidden">{WANTED_WORDS.use}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {answer.methods.map(({ method, reliefMm, missMm, bandMm, paired, rod }) => {
              const { label } = METHOD_WORDS[method];
              return (
                <tr key={method} data-method={method}>
                  <th scope="row">{label}</th>
                  <td>{bowText(reliefMm, system)}</td>
                  <td>{missText(missMm, system)}</td>
                  <td>{bandText(bandMm, system)}</td>
                  <td>{method === build.method ? '–' : nearerText(paired)}</td>
                  {hasRod && <td>{isRodSetting(rod) ? settingText(rod.nut) : WANTED_WORDS.rodNo}</td>}
                  <td>
                    {method === build.method ? (
                      <span className="quiet">{WANTED_WORDS.chosen}</span>
                    ) : (
                      <UseButton
                        words={WANTED_WORDS.takeMethod(label)}
                        isStale={isStale}
                        onUse={() => use({ method }, WANTED_WORDS.stepMethod(label))}
                      />
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      {answer.methods
        .filter(({ method }) => answer.advice.methods[method].length > 0)
        .map(({ method }) => (
          <div key={method} data-raised-by={method}>
            <h4>{METHOD_WORDS[method].label}</h4>
            <Raised checks={answer.advice.methods[method]} system={system} />
          </div>
        ))}
    </section>
  );
}
