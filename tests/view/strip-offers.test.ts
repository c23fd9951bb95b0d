/** Typed words find the layout or the division that they mean, among the first few. */
import { describe, expect, it } from "vitest";
import { searchRecipes } from "../../site/script/lazy/search/search-patterns.ts";
import { areasOf } from "../../src/recipe/area-tree.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { stripOffers } from "../../src/view/strip/strip-offers.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();
const offersFor = (text: string) =>
  stripOffers(text, { recipes: catalogue.recipes, patterns: catalogue.carried }).map(
    ({ title }) => title,
  );

describe("words", () => {
  it.each<[string, readonly string[]]>([
    ["", ["Halves", "Halves, gap 1", "Thirds", "Thirds, gap 1", "Quarters", "Quarters, gap 1"]],
    ["halves", ["Halves", "Halves, gap 1", "Halves, gap 2"]],
    ["Thirds gap 1", ["Thirds, gap 1"]],
    ["thirds with a gap", ["Thirds, gap 1"]],
    ["thirds with a gap of 2, margin 1", ["Thirds, gap 2, margin 1"]],
    ["1/3", ["Thirds", "Thirds, gap 1", "Thirds, gap 2"]],
    ["13 parts", ["13 parts", "13 parts, gap 1", "13 parts, gap 2"]],
    ["seed list", ["Seed list", "Seed swap"]],
    ["zzz", []],
    ["thirds of cake", []],
    ["99999", []],
    ["<script>", []],
  ])("%j offer", (text, expected) => {
    expect(offersFor(text)).toEqual(expected);
  });

  it.each([
    ["week", "Week in two rows"],
    ["tracker", "Habit tracker for a month"],
    ["half", "Halves, gap 1"],
  ])("%j have among the first eight: %s", (text, title) => {
    expect(offersFor(text)).toContain(title);
    expect(offersFor(text).length).toBeLessThanOrEqual(8);
  });

  const own: readonly Recipe[] = catalogue.recipes
    .slice(0, 1)
    .map((recipe) => ({ ...recipe, slug: "my-nights", title: "My nights", tags: [] }));
  const search = searchRecipes(catalogue.recipes);
  const searched = (text: string) =>
    stripOffers(text, {
      recipes: catalogue.recipes,
      patterns: catalogue.carried,
      own,
      found: search(text).places,
      foundOwn: searchRecipes(own)(text).places,
    });

  it.each(["frost", "temperature", "harvest"])(
    "%j find by labels, tags and texts what the gallery finds",
    (text) => {
      const titles = searched(text).map(({ title }) => title);
      const [best] = search(text).places.map((place) => catalogue.recipes[place]?.title);
      expect(best).toBeDefined();
      expect(titles).toContain(best);
    },
  );

  it("find one's own by name and by label, before the book's", () => {
    const label =
      own[0]?.attempts.flatMap(areasOf).find(({ label: each }) => /^[A-Za-z]{4,}$/.test(each))
        ?.label ?? "";
    for (const text of ["nights", label])
      expect(searched(text)[0]).toMatchObject({ title: "My nights", about: "Yours" });
  });

  it("offer a division on both sides with the margins of each", () => {
    const [offer] = stripOffers("halves gap 1 margin 2", { recipes: [], patterns: new Set() });
    expect(offer?.entries.across).toMatchObject({
      kind: "division",
      margin: { start: 2, end: 2 },
      split: { axis: "across" },
    });
    expect(offer?.entries.down).toMatchObject({
      kind: "division",
      margin: { start: 2, end: 2 },
      split: { axis: "down" },
    });
  });
});
