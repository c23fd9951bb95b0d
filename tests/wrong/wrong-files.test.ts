import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Issue } from "../../src/issue/facts/issue.ts";
import type { Reading, TextFile } from "../../src/issue/facts/reading.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { readBook } from "../../src/recipe/read/read-book.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { readWords } from "../../src/recipe/read/read-words.ts";
import { type Expected, expectedIssues, withoutExpectations } from "./expected-problems.ts";

type Read = (file: TextFile) => Reading<unknown>;

const FOLDERS: readonly (readonly [folder: string, read: Read, atLeast: number])[] = [
  ["patterns", readRecipe, 36],
  ["notebooks", readNotebook, 10],
  ["strips", readStripRecipe, 4],
  ["setups", readSetup, 5],
  ["books", readBook, 5],
  ["words", readWords, 2],
];

describe.each(FOLDERS)("wrong %s", (folder, read, atLeast) => {
  const directory = new URL(`${folder}/`, import.meta.url);
  const names = readdirSync(directory).sort();

  it(`are at least ${atLeast}`, () => {
    expect(names.length).toBeGreaterThanOrEqual(atLeast);
  });

  it.each(names)("%s is told what is wrong with it", (name) => {
    const written = readFileSync(new URL(name, directory), "utf8");
    const expected = expectedIssues(written);
    expect(expected.length).toBeGreaterThan(0);
    const file = { path: `${folder}/${name}`, text: withoutExpectations(written) };
    const reading = read(file);
    const issues = reading.ok ? [] : reading.issues;
    expect(toldAbout(file, issues)).toEqual(expected);
    expectReport(file, issues, expected);
  });
});

/** The problems as they are expected: by line, then by column. */
function toldAbout(file: TextFile, issues: readonly Issue[]): readonly Expected[] {
  const lines = file.text.split("\n");
  const sorted = [...issues].sort((a, b) => a.at.line - b.at.line || a.at.column - b.at.column);
  return sorted.map((issue) => {
    const { line, column, width } = issue.at;
    const { sentence, hint } = sayIssue(issue);
    const start = column - 1;
    const marked = (lines[line - 1] ?? "").slice(start, start + width);
    return { line, marked, said: hint === undefined ? [sentence] : [sentence, hint] };
  });
}

/** The report has every place and every sentence, in order, and counts them. */
function expectReport(
  file: TextFile,
  issues: readonly Issue[],
  expected: readonly Expected[],
): void {
  const report = reportIssues(issues, new Map([[file.path, file.text]]));
  const wanted = expected.flatMap(({ line, said }) => [`${file.path}:${line}:`, ...said]);
  let from = 0;
  for (const part of wanted) {
    const found = report.indexOf(part, from);
    expect(found, `${part} is missing in\n${report}`).toBeGreaterThanOrEqual(0);
    from = found + part.length;
  }
  const count = expected.length === 1 ? "1 problem" : `${expected.length} problems`;
  expect(report.endsWith(`\n\n${count} in 1 file.`)).toBe(true);
}
