import { describe, expect, it } from "vitest";
import type { Issue } from "../../src/issue/facts/issue.ts";
import { issueLines, reportIssues } from "../../src/issue/report/report.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";

/** The report of one recipe. */
function reportOn(path: string, text: string): string {
  const reading = readRecipe({ path, text });
  return reading.ok ? "" : reportIssues(reading.issues, new Map([[path, text]]));
}

describe("a report", () => {
  it("shows the place, the line, the sentence and the hint", () => {
    const text = `---
title: Seed list
purpose: list
page:
  columns: {count: 4, gap: 1, colum: 3}
---
`;
    expect(reportOn("patterns/seed-list.md", text)).toBe(
      `patterns/seed-list.md:5:31
  columns: {count: 4, gap: 1, colum: 3}
                              ^^^^^
  \`colum\` is not a key of a split.
  Did you mean \`count\`? A split has count, tracks, each, labels, gap, leftover, from, to, least.

1 problem in 1 file.`,
    );
  });

  it("sorts by file, line and column, and counts", () => {
    const at = (file: string, line: number, column: number): Issue => ({
      about: "yaml",
      kind: "tab",
      at: { file, line, column, width: 1 },
    });
    const issues = [at("b.md", 1, 1), at("a.md", 10, 1), at("a.md", 2, 9), at("a.md", 2, 3)];
    const report = reportIssues(issues, new Map());
    expect(report.match(/^\w\.md.*$/gm)).toEqual(["a.md:2:3", "a.md:2:9", "a.md:10:1", "b.md:1:1"]);
    expect(report.endsWith("\n\n4 problems in 2 files.")).toBe(true);
  });

  it("is a line for each in an editor's list, whatever stands in a name", () => {
    const issues: readonly Issue[] = [
      { about: "yaml", kind: "tab", at: { file: "b.md", line: 2, column: 3, width: 1 } },
      {
        about: "file",
        kind: "bad-name",
        name: "a\nb.md",
        better: "a-b.md",
        at: { file: "patterns/a\nb.md", line: 1, column: 1, width: 0 },
      },
    ];
    const lines = issueLines(issues, (file) => `/book/${file}`);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^\/book\/b\.md:2:3: \S.*$/);
    expect(lines[1]).toMatch(/^\/book\/patterns\/a.*b\.md:1:1: \S.*$/);
  });

  it("does not change with the order of the problems", () => {
    const text = "---\ntitel: A\npurpose: x\npage: {rows: 0, colums: 2}\n---\n";
    const reading = readRecipe({ path: "patterns/a.md", text });
    const issues = reading.ok ? [] : reading.issues;
    expect(issues.length).toBe(4);
    const texts = new Map([["patterns/a.md", text]]);
    expect(reportIssues([...issues].reverse(), texts)).toBe(reportIssues(issues, texts));
  });

  it("names no line where a file as a whole is meant", () => {
    const issue: Issue = {
      about: "file",
      kind: "bad-name",
      name: "Seed List.md",
      better: "seed-list.md",
      at: { file: "patterns/Seed List.md", line: 1, column: 1, width: 0 },
    };
    const texts = new Map([["patterns/Seed List.md", "---\n"]]);
    expect(reportIssues([issue], texts).split("\n").slice(0, 2)).toEqual([
      "patterns/Seed List.md",
      "  `Seed List.md` is not a name that a page can have.",
    ]);
  });

  it.each([
    ["a byte order mark", "\uFEFF---\ntitle: A\npurpose: day\npage: {rows: none}\n---\n"],
    ["Windows line ends", "---\r\ntitle: A\r\npurpose: day\r\npage: {rows: none}\r\n---\r\n"],
    ["old line ends", "---\rtitle: A\rpurpose: day\rpage: {rows: none}\r---\r"],
  ])("finds the line in a file with %s", (_, text) => {
    const lines = reportOn("patterns/a.md", text).split("\n").slice(0, 3);
    expect(lines).toEqual(["patterns/a.md:4:14", "  page: {rows: none}", "               ^^^^"]);
  });

  it("stops after 50 problems of one file, and says so", () => {
    const tracks = Array.from({ length: 60 }, () => "- {step: 1}").join("\n      ");
    const text = `---\ntitle: A\npurpose: day\npage:\n  rows:\n    tracks:\n      ${tracks}\n---\n`;
    const report = reportOn("patterns/a.md", text);
    expect(report.match(/is not a key of a track/g)?.length).toBe(50);
    expect(report).toContain(
      "\n\npatterns/a.md\n  … and 10 more in this file.\n\n60 problems in 1 file.",
    );
  });

  it("never lets a written text end its quotation", () => {
    const text = '---\ntitle: A\npurpose: "a`b\\u001b[31m"\npage: {rows: 3}\n---\n';
    expect(reportOn("patterns/a.md", text)).toContain("`purpose` cannot be `a'b\\u{1b}[31m`.");
  });
});
