/** The id of whatever lies in a stored list; undefined where it has none. */
export const idOf = (value: unknown): unknown =>
  typeof value === 'object' && value !== null ? (value as { id?: unknown }).id : undefined;
