/**
 * Keeps a fault inside one part of the page: a part that could not be fetched, because the network is gone or a new version
 * lies on the server, or one that broke off. What is on the bench is kept by its draft, so loading the page again is safe.
 */
import type { ReactNode } from 'react';
import { Boundary } from '../kit/boundary.tsx';
import { APP_WORDS } from '../speech/en/workshop/app.ts';

const missing = (): ReactNode => (
  <div className="part-missing" role="alert">
    <p>{APP_WORDS.partMissing}</p>
    <button type="button" onClick={() => location.reload()}>
      {APP_WORDS.loadAgain}
    </button>
  </div>
);

export function PartBoundary({ children }: { readonly children: ReactNode }) {
  return <Boundary fallback={missing}>{children}</Boundary>;
}
