/** Keeps what is known of references to strips and readings up to date, from the first that was asked for. */
import type { GripHere, GripsHere } from '../../mechanics/bench-log/standing.ts';
import { resolveGrip } from '../../mechanics/neck-readings/grip-reference.ts';
import type { GripReference } from '../../neck/bite-reference.ts';
import type { BackbowState } from '../store.ts';
import { stripStore } from './strip-store.ts';

interface Following {
  readonly get: () => BackbowState;
  readonly set: (change: Partial<BackbowState>) => void;
  readonly subscribe: (told: (state: BackbowState, before: BackbowState) => void) => void;
  readonly references: readonly GripReference[];
}

/** Everything that was asked for, by the page's own store. */
const followed = new Map<() => BackbowState, Map<string, GripReference>>();

function standing({ get }: Pick<Following, 'get'>, reference: GripReference): GripHere {
  const { acceptedGrips, benchLog } = get();
  const accepted = acceptedGrips.find(({ hash }) => hash === reference.hash);
  // A link names none: those that go with its hash are known where it was accepted.
  const documents = reference.documents.length > 0 ? reference.documents : (accepted?.documents ?? []);
  const resolved = resolveGrip(documents, stripStore.now().items ?? [], benchLog ?? []);
  if (resolved.code === 'here') return { ...resolved, accepted: accepted !== undefined };
  // What was accepted here was here: it has been deleted since.
  const isGone = resolved.code === 'not-here' && accepted !== undefined;
  return isGone ? { code: 'changed', gone: documents.length, edited: 0 } : resolved;
}

function lookAgain({ get, set }: Pick<Following, 'get' | 'set'>): void {
  const references = followed.get(get);
  if (!references || get().benchLog === null || stripStore.now().items === null) return;
  const found: GripsHere = Object.fromEntries(
    [...references.values()].map((reference) => [reference.hash, standing({ get }, reference)]),
  );
  if (JSON.stringify(found) !== JSON.stringify(get().gripsHere)) set({ gripsHere: found });
}

/** Resolves when they have been looked up. */
export async function followGrips({ get, set, subscribe, references }: Following): Promise<void> {
  const known = followed.get(get);
  const all = known ?? new Map<string, GripReference>();
  for (const reference of references) all.set(reference.hash, reference);
  followed.set(get, all);
  if (!known) {
    await Promise.all([stripStore.read(), get().benchLog === null ? get().readBenchLog() : undefined]);
    stripStore.watch(() => lookAgain({ get, set }));
    subscribe((state, before) => {
      if (state.benchLog !== before.benchLog || state.acceptedGrips !== before.acceptedGrips) lookAgain({ get, set });
    });
  }
  lookAgain({ get, set });
}
