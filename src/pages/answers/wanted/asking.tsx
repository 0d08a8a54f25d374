/** How far a question is: working and how to give up, given up and how to ask again, or why there is no answer. */
import { useEffect, useRef } from 'react';
import type { Asked } from '../../../state/answers/use-answer.ts';
import { useBackbow } from '../../../state/store.ts';
import { failureText } from '../../../speech/failures.ts';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface AskingProps extends Pick<Asked<unknown>, 'status' | 'failure' | 'progress' | 'giveUp' | 'askAgain'> {
  /** What it says while it works. */
  readonly working?: string | undefined;
}

export function Asking({ working, status, failure, progress, giveUp, askAgain }: AskingProps) {
  const button = useRef<HTMLButtonElement>(null);
  const hadFocus = useRef(false);
  const system = useBackbow((state) => state.unitSystem);
  // The button changes its words with the state; whoever stands on it shall not be thrown off.
  useEffect(() => {
    if (hadFocus.current) button.current?.focus();
  }, [status]);
  if (status === 'idle' || status === 'done') return <output className="asking" />;
  const isWorking = status === 'working';
  return (
    <output className="asking">
      <span>
        {isWorking
          ? (working ?? WANTED_WORDS.working)
          : failure
            ? WANTED_WORDS.failed(failureText(failure, system))
            : WANTED_WORDS.givenUp}
      </span>{' '}
      {isWorking && progress !== null && <progress aria-label={WANTED_WORDS.progress} max={1} value={progress} />}
      <button
        ref={button}
        type="button"
        onFocus={() => (hadFocus.current = true)}
        onBlur={() => (hadFocus.current = false)}
        onClick={isWorking ? giveUp : askAgain}
      >
        {isWorking ? WANTED_WORDS.giveUp : WANTED_WORDS.askAgain}
      </button>
    </output>
  );
}
