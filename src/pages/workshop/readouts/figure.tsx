/** One large number with its name, its unit, what it means and how sure it is. */
import { READOUT_WORDS } from '../../../speech/en/workshop.ts';
import type { FigureText } from './figures.ts';

export function Figure({ figure, isNow }: { readonly figure: FigureText; readonly isNow: boolean }) {
  return (
    <div className="figure" data-figure={figure.id} data-now={isNow || undefined}>
      <dt>{figure.label}</dt>
      <dd>
        {figure.value === undefined ? (
          <span className="figure-value quiet">…</span>
        ) : (
          <>
            <span className="figure-value">
              {figure.value}
              {figure.unit ? <span className="figure-unit">&nbsp;{figure.unit}</span> : null}
            </span>{' '}
            <span className="figure-says">
              {figure.word ? <strong>{figure.word}</strong> : null}
              {figure.word && figure.detail ? ', ' : null}
              {figure.detail}
            </span>
          </>
        )}
        {figure.band === null ? null : <span className="figure-band">{figure.band ?? READOUT_WORDS.waiting}</span>}
      </dd>
    </div>
  );
}
