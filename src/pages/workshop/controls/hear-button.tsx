/** Beside the frequency of a tapped blank: hear it. The dialog comes when it is asked for. */
import { lazy, Suspense, useState } from 'react';
import { createPortal } from 'react-dom';
import type { Build } from '../../../neck/build.ts';
import type { BlankPart } from '../../../neck/parameters.ts';
import { Boundary } from '../../../kit/boundary.tsx';
import { BLANK_WORDS } from '../../../speech/en/workshop/blanks.ts';

const HearDialog = lazy(async () => ({ default: (await import('../../hearing/hear-dialog.tsx')).HearDialog }));

interface HearButtonProps {
  readonly part: BlankPart;
  readonly build: Build;
  readonly take: (frequencyHz: number) => void;
}

export function HearButton({ part, build, take }: HearButtonProps) {
  const [isOpen, setOpen] = useState(false);
  const close = () => setOpen(false);
  return (
    <div className="button-row">
      <button type="button" onClick={() => setOpen(true)}>
        {BLANK_WORDS.hear}
      </button>
      {isOpen && (
        <Boundary fallback={() => <p role="alert">{BLANK_WORDS.hearMissing}</p>}>
          <Suspense>
            {createPortal(
              <HearDialog
                part={part}
                build={build}
                close={close}
                take={(frequencyHz) => {
                  close();
                  take(frequencyHz);
                }}
              />,
              document.body,
            )}
          </Suspense>
        </Boundary>
      )}
    </div>
  );
}
