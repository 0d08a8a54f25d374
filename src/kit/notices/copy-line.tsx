/** A text to be copied, by a button or by hand: it is shown, since not every browser lets a page copy. */
import { useRef, useState } from 'react';
import { copyText } from '../copy-text.ts';
import { NOTICE_WORDS } from '../../speech/en/workshop/workshop.ts';

export function CopyLine({ label, text }: { readonly label: string; readonly text: string }) {
  const field = useRef<HTMLInputElement>(null);
  const [isCopied, setCopied] = useState<boolean | null>(null);
  const copy = async () => setCopied(await copyText(field.current!));

  return (
    <div className="copy-line">
      <input
        ref={field}
        type="text"
        readOnly
        aria-label={label}
        value={text}
        spellCheck={false}
        onFocus={(event) => event.currentTarget.select()}
      />
      <button type="button" onClick={() => void copy()}>
        {label}
      </button>
      <output>{isCopied === null ? '' : isCopied ? NOTICE_WORDS.copied : NOTICE_WORDS.copyByHand}</output>
    </div>
  );
}
