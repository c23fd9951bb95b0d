/** Whatever is written, reading it ends, soon, with a value or with problems that lie inside the file. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Issue } from "../../src/issue/facts/issue.ts";
import type { Reading, TextFile } from "../../src/issue/facts/reading.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { readBook } from "../../src/recipe/read/read-book.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { readWords } from "../../src/recipe/read/read-words.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";
import { PROJECT } from "../setup/run-command.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

type Read = (file: TextFile) => Reading<unknown>;

const SEED = 20_270_501;

/** How each kind is read, and the valid texts of it, which the mutations start from. */
const KINDS: readonly (readonly [name: string, texts: readonly string[], read: Read])[] = [
  ["patterns", textsOf("patterns"), readRecipe],
  ["notebooks", textsOf("notebooks"), readNotebook],
  ["strips", textsOf("strips"), readStripRecipe],
  ["books", [readFileSync(`${PROJECT}content/book.yaml`, "utf8")], readBook],
  ["words", [readFileSync(`${PROJECT}content/general/words.yaml`, "utf8")], readWords],
];

function textsOf(kind: "patterns" | "notebooks" | "strips"): readonly string[] {
  return demoNames(kind).map((name) => demoText(`${kind}/${name}`));
}

function expectSound(read: Read, text: string): void {
  const file = { path: "patterns/a.md", text };
  const reading = read(file);
  const issues = reading.ok ? [] : reading.issues;
  if (!reading.ok) expect(issues.length).toBeGreaterThan(0);
  for (const issue of issues) expectInside(issue, text);
  if (issues.length > 0) expect(reportIssues(issues, new Map([[file.path, text]]))).not.toBe("");
}

function expectInside({ at }: Issue, text: string): void {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n?|\n/);
  const line = lines[at.line - 1];
  expect(line, `line ${at.line} of ${lines.length}`).toBeDefined();
  expect(at.column).toBeGreaterThanOrEqual(1);
  expect(at.column).toBeLessThanOrEqual((line ?? "").length + 1);
  expect(at.width).toBeGreaterThanOrEqual(1);
}

/** Pieces of which YAML is made, and what does not belong in it. */
const PIECES = [
  ": ",
  "- ",
  "? ",
  "{",
  "}",
  "[",
  "]",
  ",",
  "\n",
  "\n  ",
  "\t",
  "#",
  "&a ",
  "*a",
  "!",
  "|\n",
  ">\n",
  "'",
  '"',
  "\\",
  "%",
  "@",
  "---\n",
  "...\n",
  "<<: ",
  "\r\n",
  "\u0000",
  "\ufeff",
  "\u202e",
  "\ud800",
  "😀",
  "title",
  "page",
  "rows",
  "columns",
  "count",
  "tracks",
  "share",
  "same",
  "steps",
  "min",
  "max",
  "margin",
  "gap",
  "otherwise",
  "-1",
  "0",
  "1e9",
  ".inf",
  ".nan",
  "0.005",
  "null",
  "true",
  "999999999999999999999",
  "__proto__: ",
  "constructor: ",
  "toString: ",
] as const;

const piece = fc.constantFrom(...PIECES);

/** A text with some of its stretches taken out, doubled or replaced. */
function mutations(texts: readonly string[]): fc.Arbitrary<string> {
  const edit = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.nat(12),
    put: fc.array(piece, { maxLength: 3 }),
    isDoubled: fc.boolean(),
  });
  return fc
    .record({
      text: fc.constantFrom(...texts),
      edits: fc.array(edit, { minLength: 1, maxLength: 4 }),
    })
    .map(({ text, edits }) =>
      edits.reduce((so, { at, length, put, isDoubled }) => {
        const from = Math.floor(at * so.length);
        const taken = so.slice(from, from + length);
        return (
          so.slice(0, from) + (isDoubled ? taken + taken : put.join("")) + so.slice(from + length)
        );
      }, text),
    );
}

describe.each(KINDS)("reading %s", (_, texts, read) => {
  it("starts from texts that are all right", () => {
    expect(texts.length).toBeGreaterThan(0);
    for (const text of texts) expect(read({ path: "a.md", text }).ok).toBe(true);
  });

  it("is sound for any text", () => {
    const any = fc.oneof(
      fc.string({ unit: "binary", maxLength: 80 }),
      fc.array(piece, { maxLength: 40 }).map((all) => all.join("")),
    );
    fc.assert(
      fc.property(any, fc.boolean(), (text, isFramed) => {
        expectSound(read, isFramed ? `---\n${text}\n---\n` : text);
      }),
      { seed: SEED, numRuns: checkRuns(400) },
    );
  });

  it("is sound for valid texts with a few slips", () => {
    fc.assert(
      fc.property(mutations(texts), (text) => expectSound(read, text)),
      { seed: SEED, numRuns: checkRuns(600) },
    );
  });

  it("is sound for the front matter alone, with many slips", () => {
    const fronts = texts.map((text) => text.match(/^---\n[\s\S]*?\n---\n/)?.[0] ?? text);
    fc.assert(
      fc.property(mutations(fronts), (text) => expectSound(read, text)),
      { seed: SEED + 1, numRuns: checkRuns(600) },
    );
  });
});
