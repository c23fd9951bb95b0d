/** The tables of keys that the readers check with and the guide's reference shows: one and the same set of keys. */
import { describe, expect, it } from "vitest";
import { NOTEBOOK_KEYS } from "../../src/notebook/notebook-keys.ts";
import { NOTEBOOK_SHAPE } from "../../src/notebook/notebook-shape.ts";
import { MARGIN_KEYS } from "../../src/recipe/recipe.ts";
import { RECIPE_KEYS } from "../../src/recipe/recipe-keys.ts";
import { RECIPE_SHAPE } from "../../src/recipe/recipe-shape.ts";

describe("the table of keys", () => {
  it.each([
    ["recipe", RECIPE_SHAPE, RECIPE_KEYS.recipe],
    ["notebook", NOTEBOOK_SHAPE, NOTEBOOK_KEYS.notebook],
  ])("has the keys of the %s's schema, in its order", (_, shape, keys) => {
    expect(Object.keys(shape.schema.shape)).toEqual(Object.keys(keys));
  });

  it("has every side of a margin", () => {
    expect(Object.keys(RECIPE_KEYS.margin)).toEqual([...MARGIN_KEYS]);
  });
});
