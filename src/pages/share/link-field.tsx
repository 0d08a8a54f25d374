/** The link itself, with everything that can be done with it. */
import { useRef, useState } from 'react';
import { copyText } from '../../kit/copy-text.ts';
import { QrCode } from './qr-code.tsx';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';

/** Longer links are cut by some mail and message programs (common practice, no source). */
const LONG = 2000;

/** Addresses that other devices cannot open. */
function isLocal(address: string): boolean {
  const { protocol, hostname } = new URL(address);
  return protocol === 'file:' || /^(localhost|127\.\d+\.\d+\.\d+|\[::1\]|.*\.localhost)$/.test(hostname);
}

export function LinkField({ address }: { readonly address: string }) {
  const field = useRef<HTMLInputElement>(null);
  const [copied, setCopied] = useState<{ readonly address: string; readonly done: boolean } | null>(null);
  const [qr, setQr] = useState(false);
  // What was said of an older link is not true of this one.
  const said = copied?.address === address ? copied : null;

  async function copy(): Promise<void> {
    setCopied({ address, done: await copyText(field.current!) });
  }

  return (
    <div className="link-field">
      <label className="field">
        <span>{SHARE_WORDS.link}</span>
        <input
          ref={field}
          type="text"
          readOnly
          value={address}
          onFocus={(event) => event.currentTarget.select()}
          spellCheck={false}
        />
      </label>
      <div className="button-row">
        <button type="button" onClick={() => void copy()}>
          {SHARE_WORDS.copy}
        </button>
        <button type="button" aria-expanded={qr} onClick={() => setQr(!qr)}>
          {SHARE_WORDS.qr}
        </button>
        <output aria-live="polite">
          {said ? (said.done ? SHARE_WORDS.copied : SHARE_WORDS.copyByHand) : SHARE_WORDS.length(address.length)}
        </output>
      </div>
      {address.length > LONG && <p className="quiet">{SHARE_WORDS.longForMessages}</p>}
      {isLocal(address) && <p className="quiet">{SHARE_WORDS.localOnly}</p>}
      {qr && <QrCode text={address} />}
    </div>
  );
}
