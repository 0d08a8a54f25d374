/** From whom and for whom the page is, and what the workshop says itself. */
import type { PageText } from '../../state/share/shared.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import { partsOf } from './contacts.ts';

/** Mail addresses and telephone numbers can be tapped. */
function Reachable({ text }: { readonly text: string }) {
  return partsOf(text).map(({ text: part, href }, index) =>
    href === null ? (
      part
    ) : (
      <a key={index} href={href}>
        {part}
      </a>
    ),
  );
}

export function Letterhead({ page, count }: { readonly page: PageText; readonly count: number }) {
  return (
    <header>
      {page.from !== '' && (
        <p className="from">
          <Reachable text={page.from} />
        </p>
      )}
      <h1>{count > 1 ? CUSTOMER_WORDS.titleMany : CUSTOMER_WORDS.titleOne}</h1>
      {page.to !== '' && <p className="to">{CUSTOMER_WORDS.forWhom(page.to)}</p>}
      {page.note !== '' && (
        <section className="note">
          <h2>{CUSTOMER_WORDS.noteTitle}</h2>
          <p className="own-text">
            <Reachable text={page.note} />
          </p>
        </section>
      )}
      <p className="intro">{CUSTOMER_WORDS.intro}</p>
    </header>
  );
}
