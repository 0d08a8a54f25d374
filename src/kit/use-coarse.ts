/** Is the page used with fingers? Then sliders have steppers beside them. */
import { useMedia } from './use-media.ts';

export function useCoarse(): boolean {
  return useMedia('(pointer: coarse)');
}
