/** Patterns near one another: by purpose first, then by tags and by how they are built. */
import { describe, expect, it } from "vitest";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { relatedPatterns } from "../../src/view/pattern/related-patterns.ts";
import { area, columns, onePage, recipeOf, rows, spread } from "../oracle/recipe-of.ts";
import { equalTracks } from "../oracle/track.ts";

const threeColumns = onePage(area({ split: columns(equalTracks(3)) }));
const threeRows = onePage(area({ split: rows(equalTracks(3)) }));

function named(slug: string, given: Partial<Recipe>, attempt = threeColumns): Recipe {
  return { ...recipeOf(attempt), slug, ...given };
}

const own = named("own", { purpose: "week", tags: ["plan"] });

describe("the patterns nearest to one", () => {
  it.each<[string, Recipe, Recipe]>([
    ["its purpose", named("near", { purpose: "week" }), named("far", { purpose: "list" })],
    ["its tags", named("near", { tags: ["plan"] }), named("far", { tags: ["rota"] })],
    ["its direction", named("near", {}), named("far", {}, threeRows)],
    ["its pages", named("near", {}), named("far", {}, spread(area(), area()))],
    [
      "how many boxes it has",
      named("near", {}, onePage(area({ split: columns(equalTracks(4)) }))),
      named("far", {}, onePage(area({ split: columns(equalTracks(30)) }))),
    ],
    [
      "what its boxes are filled with",
      named("near", {}, onePage(area())),
      named("far", {}, onePage(area({ fill: "lines" }))),
    ],
  ])("are those that share %s", (_, near, far) => {
    expect(relatedPatterns([far, own, near]).get("own")).toEqual(["near", "far"]);
  });

  it("keep the book's order where they are equally near", () => {
    const twins = ["c", "a", "b"].map((slug) => named(slug, {}));
    expect(relatedPatterns([own, ...twins]).get("own")).toEqual(["c", "a", "b"]);
  });
});
