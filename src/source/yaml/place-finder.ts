/** Turns offsets into a stretch of YAML into places in its file. */
import type { Place } from "../../issue/facts/place.ts";

/** The place from one offset up to another; it never goes beyond the end of its line. */
export type PlaceFinder = (from: number, to?: number) => Place;

/**
 * The finder of one stretch of YAML; its first line is line `firstLine` of the file. The lines are the text's own: the
 * parser counts some twice where a quotation mark is not closed.
 */
export function placeFinder(source: {
  readonly path: string;
  readonly text: string;
  readonly firstLine: number;
}): PlaceFinder {
  const { path, text, firstLine } = source;
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];
  return (from, to = from + 1) => {
    const start = Math.min(Math.max(from, 0), text.length);
    const line = lastUpTo(starts, start);
    const lineStart = starts[line] ?? 0;
    const lineEnd = (starts[line + 1] ?? text.length + 1) - 1;
    return {
      file: path,
      line: firstLine + line,
      column: start - lineStart + 1,
      width: Math.max(1, Math.min(to, lineEnd) - start),
    };
  };
}

/** The index of the last number that is no larger; the first of the ascending numbers is no larger than any. */
function lastUpTo(numbers: readonly number[], most: number): number {
  let [low, high] = [0, numbers.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((numbers[middle] ?? 0) <= most) low = middle;
    else high = middle - 1;
  }
  return low;
}
