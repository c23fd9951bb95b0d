/** Reads what a wrong file should be told: lines of `#!` right above the faulty line, or below all for its first line. */

export interface Expected {
  readonly line: number;
  /** The characters that the carets mark. */
  readonly marked: string;
  /** The sentence, then the hint if there is one. */
  readonly said: readonly string[];
}

const NOTE = /^\s*#! ?/;

/** The file without its expectations; blank lines stand in for them, so that line numbers stay true. */
export function withoutExpectations(text: string): string {
  return text
    .split("\n")
    .map((line) => (NOTE.test(line) ? "" : line))
    .join("\n");
}

/** The expectations in the order of their lines. A group begins with the marked text: `#! >colum<`. */
export function expectedIssues(text: string): readonly Expected[] {
  const lines = text.split("\n");
  const groups: { line: number; marked: string; said: string[] }[] = [];
  lines.forEach((line, index) => {
    if (!NOTE.test(line)) return;
    const note = line.replace(NOTE, "");
    const marked = note.match(/^>(.*)<$/)?.[1];
    if (marked === undefined) groups.at(-1)?.said.push(note);
    else groups.push({ line: faultyLine(lines, index), marked, said: [] });
  });
  return groups.sort((a, b) => a.line - b.line);
}

function faultyLine(lines: readonly string[], from: number): number {
  const below = lines.findIndex((line, index) => index > from && !NOTE.test(line) && line !== "");
  return below < 0 ? 1 : below + 1;
}
