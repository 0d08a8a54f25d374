/** The comparison as a link: for the workshop, or as the customer's page. */
import type { Build } from '../../neck/build.ts';
import { isNarrowed } from '../../mechanics/bench-log/standing.ts';
import { addressOf } from '../../state/share/address.ts';
import { writeLink } from '../../state/share/link.ts';
import { fitsPage } from '../../state/share/page-text.ts';
import { EMPTY_PAGE } from '../../state/share/shared.ts';
import { useBackbow } from '../../state/store.ts';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';
import { useCompose } from '../share/compose-store.ts';
import { LinkField } from '../share/link-field.tsx';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import '../share/share.css';

export function ShareComparison({ builds }: { readonly builds: readonly Build[] }) {
  // What the workshop wrote for its last customer's page stands on this one too; its advice was of other necks.
  const page = useCompose((state) => state.page);
  const logStays = useBackbow((state) => builds.some((build) => isNarrowed(state, build)));
  const link = writeLink({ builds, page: EMPTY_PAGE });
  const letter = fitsPage(page) ? writeLink({ builds, page: { ...page, advised: null } }) : null;
  return (
    <details>
      <summary>{COMPARE_WORDS.share}</summary>
      <div className="compare-share">
        {link.ok ? (
          <LinkField address={addressOf(location.href, { kind: 'neck', link: link.text })} />
        ) : (
          <p className="refusal">{COMPARE_WORDS.tooLong}</p>
        )}
        {logStays && <p className="quiet">{SHARE_WORDS.logStays}</p>}
        {letter === null && <p className="refusal">{COMPARE_WORDS.textsTooLong}</p>}
        {letter?.ok && (
          <a href={addressOf(location.href, { kind: 'customer', link: letter.text })} target="_blank" rel="noreferrer">
            {COMPARE_WORDS.forCustomer}
          </a>
        )}
      </div>
    </details>
  );
}
