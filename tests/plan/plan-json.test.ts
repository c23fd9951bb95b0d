/** `plan.json` as the contract has it. */
import { describe, expect, it } from "vitest";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { RECIPE_KEYS } from "../../src/recipe/recipe-keys.ts";

const A5 = `---
title: A5
paper: A5
pitch: 5
dots: [26, 38]
firstDot: [11.5, 12.5]
---
`;

const WEEK = `---
title: Week in two rows
purpose: week
page:
  margin: {top: 1, inner: 1}
  rows:
    gap: {min: 1, max: 2}
    tracks:
      - {label: Heading, steps: 3}
      - columns: {count: 4, gap: 1, labels: [Mon, Tue, Wed, Thu]}
        share: 1
      - columns: {count: 4, gap: 1, labels: [Fri, Sat, Sun, Next]}
---
`;

function planned(recipeText: string): unknown {
  const recipe = readRecipe({ path: "patterns/tried.md", text: recipeText });
  const notebook = readNotebook({ path: "notebooks/a5.md", text: A5 });
  if (!recipe.ok || !notebook.ok) throw new Error("the written test does not read");
  return JSON.parse(planJson(planPattern(recipe.value, notebook.value)));
}

describe("plan.json", () => {
  it("lists the splits and boxes of the week in two rows", () => {
    expect(planned(WEEK)).toMatchObject({
      pattern: "tried",
      notebook: "a5",
      fits: true,
      used: 0,
      notes: [],
      pages: [
        {
          side: "single",
          steps: { across: 26, down: 38 },
          splits: [
            {
              path: "rows",
              axis: "down",
              from: 1,
              length: 37,
              sizes: [3, 16, 16],
              gaps: [1, 1],
              before: 0,
              after: 0,
            },
            {
              path: "rows.1.columns",
              axis: "across",
              from: 1,
              length: 25,
              sizes: [5, 5, 5, 5],
              gaps: [1, 1, 1],
              before: 0,
              after: 2,
            },
            { path: "rows.2.columns" },
          ],
          boxes: [
            { path: "rows.0", label: "Heading", x: 1, y: 1, w: 25, h: 3, fill: "blank" },
            { path: "rows.1.columns.0", label: "Mon", x: 1, y: 5, w: 5, h: 16, fill: "blank" },
            { path: "rows.1.columns.1", x: 7 },
            { path: "rows.1.columns.2", x: 13 },
            { path: "rows.1.columns.3", x: 19 },
            { path: "rows.2.columns.0", label: "Fri", y: 22 },
            { path: "rows.2.columns.1" },
            { path: "rows.2.columns.2" },
            { path: "rows.2.columns.3", label: "Next" },
          ],
        },
      ],
    });
  });

  it("has no box with the label of an area that is split: it only names the area in words", () => {
    const labelled =
      "---\ntitle: Halves\npurpose: notes\npage: {label: Beds, columns: {count: 2, labels: [Peas]}}\n---\n";
    expect(planned(labelled)).toMatchObject({
      pages: [{ boxes: [{ label: "Peas" }, { label: "" }] }],
    });
    expect(RECIPE_KEYS.area.label.meaning).toContain("On an area that is split it is not drawn");
  });

  it("tells why a pattern does not fit, and what would", () => {
    const wide = WEEK.replace("count: 4, gap: 1, labels: [Mon", "count: 14, gap: 1, labels: [Mon");
    expect(planned(wide)).toMatchObject({
      fits: false,
      pages: [],
      reason: expect.stringMatching(/27 .*25/),
      near: expect.arrayContaining([
        expect.objectContaining({
          kind: "narrower-gap",
          from: 1,
          to: 0,
          change: expect.any(String),
        }),
        expect.objectContaining({
          kind: "fewer-tracks",
          from: 14,
          to: 13,
          change: expect.any(String),
        }),
      ]),
    });
  });

  it("lists the edits of a change that takes more than one", () => {
    const page = "{rows: {count: 40, each: {columns: 30}}}";
    expect(planned(`---\ntitle: A\npurpose: page\npage: ${page}\n---\n`)).toMatchObject({
      near: [
        {
          ...{ kind: "fewer-tracks", from: 40, to: 38 },
          edits: [
            { kind: "fewer-tracks", from: 40, to: 38 },
            { kind: "fewer-tracks", from: 30, to: 26 },
          ],
        },
      ],
    });
    const wide = "---\ntitle: A\npurpose: page\npage: {columns: 30}\n---\n";
    expect(planned(wide)).toMatchObject({ near: [{ kind: "fewer-tracks", from: 30, to: 26 }] });
    expect(JSON.stringify(planned(wide))).not.toContain('"edits"');
  });

  it("notes where twins differ on paper, in millimetres", () => {
    const halves = "---\ntitle: Halves\npurpose: notes\npage: {columns: 2}\n---\n";
    expect(planned(halves)).toMatchObject({
      notes: [
        {
          path: "columns",
          steps: 13,
          mm: 71.5,
          twinMm: 65,
          alike: "dot-to-dot",
          text: expect.stringContaining("71.5 mm"),
        },
      ],
    });
  });
});
