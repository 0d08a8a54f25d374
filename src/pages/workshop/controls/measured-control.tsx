/**
 * A number that somebody has to measure: a field that starts empty. A number that would make the blank far from its wood is
 * asked about before it is taken, with two ways out; the build stays as it is until one of them is chosen.
 */
import { useId, useState } from 'react';
import { blankNumberName, blankPartOf, spanProblem, type BlankNumberId } from '../../../neck/blanks.ts';
import type { Build } from '../../../neck/build.ts';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { farBlank, type FarBlank } from '../../../mechanics/blank-slips.ts';
import { TypedNumber } from '../../../kit/typed-number.tsx';
import { useRefusal } from '../../../kit/use-refusal.ts';
import { blankValueText, farBlankText } from '../../../speech/measured/blanks.ts';
import { BLANK_WORDS } from '../../../speech/en/workshop/blanks.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { parameterName } from '../../../speech/names.ts';
import { refusalText } from '../../../speech/refusal.ts';
import { displayScale } from '../../../speech/scale.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { ControlRow } from './control-row.tsx';
import { HearButton } from './hear-button.tsx';

interface MeasuredControlProps {
  readonly parameter: NumberParameter;
  readonly build: Build;
  readonly system: UnitSystem;
  readonly change: (change: Partial<Build>) => Outcome;
}

interface Question {
  readonly wanted: number;
  readonly far: FarBlank;
  /** The build that it was asked of: of another one it is no question. */
  readonly build: Build;
}

const OK: Outcome = { ok: true };

export function MeasuredControl({ parameter, build, system, change }: MeasuredControlProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  const [question, setQuestion] = useState<Question>();
  const own = parameter.id as BlankNumberId;
  const part = blankPartOf(own)!;
  const value = build[own];
  const scale = displayScale(parameter, system);
  const label = parameterName(own);
  const asked = question?.build === build ? question : undefined;
  const [slip] = asked?.far.slips ?? [];

  function settle(wanted: Partial<Build>): void {
    setQuestion(undefined);
    const outcome = change(wanted);
    const kept = value === null ? null : blankValueText(own, value, system);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, kept, system));
  }

  /** What was heard goes the way of what is typed. */
  function takeHeard(frequencyHz: number): void {
    const outcome = propose(frequencyHz);
    const kept = value === null ? null : blankValueText(own, value, system);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, kept, system));
  }

  function propose(wanted: number): Outcome {
    setQuestion(undefined);
    const changed = { ...build, [own]: wanted };
    const problem = spanProblem(changed, own);
    if (problem) return { ok: false, problems: [problem] };
    const far = farBlank(changed, part, own);
    if (!far) return change({ [own]: wanted });
    setQuestion({ wanted, far, build });
    return OK;
  }

  return (
    <ControlRow
      id={id}
      parameter={parameter}
      unitLabel={scale.unitLabel}
      message={message}
      reset={value === null ? undefined : { name: CONTROL_WORDS.emptyName(label), run: () => settle({ [own]: null }) }}
      field={
        <TypedNumber
          id={`${id}-field`}
          parameter={{ ...parameter, label }}
          value={value}
          system={system}
          describedBy={asked ? `${id}-question` : message ? `${id}-message` : `${id}-hint`}
          invalid={message !== undefined}
          change={propose}
          empty={() => settle({ [own]: null })}
          refused={setMessage}
        />
      }
    >
      {blankNumberName(own) === 'FrequencyHz' && <HearButton part={part} build={build} take={takeHeard} />}
      {asked && (
        <div className="blank-question" role="alert">
          <p id={`${id}-question`}>{farBlankText({ ...build, [own]: asked.wanted }, part, own, asked.far, system)}</p>
          <div className="button-row">
            {slip ? (
              <button type="button" onClick={() => settle({ [own]: asked.wanted, [slip.parameter]: slip.meant })}>
                {BLANK_WORDS.take(blankValueText(slip.parameter, slip.meant, system))}
              </button>
            ) : (
              <button type="button" onClick={() => setQuestion(undefined)}>
                {BLANK_WORDS.leave}
              </button>
            )}
            <button type="button" onClick={() => settle({ [own]: asked.wanted })}>
              {BLANK_WORDS.keep(blankValueText(own, asked.wanted, system))}
            </button>
          </div>
        </div>
      )}
    </ControlRow>
  );
}
