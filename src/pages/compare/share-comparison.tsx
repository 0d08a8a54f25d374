/** The comparison as a link: for the workshop, and as a page for the customer with a link and a code of its own. */
import type { Build } from '../../neck/build.ts';
import { isNarrowed } from '../../mechanics/bench-log/standing.ts';
import { addressOf } from '../../state/share/address.ts';
import { writeLink } from '../../state/share/link.ts';
import { fitsOffers, fitsPage } from '../../state/share/page-text.ts';
import { EMPTY_PAGE } from '../../state/share/shared.ts';
import { useBackbow } from '../../state/store.ts';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';
import { useCompose } from '../share/compose-store.ts';
import { LetterFields } from '../share/letter-fields.tsx';
import { LinkField } from '../share/link-field.tsx';
import { letterOf } from '../share/shared-of.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import '../share/share.css';

interface SharedNecks {
  readonly builds: readonly Build[];
}

function ForCustomer({ builds, logStays }: SharedNecks & { readonly logStays: boolean }) {
  const letter = useCompose((state) => state.letter);
  const shared = letterOf(builds, letter);
  const fits = fitsPage(shared.page) && fitsOffers(shared.offers);
  const link = fits ? writeLink(shared) : null;
  const address = link?.ok ? addressOf(location.href, { kind: 'customer', link: link.text }) : null;
  return (
    <details>
      <summary>{COMPARE_WORDS.forCustomer}</summary>
      <div className="compare-share">
        {link === null && <p className="refusal">{COMPARE_WORDS.textsTooLong}</p>}
        {link?.ok === false && <p className="refusal">{COMPARE_WORDS.tooLong}</p>}
        {address !== null && (
          <>
            <LinkField address={address} />
            <a href={address} target="_blank" rel="noreferrer">
              {SHARE_WORDS.page}
            </a>
          </>
        )}
        <LetterFields builds={builds} />
        {logStays && <p className="quiet">{SHARE_WORDS.logStays}</p>}
      </div>
    </details>
  );
}

export function ShareComparison({ builds }: SharedNecks) {
  const logStays = useBackbow((state) => builds.some((build) => isNarrowed(state, build)));
  const link = writeLink({ builds, page: EMPTY_PAGE });
  return (
    <div className="compare-shares">
      <ForCustomer builds={builds} logStays={logStays} />
      <details>
        <summary>{COMPARE_WORDS.share}</summary>
        <div className="compare-share">
          {link.ok ? (
            <LinkField address={addressOf(location.href, { kind: 'neck', link: link.text })} />
          ) : (
            <p className="refusal">{COMPARE_WORDS.tooLong}</p>
          )}
          {logStays && <p className="quiet">{SHARE_WORDS.logStays}</p>}
        </div>
      </details>
    </div>
  );
}
