/** What the picture shows, in one sentence for those who do not see it. */
import { useMemo } from 'react';
import { useLanguage } from '../kit/use-language.ts';
import { railText } from '../pages/workshop/rail/rail-text.ts';
import { bowText } from '../speech/bow.ts';
import { METHOD_WORDS, PICTURE_WORDS, VIEW_WORDS } from '../speech/en/workshop/workshop.ts';
import { SOLVER_WORDS } from '../speech/en/workshop/solver.ts';
import { linesOf } from '../state/lines.ts';
import { useFollowed } from '../state/follow.ts';
import { store, useBackbow, type BackbowState } from '../state/store.ts';
import { drawnBowFactor } from '../state/view-slice.ts';

function describe(state: BackbowState): string {
  const { solution, unitSystem, view, rail } = state;
  const build = solution?.build ?? state.build;
  const lines = linesOf(state);
  const missing = state.notComputed?.what === 'prediction' ? SOLVER_WORDS.notComputed : '';
  const bow = lines ? bowText(lines[build.method].extremeMm, unitSystem) : missing;
  const factor = drawnBowFactor(state);
  return PICTURE_WORDS.description(
    build.name,
    VIEW_WORDS[view].says,
    railText(build, rail, solution?.prediction),
    bow,
    METHOD_WORDS[build.method].label,
    factor === 1 ? PICTURE_WORDS.trueShown : PICTURE_WORDS.shown(String(factor)),
  );
}

/** The description for the picture's own label: it follows build and view, not every step of the rail. */
export function useDescription(): string {
  const solution = useFollowed((state) => state.solution);
  const notComputed = useBackbow((state) => state.notComputed);
  const view = useBackbow((state) => state.view);
  const units = useBackbow((state) => state.unitSystem);
  const language = useLanguage();
  // The rail is read, not followed: following it would render the scene at every step.
  // oxlint-disable-next-line react/exhaustive-deps
  return useMemo(() => describe(store.getState()), [solution, notComputed, view, units, language]);
}

export { describe as describePicture };
