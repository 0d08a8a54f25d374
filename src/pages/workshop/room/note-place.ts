/** A note in the grid, and where the keys lead from it. */
export interface NotePlace {
  /** 0 = the highest. */
  readonly string: number;
  /** 0 = open. */
  readonly note: number;
}

interface Key {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

/** The note that a key leads to, at the edge the same one; null where the key is not one of the grid's. */
export function stepTo(
  { key, ctrlKey, altKey, metaKey }: Key,
  { string, note }: NotePlace,
  { strings, notes }: { readonly strings: number; readonly notes: number },
): NotePlace | null {
  if (altKey || metaKey) return null;
  switch (key) {
    case 'ArrowLeft':
      return { string, note: Math.max(0, note - 1) };
    case 'ArrowRight':
      return { string, note: Math.min(notes - 1, note + 1) };
    case 'ArrowUp':
      return { string: Math.max(0, string - 1), note };
    case 'ArrowDown':
      return { string: Math.min(strings - 1, string + 1), note };
    case 'Home':
      return { string: ctrlKey ? 0 : string, note: 0 };
    case 'End':
      return { string: ctrlKey ? strings - 1 : string, note: notes - 1 };
    default:
      return null;
  }
}
