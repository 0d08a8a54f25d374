/** "I choose this": a message to the workshop, to be copied or sent by the reader's own means. The page sends nothing. */
import { useId, useRef, useState } from 'react';
import { copyText } from '../../kit/copy-text.ts';
import { useCoarse } from '../../kit/use-coarse.ts';
import { spokenLocale } from '../../speech/language.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import { contactsOf } from './contacts.ts';

export interface Chosen {
  readonly label: string;
  readonly neck: string;
  /** Short mark of the build. */
  readonly mark: string;
}

interface ChooseProps extends Chosen {
  /** The workshop and how to reach it. */
  readonly from: string;
  readonly isOnlyOne: boolean;
}

const today = (): string => new Date().toLocaleDateString(spokenLocale(), { dateStyle: 'long' });

function Message({ label, neck, mark, from }: Omit<ChooseProps, 'isOnlyOne'>) {
  const id = useId();
  const field = useRef<HTMLTextAreaElement>(null);
  const isCoarse = useCoarse();
  const [text, setText] = useState(() => CUSTOMER_WORDS.message(label, neck, today(), mark));
  const [copied, setCopied] = useState<boolean | null>(null);
  const { mail, phone } = contactsOf(from);
  const body = encodeURIComponent(text.replace(/\n/g, '\r\n'));
  const subject = encodeURIComponent(CUSTOMER_WORDS.subject(neck));
  return (
    <div className="message">
      <label htmlFor={id}>{CUSTOMER_WORDS.messageLabel}</label>
      <textarea
        id={id}
        ref={field}
        rows={5}
        value={text}
        onChange={(event) => {
          setText(event.currentTarget.value);
          setCopied(null);
        }}
      />
      <div className="button-row">
        <button type="button" onClick={() => void copyText(field.current!).then(setCopied)}>
          {CUSTOMER_WORDS.copyMessage}
        </button>
        <a href={`mailto:${mail ?? ''}?subject=${subject}&body=${body}`}>{CUSTOMER_WORDS.mail}</a>
        {isCoarse && <a href={`sms:${phone ?? ''}?body=${body}`}>{CUSTOMER_WORDS.text}</a>}
      </div>
      <output aria-live="polite">
        {copied !== null && (copied ? CUSTOMER_WORDS.messageCopied : CUSTOMER_WORDS.messageMarked)}
      </output>
      <p className="quiet">{CUSTOMER_WORDS.messageHint}</p>
    </div>
  );
}

export function Choose({ isOnlyOne, ...chosen }: ChooseProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <div className="choose">
      <button
        type="button"
        className="main"
        aria-expanded={isOpen}
        aria-label={isOnlyOne ? undefined : CUSTOMER_WORDS.chooseName(chosen.label)}
        onClick={() => setOpen(!isOpen)}
      >
        {isOnlyOne ? CUSTOMER_WORDS.chooseOne : CUSTOMER_WORDS.choose}
      </button>
      {isOpen && <Message {...chosen} />}
    </div>
  );
}
