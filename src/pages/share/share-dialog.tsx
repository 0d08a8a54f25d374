/** Sharing the neck, or a comparison, as a link or as a file. */
import { useEffect, useId } from 'react';
import type { Build } from '../../neck/build.ts';
import { isolated } from '../../speech/isolate.ts';
import { formatNumber } from '../../speech/quantity.ts';
import { METHODS } from '../../mechanics/prediction-types.ts';
import { addressOf, type Route } from '../../state/share/address.ts';
import { writeLink } from '../../state/share/link.ts';
import { isNarrowed } from '../../mechanics/bench-log/standing.ts';
import { buildOf } from '../../state/library/entry.ts';
import { fitsOffers, fitsPage } from '../../state/share/page-text.ts';
import { MOST_SHARED, type Shared } from '../../state/share/shared.ts';
import { store, useBackbow } from '../../state/store.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { library, useLibrary } from '../library/page-library.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { problemTexts } from '../../speech/problems.ts';
import { compose, useCompose, type What } from './compose-store.ts';
import { LetterFields } from './letter-fields.tsx';
import { LinkField } from './link-field.tsx';
import { saveShared } from './save-shared.ts';
import { waysOf } from '../../verdict/ways.ts';
import { sharedOf } from './shared-of.ts';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';
import './share.css';

const WHATS: readonly What[] = ['build', 'methods', 'saved'];

function WhatToShare() {
  const name = useId();
  const what = useCompose((state) => state.what);
  return (
    <fieldset className="choices">
      <legend>{SHARE_WORDS.what}</legend>
      {WHATS.map((option) => (
        <label key={option} className="tick">
          <input type="radio" name={name} checked={option === what} onChange={() => compose({ what: option })} />
          {SHARE_WORDS.whats[option]}
        </label>
      ))}
    </fieldset>
  );
}

function WaysToShare() {
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const methods = useCompose((state) => state.methods);
  const { builds, impossible } = waysOf(build);
  return (
    <fieldset className="choices">
      <legend>{SHARE_WORDS.methods}</legend>
      {builds.map(({ method }) => (
        <label key={method} className="tick">
          <input
            type="checkbox"
            checked={methods.includes(method)}
            onChange={(event) => {
              const { checked } = event.currentTarget;
              compose({ methods: METHODS.filter((m) => (m === method ? checked : methods.includes(m))) });
            }}
          />
          {METHOD_WORDS[method].label}
        </label>
      ))}
      {impossible.map(({ method, problems }) => (
        <p key={method} className="quiet">
          {SHARE_WORDS.cannot(METHOD_WORDS[method].label, problemTexts(problems, system).join(' '))}
        </p>
      ))}
    </fieldset>
  );
}

/** Necks of the library that can be put beside the one on the bench, newest first. */
function useKept(): readonly { readonly id: string; readonly build: Build }[] {
  const entries = useLibrary((state) => state.entries);
  return (entries ?? []).flatMap((entry) => {
    if (entry.deletedAt !== null) return [];
    const checked = buildOf(entry);
    return checked.ok ? [{ id: entry.id, build: checked.build }] : [];
  });
}

function SavedToShare() {
  const kept = useKept();
  const trouble = useLibrary((state) => state.trouble);
  const saved = useCompose((state) => state.saved);
  const chosen = saved.filter((id) => kept.some((neck) => neck.id === id));
  useEffect(() => {
    void library.refresh();
  }, []);
  if (kept.length === 0) {
    return <p className="quiet">{trouble ? LIBRARY_WORDS.troubles[trouble] : SHARE_WORDS.noneSaved}</p>;
  }
  return (
    <fieldset className="choices saved-choices">
      <legend>{SHARE_WORDS.saved}</legend>
      {kept.map(({ id, build }) => {
        const isChosen = chosen.includes(id);
        return (
          <label key={id} className="tick">
            <input
              type="checkbox"
              checked={isChosen}
              disabled={!isChosen && chosen.length >= MOST_SHARED - 1}
              onChange={() => compose({ saved: isChosen ? chosen.filter((other) => other !== id) : [...chosen, id] })}
            />
            {isolated(build.name)}, {METHOD_WORDS[build.method].label}
          </label>
        );
      })}
    </fieldset>
  );
}

const KINDS: readonly Route['kind'][] = ['neck', 'customer'];

function OpensAs() {
  const name = useId();
  const as = useCompose((state) => state.as);
  return (
    <fieldset className="choices">
      <legend>{SHARE_WORDS.as}</legend>
      {KINDS.map((kind) => (
        <label key={kind} className="tick">
          <input type="radio" name={name} checked={kind === as} onChange={() => compose({ as: kind })} />
          {SHARE_WORDS.ass[kind]}
        </label>
      ))}
    </fieldset>
  );
}

/** What the choices made so far amount to; null while there is too little to compare. */
function useShared(): Shared | null {
  const build = useBackbow((state) => state.build);
  const { what, methods, saved, as, letter } = useCompose();
  const kept = useKept();
  const others = saved.flatMap((id) => kept.find((neck) => neck.id === id)?.build ?? []);
  return sharedOf(build, { what, methods, others, letter: as === 'customer' ? letter : null });
}

function Result({ shared }: { readonly shared: Shared | null }) {
  const as = useCompose((state) => state.as);
  if (!shared) return <p>{SHARE_WORDS.atLeastTwo}</p>;
  if (!fitsPage(shared.page) || !fitsOffers(shared.offers)) return <p>{SHARE_WORDS.textsFirst}</p>;
  const link = writeLink(shared);
  return (
    <>
      {link.ok ? (
        <LinkField address={addressOf(location.href, { kind: as, link: link.text })} />
      ) : (
        link.trouble.code === 'too-long' && (
          <p className="refusal">
            {SHARE_WORDS.tooLong(formatNumber(link.trouble.length, 0), formatNumber(link.trouble.most, 0))}
          </p>
        )
      )}
      <div className="button-row">
        <button type="button" onClick={() => saveShared(shared)}>
          {SHARE_WORDS.file}
        </button>
        {link.ok && as === 'customer' && (
          <a href={addressOf(location.href, { kind: 'customer', link: link.text })} target="_blank" rel="noreferrer">
            {SHARE_WORDS.page}
          </a>
        )}
      </div>
    </>
  );
}

export function ShareDialog() {
  const { what, as } = useCompose();
  const shared = useShared();
  const logStays = useBackbow((state) => shared?.builds.some((build) => isNarrowed(state, build)));
  return (
    <Dialog title={SHARE_WORDS.title} onClose={store.getState().closeDialog} className="share">
      <WhatToShare />
      {what === 'methods' && <WaysToShare />}
      {what === 'saved' && <SavedToShare />}
      <OpensAs />
      {as === 'customer' && <LetterFields builds={shared?.builds ?? []} />}
      <Result shared={shared} />
      {logStays && <p className="quiet">{SHARE_WORDS.logStays}</p>}
      <p className="quiet">{SHARE_WORDS.privacy}</p>
    </Dialog>
  );
}
