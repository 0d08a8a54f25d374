/** One large number with its name, its unit, what it means and how sure it is. */
import { READOUT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { SOLVER_WORDS } from '../../../speech/en/workshop/solver.ts';
import { store } from '../../../state/store.ts';
import type { FigureText } from './figures.ts';

/** What is not computed and will not come: nothing, the band alone, or the number too. */
export type Missing = 'nothing' | 'bands' | 'prediction';

interface FigureProps {
  readonly figure: FigureText;
  readonly isNow: boolean;
  readonly missing: Missing;
}

/** The band in its place: none, still to come, or not to come at all. */
function BandText({ band, missing }: { readonly band: FigureText['band']; readonly missing: Missing }) {
  if (band === null || (band === undefined && missing === 'prediction')) return null;
  const coming = missing === 'nothing' ? READOUT_WORDS.waiting : SOLVER_WORDS.noBand;
  return <span className="figure-band">{band ?? coming}</span>;
}

export function Figure({ figure, isNow, missing }: FigureProps) {
  return (
    <div className="figure" data-figure={figure.id} data-now={isNow || undefined}>
      <dt>
        <button
          type="button"
          className="figure-name"
          title={READOUT_WORDS.origin}
          aria-haspopup="dialog"
          onClick={() => store.getState().showOrigin(figure.key)}
        >
          {figure.label}
        </button>
      </dt>
      <dd>
        {figure.value === undefined ? (
          missing === 'prediction' ? (
            <span className="figure-says quiet">{SOLVER_WORDS.notComputed}</span>
          ) : (
            <span className="figure-value quiet">…</span>
          )
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
        <BandText band={figure.band} missing={missing} />
      </dd>
    </div>
  );
}
