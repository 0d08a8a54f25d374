/** Pick one of several; then all of them are shown with their numbers. */
import { useId } from 'react';
import { useBackbow } from '../../state/store.ts';
import { guess as makeGuess, useGuesses } from './guesses.ts';
import { measure, measureText, type Bench } from './quantities.ts';
import type { Ask } from './types.ts';
import { useComing } from './use-bench.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';

type WhichAsk = Extract<Ask, { kind: 'which' }>;

interface AskWhichProps {
  readonly ask: WhichAsk;
  readonly step: string;
  /** What each option is called. */
  readonly names: Readonly<Record<string, string>>;
  readonly bench: Bench | null;
  readonly asking: boolean;
}

/** Id of the option that comes out greatest, or least. */
export function answerOf({ is, options }: WhichAsk, bench: Bench): string {
  const sign = is === 'greatest' ? 1 : -1;
  const worth = (option: WhichAsk['options'][number]) => sign * measure(option.of, bench).value;
  return options.reduce((best, option) => (worth(option) > worth(best) ? option : best)).id;
}

export function AskWhich({ ask, step, names, bench, asking }: AskWhichProps) {
  const group = useId();
  const system = useBackbow((state) => state.unitSystem);
  const coming = useComing();
  const made = useGuesses(({ guesses }) => {
    const one = guesses[step];
    return one?.kind === 'which' ? one.id : null;
  });
  const nameOf = (id: string): string => names[id] ?? id;
  const answer = bench && !asking ? answerOf(ask, bench) : null;
  return (
    <div className="ask-which">
      <ul className="choices">
        {ask.options.map(({ id, of }) => (
          <li key={id} data-answer={answer === id || undefined}>
            <label className="tick">
              <input
                type="radio"
                name={group}
                checked={made === id}
                disabled={!asking}
                onChange={() => makeGuess(step, { kind: 'which', id })}
              />
              {nameOf(id)}
            </label>
            {answer !== null && bench && <strong>{measureText(measure(of, bench), system)}</strong>}
          </li>
        ))}
      </ul>
      {!asking && (
        <output className="answer">
          {answer === null
            ? coming
            : made === null
              ? LESSON_WORDS.whichOnly(nameOf(answer))
              : LESSON_WORDS.whichAnswer(nameOf(made), nameOf(answer))}
        </output>
      )}
    </div>
  );
}
