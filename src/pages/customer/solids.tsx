/** The necks as solids: one where all choices look alike, else each of them. */
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';

export interface Solid {
  readonly label: string;
  readonly moment: string;
  /** Undefined while it is being drawn. */
  readonly address: string | undefined;
}

export function Solids({ solids }: { readonly solids: readonly Solid[] }) {
  return (
    <div className="solids" data-count={solids.length}>
      {solids.map(({ label, moment, address }) => (
        <figure key={label}>
          {address === undefined ? (
            <div className="picture-coming">{CUSTOMER_WORDS.pictureComing}</div>
          ) : (
            <img src={address} alt={CUSTOMER_WORDS.picture(label)} width={960} height={540} />
          )}
          <figcaption>{CUSTOMER_WORDS.pictureOf(label, moment)}</figcaption>
        </figure>
      ))}
    </div>
  );
}
