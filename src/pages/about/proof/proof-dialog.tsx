/** How well the library computes: the results of the test run, and what the model leaves out. */
import { useEffect, useRef, useState } from 'react';
import { store } from '../../../state/store.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { noteSection } from './model-note.ts';
import { ModelPart } from './model-parts.tsx';
import { ProofResults } from './proof-results.tsx';
import { fetchResults, readResults, type Results } from './results.ts';
import { useModelNote } from './use-model-note.ts';
import { PROOF_WORDS } from '../../../speech/en/pages/proof.ts';
import '../../answers/wanted/wanted.css';
import './proof.css';

type Fetched =
  { readonly kind: 'waiting' | 'missing' | 'unreadable' } | { readonly kind: 'results'; readonly results: Results };

async function fetchAll(): Promise<Fetched> {
  try {
    const results = readResults(await fetchResults());
    return results ? { kind: 'results', results } : { kind: 'unreadable' };
  } catch {
    return { kind: 'missing' };
  }
}

export function ProofDialog() {
  const [fetched, setFetched] = useState<Fetched>({ kind: 'waiting' });
  const [tries, setTries] = useState(0);
  const note = useModelNote(tries);
  const simplified = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    let gone = false;
    void fetchAll().then((found) => {
      if (!gone) setFetched(found);
    });
    return () => {
      gone = true;
    };
  }, [tries]);
  return (
    <Dialog title={PROOF_WORDS.title} onClose={store.getState().closeDialog} className="proof">
      <p className="quiet">{PROOF_WORDS.intro}</p>
      <p>
        <button
          type="button"
          className="link"
          onClick={() => {
            simplified.current?.scrollIntoView();
            simplified.current?.focus({ preventScroll: true });
          }}
        >
          {PROOF_WORDS.toSimplified}
        </button>
      </p>
      {fetched.kind === 'waiting' && <p>{PROOF_WORDS.loading}</p>}
      {(fetched.kind === 'missing' || fetched.kind === 'unreadable') && (
        <p role="alert" className="refusal">
          {PROOF_WORDS[fetched.kind]}{' '}
          <button type="button" onClick={() => setTries(tries + 1)}>
            {PROOF_WORDS.again}
          </button>
        </p>
      )}
      {fetched.kind === 'results' && <ProofResults results={fetched.results} />}
      {note === null ? (
        <p className="refusal">{PROOF_WORDS.noModel}</p>
      ) : (
        note !== undefined && (
          <>
            <ModelPart
              title={PROOF_WORDS.simplified}
              blocks={noteSection(note, 'What is simplified')}
              heading={simplified}
            />
            <ModelPart title={PROOF_WORDS.assumed} blocks={noteSection(note, 'What is assumed')} />
          </>
        )
      )}
    </Dialog>
  );
}
