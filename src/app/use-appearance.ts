/** Light or dark, as chosen or as the system says; and the palette for the picture. */
import { useLayoutEffect } from 'react';
import type { ScenePalette } from '../scene/types.ts';
import { useMedia } from '../kit/use-media.ts';
import { useBackbow } from '../state/store.ts';
import { DARK, LIGHT } from './palettes.ts';

export function useAppearance(): ScenePalette {
  const appearance = useBackbow((state) => state.appearance);
  const systemIsDark = useMedia('(prefers-color-scheme: dark)');
  useLayoutEffect(() => {
    if (appearance === 'system') delete document.documentElement.dataset['appearance'];
    else document.documentElement.dataset['appearance'] = appearance;
  }, [appearance]);
  const isDark = appearance === 'system' ? systemIsDark : appearance === 'dark';
  return isDark ? DARK : LIGHT;
}
