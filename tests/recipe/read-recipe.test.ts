import { describe, expect, it } from "vitest";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Area, Recipe, Track } from "../../src/recipe/recipe.ts";

/** The recipe of a pattern whose page, and what follows it, is written so. */
function recipeOf(page: string, head = "title: A\npurpose: page"): Recipe {
  const reading = readRecipe({ path: "patterns/a.md", text: `---\n${head}\npage: ${page}\n---\n` });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

function pageOf(page: string): Area {
  const [attempt] = recipeOf(page).attempts;
  if (attempt?.kind !== "page") throw new Error("no page");
  return attempt.page;
}

/** What is written in each track, in short. */
function tracksOf(split: string): readonly string[] {
  return (pageOf(`{columns: ${split}}`).split?.tracks ?? []).map(shortly);
}

function shortly({ size, area }: Track): string {
  const label = area.label === "" ? "" : ` ${area.label}`;
  if (size.kind === "steps") return `${size.steps} steps${label}`;
  const limits = `${size.min}–${size.max}`;
  return `${size.kind === "same" ? `${size.name} ` : ""}${size.weight} ${limits}${label}`;
}

describe("a recipe", () => {
  it("has its file's name as its slug, and its text as its body", () => {
    const text = `\uFEFF---\r
title: Seed list\r
purpose: list\r
tags: [plan, 2027, spring]\r
page: {rows: 2}\r
---\r
\r
What is sown where.\r
\r
Draw it in March.\r
`;
    expect(readRecipe({ path: "patterns/seed-list.md", text })).toMatchObject({
      ok: true,
      value: {
        slug: "seed-list",
        title: "Seed list",
        purpose: "list",
        tags: ["plan", "2027", "spring"],
        body: "What is sown where.\n\nDraw it in March.",
      },
    });
  });

  it("needs neither tags nor a body", () => {
    expect(recipeOf("{}")).toMatchObject({ tags: [], body: "" });
  });

  it.each([
    ["title: 2027", "2027"],
    ["title: 2.50", "2.50"],
    ["title: yes", "yes"],
    ["title: true", "true"],
    ['title: "null"', "null"],
    ['title: "Beds: a plan"', "Beds: a plan"],
    ["title: Beds # the plan", "Beds"],
  ])("takes %j as the text %j", (title, text) => {
    expect(recipeOf("{}", `${title}\npurpose: page`).title).toBe(text);
  });
});

describe("an area", () => {
  it("is blank where nothing is written", () => {
    expect(pageOf("{}")).toEqual({ label: "", margin: { steps: {} }, fill: "blank", every: 1 });
  });

  it("has a fill every so many steps", () => {
    expect(pageOf("{fill: lines, every: 2, label: 7}")).toMatchObject({
      label: "7",
      fill: "lines",
      every: 2,
    });
  });

  it.each([
    ["3", { top: 3, bottom: 3, left: 3, right: 3 }],
    ["0", { top: 0, bottom: 0, left: 0, right: 0 }],
    ["{top: 1, inner: 2}", { top: 1, inner: 2 }],
    ["{outer: 0}", { outer: 0 }],
    ["{}", {}],
  ])("has the margin %s", (margin, steps) => {
    expect(pageOf(`{margin: ${margin}}`).margin).toEqual({
      steps,
      place: { file: "patterns/a.md", line: 4, column: 16, width: margin.length },
    });
  });

  it("is split across into columns and down into rows", () => {
    expect(pageOf("{columns: 3}").split?.axis).toBe("across");
    expect(pageOf("{rows: 3}").split?.axis).toBe("down");
  });
});

describe("a split", () => {
  it.each([
    ["3", ["100 1–Infinity", "100 1–Infinity", "100 1–Infinity"]],
    ["{count: 2}", ["100 1–Infinity", "100 1–Infinity"]],
    ["{count: 2, each: {steps: 4, label: Bed}}", ["4 steps Bed", "4 steps Bed"]],
    [
      "{count: 3, each: {steps: 4, label: Bed}, labels: [North, 2]}",
      ["4 steps North", "4 steps 2", "4 steps Bed"],
    ],
    ["{tracks: [{steps: 3}, {}, {share: 2}]}", ["3 steps", "100 1–Infinity", "200 1–Infinity"]],
    [
      "{tracks: [{steps: 3, repeat: 2, label: Bed}, {share: 0.01}]}",
      ["3 steps Bed", "3 steps Bed", "1 1–Infinity"],
    ],
    ["{tracks: [{share: 1.5, min: 2, max: 9}, {max: 4}]}", ["150 2–9", "100 1–4"]],
    [
      "{tracks: [{share: 1.1}, {share: 0.07}, {share: 10000}]}",
      ["110 1–Infinity", "7 1–Infinity", "1000000 1–Infinity"],
    ],
    ["{tracks: [{same: day, share: 2, max: 5}, {same: 7}]}", ["day 200 1–5", "7 100 1–Infinity"]],
  ])("%s", (split, tracks) => {
    expect(tracksOf(split)).toEqual(tracks);
  });

  it.each([
    ["{count: 2}", { min: 0, max: 0 }],
    ["{count: 2, gap: 0}", { min: 0, max: 0 }],
    ["{count: 2, gap: 2}", { min: 2, max: 2 }],
    ["{count: 2, gap: {max: 2}}", { min: 0, max: 2 }],
    ["{count: 2, gap: {min: 1, max: 2}}", { min: 1, max: 2 }],
  ])("%s has its gap", (split, gap) => {
    expect(pageOf(`{rows: ${split}}`).split?.gap).toEqual(gap);
  });

  it.each([
    ["{count: 2}", { kind: "end" }],
    ["{count: 2, leftover: centre}", { kind: "centre" }],
    ["{count: 2, leftover: parts}", { kind: "parts" }],
    ["{count: 2, labels: [A, B], leftover: B}", { kind: "track", index: 1 }],
    ["{count: 2, each: {label: A}, leftover: A}", { kind: "track", index: 0 }],
    ["{count: 2, labels: [start, end], leftover: end}", { kind: "end" }],
    ["{leftover: 12, tracks: [{label: 7}, {label: 12}, {label: 12}]}", { kind: "track", index: 1 }],
  ])("%s places its leftover", (split, leftover) => {
    expect(pageOf(`{rows: ${split}}`).split?.leftover).toEqual(leftover);
  });

  it("lets repeated tracks share one area, and gives labelled ones their own", () => {
    const repeated = pageOf("{rows: {tracks: [{repeat: 200, columns: 200}]}}").split?.tracks ?? [];
    expect(repeated.length).toBe(200);
    expect(new Set(repeated.map(({ area }) => area)).size).toBe(1);
    const labelled = pageOf("{rows: {count: 3, labels: [A], each: {columns: 2}}}").split?.tracks;
    const [first, second, third] = labelled ?? [];
    expect(first?.area.split).toBe(second?.area.split);
    expect(first?.area).not.toBe(second?.area);
    expect(second?.area).toBe(third?.area);
  });

  it("may lie eight deep, not nine", () => {
    const deep = (left: number): string =>
      left === 0 ? "{}" : `{rows: {count: 1, each: ${deep(left - 1)}}}`;
    expect(pageOf(deep(8)).split?.axis).toBe("down");
    expect(
      readRecipe({ path: "p/a.md", text: `---\ntitle: A\npurpose: page\npage: ${deep(9)}\n---` })
        .ok,
    ).toBe(false);
  });
});

describe("attempts", () => {
  const text = `---
title: A
purpose: month
spread:
  left: {columns: 3}
  right: {columns: 4}
otherwise:
  - spread: {left: {}, right: {fill: dots}}
  - page: {rows: 7}
---`;

  it("are what is written first, then what `otherwise` lists", () => {
    const reading = readRecipe({ path: "patterns/a.md", text });
    expect(reading.ok && reading.value.attempts.map(({ kind }) => kind)).toEqual([
      "spread",
      "spread",
      "page",
    ]);
    expect(reading).toMatchObject({
      value: {
        attempts: [{ left: { split: { axis: "across" } } }, { right: { fill: "dots" } }, {}],
      },
    });
  });
});

describe("what a recipe may hold at most", () => {
  const tracks = (count: number, track: (index: number) => string) =>
    `{rows: {tracks: [${Array.from({ length: count }, (_, index) => track(index)).join(", ")}]}}`;
  const isRead = (page: string) =>
    readRecipe({ path: "patterns/a.md", text: `---\ntitle: A\npurpose: page\npage: ${page}\n---` })
      .ok;

  it.each([
    ["200 tracks of a split", tracks(2, () => "{repeat: 100}"), tracks(2, () => "{repeat: 101}")],
    [
      "24 `same` names",
      tracks(24, (index) => `{same: n${index}}`),
      tracks(25, (index) => `{same: n${index}}`),
    ],
    [
      "a name of 40 characters",
      tracks(1, () => `{same: ${"n".repeat(40)}}`),
      tracks(1, () => `{same: ${"n".repeat(41)}}`),
    ],
    ["a label of 200 characters", `{label: ${"n".repeat(200)}}`, `{label: ${"n".repeat(201)}}`],
    ["a margin of 400 steps", "{margin: 400}", "{margin: 401}"],
    ["a gap of 400 steps", "{rows: {count: 2, gap: 400}}", "{rows: {count: 2, gap: 401}}"],
    ["a track of 400 steps", tracks(1, () => "{steps: 400}"), tracks(1, () => "{steps: 401}")],
    [
      "2,000 written areas",
      tracks(19, (index) => `{columns: {tracks: [${"{}, ".repeat(index === 0 ? 180 : 100)}]}}`),
      tracks(19, (index) => `{columns: {tracks: [${"{}, ".repeat(index === 0 ? 181 : 100)}]}}`),
    ],
  ])("%s", (_, most, more) => {
    expect(isRead(most)).toBe(true);
    expect(isRead(more)).toBe(false);
  });
});
