/** A pattern that asks for the moon in a book without a clock is told at each such label, as its author wrote it. */
import { describe, expect, it } from "vitest";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { moonWithoutOffset } from "../../src/recipe/moon-without-offset.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";

const FILE = {
  path: "patterns/moon.md",
  text: `---
title: Moon
purpose: month
dates: month
page:
  columns: {count: days, each: {label: "{moon}"}}
otherwise:
  - page: {label: "Moon: {moon}"}
  - page: {label: "{{moon}"}
---
`,
};

describe("a label that asks for the moon", () => {
  const reading = readRecipe(FILE);
  const issues = reading.ok ? moonWithoutOffset(reading.value) : [];

  it("is told at its place, once", () => {
    const places = issues.map(({ at }) => `${at.line}:${at.column}`);
    expect(places).toEqual(["6:40", "8:19"]);
  });

  it("is told with a remedy", () => {
    expect(issues.map(sayIssue)[0]).toEqual({
      sentence: "The date of a full moon depends on the time zone, and this book names none.",
      hint: 'Add `calendar: {utcOffset: "+00:00"}` to `book.yaml`, with the hours that your clock is ahead of UTC, or leave `{moon}` out.',
    });
  });
});
