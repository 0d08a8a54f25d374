/** What the slot of a fret that was pulled still holds, and what to do. */
import { useState } from 'react';
import { seatAt } from '../../../neck/kerf.ts';
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { ReseatWish } from '../../../mechanics/seating/reseat.ts';
import { useAnswer } from '../../../state/answers/use-answer.ts';
import { store, useBackbow } from '../../../state/store.ts';
import type { AdvisedReseat } from '../../../verdict/reseat-advice.ts';
import { isOffered } from '../../../verdict/raised-by.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { ListNumber } from '../../../kit/list-number.tsx';
import { bowText } from '../../../speech/bow.ts';
import { formatNumber, unitLabel } from '../../../speech/quantity.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { RESEAT_WORDS } from '../../../speech/en/pages/reseat.ts';
import { Raised } from '../../workshop/checks/raised.tsx';
import { Asking } from '../wanted/asking.tsx';
import { UseButton } from '../wanted/use-button.tsx';
import { useChange } from '../wanted/use-change.tsx';
import '../wanted/wanted.css';
import './reseat.css';

/** A month: long enough for a fret to have been played. */
const USUAL_DAYS = 30;
const OK = { ok: true } as const;

interface WayProps {
  readonly build: Build;
  readonly answer: AdvisedReseat;
  readonly option: AdvisedReseat['options'][number];
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: ReturnType<typeof useChange>['use'];
}

function Way({ build, answer, option, system, isStale, use }: WayProps) {
  const { way, regions, raised } = option;
  const isInUse = regions !== null && JSON.stringify(build.regions) === JSON.stringify(regions);
  return (
    <li className="answer" data-way={way}>
      <h4>
        {RESEAT_WORDS.ways[way]}
        {answer.advised === way && <strong> · {RESEAT_WORDS.advised}</strong>}
      </h4>
      <p>{RESEAT_WORDS.hows[way]}</p>
      <dl className="reseat-numbers">
        <dt>{RESEAT_WORDS.force}</dt>
        <dd>
          {textOf('wedgeForceN', option.forceN, system)},{' '}
          {RESEAT_WORDS.ofFirst(`${formatNumber(100 * option.share, 0)}\u00a0%`)}
        </dd>
        <dt>{RESEAT_WORDS.pullOut}</dt>
        <dd>{textOf('pullOutForceN', option.pullOutN, system)}</dd>
        {way === 'wider' && (
          <>
            <dt>{RESEAT_WORDS.studs}</dt>
            <dd>{textOf('studWidthMm', option.studWidthMm, system)}</dd>
          </>
        )}
        <dt>{RESEAT_WORDS.bow}</dt>
        <dd>{bowText(option.reliefMm, system)}</dd>
      </dl>
      {!isInUse && <Raised checks={raised} system={system} />}
      {isInUse && <p className="quiet">{RESEAT_WORDS.inUse}</p>}
      {regions && !isInUse && isOffered(raised) && (
        <UseButton
          words={RESEAT_WORDS.use}
          isStale={isStale}
          onUse={() => use({ regions }, RESEAT_WORDS.step(answer.fret))}
        />
      )}
    </li>
  );
}

function Helper({ build }: { readonly build: Build }) {
  const system = useBackbow((state) => state.unitSystem);
  const [fret, setFret] = useState(Math.min(12, build.fretCount));
  const [kerfMm, setKerf] = useState(() => seatAt(build, fret).kerfMm);
  const [days, setDays] = useState(USUAL_DAYS);
  const wish: ReseatWish = { fret, kerfMm, days };
  const key = JSON.stringify([build, wish]);
  const asked = useAnswer(key, (api) => api.reseat(build, wish));
  const { use, said } = useChange();
  const isStale = asked.key !== key;
  const { value } = asked;
  return (
    <>
      {build.method === 'glue' && <p>{RESEAT_WORDS.pressing}</p>}
      <div className="goal-form">
        <label className="goal-field">
          {RESEAT_WORDS.fret}
          <select
            value={fret}
            onChange={(event) => {
              const chosen = Number(event.currentTarget.value);
              setFret(chosen);
              setKerf(seatAt(build, chosen).kerfMm);
            }}
          >
            {Array.from({ length: build.fretCount }, (_, index) => (
              <option key={index} value={index + 1}>
                {index + 1}
              </option>
            ))}
          </select>
        </label>
        <label className="goal-field">
          {RESEAT_WORDS.kerf}, {unitLabel('mm', system)}
          <ListNumber
            kind="kerfMm"
            name={RESEAT_WORDS.kerf}
            value={kerfMm}
            system={system}
            change={(mm) => {
              setKerf(mm);
              return OK;
            }}
          />
        </label>
        <label className="goal-field">
          {RESEAT_WORDS.days}
          <ListNumber
            kind="daysIn"
            name={RESEAT_WORDS.days}
            value={days}
            system={system}
            change={(count) => {
              setDays(count);
              return OK;
            }}
          />
        </label>
      </div>
      <Asking {...asked} />
      {said}
      {value && (
        <div className="answers" data-stale={isStale || undefined}>
          <p>
            {RESEAT_WORDS.was(
              textOf('wedgeForceN', value.forceN, system),
              textOf('pullOutForceN', value.pullOutN, system),
            )}
          </p>
          <ol className="plans">
            {value.options.map((option) => (
              <Way key={option.way} {...{ build, answer: value, option, system, isStale, use }} />
            ))}
          </ol>
        </div>
      )}
    </>
  );
}

export function ReseatDialog() {
  const build = useBackbow((state) => state.build);
  return (
    <Dialog title={RESEAT_WORDS.title} onClose={store.getState().closeDialog} className="reseat">
      <p className="quiet">{RESEAT_WORDS.intro}</p>
      <Helper build={build} />
    </Dialog>
  );
}
