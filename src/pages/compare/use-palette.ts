/** Colours of the page for a picture inside a panel: read from the page itself, so that they are those around it. */
import { useEffect, useState } from 'react';
import type { ScenePalette } from '../../scene/types.ts';

/** "rgb(244, 239, 228)" → "#f4efe4". */
function hexOf(colour: string): string {
  const parts = colour.match(/\d+(\.\d+)?/g) ?? [];
  const bytes = parts.slice(0, 3).map((part) => Math.round(Number(part)).toString(16).padStart(2, '0'));
  return `#${bytes.join('')}`;
}

function read(): ScenePalette {
  const sample = document.createElement('span');
  document.body.append(sample);
  const colourOf = (name: string): string => {
    sample.style.color = `var(${name})`;
    return hexOf(getComputedStyle(sample).color);
  };
  const [ground, ink, accent] = ['--ground', '--ink', '--accent'].map(colourOf) as [string, string, string];
  sample.remove();
  const light = (colour: string) => Number.parseInt(colour.slice(3, 5), 16);
  return { ground, ink, accent, dark: light(ground) < light(ink) };
}

export function usePalette(): ScenePalette {
  const [palette, setPalette] = useState(read);
  useEffect(() => {
    const dark = matchMedia('(prefers-color-scheme: dark)');
    const look = () => setPalette(read());
    dark.addEventListener('change', look);
    return () => dark.removeEventListener('change', look);
  }, []);
  return palette;
}
