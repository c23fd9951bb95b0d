/** Turns offsets into a stretch of YAML into places in its file. */
import type { LineCounter } from "yaml";
import type { Place } from "../../issue/facts/place.ts";

/** The place from one offset up to another; it never goes beyond the end of its line. */
export type PlaceFinder = (from: number, to?: number) => Place;

/** The finder of one stretch of YAML; its first line is line `firstLine` of the file. */
export function placeFinder(
  source: { readonly path: string; readonly text: string; readonly firstLine: number },
  counter: LineCounter,
): PlaceFinder {
  const end = source.text.length;
  return (from, to = from + 1) => {
    const start = Math.min(Math.max(from, 0), end);
    const { line, col } = counter.linePos(start);
    const newline = source.text.indexOf("\n", start);
    const lineEnd = newline < 0 ? end : newline;
    return {
      file: source.path,
      line: source.firstLine + Math.max(line, 1) - 1,
      column: Math.max(col, 1),
      width: Math.max(1, Math.min(to, lineEnd) - start),
    };
  };
}
