/** Changing the words of a written recipe: what is changed, and that all the rest stays, to the letter. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { areasOf } from "../../src/recipe/area-tree.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { retyped, withPattern, writtenLabels } from "../../src/recipe/retype.ts";

const FOLDER = join(import.meta.dirname, "../../content/patterns");
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith(".md"));
const textOf = (name: string) => readFileSync(join(FOLDER, name), "utf8");
const read = (text: string) => {
  const reading = readRecipe({ path: "patterns/own.md", text });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
};

/** The recipe without its words and their places. */
const shapeOf = ({ attempts }: ReturnType<typeof read>) =>
  JSON.stringify(attempts, (key, value) =>
    ["label", "labelParts", "place", "at"].includes(key) ? undefined : value,
  );

const HENS = `---
# counted each evening
title: Hens   # the yard's
purpose: tracker
page:
  rows:
    leftover: Hens   # they need the room
    tracks:
      - {label: Hens, steps: 2}
      - columns: {count: 2, labels: [Hens, "Eggs, brown"]}
      - label: |
          Notes
        fill: lines
---
Hens and eggs.
`;

describe("the labels of a recipe", () => {
  it("are told once each, as written, in the file's order", () => {
    expect(writtenLabels(HENS)).toEqual(["Hens", "Eggs, brown", "Notes\n"]);
  });

  it("of a dated one are those with words of their own", () => {
    const text =
      '---\ntitle: W\npurpose: week\ndates: week\npage: {columns: {tracks: [{label: "{day}"}, {label: "Week {week}"}, {label: Walk}, {label: "{weekday} {day}"}]}}\n---\n';
    expect(writtenLabels(text)).toEqual(["Week {week}", "Walk"]);
  });

  it("of an undated one may have braces", () => {
    const text =
      '---\ntitle: W\npurpose: week\npage: {columns: {count: 1, labels: ["{a}"]}}\n---\n';
    expect(writtenLabels(text)).toEqual(["{a}"]);
  });
});

describe("a recipe with other words", () => {
  it("has them wherever the label stood, and nothing else is changed", () => {
    const labels = new Map([
      ["Hens", "Sleep: well, or not"],
      ["Notes\n", "Remarks"],
    ]);
    expect(retyped(HENS, { title: "Nights", labels })).toBe(
      HENS.replace("title: Hens ", "title: Nights ")
        .replace("leftover: Hens", 'leftover: "Sleep: well, or not"')
        .replace("{label: Hens,", '{label: "Sleep: well, or not",')
        .replace("[Hens,", '["Sleep: well, or not",')
        .replace("|\n          Notes\n", "Remarks\n"),
    );
  });

  it.each([
    ["7", '"7"'],
    ["true", '"true"'],
    ["null", '"null"'],
    ["", '""'],
    ["# no", '"# no"'],
    ["Ei", "Ei"],
    ["- x", '"- x"'],
    ['say "so"', '"say \\"so\\""'],
  ])("may have %j, which is written as %s", (word, written) => {
    const text = retyped(HENS, { labels: new Map([["Eggs, brown", word]]) });
    expect(text).toBe(HENS.replace('"Eggs, brown"', written));
  });

  it("keeps a byte order mark and the line ends of Windows", () => {
    const text = `\uFEFF${HENS.replaceAll("\n", "\r\n")}`;
    const next = retyped(text, { title: "Nights" });
    expect(next).toBe(text.replace("title: Hens", "title: Nights"));
  });

  it.each(FILES)("of the demo book reads as %s but for its words", (name) => {
    const text = textOf(name);
    const before = read(text);
    const labels = new Map(writtenLabels(text).map((label, index) => [label, `Word ${index}`]));
    const after = read(retyped(text, { title: "Another", labels }));
    expect(after.title).toBe("Another");
    const areas = ({ attempts }: typeof before) => attempts.flatMap(areasOf);
    expect(areas(after).map(({ label }) => label)).toEqual(
      areas(before).map(({ label }) => labels.get(label) ?? label),
    );
    expect(shapeOf(after)).toBe(shapeOf(before));
    expect(retyped(text, {})).toBe(text);
  });
});

describe("a pattern under another file name", () => {
  it.each([
    [
      "a strip",
      "---\ntitle: week # week\nacross: [week, {pattern: week, uses: 3}, {title: week, split: 2}]\ndown:\n  - week\n---\nweek\n",
      "---\ntitle: week # week\nacross: [week-2, {pattern: week-2, uses: 3}, {title: week, split: 2}]\ndown:\n  - week-2\n---\nweek\n",
    ],
    [
      "a set-up",
      "---\ntitle: M\npages: [week, {each: week, pages: [week]}]\nfill: week\n---\n",
      "---\ntitle: M\npages: [week-2, {each: week, pages: [week-2]}]\nfill: week-2\n---\n",
    ],
  ])("is named so by %s", (_, text, expected) => {
    expect(withPattern(text, "week", "week-2")).toBe(expected);
  });
});
