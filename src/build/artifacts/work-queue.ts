/** Things to be made that several threads share: each takes the next one until none is left. */

export interface Lot<Item> {
  readonly items: readonly Item[];
  /** One number that all threads see: how many are taken. */
  readonly taken: SharedArrayBuffer;
}

/** A lot of which nothing is taken. */
export function openLot<Item>(items: readonly Item[]): Lot<Item> {
  return { items, taken: new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT) };
}

/** Takes one after another, with its place in the lot; nobody else gets the same. */
export function* takeFrom<Item>({ items, taken }: Lot<Item>): Iterable<readonly [number, Item]> {
  const count = new Int32Array(taken);
  for (;;) {
    const index = Atomics.add(count, 0, 1);
    const item = items[index];
    if (item === undefined) return;
    yield [index, item];
  }
}

/** Nobody takes another one. */
export function closeLot({ items, taken }: Lot<unknown>): void {
  Atomics.store(new Int32Array(taken), 0, items.length);
}
