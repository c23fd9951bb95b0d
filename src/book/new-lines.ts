/** Which lines of an example are new since the example before it: a tutorial grows a line at a time. */

/** Their indexes from 0. How far a line stands in does not count; a line that is there twice is new once. */
export function newLines(before: string, after: string): readonly number[] {
  const left = new Map<string, number>();
  for (const line of linesOf(before)) left.set(line, (left.get(line) ?? 0) + 1);
  return linesOf(after).flatMap((line, index) => {
    const count = left.get(line) ?? 0;
    left.set(line, count - 1);
    return count > 0 ? [] : [index];
  });
}

function linesOf(text: string): readonly string[] {
  return text
    .trimEnd()
    .split("\n")
    .map((line) => line.trim());
}
