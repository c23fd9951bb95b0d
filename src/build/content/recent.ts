/** What the last round worked out, by what it was worked out from: little things that each edit would ask for again. */

export interface Recent<Value> {
  /** The value of this or the last round, or `make()` where there is none. */
  take(key: string, make: () => Value): Value;
  /** Ends a round: what it did not ask for is let go of. */
  settle(): void;
}

/** Knows nothing at first. */
export function openRecent<Value>(): Recent<Value> {
  let before: ReadonlyMap<string, { readonly value: Value }> = new Map();
  let now = new Map<string, { readonly value: Value }>();
  return {
    take: (key, make) => {
      const known = now.get(key) ?? before.get(key) ?? { value: make() };
      now.set(key, known);
      return known.value;
    },
    settle: () => {
      before = now;
      now = new Map();
    },
  };
}
