/** A typed number inside a list: why it was refused stands under it. */
import { useId, type ReactNode } from 'react';
import { useRefusal } from './use-refusal.ts';

interface Told {
  readonly describedBy: string;
  readonly invalid: boolean;
  readonly refused: (message: string | undefined) => void;
}

/** @param children the number, which is given where it is described and whom it tells */
export function RefusedNumber({ children }: { readonly children: (told: Told) => ReactNode }) {
  const id = `${useId()}-message`;
  const [message, setMessage] = useRefusal();
  return (
    <>
      {children({ describedBy: id, invalid: message !== undefined, refused: setMessage })}
      <span id={id} className="refusal" role="alert">
        {message}
      </span>
    </>
  );
}
