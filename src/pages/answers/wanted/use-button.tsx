/** A button that takes an answer over. While a newer answer is awaited it stays in place and does nothing. */
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface UseButtonProps {
  readonly words: string;
  /** The answer belongs to an earlier question. */
  readonly isStale: boolean;
  readonly onUse: () => void;
}

export function UseButton({ words, isStale, onUse }: UseButtonProps) {
  return (
    <button
      type="button"
      aria-disabled={isStale || undefined}
      title={isStale ? WANTED_WORDS.working : undefined}
      onClick={() => {
        if (!isStale) onUse();
      }}
    >
      {words}
    </button>
  );
}
