import { describe, expect, it } from "vitest";
import { sayValueType } from "../../src/issue/words/say-value-type.ts";
import { NOTEBOOK_KEYS } from "../../src/notebook/notebook-keys.ts";
import { NOTEBOOK_SHAPE } from "../../src/notebook/notebook-shape.ts";
import { BOOK_KEYS } from "../../src/recipe/book-keys.ts";
import { MARGIN_KEYS } from "../../src/recipe/recipe.ts";
import { RECIPE_KEYS } from "../../src/recipe/recipe-keys.ts";
import { RECIPE_SHAPE } from "../../src/recipe/recipe-shape.ts";
import { STRIP_KEYS } from "../../src/recipe/strip-keys.ts";
import type { KeyEntry } from "../../src/source/schema/keys.ts";

const GRAMMARS = { ...NOTEBOOK_KEYS, ...BOOK_KEYS, ...STRIP_KEYS, ...RECIPE_KEYS };

const ALL = Object.entries(GRAMMARS).flatMap(([owner, keys]) =>
  Object.entries(keys).map(([key, entry]) => [owner, key, entry] as const),
) satisfies readonly (readonly [string, string, KeyEntry])[];

describe("the table of keys", () => {
  it("is not empty", () => {
    expect(ALL.length).toBeGreaterThan(50);
  });

  it.each(ALL)("%s %s says in sentences what it means, and what it takes", (_, __, entry) => {
    expect(entry.meaning).toMatch(/^[A-Z].*\.$/);
    expect(sayValueType(entry.expected)).not.toContain("undefined");
  });

  it.each([
    ["recipe", RECIPE_SHAPE, RECIPE_KEYS.recipe],
    ["notebook", NOTEBOOK_SHAPE, NOTEBOOK_KEYS.notebook],
  ])("has the keys of the %s's schema, each with its meaning", (_, shape, keys) => {
    const described = Object.entries(shape.schema.shape).map(([key, { description }]) => [
      key,
      description,
    ]);
    expect(described).toEqual(Object.entries(keys).map(([key, { meaning }]) => [key, meaning]));
  });

  it("has every side of a margin", () => {
    expect(Object.keys(RECIPE_KEYS.margin)).toEqual([...MARGIN_KEYS]);
  });
});
