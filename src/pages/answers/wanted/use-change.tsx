/** Taking an answer over into the build: one step to undo, said where the button is. */
import { useState, type ReactNode } from 'react';
import type { Build } from '../../../neck/build.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { problemTexts } from '../../../speech/problems.ts';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

type Said = { readonly title: string; readonly lines: readonly string[]; readonly undoTo?: Build };

export interface Change {
  /** @returns whether the build was changed */
  readonly use: (change: Partial<Build>, label: string) => boolean;
  readonly said: ReactNode;
}

export function useChange(): Change {
  const [said, setSaid] = useState<Said | null>(null);
  const system = useBackbow((state) => state.unitSystem);
  const build = useBackbow((state) => state.build);
  function use(change: Partial<Build>, label: string): boolean {
    const before = store.getState().build;
    const outcome = store.getState().change(change, label);
    const { build: after } = store.getState();
    setSaid(
      outcome.ok
        ? { title: WANTED_WORDS.done(label), lines: [], ...(after === before ? {} : { undoTo: after }) }
        : { title: WANTED_WORDS.refused, lines: problemTexts(outcome.problems, system) },
    );
    return outcome.ok;
  }
  // Once the build has moved on, undo would take back something else.
  const canUndo = said?.undoTo === build;
  return {
    use,
    said: (
      <output className="answer-said">
        {said && (
          <>
            <p>
              {said.title}{' '}
              {canUndo && (
                <button
                  type="button"
                  onClick={() => {
                    store.getState().undo();
                    setSaid({ title: WANTED_WORDS.undone, lines: [] });
                  }}
                >
                  {WANTED_WORDS.undo}
                </button>
              )}
            </p>
            {said.lines.map((line) => (
              <p key={line} className="refusal">
                {line}
              </p>
            ))}
          </>
        )}
      </output>
    ),
  };
}
