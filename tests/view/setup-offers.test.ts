/** What typed words offer for a set-up's pages. */
import { describe, expect, it } from "vitest";
import { searchRecipes } from "../../site/script/lazy/search/search-patterns.ts";
import { setupOffers } from "../../src/view/setup/setup-offers.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();
const offers = (text: string) =>
  setupOffers(text, { recipes: catalogue.recipes, own: new Set(["habit-tracker"]) });

describe("the offers", () => {
  it.each([
    ["ea", "Each week"],
    ["every", "Each week"],
    ["each m", "Each month"],
    ["each day", "Each day"],
    ["page before", "Opening page of a month"],
    ["month-grid", "Month on one page"],
    ["two r", "Week in two rows"],
    ["gratit", "Daily diary with gratitude"],
  ])("for “%s” begin with %s", (text, title) => {
    expect(offers(text)[0]?.title).toBe(title);
  });

  it("go on with what the gallery finds by labels, tags and texts, where it fits the block", () => {
    const { recipes } = catalogue;
    const foundFor = (text: string, within?: "day") =>
      setupOffers(text, {
        ...{ recipes, own: new Set<string>(), within },
        found: searchRecipes(recipes)(text).places,
      }).map(({ title }) => title);
    const [best] = searchRecipes(recipes)("temperature").places;
    expect(foundFor("temperature")).toContain(recipes[best ?? -1]?.title);
    expect(foundFor("week").slice(0, 2)).toEqual(
      offers("week")
        .slice(0, 2)
        .map(({ title }) => title),
    );
    for (const title of foundFor("week", "day")) {
      const span = recipes.find((recipe) => recipe.title === title)?.dates?.span;
      expect(["day", undefined]).toContain(span);
    }
  });

  it("for a word that is none are none, and a block is none for a layout's words", () => {
    expect(offers("xyzzy")).toEqual([]);
    expect(offers("week").map(({ entry }) => entry.kind)).not.toContain("each");
    expect(offers("each week in two rows")).toEqual([]);
  });

  it("for a block are no other block, and nothing for more days than it has", () => {
    const inWeeks = (text: string) =>
      setupOffers(text, { recipes: catalogue.recipes, own: new Set(), within: "week" });
    expect(inWeeks("side")[0]?.title).toBe("Notes with a side column");
    expect(inWeeks("each")).toEqual([]);
    const spans = inWeeks("").map(({ entry }) =>
      entry.kind === "pattern" ? catalogue.recipe(entry.pattern).dates?.span : entry.kind,
    );
    expect(spans.length).toBeGreaterThan(1);
    for (const span of spans) expect(["week", "day", undefined]).toContain(span);
  });

  it("for nothing are blocks and what a month is set up with", () => {
    const titles = offers("").map(({ title }) => title);
    expect(titles.slice(0, 2)).toEqual(["Each week", "Each day"]);
    expect(titles.length).toBeGreaterThan(4);
  });

  it("say which layouts are the keeper's", () => {
    expect(offers("small duties")[0]?.about).toContain("yours");
    expect(offers("two rows")[0]?.about).not.toContain("yours");
  });
});
