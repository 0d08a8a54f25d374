/**
 * Measurements under another law of the grip: what a stud of one shape does with a bite factor c, a stud of another does with
 *
 *   c′ = c·g(β)/g′(β)        g: share of its full grip at the bite β of the entry's wire in its kerf (seating/contact.ts)
 *
 * What a slot opens under its own frets, a tenth of the bite, is left out on both sides. Where an entry does not say its wire
 * or kerf, those of the standard build stand in.
 */
import { defaultBuild, type Build } from '../../neck/build.ts';
import { EARLIER_GRIP } from '../../neck/file.ts';
import { gripShare } from '../seating/contact.ts';
import type { EntryContent } from './entry.ts';

/** Shape of the studs, and the bite over which the pressure under them rises, mm. */
export type GripLaw = Pick<Build, 'studShape' | 'studSoftnessMm'>;

const standard = defaultBuild();
export const STANDARD_LAW: GripLaw = {
  studShape: standard.studShape,
  studSoftnessMm: standard.studSoftnessMm,
};

function shareUnder(law: GripLaw, entry: EntryContent): number {
  const stud = entry.studWidthMm ?? standard.studWidthMm;
  const studHeightMm = (stud - (entry.tangWidthMm ?? standard.tangWidthMm)) / 2;
  const contact = { studHeightMm, studShape: law.studShape, embeddingLengthMm: law.studSoftnessMm };
  return gripShare(contact, (stud - (entry.kerfMm ?? standard.kerfMm)) / 2);
}

/** The entry as if it had been predicted under a law: the same prediction, with the bite factor that gives it there. */
export function underLaw<Entry extends EntryContent>(law: GripLaw, entry: Entry): Entry {
  const own: GripLaw = {
    studShape: entry.studShape ?? EARLIER_GRIP.studShape,
    studSoftnessMm: entry.embeddingLengthMm ?? EARLIER_GRIP.studSoftnessMm,
  };
  const [before, after] = [shareUnder(own, entry), shareUnder(law, entry)];
  // Studs that do not bite say nothing of the law.
  if (before === after || after === 0) return entry;
  return { ...entry, biteFactor: (entry.biteFactor * before) / after };
}
