/** One choice: its picture, its story, its price, and what it means. */
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import type { ChoiceSentences, MeansId } from './sentences.ts';

interface ChoiceSectionProps {
  readonly label: string;
  readonly isAdvised: boolean;
  readonly sentences: ChoiceSentences | null;
  readonly picture: string | undefined;
  readonly noPicture: boolean;
  /** How many times larger than life the bend is drawn. */
  readonly factor: number;
  readonly means: readonly MeansId[];
}

function Picture({ label, picture, noPicture, factor }: Omit<ChoiceSectionProps, 'sentences' | 'means' | 'isAdvised'>) {
  if (noPicture) return null;
  return (
    <figure>
      {picture === undefined ? (
        <div className="picture-coming">{CUSTOMER_WORDS.pictureComing}</div>
      ) : (
        <img src={picture} alt={CUSTOMER_WORDS.picture(label)} width={960} height={540} />
      )}
      <figcaption>{CUSTOMER_WORDS.pictureCaption(String(factor))}</figcaption>
    </figure>
  );
}

export function ChoiceSection(props: ChoiceSectionProps) {
  const { label, isAdvised, sentences, means } = props;
  return (
    <section className="choice" data-advised={isAdvised || undefined}>
      <h3>
        {label} {isAdvised && <span className="advised">{CUSTOMER_WORDS.advised}</span>}
      </h3>
      <Picture {...props} />
      {sentences === null ? (
        <p>{CUSTOMER_WORDS.computing}</p>
      ) : (
        <>
          {sentences.story.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <dl>
            <dt>{CUSTOMER_WORDS.time}</dt>
            <dd>{sentences.time}</dd>
            <dt>{CUSTOMER_WORDS.risk}</dt>
            <dd>{sentences.risk}</dd>
            {means.map((id) => (
              <MeansLine key={id} id={id} text={sentences[id]} />
            ))}
          </dl>
        </>
      )}
    </section>
  );
}

export function MeansLine({ id, text }: { readonly id: MeansId; readonly text: string }) {
  return (
    <>
      <dt>{CUSTOMER_WORDS[id]}</dt>
      <dd>{text}</dd>
    </>
  );
}
