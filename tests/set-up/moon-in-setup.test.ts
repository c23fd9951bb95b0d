import { describe, expect, it } from "vitest";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { setupOf, twentyByThirty } from "./known-patterns.ts";

const TEXT = '---\ntitle: Moon\npurpose: day\ndates: day\npage: {label: "{day}: {moon}"}\n---\n';

describe("a page of a set-up that asks for the moon", () => {
  it("names the phase by the book's clock", () => {
    const reading = readRecipe({ path: "patterns/moon.md", text: TEXT });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    // New on 8 March 2027 at 09:29 UTC (from memory; tests/outside/calendar-moon holds the tables).
    const dates = { from: "2027-03-07", to: "2027-03-09" };
    const notebook = twentyByThirty();
    const planner = openPlanner({
      notebooks: [notebook],
      recipes: [reading.value],
      strips: [],
      setups: [setupOf({ dates, first: 1, pages: ["moon"] })],
      utcOffset: 0,
    });
    const { plans } = planner.setupOn("tried", notebook.slug);
    expect(plans.map(({ pages }) => pages[0]?.boxes[0]?.label)).toEqual([
      "7: ",
      "8: New moon",
      "9: ",
    ]);
  });
});
