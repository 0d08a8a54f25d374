/** What the workshop says on the customer's page: to whom, a note, which choice it advises, and what each costs. */
import type { Build } from '../../neck/build.ts';
import { LimitedText } from '../../kit/limited-text.tsx';
import { EMPTY_OFFER, MOST_OFFER, PAGE_LIMITS } from '../../state/share/shared.ts';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';
import { choiceLabels } from '../customer/labels.ts';
import { choiceKeys, composeLetter, composeOffer, useCompose } from './compose-store.ts';

function Offers({ builds }: { readonly builds: readonly Build[] }) {
  const offers = useCompose((state) => state.letter.offers);
  const labels = choiceLabels(builds);
  return (
    <fieldset className="offers">
      <legend>{SHARE_WORDS.offers}</legend>
      {choiceKeys(builds).map((key, index) => {
        const { price, time } = offers[key] ?? EMPTY_OFFER;
        return (
          <fieldset key={key} className="offer">
            <legend>{labels[index]}</legend>
            <LimitedText
              label={SHARE_WORDS.price}
              most={MOST_OFFER}
              value={price}
              change={(text) => composeOffer(key, { price: text })}
            />
            <LimitedText
              label={SHARE_WORDS.time}
              most={MOST_OFFER}
              value={time}
              change={(text) => composeOffer(key, { time: text })}
            />
          </fieldset>
        );
      })}
    </fieldset>
  );
}

function Advised({ builds }: { readonly builds: readonly Build[] }) {
  const advised = useCompose((state) => state.letter.advised);
  const labels = choiceLabels(builds);
  const keys = choiceKeys(builds);
  return (
    <label className="field">
      <span>{SHARE_WORDS.advised}</span>
      <select
        value={advised !== null && keys.includes(advised) ? advised : ''}
        onChange={(event) => composeLetter({ advised: event.currentTarget.value || null })}
      >
        <option value="">{SHARE_WORDS.noAdvice}</option>
        {keys.map((key, index) => (
          <option key={key} value={key}>
            {labels[index]}
          </option>
        ))}
      </select>
    </label>
  );
}

/** @param builds the choices; none while too few are chosen */
export function LetterFields({ builds }: { readonly builds: readonly Build[] }) {
  const { from, to, note } = useCompose((state) => state.letter);
  return (
    <div className="page-texts">
      <LimitedText
        label={SHARE_WORDS.from}
        name={SHARE_WORDS.short.from}
        most={PAGE_LIMITS.from}
        value={from}
        change={(text) => composeLetter({ from: text })}
      />
      <LimitedText
        label={SHARE_WORDS.to}
        most={PAGE_LIMITS.to}
        value={to}
        change={(text) => composeLetter({ to: text })}
      />
      <LimitedText
        label={SHARE_WORDS.note}
        most={PAGE_LIMITS.note}
        rows={4}
        value={note}
        change={(text) => composeLetter({ note: text })}
      />
      {builds.length > 1 && <Advised builds={builds} />}
      {builds.length > 0 && <Offers builds={builds} />}
    </div>
  );
}
