/** − or +: one step for each press, and one after the other while it is held. */
import { useHeld } from './use-held.ts';
import './stepper.css';

interface StepperProps {
  readonly direction: -1 | 1;
  /** What a press does, in words: the sign says it to the eye only. */
  readonly name: string;
  /** There is nothing further that way. */
  readonly atEnd: boolean;
  readonly step: (direction: -1 | 1) => void;
  readonly begin: () => void;
  readonly end: () => void;
}

export function Stepper({ direction, name, atEnd, step, begin, end }: StepperProps) {
  const held = useHeld({ act: () => step(direction), begin, end });
  return (
    // The keys step the field and the slider beside it; it stays out of the way of the Tab key.
    <button
      type="button"
      className="stepper"
      tabIndex={-1}
      aria-label={name}
      aria-disabled={atEnd || undefined}
      {...held}
    >
      {direction < 0 ? '−' : '+'}
    </button>
  );
}
