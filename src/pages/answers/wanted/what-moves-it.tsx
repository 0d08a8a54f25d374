/** What moves the bow of the neck in hand, and how far: looked for when it is opened. */
import { useState } from 'react';
import type { BandNarrowing } from '../../../mechanics/bench-log/standing.ts';
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { useAnswer } from '../../../state/answers/use-answer.ts';
import { bowText } from '../../../speech/bow.ts';
import { MOVES_WORDS, WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

import { leverText, moveText, movesBandText } from '../../../speech/answers/moves.ts';
import { isOffered } from '../../../verdict/raised-by.ts';
import type { Move, WhatMoves } from '../../../verdict/what-moves.ts';
import { checkTitle } from '../../../speech/checks.ts';
import { CHECK_WORDS } from '../../../speech/en/fretwork/checks.ts';
import '../../workshop/checks/raised.css';
import { Asking } from './asking.tsx';
import { UseButton } from './use-button.tsx';
import './what-moves-it.css';

interface WhatMovesItProps {
  readonly build: Build;
  readonly system: UnitSystem;
  readonly narrowing: BandNarrowing;
  readonly use: (change: Partial<Build>, label: string) => void;
}

export function WhatMovesIt({ build, system, narrowing, use }: WhatMovesItProps) {
  const [isOpen, setIsOpen] = useState(false);
  const key = isOpen ? JSON.stringify([build, narrowing]) : null;
  const asked = useAnswer<WhatMoves>(key, (api, told) => api.moves(build, narrowing, told));
  const found = asked.value;
  return (
    <details className="moves" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{MOVES_WORDS.title}</summary>
      {isOpen && <Asking {...asked} working={MOVES_WORDS.working} />}
      {found && (
        <div className="answers" data-stale={asked.key !== key || undefined}>
          <section aria-label={MOVES_WORDS.title}>
            <p>{MOVES_WORDS.intro(bowText(found.settledMm, system))}</p>
            <MovesTable moves={found.moves} system={system} isStale={asked.key !== key} use={use} />
            <p className="quiet">{MOVES_WORDS.shared}</p>
          </section>
        </div>
      )}
    </details>
  );
}

interface MovesTableProps extends Pick<WhatMovesItProps, 'system' | 'use'> {
  readonly moves: readonly Move[];
  readonly isStale: boolean;
}

function MovesTable({ moves, system, isStale, use }: MovesTableProps) {
  const mostMm = Math.max(
    ...moves.flatMap(({ settledMm, bandMm }) => [settledMm, bandMm.p05, bandMm.p95].map(Math.abs)),
  );
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="table-scroll" tabIndex={0} aria-label={MOVES_WORDS.caption}>
      <table className="answer-table">
        <caption className="quiet">{MOVES_WORDS.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{MOVES_WORDS.lever}</th>
            <th scope="col" className="number">
              {MOVES_WORDS.settled}
            </th>
            <th scope="col">
              <span className="visually-hidden">{MOVES_WORDS.picture}</span>
            </th>
            <th scope="col">{MOVES_WORDS.band}</th>
            <th scope="col" className="number">
              {MOVES_WORDS.fretted}
            </th>
            <th scope="col">
              <span className="visually-hidden">{WANTED_WORDS.use}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {moves.map((move) => {
            const lever = leverText(move.lever, system);
            return (
              <tr key={lever} data-lever={move.lever.kind}>
                <th scope="row">
                  {lever}
                  {move.raised.map((check, index) => (
                    <p key={`${check.code} ${index}`} className={`raised raised-${check.severity}`}>
                      {CHECK_WORDS.severities[check.severity]}: {checkTitle(check)}
                    </p>
                  ))}
                </th>
                <td className="number">{moveText(move.settledMm, system)}</td>
                <td>
                  <Bar move={move} mostMm={mostMm} />
                </td>
                <td className="spread">{movesBandText(move.bandMm, system)}</td>
                <td className="number">
                  {move.frettedMm === null ? MOVES_WORDS.none : moveText(move.frettedMm, system)}
                </td>
                <td>
                  {isOffered(move.raised) && (
                    <UseButton words={WANTED_WORDS.use} isStale={isStale} onUse={() => use(move.change, lever)} />
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

const [WIDTH, HEIGHT] = [140, 16];

/** The change as a bar from no change in the middle, hollower to the right, and its band as a line. */
function Bar({ move: { settledMm, bandMm }, mostMm }: { readonly move: Move; readonly mostMm: number }) {
  const x = (mm: number) => WIDTH / 2 + (mostMm === 0 ? 0 : (mm / mostMm) * (WIDTH / 2 - 2));
  const [from, to] = [x(0), x(settledMm)];
  return (
    <svg className="move-bar" width={WIDTH} height={HEIGHT} aria-hidden="true">
      <rect x={Math.min(from, to)} y={4} width={Math.abs(to - from)} height={HEIGHT - 8} />
      <path d={`M${x(bandMm.p05)} ${HEIGHT / 2}H${x(bandMm.p95)}`} />
      <path className="zero" d={`M${from} 0V${HEIGHT}`} />
    </svg>
  );
}
