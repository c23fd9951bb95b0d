/** Things to be made that several threads share: each takes the next one until none is left. */

export interface WorkQueue<Item> {
  readonly items: readonly Item[];
  /** One number that all threads see: how many are taken. */
  readonly taken: SharedArrayBuffer;
}

/** A queue of which nothing is taken. */
export function openWorkQueue<Item>(items: readonly Item[]): WorkQueue<Item> {
  return { items, taken: new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT) };
}

/** Takes one after another, with its place in the queue; nobody else gets the same. */
export function* takeFrom<Item>({
  items,
  taken,
}: WorkQueue<Item>): Iterable<readonly [number, Item]> {
  const count = new Int32Array(taken);
  for (;;) {
    const index = Atomics.add(count, 0, 1);
    const item = items[index];
    if (item === undefined) return;
    yield [index, item];
  }
}

/** Nobody takes another one. */
export function closeWorkQueue({ items, taken }: WorkQueue<unknown>): void {
  Atomics.store(new Int32Array(taken), 0, items.length);
}
