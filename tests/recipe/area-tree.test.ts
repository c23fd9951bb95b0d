/** The one way through a recipe: pages, areas and tracks in the order of the plan, by paths as a plan writes them. */
import { describe, expect, it } from "vitest";
import type { PageSide } from "../../src/measure/paper-side.ts";
import {
  areaAt,
  areasAlong,
  areasOf,
  attemptOf,
  leavesOf,
  mapAreas,
  pagesOf,
  splitPath,
  tracksIn,
} from "../../src/recipe/area-tree.ts";
import type { Area } from "../../src/recipe/recipe.ts";
import { area, columns, onePage, recipeOf, rows, spread } from "../oracle/recipe-of.ts";
import { shareTrack } from "../oracle/track.ts";

const size = shareTrack(1);
const row = area({ label: "row", split: columns([size, { size, area: area({ label: "note" }) }]) });
const LEFT = area({
  label: "left",
  split: rows([
    { size, area: row },
    { size, area: row },
    { size, area: area({ label: "foot" }) },
  ]),
});
const SPREAD = spread(LEFT, area({ label: "right" }));

const labels = (areas: readonly Area[]) => areas.map(({ label }) => label);

describe("an attempt", () => {
  it("is the recipe's by its number, and one that is not there is a broken promise", () => {
    const recipe = recipeOf(SPREAD, onePage(LEFT));
    expect(attemptOf(recipe, 1)).toEqual(onePage(LEFT));
    expect(() => attemptOf(recipe, 2)).toThrow("the recipe tried has no attempt 2");
  });

  it("has one page, or the left one before the right one", () => {
    expect(pagesOf(onePage(row))).toEqual([{ side: "single", area: row }]);
    expect(pagesOf(SPREAD).map(({ side, area }) => [side, area.label])).toEqual([
      ["left", "left"],
      ["right", "right"],
    ]);
  });

  it("has each area once, and its leaves as often as the page has them", () => {
    expect(labels(areasOf(SPREAD))).toEqual(["left", "row", "", "note", "foot", "right"]);
    expect(labels(leavesOf(SPREAD))).toEqual(["", "note", "", "note", "foot", "right"]);
  });

  it("has tracks depth first, with what repeated ones share looked at once", () => {
    expect(labels(tracksIn(LEFT).map((track) => track.area))).toEqual([
      "row",
      "",
      "note",
      "row",
      "foot",
    ]);
  });
});

describe("a path", () => {
  it.each<[PageSide, string, readonly string[]]>([
    ["left", "", ["left"]],
    ["left", "rows", ["left"]],
    ["left", "rows.1", ["left", "row"]],
    ["left", "rows.1.columns", ["left", "row"]],
    ["left", "rows.1.columns.1", ["left", "row", "note"]],
    ["right", "", ["right"]],
    // No such page, track or split.
    ["single", "", []],
    ["left", "rows.3", []],
    ["left", "rows.2.columns.0", []],
  ])("on the %s page, `%s`, leads through %j", (side, path, expected) => {
    const along = areasAlong(SPREAD, { side, path });
    expect(labels(along.map(({ area }) => area))).toEqual(expected);
    expect(areaAt(SPREAD, { side, path })?.label).toBe(expected.at(-1));
  });

  it("is said of each area on the way", () => {
    const along = areasAlong(SPREAD, { side: "left", path: "rows.1.columns.1" });
    expect(along.map(({ path }) => path)).toEqual(["", "rows.1", "rows.1.columns.1"]);
  });

  it.each([
    ["", "across", "columns"],
    ["rows.1", "across", "rows.1.columns"],
    ["rows.1", "down", "rows.1.rows"],
  ] as const)("of the split of `%s` %s is `%s`", (path, axis, expected) => {
    expect(splitPath(path, axis)).toBe(expected);
  });
});

describe("an attempt with its areas changed", () => {
  const loud = mapAreas(SPREAD, (one) => ({ ...one, label: one.label.toUpperCase() }));

  it("is changed everywhere", () => {
    expect(labels(leavesOf(loud))).toEqual(["", "NOTE", "", "NOTE", "FOOT", "RIGHT"]);
    expect(labels(areasOf(SPREAD))).toContain("note");
  });

  it("keeps as one object what was one", () => {
    const [first, second] = pagesOf(loud)[0]?.area.split?.tracks ?? [];
    expect(first?.area.label).toBe("ROW");
    expect(first?.area).toBe(second?.area);
  });
});
