/** What has to be said of a kerf: slots that are cut at another one than the way of seating works with. */
import type { Build } from '../neck/build.ts';
import { workingKerfMm } from '../neck/kerf.ts';
import type { UnitSystem } from '../neck/units.ts';
import { KERF_WORDS } from './en/workshop/controls.ts';
import { formatQuantity } from './quantity.ts';

/** Nothing where the slots are cut at the kerf that is worked with. */
export function kerfNote(build: Build, system: UnitSystem): string {
  if (workingKerfMm(build, build.method) === build.kerfMm) return '';
  const cut = formatQuantity(build.kerfMm, 'mm', 3, system);
  return build.job === 'refret' ? KERF_WORDS.openOld(cut) : KERF_WORDS.asWideAsStuds(cut);
}
