/** What to measure next on the neck in hand, and what of its band that takes away: looked for when it is opened. */
import { useEffect, useRef, useState } from 'react';
import { RefusedNumber } from '../../../kit/refused-number.tsx';
import { TypedNumber } from '../../../kit/typed-number.tsx';
import type { BandNarrowing } from '../../../mechanics/bench-log/standing.ts';
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { MEASURE_WORDS } from '../../../speech/en/pages/measure.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { useMinutes } from '../../../state/answers/minutes.ts';
import { useAnswer } from '../../../state/answers/use-answer.ts';
import { store } from '../../../state/store.ts';
import {
  MEASUREMENTS,
  MINUTES_RANGE,
  ranked,
  type MeasurementId,
  type Narrowing,
  type Place,
  type WhatToMeasure,
} from '../../../verdict/what-to-measure.ts';
import { useReveal } from '../../workshop/controls/reveal-store.ts';
import { Asking } from './asking.tsx';
import './what-moves-it.css';

interface WhatToMeasureNextProps {
  readonly build: Build;
  readonly system: UnitSystem;
  readonly narrowing: BandNarrowing;
}

export function WhatToMeasureNext({ build, system, narrowing }: WhatToMeasureNextProps) {
  const [isOpen, setIsOpen] = useState(false);
  const [done, setDone] = useState<readonly MeasurementId[]>([]);
  const key = isOpen ? JSON.stringify([build, narrowing, done]) : null;
  const asked = useAnswer<WhatToMeasure>(key, (api, told) => api.measure(build, done, narrowing, told));
  const found = asked.value;
  const isStale = asked.key !== key;
  const open = found?.narrowings.filter(({ id }) => !done.includes(id)) ?? [];
  return (
    <details className="to-measure" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{MEASURE_WORDS.title}</summary>
      {isOpen && <Asking {...asked} working={MEASURE_WORDS.working} />}
      {found && (
        <div className="answers" data-stale={isStale || undefined}>
          <section aria-label={MEASURE_WORDS.title}>
            <p>{MEASURE_WORDS.intro(textOf('bandWidthMm', found.beforeMm, system))}</p>
            {open.length === 0 ? (
              <p>{MEASURE_WORDS.nothing}</p>
            ) : (
              <MeasureTable
                narrowings={open}
                system={system}
                count={(id) => {
                  if (!isStale) setDone([...done, id]);
                }}
                isStale={isStale}
              />
            )}
            <Done done={done} takeBack={(id) => setDone(done.filter((one) => one !== id))} />
          </section>
        </div>
      )}
    </details>
  );
}

interface DoneProps {
  readonly done: readonly MeasurementId[];
  readonly takeBack: (id: MeasurementId) => void;
}

function Done({ done, takeBack }: DoneProps) {
  const list = useRef<HTMLUListElement>(null);
  const before = useRef(done.length);
  // The line in which somebody stood goes: they stand where it went.
  useEffect(() => {
    if (done.length > before.current) list.current?.querySelector<HTMLElement>('li:last-child button')?.focus();
    before.current = done.length;
  }, [done.length]);
  if (done.length === 0) return null;
  return (
    <>
      <p>{MEASURE_WORDS.counted}</p>
      <ul ref={list} className="counted">
        {done.map((id) => {
          const name = MEASURE_WORDS.names[id];
          return (
            <li key={id}>
              {name}{' '}
              <button
                type="button"
                className="link"
                aria-label={MEASURE_WORDS.takeBackName(name)}
                onClick={() => takeBack(id)}
              >
                {MEASURE_WORDS.takeBack}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

interface MeasureTableProps {
  readonly narrowings: readonly Narrowing[];
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly count: (id: MeasurementId) => void;
}

function MeasureTable({ narrowings, system, isStale, count }: MeasureTableProps) {
  const [minutes, setMinutes] = useMinutes();
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it */}
      <section className="table-scroll" tabIndex={0} aria-label={MEASURE_WORDS.caption}>
        <table className="answer-table">
          <caption className="quiet">{MEASURE_WORDS.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{MEASURE_WORDS.what}</th>
              <th scope="col" className="number">
                {MEASURE_WORDS.removed}
              </th>
              <th scope="col" className="number">
                {MEASURE_WORDS.after}
              </th>
              <th scope="col">{MEASURE_WORDS.minutes}</th>
              <th scope="col">
                <span className="visually-hidden">{MEASURE_WORDS.actions}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {ranked(narrowings, minutes).map(({ id, removedMm, afterMm }) => {
              const { error } = MEASUREMENTS[id];
              return (
                <tr key={id} data-measure={id}>
                  <th scope="row">
                    {MEASURE_WORDS.names[id]}{' '}
                    <span className="quiet">{MEASURE_WORDS.error(textOf(error.quantity, error.value, system))}</span>
                  </th>
                  <td className="number">{textOf('bandRemovedMm', removedMm, system)}</td>
                  <td className="number">{textOf('bandWidthMm', afterMm, system)}</td>
                  <td>
                    <MinutesField
                      id={id}
                      value={minutes[id]}
                      system={system}
                      change={(value) => setMinutes(id, value)}
                    />
                  </td>
                  <td>
                    <Actions id={id} isStale={isStale} count={count} />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      <p className="quiet">{MEASURE_WORDS.whose}</p>
    </>
  );
}

interface MinutesFieldProps {
  readonly id: MeasurementId;
  readonly value: number;
  readonly system: UnitSystem;
  readonly change: (value: number) => void;
}

function MinutesField({ id, value, system, change }: MinutesFieldProps) {
  const label = MEASURE_WORDS.minutesOf(MEASURE_WORDS.names[id]);
  const parameter = {
    label,
    min: MINUTES_RANGE.least,
    max: MINUTES_RANGE.most,
    step: 1,
    digits: 0,
    unit: 'min',
  } as const;
  return (
    <RefusedNumber>
      {(told) => (
        <TypedNumber
          parameter={parameter}
          value={value}
          system={system}
          name={label}
          change={(wanted) => {
            change(wanted);
            return { ok: true };
          }}
          {...told}
        />
      )}
    </RefusedNumber>
  );
}

function goTo(place: Place): void {
  if ('dialog' in place) {
    store.getState().openDialog(place.dialog);
    return;
  }
  store.getState().closeDialog();
  useReveal.getState().reveal(place.control);
}

function Actions({
  id,
  isStale,
  count,
}: Pick<MeasureTableProps, 'isStale' | 'count'> & { readonly id: MeasurementId }) {
  const { place } = MEASUREMENTS[id];
  const name = MEASURE_WORDS.names[id];
  return (
    <div className="button-row">
      <button type="button" aria-label={MEASURE_WORDS.enterName(name)} onClick={() => goTo(place)}>
        {MEASURE_WORDS.enter}
      </button>
      <button
        type="button"
        aria-label={MEASURE_WORDS.doneName(name)}
        aria-disabled={isStale || undefined}
        onClick={() => count(id)}
      >
        {MEASURE_WORDS.done}
      </button>
    </div>
  );
}
