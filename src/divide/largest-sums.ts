/** Which sums the share tracks of a split can make, whatever the gap. */
import type { Kind } from "./alike-tracks.ts";

/**
 * For each number of spare steps from 0 to `most`: the largest sum, not above it, that the kinds can take beyond
 * their minimums. A kind takes `count` steps at a time, at most `max − min` times. Counting how often the newest
 * kind was used keeps this at one pass of `most` steps a kind.
 */
export function largestSums(kinds: readonly Kind[], most: number): readonly number[] {
  const reached = new Uint8Array(most + 1);
  reached[0] = 1;
  for (const kind of kinds) addKind(reached, kind.count, kind.max - kind.min);
  let largest = 0;
  return Array.from(reached, (hit, sum) => {
    if (hit) largest = sum;
    return largest;
  });
}

function addKind(reached: Uint8Array, stride: number, times: number): void {
  const used = new Uint16Array(reached.length);
  for (let sum = stride; sum < reached.length; sum++) {
    if (reached[sum] || !reached[sum - stride]) continue;
    const next = (used[sum - stride] ?? 0) + 1;
    if (next > times) continue;
    reached[sum] = 1;
    used[sum] = next;
  }
}
