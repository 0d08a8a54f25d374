/** Keeps the latest few values by key; the least recently used goes first. */
export class LatestCache<Value> {
  readonly #values = new Map<string, Value>();
  readonly #most: number;

  constructor(most: number) {
    this.#most = most;
  }

  get(key: string, make: () => Value): Value {
    const known = this.#values.get(key);
    const value = known ?? make();
    this.#values.delete(key);
    this.#values.set(key, value);
    if (this.#values.size > this.#most) this.#values.delete(this.#values.keys().next().value!);
    return value;
  }
}
