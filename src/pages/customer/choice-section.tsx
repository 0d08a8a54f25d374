/** One choice: what it costs, and in what it differs from the others. */
import { EMPTY_OFFER, type Offer } from '../../state/share/shared.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import { Choose, type Chosen } from './choose.tsx';
import type { ChoiceSentences, MeansId } from './sentences.ts';

interface ChoiceSectionProps {
  readonly chosen: Chosen;
  readonly from: string;
  readonly isAdvised: boolean;
  readonly isOnlyOne: boolean;
  readonly offer: Offer | undefined;
  /** Those of the mechanics are missing while they are computed. */
  readonly sentences: Partial<ChoiceSentences>;
  readonly isComing: boolean;
  readonly means: readonly MeansId[];
}

export function MeansLine({ id, text }: { readonly id: MeansId | 'price'; readonly text: string | undefined }) {
  if (text === undefined || text === '') return null;
  return (
    <>
      <dt>{CUSTOMER_WORDS[id]}</dt>
      <dd>{text}</dd>
    </>
  );
}

export function ChoiceSection(props: ChoiceSectionProps) {
  const { chosen, from, isAdvised, isOnlyOne, offer = EMPTY_OFFER, sentences, isComing, means } = props;
  // What the workshop says of the time stands before what follows from the glue.
  const timed = means.includes('time') || offer.time !== '';
  const time = [offer.time, means.includes('time') ? sentences.time : ''].filter((text) => text !== '').join('. ');
  return (
    <section className="choice" data-advised={isAdvised || undefined}>
      <h3>
        {chosen.label} {isAdvised && <span className="advised">{CUSTOMER_WORDS.advised}</span>}
      </h3>
      <dl>
        <MeansLine id="price" text={offer.price} />
        {timed && <MeansLine id="time" text={time} />}
        {means
          .filter((id) => id !== 'time')
          .map((id) => (
            <MeansLine key={id} id={id} text={sentences[id]} />
          ))}
      </dl>
      {isComing && <p className="quiet">{CUSTOMER_WORDS.computing}</p>}
      <Choose {...chosen} from={from} isOnlyOne={isOnlyOne} />
    </section>
  );
}
