/**
 * Puts a backup in beside what is here. Each part goes in whole or not at all; where one does not go in the others still
 * do, and it is said. Nothing that is here is lost, so that after a failure or a crash it can simply be done again: what
 * has come in is then here already.
 */
import { troubleOf } from '../device/trouble.ts';
import type { SoundBackup } from './backup-file.ts';
import { NewerRecord, type Added, type PartId, type PartTrouble, type Tally } from './part.ts';

/** What becomes of one part. */
export type PartOutcome =
  | { readonly id: PartId; readonly ok: true; readonly tally: Tally }
  | { readonly id: PartId; readonly ok: false; readonly trouble: PartTrouble };

export interface Restored {
  readonly outcomes: readonly PartOutcome[];
  /** Takes out what came in, the last part first. @returns what could not be taken out */
  readonly takeBack: () => Promise<readonly PartId[]>;
}

const troubleIn = (error: unknown): PartTrouble => (error instanceof NewerRecord ? 'newer' : troubleOf(error));

/** What restoring would do now; it changes nothing. Parts of which the file holds nothing are left out. */
export async function foresee({ parts }: SoundBackup): Promise<readonly PartOutcome[]> {
  const outcomes: PartOutcome[] = [];
  for (const { id, count, foresee: foreseen } of parts) {
    if (count === 0) continue;
    try {
      outcomes.push({ id, ok: true, tally: await foreseen() });
    } catch (error) {
      outcomes.push({ id, ok: false, trouble: troubleIn(error) });
    }
  }
  return outcomes;
}

export async function restore({ parts }: SoundBackup): Promise<Restored> {
  const outcomes: PartOutcome[] = [];
  const added: (Added & { readonly id: PartId })[] = [];
  for (const { id, count, add } of parts) {
    if (count === 0) continue;
    try {
      const part = await add();
      outcomes.push({ id, ok: true, tally: part.tally });
      added.push({ ...part, id });
    } catch (error) {
      outcomes.push({ id, ok: false, trouble: troubleIn(error) });
    }
  }
  return {
    outcomes,
    takeBack: async () => {
      const stuck: PartId[] = [];
      for (const { id, takeBack } of added.toReversed()) {
        try {
          await takeBack();
        } catch {
          stuck.push(id);
        }
      }
      return stuck;
    },
  };
}
